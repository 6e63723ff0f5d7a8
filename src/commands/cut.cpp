// shaftcut cut: cut sheets and work orders for shafts that exist.
#include "jobs_command.hpp"

namespace shaftcut {
namespace {

constexpr JobAnswers answers{
    "shaftcut cut JOB.xml...\n\nWrites a cut sheet (PDF), a work order (XLSX) and the figures (JSON) for each job.",
    "pdf,xlsx,json",
    "pdf, xlsx, json, png and svg",
    "",
    &Engine::answer,
    Question::cut,
};

}  // namespace

std::unique_ptr<Command> make_cut() { return std::make_unique<JobsCommand>(answers); }

}  // namespace shaftcut
