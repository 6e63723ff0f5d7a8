#include "identify/verdict_words.hpp"

#include <algorithm>
#include <cmath>

#include "identify/figure_words.hpp"

namespace shaftcut::identify_words {
namespace {

// A series is named among those that it can be from this on; no more than three are.
constexpr double named_from = 10, nearest_from = 0.5;
constexpr std::size_t most_named = 3;
// What a verdict claims.
constexpr double sure_from = 95;
// Those that are named have so much together of all that shafts of one series have, or none is.
constexpr double named_together = 50;

// Where there are more, the last says so.
std::vector<std::string> candidates(const Identification& found, const Wording& w)
{
    std::vector<std::string> names;
    double together = 0;
    for (const ListedSeries& listed : found.series) {
        if (listed.percent < named_from) continue;
        if (names.size() == most_named) {
            names.push_back(w("another"));
            break;
        }
        names.push_back(listed.series);
        together += listed.percent;
    }
    return together >= named_together * found.one_series_percent / 100 ? names : std::vector<std::string>();
}

// Likelier mixed or of none than of one series.
bool hardly_whole(const Identification& found) { return found.mixed_percent + found.none_percent > found.one_series_percent; }

// And no series is likely enough to be named.
bool lost(const Identification& found)
{
    return hardly_whole(found) && std::none_of(found.series.begin(), found.series.end(), [](const ListedSeries& listed) { return listed.percent >= named_from; });
}

std::string several(const IdentifiedShaft& shaft, const Wording& w)
{
    const Identification& found = shaft.found;
    if (lost(found)) return w("no series here as a whole");
    std::vector<std::string> names = candidates(found, w);
    if (names.empty()) return w("not known yet, any of {count} series", {{"count", shaft.series_known}});
    if (names.size() == 1 || (found.series.front().percent >= 50 && !found.stop)) {
        const std::string first = names.front();
        names.erase(names.begin());
        if (names.empty()) return w("perhaps {series}", {{"series", first}});
        return w("{series}, perhaps {others}", {{"series", first}, {"others", w.either(names)}});
    }
    return w.either(names);
}

// The figure that is off most, of its own spread.
const ComparedFigure* farthest(const std::vector<ComparedFigure>& figures)
{
    const ComparedFigure* far = nullptr;
    for (const ComparedFigure& figure : figures)
        if (figure.series && figure.off_sigma && (!far || std::abs(*figure.off_sigma) > std::abs(*far->off_sigma))) far = &figure;
    return far;
}

std::string nearest_other(const Identification& found, const Wording& w)
{
    for (const ListedSeries& listed : found.series)
        if (listed.series != found.fits.series && listed.percent >= nearest_from)
            return w("Nearest other: {series}, {percent}.", {{"series", listed.series}, {"percent", percent(listed.percent, w)}});
    return w("Nearest other: none.");
}

// Else the series is another, and its spans say nothing of spacers. More spreads off than this is seldom the series' own cap (own choice).
bool caps_fit(const std::vector<ComparedFigure>& figures)
{
    constexpr double most_off = 3;
    return std::none_of(figures.begin(), figures.end(), [](const ComparedFigure& one) {
        const bool cap = one.figure.kind == IdentifyingKind::cap || one.figure.kind == IdentifyingKind::cap_in_bore;
        return cap && (!one.off_sigma || std::abs(*one.off_sigma) > most_off);
    });
}

// Spans that are all more than the series' by the same length, of which no spacers were deducted: by how much. One alone proves nothing.
std::optional<Length> spacers_left_in(const IdentifiedShaft& shaft)
{
    constexpr Length least = Length::millimetres(3), most = Length::millimetres(60), alike = Length::millimetres(1);
    for (const End end : both_ends)
        for (const MeasuredCross& cross : shaft.measures.ends[end].crosses)
            for (const CapPair pair : {CapPair::first, CapPair::second})
                for (const SizeReading& reading : cross.pairs[pair].span)
                    if (reading.spacers > Length()) return std::nullopt;
    std::vector<Length> off;
    if (!caps_fit(shaft.found.fits.figures)) return std::nullopt;
    for (const ComparedFigure& figure : shaft.found.fits.figures)
        if (figure.figure.kind == IdentifyingKind::span && figure.off) off.push_back(*figure.off);
    if (off.size() < 2) return std::nullopt;
    const auto [lowest, highest] = std::minmax_element(off.begin(), off.end());
    return *lowest >= least && *highest <= most && *highest - *lowest <= alike ? std::optional(*lowest) : std::nullopt;
}

std::vector<std::string> names_of(const std::vector<SeriesPercent>& series)
{
    std::vector<std::string> names;
    for (const SeriesPercent& one : series) names.push_back(one.series);
    return names;
}

// What the verdict says that the guard's part of the shaft is of: a guard goes with its tubes.
std::vector<std::string> named_by(const Identification& found, const Wording& w)
{
    if (found.verdict == IdentifyVerdict::one) return {found.fits.series};
    if (found.verdict == IdentifyVerdict::several) {
        std::vector<std::string> names = candidates(found, w);
        names.push_back(found.fits.series);
        return names;
    }
    if (found.verdict == IdentifyVerdict::none || !found.mixed) return {};
    const MixedShaft& mixed = *found.mixed;
    if (mixed.odd == IdentifiedPart::tubes) return names_of(mixed.odd_like);
    return mixed.others_series ? std::vector{*mixed.others_series} : std::vector<std::string>();
}

// A guard that names another than the verdict does. Of a shaft of none a writing that is not known says nothing new.
std::optional<std::string> guard_of_another(const IdentifiedShaft& shaft, const Wording& w)
{
    const Identification& found = shaft.found;
    const auto& writing = shaft.measures.writing;
    if (!found.written_series) {
        const bool blank = !writing || writing->find_first_not_of(' ') == std::string::npos;
        if (blank || found.verdict == IdentifyVerdict::none) return std::nullopt;
        return w("The guard says {written}, which is no series here: it may come from another shaft.", {{"written", *writing}});
    }
    const std::vector<std::string> names = named_by(found, w);
    if (std::find(names.begin(), names.end(), *found.written_series) != names.end()) return std::nullopt;
    return w("The guard says {written}: it may come from another shaft.", {{"written", *found.written_series}});
}

void add_writing(std::vector<std::string>& sentences, const IdentifiedShaft& shaft, const Wording& w)
{
    if (shaft.found.rests_on_writing) sentences.push_back(w("It rests on the writing on the guard, and a guard may come from another shaft."));
    if (const auto another = guard_of_another(shaft, w)) sentences.push_back(*another);
}

std::vector<std::string> reasons_of_one(const IdentifiedShaft& shaft, const Wording& w)
{
    std::vector<std::string> sentences{nearest_other(shaft.found, w)};
    const ComparedFigure* const far = farthest(shaft.found.fits.figures);
    if (far && printed_off(*far) == Length()) sentences.push_back(w("No figure is off."));
    else if (far)
        sentences.push_back(w("Farthest off: {figure}, {off}.", {{"figure", figure_name(far->figure, w)}, {"off", off_by(printed_off(*far), w)}}));
    return sentences;
}

std::string odd_like(const MixedShaft& mixed, const Wording& w)
{
    const std::vector<std::string> names = names_of(mixed.odd_like);
    if (names.empty()) return w("It is like no series here.");
    const NamedValue like{"series", w.either(names)}, share{"tubes", mixed.odd == IdentifiedPart::tubes};
    if (mixed.odd_none_percent >= 50) return w("It is like no series here for certain, perhaps {series}.", {like});
    if (names.size() == 1) return w("It is like {series}.", {like});
    return w("It is like {series}, which share {tubes:that joint|those tubes} within tolerance.", {like, share});
}

// That they are of one is no more than likely: all that they may be are named.
bool others_undecided(const MixedShaft& mixed) { return mixed.others_like.size() > 1 && mixed.others_like.front().percent < sure_from; }

std::vector<std::string> others_like(const MixedShaft& mixed, const Wording& w)
{
    const bool undecided = others_undecided(mixed);
    const NamedValue part{"part", mixed.odd}, series{"series", undecided ? w.either(names_of(mixed.others_like)) : *mixed.others_series};
    const ComparedFigure* const far = farthest(mixed.odd_figures);
    const std::string all = w("Everything but the {part:tractor end's joint|implement end's joint|tubes} is like {series}", {part, series});
    if (!far || !far->series) return {w("{all}.", {{"all", all}})};
    const std::vector<NamedValue> values{{"all", all}, {"against", *mixed.others_series}, {"figure", figure_name(far->figure, w)}, {"measured", calliper(far->measured, w)},
                                         {"stated", calliper(*far->series, w)}, {"off", off_by(printed_off(*far), w)}};
    if (undecided) return {w("{all}.", {values[0]}), w("Against {against} {figure} is {measured} for {stated}, {off}.", {values[1], values[2], values[3], values[4], values[5]})};
    return {w("{all}: {figure} is {measured} for {stated}, {off}.", {values[0], values[2], values[3], values[4], values[5]})};
}

std::vector<std::string> reasons_of_mixed(const Identification& found, const Wording& w)
{
    if (!found.mixed) return {};
    const MixedShaft& mixed = *found.mixed;
    const NamedValue part{"part", mixed.odd};
    if (!mixed.others_series) return {w("The {part:tractor end's joint|implement end's joint|tubes} and the rest are not of one make, and the rest is of no series here.", {part}), odd_like(mixed, w)};
    std::vector<std::string> sentences = others_like(mixed, w);
    sentences.push_back(odd_like(mixed, w));
    return sentences;
}

std::string why(const NotToldApart& pair, const Wording& w)
{
    const NamedValue one{"one", pair.series[0]}, two{"two", pair.series[1]};
    switch (pair.why) {
    case WhyTogether::same_figures: return w("{one} and {two}: their figures are the same within tolerance.", {one, two});
    case WhyTogether::catalogue_lacks_figures: return w("{one} and {two}: the catalogue lacks the figures that would tell them apart.", {one, two});
    case WhyTogether::only_wide_angle: return w("{one} and {two}: only a wide-angle joint would show it.", {one, two});
    case WhyTogether::measured_between: break;
    }
    std::vector<std::string> figures;
    for (const IdentifyingFigure& figure : pair.by) figures.push_back(figure_name(figure, w));
    if (figures.empty()) return w("{one} and {two}: what was measured lies between them.", {one, two});
    return w("{one} and {two}: {figures} would tell, and what was measured lies between them or fits both.", {one, two, {"figures", w.all_of(figures)}});
}

std::string next_step(const IdentifiedShaft& shaft, const Wording& w)
{
    const NextMeasurement& next = shaft.found.next.front();
    const NamedValue figure{"figure", figure_name(next.figure, w)}, how{"how", takes(next.figure, shaft.measures.shape, w)}, time{"time", effort(next.effort, w)};
    const bool decided = shaft.found.verdict != IdentifyVerdict::several;
    if (next.effort == MeasuringEffort::look) {
        if (decided) return w("To be surer look at {figure} ({time}): {how}.", {figure, how, time});
        return w("Look next at {figure} ({time}): {how}.", {figure, how, time});
    }
    if (decided) return w("To be surer measure {figure}{again:| again} ({time}): {how}.", {figure, {"again", next.again}, how, time});
    return w("Measure next {figure}{again:| again} ({time}): {how}.", {figure, {"again", next.again}, how, time});
}

}  // namespace

std::string verdict(const IdentifiedShaft& shaft, const Wording& w)
{
    switch (shaft.found.verdict) {
    case IdentifyVerdict::one: return w("measures like {series}", {{"series", shaft.found.fits.series}});
    case IdentifyVerdict::mixed: return mixed_column(w);
    case IdentifyVerdict::none: return none_column(w);
    case IdentifyVerdict::several: break;
    }
    return several(shaft, w);
}

std::vector<std::string> reasons(const IdentifiedShaft& shaft, const Wording& w)
{
    std::vector<std::string> sentences;
    switch (shaft.found.verdict) {
    case IdentifyVerdict::one: sentences = reasons_of_one(shaft, w); break;
    case IdentifyVerdict::mixed: sentences = reasons_of_mixed(shaft.found, w); break;
    case IdentifyVerdict::none: sentences = {w("Its sizes are not those of any series in this catalogue.")}; break;
    case IdentifyVerdict::several:
        if (lost(shaft.found)) sentences = {w("Mixed, or of no series here: these figures cannot tell.")};
        else if (hardly_whole(shaft.found)) sentences = {w("It is likelier mixed, or of no series here, than of one series whole.")};
        break;
    }
    if (const auto spacers = shaft.found.verdict == IdentifyVerdict::one ? std::nullopt : spacers_left_in(shaft))
        sentences.push_back(w("Every span is {off} more than {series}'s: if they were read over spacer pieces, state both pieces together.", {{"off", calliper(*spacers, w)}, {"series", shaft.found.fits.series}}));
    add_writing(sentences, shaft, w);
    return sentences;
}

std::vector<std::string> next_steps(const IdentifiedShaft& shaft, const Wording& w)
{
    const Identification& found = shaft.found;
    if (!found.stop && !found.next.empty()) return {next_step(shaft, w)};
    if (found.verdict != IdentifyVerdict::several) return {};
    std::vector<std::string> sentences{w("Nothing more that can be measured will tell.")};
    for (const NotToldApart& pair : found.not_told_apart)
        if (sentences.size() <= most_named) sentences.push_back(why(pair, w));
    return sentences;
}

std::vector<std::string> cautions(const Identification& found, const Wording& w)
{
    std::vector<std::string> sentences;
    if (found.verdict != IdentifyVerdict::none) sentences.push_back(w("Lay old beside new before ordering parts."));
    sentences.push_back(w("This does not say where its tubes stop: measure both stops before a cut."));
    return sentences;
}

std::string for_a_job(const Wording& w) { return w("In a job each half states its own series."); }

std::string mixed_column(const Wording& w) { return w("mixed, of more than one make"); }

std::string none_column(const Wording& w) { return w("of no series here"); }

Said say(const OutsideTrade& outside, const Wording& w)
{
    return {w("{figure} of {measured} is none that a shaft has, {least} to {greatest}",
              {{"figure", figure_name(outside.figure, w)}, {"measured", calliper(outside.measured, w)}, {"least", calliper(outside.least, w)}, {"greatest", calliper(outside.greatest, w)}}),
            w("is it in millimetres? it counts as it stands")};
}

Said empty_catalogue(const Wording& w) { return {w("the catalogue holds no series to compare this shaft with"), w("add one by shaftcut catalogue add")}; }

}  // namespace shaftcut::identify_words
