// shaftcut lengths: shortest and longest operating lengths from the machine's geometry.
#include "call/jobs_command.hpp"
#include "commands.hpp"

namespace shaftcut {
namespace {

constexpr JobAnswers answers{
    CommandName::lengths,
    "pdf,json",
    &Engine::lengths,
    Question::lengths,
    false,
};

}  // namespace

std::unique_ptr<Command> make_lengths() { return std::make_unique<JobsCommand>(answers); }

}  // namespace shaftcut
