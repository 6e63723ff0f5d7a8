// What every command is: its set-up parses and checks its arguments and opens no file; its run does the work.
#pragma once

#include <iosfwd>
#include <memory>
#include <string>
#include <vector>

#include "commands/command_name.hpp"
#include "wording.hpp"

namespace shaftcut {

// What the program ends with. Of several, the greatest counts.
enum class Outcome {
    answered = 0,    // every job was answered: cut, or fits as it is
    refused = 1,     // every job was answered and at least one was refused
    bad_input = 2,   // bad usage or bad input; the other jobs of the call were still done
    unwritable = 3   // a file could not be read or written
};

// Where a command speaks: people's words to `out`, faults to `err`; where documents go to `out`, people's words to `err` too.
struct Console {
    std::ostream& out;
    std::ostream& err;
    bool colour = false;    // `out` is a terminal
    bool progress = false;  // `err` is a terminal
    Wording wording = Wording(Units::mm);
    std::istream* in = nullptr;  // where answers come from; nothing: nobody answers
};

class Command {
public:
    Command() = default;
    Command(const Command&) = delete;
    Command& operator=(const Command&) = delete;
    virtual ~Command() = default;
    // Empty, or what is wrong with the arguments and what would be right. Opens no file.
    virtual std::string set_up(const std::vector<std::string>& arguments, const Wording& w) = 0;
    virtual Outcome run(Console& console) = 0;
    // Its usage and options, for --help.
    virtual std::string help(const Wording& w) = 0;
};

struct CommandRow {
    CommandName command;
    const char* name;
    std::unique_ptr<Command> (*make)();
};

// Every command, in the order in which help lists them.
const std::vector<CommandRow>& commands();

// The whole program but for the process: `arguments` without the program's name.
Outcome run_program(const std::vector<std::string>& arguments, Console& console);

}  // namespace shaftcut
