// shaftcut lengths: shortest and longest operating lengths from the machine's geometry.
#include <algorithm>

#include "jobs_command.hpp"
#include "shaftcut/documents/json.hpp"
#include "shaftcut/documents/lengths_documents.hpp"

namespace shaftcut {
namespace {

std::string formats_fault(const std::vector<Format>& formats)
{
    if (std::all_of(formats.begin(), formats.end(), lengths_come_as)) return {};
    return "--formats xlsx: lengths has no workbook; give pdf, json, png or svg";
}

Problems unanswerable(const Job& job)
{
    const auto holds_machine = [](const JobFit& fit) { return fit.machine.has_value(); };
    if (std::any_of(job.fits.begin(), job.fits.end(), holds_machine)) return {};
    return {{job.fits.front().place, "no fit holds a machine's geometry", "add a trailed or mounted machine, from which lengths can be computed"}};
}

// A joint cannot fold past a right angle: there is no shaft for such a machine.
bool folds(const WorkOrder& order)
{
    for (const End end : both_ends)
        for (const Range range : all_ranges)
            if (const auto& angle = order.extremes.angles[end][range]; angle && angle->angle > Angle::degrees(90)) return true;
    return false;
}

constexpr JobAnswers answers{
    "shaftcut lengths JOB.xml...\n\nWrites the shortest and longest operating lengths and the joint angles that the machine's geometry gives, each with the\n"
    "position where it occurs: a sheet with drawings to scale (PDF) and the figures (JSON).",
    "pdf,json",
    "pdf, json, png and svg",
    formats_fault,
    unanswerable,
    folds,
    [](const WorkOrder& order) { return lengths_json_of(order, JsonLayout::one_line); },
    lengths_text,
    [](const WorkOrder& order, Format format, Paper paper) { return lengths_document_of(order, format, paper).value(); },
};

}  // namespace

std::unique_ptr<Command> make_lengths() { return std::make_unique<JobsCommand>(answers); }

}  // namespace shaftcut
