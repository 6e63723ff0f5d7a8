// The configuration in lines, and the libraries behind the door.
#include <utility>

#include "bench/bench_words.hpp"
#include "build/ability_words.hpp"
#include "engine/said.hpp"
#include "identify/look_alike_words.hpp"
#include "json/bench_catalogue_json.hpp"
#include "known.hpp"
#include "page/cairo_pages.hpp"
#include "page/font.hpp"
#include "page/qr.hpp"
#include "shaftcut/engine/engine.hpp"
#include "spreadsheet/spreadsheet.hpp"
#include "xml/xml.hpp"

namespace shaftcut {
std::string Engine::catalogue(const Wishes& wishes) const
{
    const Wording w(wishes.units.value_or(Units::mm));
    std::string text;
    for (const Connection& connection : known_->catalogue.connections) text += connection_lines(connection, w);
    for (const Series& series : known_->catalogue.series) text += series_lines(series, w) + ability_lines(abilities_of(series), w);
    return text + look_alike_lines(look_alikes(known_->catalogue), known_->catalogue, w);
}

std::string Engine::bench_catalogue(const Wishes& wishes) const
{
    const Wording w(wishes.units.value_or(Units::mm));
    return bench_catalogue_json_of({known_->catalogue, known_->prices.has_value(), bench_words(w)}, wishes.json, w);
}

std::string libraries_built_with()
{
    const std::pair<const char*, std::string> libraries[]{{"pugixml", pugixml_built_with()}, {"cairo", cairo_built_with()}, {"FreeType", freetype_built_with()},
                                                          {"libxlsxwriter", xlsxwriter_built_with()}, {"libqrencode", qrencode_in_use()}};
    std::string all;
    for (const auto& [name, version] : libraries) all += (all.empty() ? "" : ", ") + std::string(name) + " " + version;
    return all;
}

}  // namespace shaftcut
