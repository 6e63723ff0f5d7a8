#include "commands/usage_faults.hpp"

#include "reading/said.hpp"
#include "text.hpp"

namespace shaftcut {

std::string no_command(const Wording& w) { return w("no command is given; shaftcut --help lists them"); }

std::string unknown_command(const std::string& name, const std::string& near, const std::vector<std::string>& known, const Wording& w)
{
    const NamedValue given{"name", quoted(name)}, there{"known", w.all_of(known)};
    if (near.empty()) return w("there is no command {name}; give {known}", {given, there});
    return w("there is no command {name}; did you mean {near}? there are {known}", {given, {"near", near}, there});
}

std::string unknown_option(const std::string& option, const std::string& near, const Wording& w)
{
    if (near.empty()) return w("there is no option {option}; --help lists them", {{"option", option}});
    return w("there is no option {option}; did you mean {near}?", {{"option", option}, {"near", near}});
}

std::string say(OptionFault fault, const std::string& option, const Wording& w)
{
    const NamedValue named{"option", option};
    switch (fault) {
    case OptionFault::empty: return w("{option} is empty; give it a value or leave it out", {named});
    case OptionFault::twice: return w("{option} is given more than once; give it once", {named});
    case OptionFault::takes_no_value: return w("{option} takes no value; leave it out", {named});
    case OptionFault::lacks_value: break;
    }
    return w("{option} has no value; give it one", {named});
}

std::string other_option_fault(const std::string& fault, const Wording& w) { return w("{fault}; --help lists the options", {{"fault", fault}}); }

std::string not_one_of(const std::string& option, const std::string& value, const std::string& near, const std::vector<std::string>& known, const Wording& w)
{
    const NamedValue named{"option", option}, given{"value", quoted(value)}, there{"known", w.either(known)};
    if (near.empty()) return w("{option} {value} is not known; give {known}", {named, given, there});
    return w("{option} {value} is not known; did you mean {near}? it takes {known}", {named, given, {"near", near}, there});
}

std::string say_option(const std::string& option, const ParseFault& fault, const Wording& w)
{
    return in_one(say(UnreadableValue{option, fault}, w), w);
}

std::string formats_fault(CommandName command, const std::vector<std::string>& offered, const Wording& w)
{
    switch (command) {
    case CommandName::form: return w("form writes PDF only; leave --formats out, or write --formats pdf");
    case CommandName::after_cut: return w("after-cut writes JSON only; leave --formats out, or write --formats json");
    case CommandName::choose: return w("choose writes JSON only; leave --formats out, or write --formats json");
    case CommandName::lengths: return w("--formats xlsx: lengths has no workbook; give {formats}", {{"formats", w.either(offered)}});
    case CommandName::cut:
    case CommandName::build:
    case CommandName::saw:
    case CommandName::identify:
    case CommandName::quote:
    case CommandName::bench:
    case CommandName::catalogue:
    case CommandName::catalogue_add: break;
    }
    return w("--formats: {command} writes {formats}", {{"command", to_word(command)}, {"formats", w.all_of(offered)}});
}

std::string unknown_machine(const std::string& kind, const Wording& w)
{
    return w("--machine {kind} is not known; write trailed or mounted, or leave it out for lengths", {{"kind", quoted(kind)}});
}

std::string plate_without_pdf(const Wording& w) { return w("--plate: the plate is a PDF; add pdf to --formats"); }
std::string tag_without_pdf(const Wording& w) { return w("--tag: the tag is a PDF; add pdf to --formats"); }

std::string no_day(const std::string& option, const std::string& value, const Wording& w)
{
    return w("{option} {value} is no day of the calendar; write YYYY-MM-DD, such as 2026-11-24", {{"option", option}, {"value", quoted(value)}});
}

std::string estimate_takes_neither(const Wording& w)
{
    return w("--before-measuring takes neither --discount nor --alternatives: nothing is known yet that they could be taken of; leave them out");
}

std::string standard_output_fault(CommandName command, const Wording& w)
{
    if (command == CommandName::form) return w("form writes no JSON to standard output; name a folder in --output");
    return w("--output - writes JSON only; add --formats json");
}

std::string not_two_files(std::size_t given, const Wording& w)
{
    return w("after-cut takes two files, not {given}; give the job file, then the file of what was measured after the cut", {{"given", given}});
}

std::string no_file(CommandName command, const Wording& w)
{
    if (command == CommandName::build) return w("no list is named; give one file of orders, CSV, XLSX or XML");
    if (command == CommandName::identify) return w("no shaft is named; give one or more files of what was measured");
    return command == CommandName::saw ? w("no list is named; give one file of pieces") : w("no job is named; give one or more job files");
}

std::string not_expected(CommandName command, const std::string& file, const Wording& w)
{
    const NamedValue given{"file", quoted(file)};
    if (command == CommandName::build) return w("{file} is not expected; build takes one file of orders", {given});
    if (command == CommandName::saw) return w("{file} is not expected; saw takes one file of pieces", {given});
    if (command == CommandName::catalogue_add) return w("{file} is not expected; catalogue add takes one file", {given});
    return w("{file} is not expected; {command} takes options only", {given, {"command", to_word(command)}});
}

std::string learn_without_list(const Wording& w) { return w("--learn writes a map and needs its name; add --list NAME"); }

std::string list_of_xml(const Wording& w) { return w("--list and --learn are for CSV and XLSX: an XML list has no headings; leave them out"); }

std::string no_list_suffix(const std::string& file, const Wording& w) { return w("{file} is none of .csv, .xlsx and .xml; name it after what it holds", {{"file", quoted(file)}}); }

std::string say_file_name(bool of_orders, std::optional<char32_t> hidden, const Wording& w)
{
    const NamedValue what{"what", of_orders};
    if (!hidden) return w("the name of the file of {what:pieces|orders} is not UTF-8 text, and the documents are named after it; rename it", {what});
    return w("the name of the file of {what:pieces|orders} holds the {control:invisible|control} character {code}, and the documents are named after it; rename it",
             {what, {"control", is_control(*hidden)}, {"code", code_of(*hidden)}});
}

Said order_again(const std::string& order, const std::string& earlier, const Wording& w)
{
    return {w("order {order} is also the order of {earlier}", {{"order", quoted(order)}, {"earlier", earlier}}),
            w("give each job of a call its own order number; capitals alone do not tell files apart on many disks")};
}

Said shaft_again(const std::string& shaft, const std::string& earlier, const Wording& w)
{
    return {w("the shaft of {earlier} is called {shaft} too", {{"shaft", quoted(shaft)}, {"earlier", earlier}}),
            w("give each shaft of a call its own name; capitals alone do not tell files apart on many disks")};
}

std::string identify_form_takes_neither(const Wording& w) { return w("form --identify takes neither --series nor --machine; leave them out"); }

std::string job_beside_standard_output(const Wording& w) { return w("--job writes a file, and --output - writes to standard output; name a folder"); }

}  // namespace shaftcut
