// What is wrong with a call's command, options and files, and what would be right.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "both_halves.hpp"
#include "commands/command_name.hpp"
#include "parse.hpp"
#include "wording.hpp"

namespace shaftcut {

// `near`, here and below: the known name that may have been meant; empty: none.
std::string no_command(const Wording& w);
std::string unknown_command(const std::string& name, const std::string& near, const std::vector<std::string>& known, const Wording& w);

// `option`, here and below: "--kerf".
std::string unknown_option(const std::string& option, const std::string& near, const Wording& w);
enum class OptionFault { empty, twice, takes_no_value, lacks_value };
std::string say(OptionFault fault, const std::string& option, const Wording& w);
// What the options' library says of anything else.
std::string other_option_fault(const std::string& fault, const Wording& w);
std::string not_one_of(const std::string& option, const std::string& value, const std::string& near, const std::vector<std::string>& known, const Wording& w);
std::string say_option(const std::string& option, const ParseFault& fault, const Wording& w);

// Of a command that does not come in every format of a file; `offered`: those in which it does.
std::string formats_fault(CommandName command, const std::vector<std::string>& offered, const Wording& w);
// Of form's --identify beside --series or --machine.
std::string identify_form_takes_neither(const Wording& w);
// Of form's --machine.
std::string unknown_machine(const std::string& kind, const Wording& w);
// Of --tag without a PDF.
std::string tag_without_pdf(const Wording& w);
// Of a value that is no day of the calendar.
std::string no_day(const std::string& option, const std::string& value, const Wording& w);
// Likewise of --plate.
std::string plate_without_pdf(const Wording& w);
// Of --before-measuring with --discount or --alternatives.
std::string estimate_takes_neither(const Wording& w);
// Of --output -, where it is not JSON that is written.
std::string standard_output_fault(CommandName command, const Wording& w);

// Of a command that takes files and was given none.
std::string no_file(CommandName command, const Wording& w);
// Of after-cut, which takes the job and what was measured.
std::string not_two_files(std::size_t given, const Wording& w);
// Of a file that the command does not take any more, or at all.
std::string not_expected(CommandName command, const std::string& file, const Wording& w);
// Of --learn without --list, and of both with a list in XML.
std::string learn_without_list(const Wording& w);
std::string list_of_xml(const Wording& w);
// Of a file of orders that is neither CSV nor XML by its name.
std::string no_list_suffix(const std::string& file, const Wording& w);
// Of a file that documents are named after. `of_orders`: it lists orders, else pieces. What is wrong with its name: a character that
// nobody sees, or no text at all.
std::string say_file_name(bool of_orders, std::optional<char32_t> hidden, const Wording& w);
// Of a job whose order is that of another of the call; `earlier`: the other's file.
Said order_again(const std::string& order, const std::string& earlier, const Wording& w);
// Of a file whose shaft is called as that of another one of the call.
Said shaft_again(const std::string& shaft, const std::string& earlier, const Wording& w);
// Of --job where the JSON goes to standard output.
std::string job_beside_standard_output(const Wording& w);

}  // namespace shaftcut
