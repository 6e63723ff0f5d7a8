// shaftcut catalogue: what the configuration holds; checks it.
#include <fmt/format.h>

#include <ostream>
#include <sstream>

#include "commands.hpp"
#include "shaftcut/commands/configuration.hpp"
#include "shaftcut/commands/options.hpp"
#include "shaftcut/words/text.hpp"

namespace shaftcut {
namespace {

std::string crosses_text(const Series& series, Units units)
{
    std::vector<std::string> sizes;
    for (const Cross& cross : series.crosses)
        sizes.push_back("⌀" + figure(cross.cap, units) + " × " + figure_with_unit(cross.span, units));
    return listed(sizes, "and");
}

std::string series_text(const Series& series, Units units)
{
    std::string text = fmt::format("{} ({})\n  cross         {}\n", series.name, to_word(series.shape), crosses_text(series, units));
    if (series.wide_angle) text += fmt::format("  wide-angle    crosses {} apart\n", figure_with_unit(series.wide_angle->spacing, units));
    if (series.shortening_forbidden) text += "  shortening    forbidden\n";
    if (series.closed_lengths.empty()) return text;
    std::vector<std::string> lengths;
    for (const Length closed : series.closed_lengths) lengths.push_back(figure(closed, units));
    return text + fmt::format("  closed, {}    {}\n", unit_word(units), listed(lengths, "and"));
}

CommonOptionTexts listing_texts()
{
    CommonOptionTexts texts;
    texts.default_units = "mm";
    return texts;
}

class CatalogueCommand final : public Command {
public:
    std::string set_up(const std::vector<std::string>& arguments) override
    {
        std::vector<std::string> files;
        if (std::string fault = parse_arguments(arguments, described_, files); !fault.empty()) return fault;
        const CheckedOptions result = checked(texts_);
        options_ = result.options;
        return files.empty() ? result.fault : quoted(files.front()) + " is not expected; catalogue takes options only";
    }

    Outcome run(Console& console) override
    {
        const ConfigurationRead read = read_configuration(options_.config, console);
        if (!read.configuration) return read.outcome;
        console.out << "configuration " << options_.config << "\n";
        for (const Connection& connection : read.configuration->catalogue.connections)
            console.out << fmt::format("connection {}: {}\n", connection.name, connection.source);
        for (const Series& series : read.configuration->catalogue.series) console.out << series_text(series, options_.units.value_or(Units::mm));
        return Outcome::answered;
    }

    std::string help() const override
    {
        std::ostringstream text;
        text << "shaftcut catalogue\n\nLists the folder, connections and series of the configuration, after checking its files.\n\n" << described_;
        return text.str();
    }

private:
    CommonOptionTexts texts_ = listing_texts();
    boost::program_options::options_description described_ = listing_options(texts_);
    CommonOptions options_;
};

}  // namespace

std::unique_ptr<Command> make_catalogue() { return std::make_unique<CatalogueCommand>(); }

}  // namespace shaftcut
