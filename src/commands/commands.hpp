// Every command's maker: one line a command here, and one in the table of command.cpp.
#pragma once

#include <memory>

#include "call/command.hpp"

namespace shaftcut {

std::unique_ptr<Command> make_cut();
std::unique_ptr<Command> make_build();
std::unique_ptr<Command> make_saw();
std::unique_ptr<Command> make_form();
std::unique_ptr<Command> make_lengths();
std::unique_ptr<Command> make_after_cut();
std::unique_ptr<Command> make_quote();
std::unique_ptr<Command> make_identify();
std::unique_ptr<Command> make_choose();
std::unique_ptr<Command> make_bench();
std::unique_ptr<Command> make_catalogue();
std::unique_ptr<Command> make_catalogue_add();

}  // namespace shaftcut
