// shaftcut cut: cut sheets and work orders for shafts that exist.
#include "call/jobs_command.hpp"
#include "commands.hpp"

namespace shaftcut {
namespace {

constexpr JobAnswers answers{
    CommandName::cut,
    "pdf,xlsx,json",
    &Engine::answer,
    Question::cut,
    true,
};

}  // namespace

std::unique_ptr<Command> make_cut() { return std::make_unique<JobsCommand>(answers); }

}  // namespace shaftcut
