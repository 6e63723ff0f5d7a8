#include "commands.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <ostream>

#include "call/options.hpp"
#include "commands/help_words.hpp"
#include "commands/usage_faults.hpp"
#include "secrets.hpp"
#include "shaftcut/engine/engine.hpp"
#include "text.hpp"

namespace shaftcut {
namespace {

std::string help_of_program(const Wording& w)
{
    std::string rows;
    for (const CommandRow& row : commands()) rows += fmt::format("  {:<11} {}\n", row.name, summary(row.command, w));
    return program_help(rows, w);
}

#ifdef __clang__
constexpr const char* compiler = __VERSION__;
#else
constexpr const char* compiler = "g++ " __VERSION__;
#endif

std::string version_text(const Wording& w) { return version_lines({SHAFTCUT_VERSION, compiler, boost_built_with(), libraries_built_with(), sodium_in_use()}, w); }

bool asks(const std::vector<std::string>& arguments, const char* option)
{
    return std::find(arguments.begin(), arguments.end(), option) != arguments.end();
}

Outcome bad_usage(const std::string& fault, Console& console)
{
    console.err << "shaftcut: " << fault << "\n";
    return Outcome::bad_input;
}

std::string fault_of_name(const std::string& name, const Wording& w)
{
    std::vector<std::string> known;
    for (const CommandRow& row : commands()) known.emplace_back(row.name);
    return unknown_command(name, nearest_name(name, known), known, w);
}

// The catalogue has a command of its own within it.
std::unique_ptr<Command> made(const CommandRow& row, std::vector<std::string>& arguments)
{
    if (row.command != CommandName::catalogue || arguments.empty() || arguments.front() != "add") return row.make();
    arguments.erase(arguments.begin());
    return make_catalogue_add();
}

Outcome run_command(const CommandRow& row, std::vector<std::string> arguments, Console& console)
{
    const std::unique_ptr<Command> command = made(row, arguments);
    if (asks(arguments, "--help")) {
        console.out << command->help(console.wording);
        return Outcome::answered;
    }
    if (asks(arguments, "--version")) {
        console.out << version_text(console.wording);
        return Outcome::answered;
    }
    if (const std::string fault = command->set_up(arguments, console.wording); !fault.empty()) return bad_usage(fault, console);
    return command->run(console);
}

CommandRow row_of(CommandName command, std::unique_ptr<Command> (*make)()) { return {command, to_word(command), make}; }

}  // namespace

const std::vector<CommandRow>& commands()
{
    static const std::vector<CommandRow> rows{
        row_of(CommandName::cut, make_cut),     row_of(CommandName::form, make_form), row_of(CommandName::lengths, make_lengths),
        row_of(CommandName::build, make_build), row_of(CommandName::saw, make_saw),   row_of(CommandName::after_cut, make_after_cut),
        row_of(CommandName::identify, make_identify), row_of(CommandName::choose, make_choose), row_of(CommandName::quote, make_quote),
        row_of(CommandName::bench, make_bench), row_of(CommandName::catalogue, make_catalogue),
    };
    return rows;
}

Outcome run_program(const std::vector<std::string>& arguments, Console& console)
{
    if (arguments.empty()) return bad_usage(no_command(console.wording), console);
    if (arguments.front() == "--help") {
        console.out << help_of_program(console.wording);
        return Outcome::answered;
    }
    if (arguments.front() == "--version") {
        console.out << version_text(console.wording);
        return Outcome::answered;
    }
    for (const CommandRow& row : commands())
        if (arguments.front() == row.name) return run_command(row, {arguments.begin() + 1, arguments.end()}, console);
    return bad_usage(fault_of_name(arguments.front(), console.wording), console);
}

}  // namespace shaftcut
