// What --help and --version say. Options' own names and what stands for their values are no wording.
#pragma once

#include <string>
#include <vector>

#include "commands/command_name.hpp"
#include "wording.hpp"

namespace shaftcut {

// In the program's help, behind the command's name.
std::string summary(CommandName command, const Wording& w);
// The command's own help, before its options.
std::string usage(CommandName command, const Wording& w);
// `commands`: a line each, ended.
std::string program_help(const std::string& commands, const Wording& w);

// Each a version, but `compiler` and `libraries`, which name what they are of.
struct BuiltWith {
    std::string version, compiler, boost, libraries, sodium;
};
std::string version_lines(const BuiltWith& built, const Wording& w);

// What an option is for. `output_without_json`: of a command that writes no JSON to standard output.
enum class OptionText {
    heading, config, help, version, output, output_without_json, paper, replace, series, machine, tag, stock_of_orders, stock_of_pieces, kerf, trim_start, trim_end, seconds, list, learn, plate,
    issued, discount, service, alternatives, before_measuring, job, identify,
    port, open, lan, pair, card, tablets, revoke, printer, output_of_card
};
std::string say(OptionText option, const Wording& w);

// What --units is the unit of and what it is without it: of job files, of a listing, of a list of orders, of a list of pieces.
enum class UnitsText { of_job, of_listing, of_orders, of_pieces };
std::string say(UnitsText units, const Wording& w);

// Of --formats. `offered`: those that the command writes; `by_default`: as the option would say them.
std::string formats_text(const std::vector<std::string>& offered, const std::string& by_default, const Wording& w);

}  // namespace shaftcut
