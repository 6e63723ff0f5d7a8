#include "options.hpp"

#include <boost/version.hpp>

#include "configuration_place.hpp"
#include "text.hpp"

namespace shaftcut {
namespace po = boost::program_options;
namespace {

std::string not_one_of(const std::string& option, const std::string& value, const std::vector<std::string>& known)
{
    const std::string near = nearest_name(value, known);
    return option + " " + quoted(value) + " is not known; " + (near.empty() ? "give " : "did you mean " + near + "? it takes ") + listed(known);
}

std::vector<std::string> words_of_files()
{
    std::vector<std::string> words;
    for (const Format format : file_formats()) words.emplace_back(to_word(format));
    return words;
}

// The formats named in "pdf,json", each once, in the order of Format.
Checked<std::vector<Format>> read_formats(const std::string& text)
{
    const std::vector<std::string> known = words_of_files();
    std::vector<Format> formats;
    for (std::size_t at = 0; at <= text.size();) {
        const std::size_t end = std::min(text.find(',', at), text.size());
        const std::string word = text.substr(at, end - at);
        const auto found = std::find(known.begin(), known.end(), word);
        if (found == known.end()) return {{}, not_one_of("--formats", word, known)};
        formats.push_back(file_formats()[static_cast<std::size_t>(found - known.begin())]);
        at = end + 1;
    }
    std::sort(formats.begin(), formats.end());
    formats.erase(std::unique(formats.begin(), formats.end()), formats.end());
    return {std::move(formats)};
}

Checked<std::optional<Units>> read_units(const std::string& text)
{
    if (text.empty()) return {};
    if (text != "mm" && text != "in") return {{}, not_one_of("--units", text, {"mm", "in"})};
    return {text == "mm" ? Units::mm : Units::in};
}

Checked<Paper> read_paper(const std::string& text)
{
    if (text != "a4" && text != "letter") return {{}, not_one_of("--paper", text, {"a4", "letter"})};
    return {text == "a4" ? Paper::a4 : Paper::letter};
}

std::string unknown_option(const std::string& name, const po::options_description& options)
{
    std::vector<std::string> known;
    for (const auto& option : options.options()) known.push_back("--" + option->long_name());
    const std::string near = nearest_name(name, known);
    return "there is no option " + name + "; " + (near.empty() ? "--help lists them" : "did you mean " + near + "?");
}

std::string standard_output_fault(const CommonOptions& options, const CommonOptionTexts& texts)
{
    if (!options.to_standard_output()) return {};
    if (!texts.no_standard_output.empty()) return texts.no_standard_output;
    if (options.formats == std::vector{Format::json}) return {};
    return "--output - writes JSON only; add --formats json";
}

}  // namespace

std::vector<Format> file_formats() { return {Format::pdf, Format::xlsx, Format::json, Format::png, Format::svg}; }

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

Checked<CommonOptions> checked(const CommonOptionTexts& texts)
{
    const auto formats = read_formats(texts.formats);
    const auto units = read_units(texts.units);
    const auto paper = read_paper(texts.paper);
    for (const std::string& fault : {formats.fault, units.fault, paper.fault})
        if (!fault.empty()) return {{}, fault};
    const CommonOptions options{texts.output, texts.config.empty() ? found_configuration() : texts.config, formats.value, units.value, paper.value, texts.replace};
    return {options, standard_output_fault(options, texts)};
}

Checked<std::vector<std::string>> parse_arguments(const std::vector<std::string>& arguments, const po::options_description& options)
{
    std::vector<std::string> files;
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
            if (option.position_key < 0 && option.value == std::vector<std::string>{""}) return {{}, "--" + option.string_key + " is empty; give it a value or leave it out"};
        po::store(parsed, values);
        po::notify(values);
    } catch (const po::unknown_option& unknown) {
        return {{}, unknown_option(unknown.get_option_name(), options)};
    } catch (const po::multiple_occurrences& twice) {
        return {{}, twice.get_option_name() + " is given more than once; give it once"};
    } catch (const po::invalid_command_line_syntax& wrong) {
        const bool extra = wrong.kind() == po::invalid_syntax::extra_parameter;
        return {{}, wrong.get_option_name() + (extra ? " takes no value; leave it out" : " has no value; give it one")};
    } catch (const po::error& error) {
        return {{}, std::string(error.what()) + "; --help lists the options"};
    }
    return {std::move(files)};
}

std::string boost_built_with()
{
    // BOOST_VERSION is 100000 a major, 100 a minor version.
    return std::to_string(BOOST_VERSION / 100000) + "." + std::to_string(BOOST_VERSION / 100 % 1000) + "." + std::to_string(BOOST_VERSION % 100);
}

}  // namespace shaftcut
