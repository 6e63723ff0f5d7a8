#include "call/options.hpp"

#include <boost/version.hpp>

#include "commands/usage_faults.hpp"
#include "files/configuration_place.hpp"
#include "text.hpp"

namespace shaftcut {
namespace po = boost::program_options;
namespace {

std::string not_known(const std::string& option, const std::string& value, const std::vector<std::string>& known, const Wording& w)
{
    return not_one_of(option, value, nearest_name(value, known), known, w);
}

std::vector<std::string> words_of(const std::vector<Format>& formats)
{
    std::vector<std::string> words;
    for (const Format format : formats) words.emplace_back(to_word(format));
    return words;
}

// The formats named in "pdf,json", each once, in the order of Format.
Checked<std::vector<Format>> read_formats(const std::string& text, const Wording& w)
{
    const std::vector<std::string> known = words_of(file_formats());
    std::vector<Format> formats;
    for (std::size_t at = 0; at <= text.size();) {
        const std::size_t end = std::min(text.find(',', at), text.size());
        const std::string word = text.substr(at, end - at);
        const auto found = std::find(known.begin(), known.end(), word);
        if (found == known.end()) return {{}, not_known("--formats", word, known, w)};
        formats.push_back(file_formats()[static_cast<std::size_t>(found - known.begin())]);
        at = end + 1;
    }
    std::sort(formats.begin(), formats.end());
    formats.erase(std::unique(formats.begin(), formats.end()), formats.end());
    return {std::move(formats)};
}

Checked<std::optional<Units>> read_units(const std::string& text, const Wording& w)
{
    if (text.empty()) return {};
    if (text != "mm" && text != "in") return {{}, not_known("--units", text, {"mm", "in"}, w)};
    return {text == "mm" ? Units::mm : Units::in};
}

Checked<Paper> read_paper(const std::string& text, const Wording& w)
{
    if (text != "a4" && text != "letter") return {{}, not_known("--paper", text, {"a4", "letter"}, w)};
    return {text == "a4" ? Paper::a4 : Paper::letter};
}

std::string not_an_option(const std::string& name, const po::options_description& options, const Wording& w)
{
    std::vector<std::string> known;
    for (const auto& option : options.options()) known.push_back("--" + option->long_name());
    return unknown_option(name, nearest_name(name, known), w);
}

bool writes_only_json(const CommonOptions& options, const CommonOptionTexts& texts) { return texts.json_to_standard_output && options.formats == std::vector{Format::json}; }

}  // namespace

std::vector<Format> file_formats() { return {Format::pdf, Format::xlsx, Format::json, Format::png, Format::svg}; }

std::vector<std::string> offered_formats(Question question)
{
    std::vector<Format> offered = file_formats();
    std::erase_if(offered, [&](Format format) { return !comes_as(question, format); });
    return words_of(offered);
}

po::options_description listing_options(CommonOptionTexts& texts, const Wording& w)
{
    po::options_description described(say(OptionText::heading, w));
    described.add_options()
        ("config", po::value(&texts.config)->value_name("DIR"), say(OptionText::config, w).c_str())
        ("units", po::value(&texts.units)->value_name("mm|in"), say(texts.units_text, w).c_str())
        ("help", say(OptionText::help, w).c_str())
        ("version", say(OptionText::version, w).c_str());
    return described;
}

po::options_description adding_options(CommonOptionTexts& texts, const Wording& w)
{
    po::options_description described(say(OptionText::heading, w));
    described.add_options()
        ("config", po::value(&texts.config)->value_name("DIR"), say(OptionText::config, w).c_str())
        ("help", say(OptionText::help, w).c_str())
        ("version", say(OptionText::version, w).c_str());
    return described;
}

po::options_description common_options(CommonOptionTexts& texts, const Wording& w)
{
    const OptionText output = texts.json_to_standard_output ? OptionText::output : OptionText::output_without_json;
    po::options_description described = listing_options(texts, w);
    described.add_options()
        ("output", po::value(&texts.output)->value_name("DIR"), say(output, w).c_str())
        ("formats", po::value(&texts.formats)->value_name("LIST"), formats_text(texts.offered, texts.formats, w).c_str())
        ("paper", po::value(&texts.paper)->value_name("a4|letter"), say(OptionText::paper, w).c_str())
        ("replace", po::bool_switch(&texts.replace), say(OptionText::replace, w).c_str());
    return described;
}

Checked<CommonOptions> checked(const CommonOptionTexts& texts, const Wording& w)
{
    const auto formats = read_formats(texts.formats, w);
    const auto units = read_units(texts.units, w);
    const auto paper = read_paper(texts.paper, w);
    for (const std::string& fault : {formats.fault, units.fault, paper.fault})
        if (!fault.empty()) return {{}, fault};
    const CommonOptions options{texts.output, texts.config.empty() ? found_configuration() : texts.config, formats.value, units.value, paper.value, texts.replace};
    if (options.to_standard_output() && !writes_only_json(options, texts)) return {options, standard_output_fault(texts.command, w)};
    return {options};
}

Checked<std::vector<std::string>> parse_arguments(const std::vector<std::string>& arguments, const po::options_description& options, const Wording& w)
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
            if (option.position_key < 0 && option.value == std::vector<std::string>{""}) return {{}, say(OptionFault::empty, "--" + option.string_key, w)};
        po::store(parsed, values);
        po::notify(values);
    } catch (const po::unknown_option& unknown) {
        return {{}, not_an_option(unknown.get_option_name(), options, w)};
    } catch (const po::multiple_occurrences& twice) {
        return {{}, say(OptionFault::twice, twice.get_option_name(), w)};
    } catch (const po::invalid_command_line_syntax& wrong) {
        const bool extra = wrong.kind() == po::invalid_syntax::extra_parameter;
        return {{}, say(extra ? OptionFault::takes_no_value : OptionFault::lacks_value, wrong.get_option_name(), w)};
    } catch (const po::error& error) {
        return {{}, other_option_fault(error.what(), w)};
    }
    return {std::move(files)};
}

std::string list_name_fault(Question question, const std::string& path, const Wording& w)
{
    const auto hidden = first_hidden(path);
    const bool is_text = is_utf8(path);
    if (is_text && !hidden) return {};
    return say_file_name(question == Question::build, is_text ? hidden : std::nullopt, w);
}

std::string boost_built_with()
{
    // BOOST_VERSION is 100000 a major, 100 a minor version.
    return std::to_string(BOOST_VERSION / 100000) + "." + std::to_string(BOOST_VERSION / 100 % 1000) + "." + std::to_string(BOOST_VERSION % 100);
}

}  // namespace shaftcut
