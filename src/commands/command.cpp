#include "commands.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <ostream>

#include "options.hpp"
#include "shaftcut/engine/engine.hpp"
#include "text.hpp"

namespace shaftcut {
namespace {

std::string program_help()
{
    std::string text = "shaftcut COMMAND [OPTION]... [FILE]...\n\nCuts PTO drive shafts to length: computes every cut, checks what must hold, and refuses the rest.\n\nCommands\n";
    for (const CommandRow& row : commands()) text += fmt::format("  {:<11} {}\n", row.name, row.summary);
    return text + "\nshaftcut COMMAND --help says more; shaftcut --version says what this is.\n";
}

#ifdef __clang__
constexpr const char* compiler = __VERSION__;
#else
constexpr const char* compiler = "g++ " __VERSION__;
#endif

std::string version_text()
{
    return fmt::format("shaftcut {}\nbuilt with {}; Boost {}, {}\n", SHAFTCUT_VERSION, compiler, boost_built_with(), libraries_built_with());
}

bool asks(const std::vector<std::string>& arguments, const char* option)
{
    return std::find(arguments.begin(), arguments.end(), option) != arguments.end();
}

Outcome bad_usage(const std::string& fault, Console& console)
{
    console.err << "shaftcut: " << fault << "\n";
    return Outcome::bad_input;
}

std::string unknown_command(const std::string& name)
{
    std::vector<std::string> known;
    for (const CommandRow& row : commands()) known.emplace_back(row.name);
    const std::string near = nearest_name(name, known);
    return "there is no command " + quoted(name) + "; " + (near.empty() ? "give " : "did you mean " + near + "? there are ") + listed(known, "and");
}

Outcome run_command(const CommandRow& row, const std::vector<std::string>& arguments, Console& console)
{
    const std::unique_ptr<Command> command = row.make();
    if (asks(arguments, "--help")) {
        console.out << command->help();
        return Outcome::answered;
    }
    if (asks(arguments, "--version")) {
        console.out << version_text();
        return Outcome::answered;
    }
    if (const std::string fault = command->set_up(arguments); !fault.empty()) return bad_usage(fault, console);
    return command->run(console);
}

}  // namespace

const std::vector<CommandRow>& commands()
{
    static const std::vector<CommandRow> rows{
        {"cut", "cut sheets and work orders for shafts that exist", make_cut},
        {"form", "a blank measuring form to take to the tractor", make_form},
        {"lengths", "shortest and longest operating lengths from the machine's geometry", make_lengths},
        {"build", "parts, blanks and saw plans for shafts made to order", make_build},
        {"saw", "a saw plan for any list of pieces on any stock", make_saw},
        {"catalogue", "what the configuration holds; checks it", make_catalogue},
    };
    return rows;
}

Outcome run_program(const std::vector<std::string>& arguments, Console& console)
{
    if (arguments.empty()) return bad_usage("no command is given; shaftcut --help lists them", console);
    if (arguments.front() == "--help") {
        console.out << program_help();
        return Outcome::answered;
    }
    if (arguments.front() == "--version") {
        console.out << version_text();
        return Outcome::answered;
    }
    for (const CommandRow& row : commands())
        if (arguments.front() == row.name) return run_command(row, {arguments.begin() + 1, arguments.end()}, console);
    return bad_usage(unknown_command(arguments.front()), console);
}

}  // namespace shaftcut
