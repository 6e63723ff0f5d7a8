#include "shaftcut/commands/options.hpp"

#include <boost/version.hpp>

#include "configuration_place.hpp"
#include "shaftcut/words/text.hpp"

namespace shaftcut {
namespace po = boost::program_options;
namespace {

std::string not_one_of(const std::string& option, const std::string& value, const std::vector<std::string>& known)
{
    const std::string near = nearest_name(value, known);
    return option + " " + quoted(value) + " is not known; " + (near.empty() ? "give " : "did you mean " + near + "? it takes ") + listed(known);
}

// The formats named in "pdf,json", each once, in the order of Format; or the fault.
std::string read_formats(const std::string& text, std::vector<Format>& formats)
{
    for (std::size_t at = 0; at <= text.size();) {
        const std::size_t end = std::min(text.find(',', at), text.size());
        const std::string word = text.substr(at, end - at);
        const auto format = from_word<Format>(word);
        if (!format) return not_one_of("--formats", word, words_of<Format>());
        formats.push_back(*format);
        at = end + 1;
    }
    std::sort(formats.begin(), formats.end());
    formats.erase(std::unique(formats.begin(), formats.end()), formats.end());
    return {};
}

std::string read_units(const std::string& text, std::optional<Units>& units)
{
    if (text.empty()) return {};
    if (text != "mm" && text != "in") return not_one_of("--units", text, {"mm", "in"});
    units = text == "mm" ? Units::mm : Units::in;
    return {};
}

std::string read_paper(const std::string& text, Paper& paper)
{
    if (text != "a4" && text != "letter") return not_one_of("--paper", text, {"a4", "letter"});
    paper = text == "a4" ? Paper::a4 : Paper::letter;
    return {};
}

std::string unknown_option(const std::string& name, const po::options_description& options)
{
    std::vector<std::string> known;
    for (const auto& option : options.options()) known.push_back("--" + option->long_name());
    const std::string near = nearest_name(name, known);
    return "there is no option " + name + "; " + (near.empty() ? "--help lists them" : "did you mean " + near + "?");
}

std::string standard_output_fault(const CommonOptions& options)
{
    if (!options.to_standard_output() || options.formats == std::vector{Format::json}) return {};
    return "--output - writes JSON only; add --formats json";
}

}  // namespace

po::options_description listing_options(CommonOptionTexts& texts)
{
    po::options_description described("Options");
    described.add_options()
        ("config", po::value(&texts.config)->value_name("DIR"), "folder of series.xml and workshop.xml (default: those beside the program, else the installed ones)")
        ("units", po::value(&texts.units)->value_name("mm|in"), ("units of " + texts.units_of + " (default: " + texts.default_units + ")").c_str())
        ("help", "say this")
        ("version", "say what this program is and what it was built with");
    return described;
}

po::options_description common_options(CommonOptionTexts& texts)
{
    po::options_description described = listing_options(texts);
    described.add_options()
        ("output", po::value(&texts.output)->value_name("DIR"), "folder for the documents (default: here); - writes JSON to standard output")
        ("formats", po::value(&texts.formats)->value_name("LIST"), ("documents to write, of " + texts.offered + " (default: " + texts.formats + ")").c_str())
        ("paper", po::value(&texts.paper)->value_name("a4|letter"), "paper of the documents (default: a4)")
        ("replace", po::bool_switch(&texts.replace), "overwrite documents that exist");
    return described;
}

CheckedOptions checked(const CommonOptionTexts& texts)
{
    CheckedOptions result;
    CommonOptions& options = result.options;
    options.output = texts.output;
    options.config = texts.config.empty() ? found_configuration() : texts.config;
    options.replace = texts.replace;
    for (const std::string& fault : {read_formats(texts.formats, options.formats), read_units(texts.units, options.units),
                                     read_paper(texts.paper, options.paper)})
        if (!fault.empty() && result.fault.empty()) result.fault = fault;
    if (result.fault.empty()) result.fault = standard_output_fault(options);
    return result;
}

std::string parse_arguments(const std::vector<std::string>& arguments, const po::options_description& options, std::vector<std::string>& files)
{
    po::options_description all;
    all.add(options).add_options()("file", po::value(&files));
    po::positional_options_description positions;
    positions.add("file", -1);
    try {
        po::variables_map values;
        const auto style = po::command_line_style::unix_style & ~po::command_line_style::allow_guessing;
        const po::parsed_options parsed = po::command_line_parser(arguments).options(all).positional(positions).style(style).run();
        // In a script an empty value is a variable that nobody set: it must not mean the default.
        for (const po::option& option : parsed.options)
            if (option.position_key < 0 && option.value == std::vector<std::string>{""}) return "--" + option.string_key + " is empty; give it a value or leave it out";
        po::store(parsed, values);
        po::notify(values);
    } catch (const po::unknown_option& unknown) {
        return unknown_option(unknown.get_option_name(), options);
    } catch (const po::multiple_occurrences& twice) {
        return twice.get_option_name() + " is given more than once; give it once";
    } catch (const po::invalid_command_line_syntax& wrong) {
        const bool extra = wrong.kind() == po::invalid_syntax::extra_parameter;
        return wrong.get_option_name() + (extra ? " takes no value; leave it out" : " has no value; give it one");
    } catch (const po::error& error) {
        return std::string(error.what()) + "; --help lists the options";
    }
    return {};
}

std::string boost_built_with()
{
    // BOOST_VERSION is 100000 a major, 100 a minor version.
    return std::to_string(BOOST_VERSION / 100000) + "." + std::to_string(BOOST_VERSION / 100 % 1000) + "." + std::to_string(BOOST_VERSION % 100);
}

}  // namespace shaftcut
