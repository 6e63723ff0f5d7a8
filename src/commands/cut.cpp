// shaftcut cut: cut sheets and work orders for shafts that exist.
#include "jobs_command.hpp"
#include "shaftcut/documents/json.hpp"

namespace shaftcut {
namespace {

constexpr JobAnswers answers{
    "shaftcut cut JOB.xml...\n\nWrites a cut sheet (PDF), a work order (XLSX) and the figures (JSON) for each job.",
    "pdf,xlsx,json",
    "pdf, xlsx, json, png and svg",
    [](const std::vector<Format>&) { return std::string(); },
    [](const Job&) { return Problems(); },
    [](const WorkOrder& order) { return order.verdict == Verdict::refused; },
    [](const WorkOrder& order) { return json_of(order, JsonLayout::one_line); },
    terminal_text,
    document_of,
};

}  // namespace

std::unique_ptr<Command> make_cut() { return std::make_unique<JobsCommand>(answers); }

}  // namespace shaftcut
