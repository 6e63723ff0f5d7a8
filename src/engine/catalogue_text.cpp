// The configuration in lines, and the libraries behind the door.
#include <fmt/format.h>

#include "known.hpp"
#include "page/cairo_pages.hpp"
#include "page/font.hpp"
#include "page/qr.hpp"
#include "shaftcut/engine/engine.hpp"
#include "spreadsheet/spreadsheet.hpp"
#include "text.hpp"
#include "xml/xml.hpp"

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

}  // namespace

std::string Engine::catalogue(const Wishes& wishes) const
{
    std::string text;
    for (const Connection& connection : known_->catalogue.connections) text += fmt::format("connection {}: {}\n", connection.name, connection.source);
    for (const Series& series : known_->catalogue.series) text += series_text(series, wishes.units.value_or(Units::mm));
    return text;
}

std::string libraries_built_with()
{
    return fmt::format("pugixml {}, cairo {}, FreeType {}, libxlsxwriter {}, libqrencode {}", pugixml_built_with(), cairo_built_with(), freetype_built_with(),
                       xlsxwriter_built_with(), qrencode_in_use());
}

}  // namespace shaftcut
