// shaftcut lengths: shortest and longest operating lengths from the machine's geometry.
#include "jobs_command.hpp"

namespace shaftcut {
namespace {

constexpr JobAnswers answers{
    "shaftcut lengths JOB.xml...\n\nWrites the shortest and longest operating lengths and the joint angles that the machine's geometry gives, each with the\n"
    "position where it occurs: a sheet with drawings to scale (PDF) and the figures (JSON).",
    "pdf,json",
    "pdf, json, png and svg",
    "--formats xlsx: lengths has no workbook; give pdf, json, png or svg",
    &Engine::lengths,
    Question::lengths,
};

}  // namespace

std::unique_ptr<Command> make_lengths() { return std::make_unique<JobsCommand>(answers); }

}  // namespace shaftcut
