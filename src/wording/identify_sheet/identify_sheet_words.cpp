#include "identify_sheet/identify_sheet_words.hpp"

#include "identify/figure_words.hpp"
#include "identify/verdict_words.hpp"

namespace shaftcut::identify_sheet {
namespace {

// What is named of a part: what it is of with at least so many per cent, three at most.
constexpr double named_from = 10;
constexpr std::size_t most_named = 3;

}  // namespace

std::string document_title(const std::string& shaft, const Wording& w) { return w("Which shaft is {shaft}", {{"shaft", shaft}}); }
std::string document_subject(const Wording& w) { return w("Its series by what was measured"); }

std::string say(Caption caption, const Wording& w)
{
    switch (caption) {
    case Caption::title: return w("Which shaft is it?");
    case Caption::tractor: return w("Tractor end");
    case Caption::implement: return w("Implement end");
    case Caption::tubes: return w("Tubes");
    case Caption::figure: return w("figure");
    case Caption::measured: return w("measured");
    case Caption::series: return w("series");
    case Caption::off: return w("off");
    case Caption::not_measured: return w("nothing measured yet");
    case Caption::not_stated: return w("–");
    case Caption::how_sure: return w("How sure");
    case Caption::whole_column: return w("whole shaft");
    case Caption::part_column: return w("some part");
    case Caption::measure_next: return w("Measure next");
    case Caption::nothing_more: return w("Nothing more is worth measuring.");
    case Caption::reading: return w("reading");
    case Caption::shape_unknown: return w("shape not made out");
    case Caption::joint_unknown: break;
    }
    return w("kind of joint not looked at");
}

std::string like(const PartOrigin& part, const Wording& w)
{
    std::vector<std::string> names;
    for (const SeriesPercent& one : part.series)
        if (one.percent >= named_from) names.push_back(one.series);
    if (names.size() > most_named) {
        names.resize(most_named);
        names.push_back(w("another"));
    }
    if (names.empty()) return part.none_percent >= 50 ? w("like no series here") : w("any series so far");
    if (names.size() == 1) return w("like {series} ({percent})", {{"series", names.front()}, {"percent", identify_words::percent(part.series.front().percent, w)}});
    return w("like {series}", {{"series", w.either(names)}});
}

std::string joint(std::optional<JointKind> kind, const Wording& w)
{
    if (!kind) return say(Caption::joint_unknown, w);
    return w("{kind:standard joint, one cross|wide-angle joint, two crosses}", {{"kind", *kind}});
}

std::string tubes(std::optional<Shape> shape, const Wording& w)
{
    if (!shape) return say(Caption::shape_unknown, w);
    return w("{shape:lemon|star|triangular|square|splined|other} tubes", {{"shape", *shape}});
}

std::string against(const std::string& series, const Wording& w) { return w("Measured against {series}", {{"series", series}}); }
std::string more_figures(std::size_t count, const Wording& w) { return w("and {count} more", {{"count", count}}); }
std::string more_series(std::size_t count, const Wording& w) { return w("and {count} more that are not excluded", {{"count", count}}); }
std::string units_of(const Wording& w) { return w.units() == Units::mm ? w("all figures in millimetres") : w("all figures in inches"); }

std::string loudly(const IdentifiedShaft& shaft, const Wording& w)
{
    switch (shaft.found.verdict) {
    case IdentifyVerdict::one: return w("MEASURES LIKE {series}", {{"series", shaft.found.fits.series}});
    case IdentifyVerdict::mixed: return w("MIXED: OF MORE THAN ONE MAKE");
    case IdentifyVerdict::none: return w("OF NO SERIES HERE");
    case IdentifyVerdict::several: break;
    }
    return w("NOT DECIDED: {series}", {{"series", identify_words::verdict(shaft, w)}});
}

std::string next_head(std::size_t number, const NextMeasurement& next, const Wording& w)
{
    return w("{number}  {figure}{again:|, again}: {time}", {{"number", number}, {"figure", identify_words::figure_name(next.figure, w)}, {"again", next.again}, {"time", identify_words::effort(next.effort, w)}});
}

}  // namespace shaftcut::identify_sheet
