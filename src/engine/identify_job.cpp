// The job of a shaft as far as what was measured of it tells.
#include <algorithm>

#include "engine/job_words.hpp"
#include "shaftcut/engine/answer.hpp"
#include "xml/insertion.hpp"

namespace shaftcut {
namespace {

// In the place of what is still to be measured, by which the reader of jobs names it.
constexpr const char* open = "?";
constexpr const char* no_series = "none";
// An odd part counts as of a series that is at least so sure, per cent; else as of none.
constexpr double sure = 95;

// The series that a job states: the shaft's, and of each half's joint where it is another. Without one nothing is stated.
struct SeriesOfJob {
    std::optional<std::string> shaft;
    PerEach<End, std::optional<std::string>> half;
    bool halves_differ() const { return half[End::tractor] != half[End::implement]; }
};

std::optional<std::string> like(const MixedShaft& mixed)
{
    if (mixed.odd_like.empty() || mixed.odd_like.front().percent < sure) return std::nullopt;
    return mixed.odd_like.front().series;
}

// What all but the odd part are of: no less sure. Else who has them on the bench states it.
std::optional<std::string> of_others(const MixedShaft& mixed)
{
    if (!mixed.others_series || mixed.others_like.empty()) return mixed.others_series;
    return mixed.others_like.front().percent >= sure ? *mixed.others_series : open;
}

// A shaft is of the series of its tubes. Of a half that is of no series nothing need be said where the shaft is of none.
SeriesOfJob of_mixed(const MixedShaft& mixed)
{
    SeriesOfJob series;
    const bool odd_tubes = mixed.odd == IdentifiedPart::tubes;
    series.shaft = odd_tubes ? like(mixed) : of_others(mixed);
    const auto half = [&](const std::optional<std::string>& of) { return of ? of : series.shaft ? std::optional<std::string>(no_series) : std::nullopt; };
    if (odd_tubes)
        for (const End end : both_ends) series.half[end] = half(of_others(mixed));
    else series.half[mixed.odd == IdentifiedPart::tractor ? End::tractor : End::implement] = half(like(mixed));
    return series;
}

SeriesOfJob series_of_job(const Identification& found)
{
    if (found.verdict == IdentifyVerdict::one) return {found.fits.series, {}};
    if (found.verdict == IdentifyVerdict::mixed && found.mixed) return of_mixed(*found.mixed);
    return {};
}

std::string exact(Length length, Units units) { return units == Units::mm ? figure(length, units, Toward::nearest, 3) : figure_with_unit(length, Units::mm, Toward::nearest, 3); }

// A series may be called so that it would end the comment.
std::string comment(const char* indent, std::string text)
{
    for (std::size_t at = text.find("--"); at != std::string::npos; at = text.find("--", at)) text.insert(at + 1, " ");
    return std::string(indent) + "<!-- " + text + " -->\n";
}

// Nothing but the half's own series knows the spacing of its wide-angle joint.
bool spacing_is_asked(const SeriesOfJob& series, const MeasuredEnd& end, End side)
{
    const auto& own = series.half[side];
    return end.joint == JointKind::wide_angle && (own ? *own == no_series : !series.shaft);
}

Length mean(const SizeReadings& readings)
{
    Length sum;
    for (const SizeReading& reading : readings) sum += reading.length;
    return Length::micrometres(sum.um() / static_cast<std::int64_t>(readings.size()));
}

std::string end_line(const Measures& measures, const SeriesOfJob& series, End side)
{
    const MeasuredEnd& end = measures.ends[side];
    std::string line = "    <end" + xml_attribute("side", to_word(side)) + xml_attribute("joint", end.joint ? to_word(*end.joint) : open);
    if (spacing_is_asked(series, end, side)) line += xml_attribute("spacing", end.spacing.empty() ? open : exact(mean(end.spacing), measures.units));
    return line + "/>\n";
}

std::string closed_line(const Measures& measures, const SeriesOfJob& series)
{
    const auto is_wide = [&](End end) { return measures.ends[end].joint == JointKind::wide_angle; };
    std::string line = "    <closed" + xml_attribute("length", measures.closed ? exact(measures.closed->reading.length, measures.units) : open);
    if (measures.closed && measures.closed->reading.plus_minus) line += xml_attribute("plus-minus", exact(*measures.closed->reading.plus_minus, measures.units));
    if (measures.closed && measures.closed->reference) line += xml_attribute("reference", to_word(*measures.closed->reference));
    else if (!series.shaft && std::any_of(both_ends.begin(), both_ends.end(), is_wide)) line += xml_attribute("reference", open);
    return line + "/>\n";
}

std::string half_line(const std::string& tube, const std::optional<std::string>& series)
{
    std::string line = "    <half" + xml_attribute("tube", tube);
    if (series) line += xml_attribute("series", *series);
    for (const char* measured : {"length", "stop-depth", "guard"}) line += xml_attribute(measured, open);
    return line + "/>\n";
}

// Which half carries which tube is asked only where it matters which is which.
std::string half_lines(const SeriesOfJob& series, const Wording& w)
{
    std::string lines = comment("    ", job_words::of_halves(w));
    if (!series.halves_differ()) {
        for (const Tube tube : both_tubes) lines += half_line(to_word(tube), series.half[End::tractor]);
        return lines;
    }
    for (const End end : both_ends) lines += comment("    ", job_words::of_half_at(end, w)) + half_line(open, series.half[end]);
    return lines;
}

std::string shaft_tag(const Measures& measures, const SeriesOfJob& series)
{
    const std::string of = series.shaft ? xml_attribute("series", *series.shaft) : xml_attribute("shape", measures.shape ? to_word(*measures.shape) : open);
    return "  <shaft" + of + xml_attribute("role", open) + xml_attribute("inner-tube", open) + ">\n";
}

std::string measures_lines(const IdentifyAnswer& answer, const Wording& w)
{
    std::string lines = comment("    ", job_words::of_measures(w)) + "    <measures";
    if (!answer.shaft->measures.date.empty()) lines += xml_attribute("date", answer.shaft->measures.date);
    return lines + ">\n" + answer.measures + "    </measures>\n";
}

std::string text_of(const IdentifyAnswer& answer)
{
    const IdentifiedShaft& shaft = *answer.shaft;
    const Measures& measures = shaft.measures;
    const Wording w(measures.units);
    const SeriesOfJob series = series_of_job(shaft.found);
    std::string text = "<job" + xml_attribute("order", answer.order);
    if (!measures.date.empty()) text += xml_attribute("date", measures.date);
    text += xml_attribute("units", unit_word(measures.units)) + ">\n" + comment("  ", job_words::how_to_fill(w)) + "  <for";
    for (const char* whom : {"customer", "machine", "tractor"}) text += xml_attribute(whom, "");
    text += "/>\n";
    text += comment("  ", job_words::of_series(shaft.found.verdict, w));
    if (shaft.found.mixed && of_others(*shaft.found.mixed) == open) text += comment("  ", job_words::of_others(*shaft.found.mixed, w));
    text += shaft_tag(measures, series) + closed_line(measures, series);
    for (const End end : both_ends) text += end_line(measures, series, end);
    text += half_lines(series, w) + measures_lines(answer, w) + "  </shaft>\n";
    return text + "  <fit>\n    <shortest" + xml_attribute("length", open) + "/>\n    <longest" + xml_attribute("when", to_word(Range::turning)) + xml_attribute("length", open) + "/>\n  </fit>\n</job>\n";
}

}  // namespace

Document job_of(const IdentifyAnswer& answer) { return {answer.order + "-job.xml", text_of(answer)}; }

}  // namespace shaftcut
