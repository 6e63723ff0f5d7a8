// Which series a measured shaft can be, as JSON. Per cents to 0.01, bits to 0.001, lengths in millimetres to 0.001.
#include <cmath>

#include "identify/figure_words.hpp"
#include "identify/verdict_words.hpp"
#include "json/json_parts.hpp"

namespace shaftcut {
namespace {

double hundredths(double value) { return std::round(value * 100) / 100; }
double thousandths_of(double value) { return std::round(value * 1000) / 1000; }

// "span", "outer cap", "outer second cap", "inner width", "span again". In what is compared a cap is its diameter, however it was read.
std::string figure_word(const IdentifyingFigure& figure, bool as_dimension, bool again = false)
{
    std::string word;
    const auto add = [&](const char* one) { word += (word.empty() ? "" : " ") + std::string(one); };
    if (figure.other) add("other");
    if (figure.cross) add(to_word(*figure.cross));
    if (figure.tube) add(to_word(*figure.tube));
    if (figure.pair == CapPair::second) add(to_word(figure.pair));
    add(to_word(as_dimension && figure.kind == IdentifyingKind::cap_in_bore ? IdentifyingKind::cap : figure.kind));
    if (again) add("again");
    return word;
}

Json part_of(const IdentifyingFigure& figure) { return figure.part ? Json(to_word(*figure.part)) : Json(nullptr); }

Json json_of(const ListedSeries& listed) { return {{"name", listed.series}, {"percent", hundredths(listed.percent)}, {"percent_any_part", hundredths(listed.percent_any_part)}}; }

Json json_of(const SeriesPercent& series) { return {{"name", series.series}, {"percent", hundredths(series.percent)}}; }

Json json_of(const ComparedFigure& figure)
{
    return {{"part", part_of(figure.figure)},
            {"figure", figure_word(figure.figure, true)},
            {"measured", number(figure.measured)},
            {"series", number(figure.series)},
            {"off_mm", number(figure.off)},
            {"off_sigma", figure.off_sigma ? Json(hundredths(*figure.off_sigma)) : Json(nullptr)}};
}

template <class T>
Json list_of(const std::vector<T>& all)
{
    Json list = Json::array();
    for (const T& one : all) list.push_back(json_of(one));
    return list;
}

Json parts_of(const Identification& found)
{
    Json list = Json::array();
    for (const IdentifiedPart part : identified_parts)
        list.push_back({{"part", to_word(part)}, {"none_percent", hundredths(found.parts[part].none_percent)}, {"series", list_of(found.parts[part].series)}});
    return list;
}

Json odd_parts(const Identification& found)
{
    Json json = Json::object();
    for (const IdentifiedPart part : identified_parts) json[to_word(part)] = hundredths(found.odd_part_percent[part]);
    return json;
}

Json next_of(const IdentifiedShaft& shaft, const Wording& w)
{
    Json list = Json::array();
    for (const NextMeasurement& next : shaft.found.next)
        list.push_back({{"part", part_of(next.figure)},
                        {"measure", figure_word(next.figure, false, next.again)},
                        {"bits", thousandths_of(next.bits)},
                        {"expected_best_percent", hundredths(next.expected_best_percent)},
                        {"settles_percent", hundredths(next.settles_percent)},
                        {"takes", identify_words::takes(next.figure, shaft.measures.shape, w)},
                        {"minutes", minutes_of(next.effort)}});
    return list;
}

Json not_told_apart(const Identification& found)
{
    Json list = Json::array();
    for (const NotToldApart& pair : found.not_told_apart) {
        Json by = Json::array();
        for (const IdentifyingFigure& figure : pair.by) by.push_back({{"part", part_of(figure)}, {"figure", figure_word(figure, true)}});
        list.push_back({{"series", pair.series}, {"why", to_word(pair.why)}, {"by", by}});
    }
    return list;
}

// As the terminal says it.
Json says(const IdentifiedShaft& shaft, const Wording& w)
{
    using namespace identify_words;
    Json sure = Json::array();
    const auto add = [&](const std::string& of, double chance) { sure.push_back({{"of", of}, {"percent", percent(chance, w)}}); };
    for (const ListedSeries& listed : shaft.found.series) add(listed.series, listed.percent);
    add(mixed_column(w), shaft.found.mixed_percent);
    add(none_column(w), shaft.found.none_percent);
    return {{"verdict", verdict(shaft, w)}, {"reasons", reasons(shaft, w)}, {"next", next_steps(shaft, w)}, {"sure", sure}};
}

Json mixed_of(const std::optional<MixedShaft>& mixed)
{
    if (!mixed) return nullptr;
    return {{"odd", to_word(mixed->odd)},
            {"others", mixed->others_series ? Json(*mixed->others_series) : Json(nullptr)},
            {"like", list_of(mixed->odd_like)},
            {"none_percent", hundredths(mixed->odd_none_percent)},
            {"figures", list_of(mixed->odd_figures)},
            {"others_like", list_of(mixed->others_like)},
            {"others_none_percent", hundredths(mixed->others_none_percent)},
            {"others_figures", list_of(mixed->others_figures)}};
}

}  // namespace

std::string json_of(const IdentifiedShaft& shaft, JsonLayout layout)
{
    const Identification& found = shaft.found;
    const Wording w(shaft.units);
    const Json percents = {{"one_series", hundredths(found.one_series_percent)}, {"mixed", hundredths(found.mixed_percent)}, {"none", hundredths(found.none_percent)}};
    return dumped({{"shaft", shaft.measures.shaft},
                   {"verdict", to_word(found.verdict)},
                   {"percent", percents},
                   {"series", list_of(found.series)},
                   {"parts", parts_of(found)},
                   {"odd_part", odd_parts(found)},
                   {"mixed", mixed_of(found.mixed)},
                   {"fits", {{"series", found.fits.series}, {"figures", list_of(found.fits.figures)}}},
                   {"next", next_of(shaft, w)},
                   {"stop", found.stop},
                   {"rests_on_writing", found.rests_on_writing},
                   {"not_told_apart", not_told_apart(found)},
                   {"says", says(shaft, w)}},
                  layout);
}

}  // namespace shaftcut
