// What would serve instead, in few words.
#include "advice/advice_words.hpp"
#include "cut_sheet/refusal_words.hpp"

namespace shaftcut::cut_sheet {
namespace {

std::string listed(const std::vector<Length>& closed, const Wording& w)
{
    std::vector<std::string> words;
    for (const Length length : closed) words.push_back(w.both(Rounded::measured, length));
    return w.all_of(words);
}

enum class Run { crosses, outer_cross, inner_cross };
Run run_of(std::optional<Reference> reference)
{
    if (!reference) return Run::crosses;
    return *reference == Reference::outer_cross ? Run::outer_cross : Run::inner_cross;
}

// A movement that is to stop sooner, under the name of its tractor where there are several.
std::string of(const std::string& tractor, const std::string& sentence, const Wording& w) { return tractor.empty() ? sentence : w("{tractor}: {sentence}", {{"tractor", tractor}, {"sentence", sentence}}); }

// What is short already.
template <class Way>
std::string said(const Way& way, const Wording& w)
{
    return say(WayOut(way), w);
}

std::string said(Remedy way, const Wording& w)
{
    switch (way) {
    case Remedy::mend_every_failure: return w("Every reason above must be put right: no one of these cures all.");
    case Remedy::measure_halves: return w("Measure both halves, from the inner cross to the tube's free end.");
    case Remedy::measure_between_crosses: return w("Measure shortest and longest between the crosses, not between the grooves.");
    case Remedy::measure_contradictions: return w("Measure again what cannot be right: it is wrong, exchanged or in another unit.");
    case Remedy::measure_more_exactly: return w("Measure the shortest and the closed length more exactly.");
    case Remedy::raise_shortest_in_vain: return w("A shortest position that is longer does not help.");
    case Remedy::fit_unexposed_locks: return w("Fit yokes of which no lock stands out: covered collar, shrouded push pin, clamp bolt.");
    case Remedy::device_at_implement: return w("Fit it at the implement, the way round that is marked on it, and a plain yoke at the tractor.");
    case Remedy::put_new_parts: break;
    }
    return w("Fit new parts in place of those named, or take another shaft.");
}

std::string said(const LongestServed& way, const Wording& w)
{
    const NamedValue range{"range", way.range};
    if (!way.longest) return w("No position {range:at work|with the PTO turning|with the PTO stopped} is short enough while the shortest stays as it is.", {range});
    return w("Never let it be longer than {longest}{wide:| between the INNER crosses} {range:at work|with the PTO turning|with the PTO stopped}.",
             {{"longest", w.both(Rounded::at_most, *way.longest)}, {"wide", way.has_wide_angle}, range});
}

std::string said(const GuardsReach& way, const Wording& w)
{
    if (!way.longest) return w("Fit longer guard tubes.");
    return w("Longer guard tubes where it is longer than {longest}{wide:| between the INNER crosses}: these reach no further.", {{"longest", w.both(Rounded::at_most, *way.longest)}, {"wide", way.has_wide_angle}});
}

std::string said(const ShortestServed& way, const Wording& w)
{
    return w("Keep it from getting shorter than {least}{wide:| between the INNER crosses}{several:| on every tractor} (now {now}); then {cut:it fits uncut|it is cut}.",
             {{"least", w.both(Rounded::at_least, way.least)}, {"wide", way.has_wide_angle}, {"several", way.several_tractors}, {"now", w.both(Rounded::shortest, way.now)}, {"cut", way.after_cut}});
}

std::string said(const SeriesLengths& way, const Wording& w)
{
    const NamedValue series{"series", way.series}, run{"run", run_of(way.reference)}, holes{"holes", way.past_holes}, as_is{"as_is", listed(way.as_is, w)}, cut{"cut", listed(way.after_cut, w)};
    if (way.as_is.empty() && way.after_cut.empty()) return w("No new shaft of the lengths in which series {series} comes serves.", {series});
    if (way.after_cut.empty())
        return w("A new shaft of series {series}, closed {as_is}{run:| from the outer cross| from the inner cross}: fits{holes:|, if its tubes reach past their lubrication holes}.",
                 {series, as_is, run, holes});
    if (way.as_is.empty())
        return w("A new shaft of series {series}, closed {cut}{run:| from the outer cross| from the inner cross}: to be cut{holes:|, if its tubes reach past their lubrication holes}.",
                 {series, cut, run, holes});
    return w("A new shaft of series {series}, closed {as_is}{run:| from the outer cross| from the inner cross}: fits; {cut}: to be cut{holes:|, if the tubes reach past their lubrication holes}.",
             {series, as_is, run, cut, holes});
}

std::string said(const NewShaft& way, const Wording& w)
{
    return w("Order a new shaft, closed {closed}{run:| from the outer cross| from the inner cross}{holes:|, if its tubes reach past their lubrication holes}.",
             {{"closed", w.both(Rounded::at_most, way.closed)}, {"run", run_of(way.reference)}, {"holes", way.past_holes}});
}

std::string said(const LimitMovement& way, const Wording& w)
{
    return w("Limit {movement:the turn|the lift|the turn or the lift}: the {end:tractor|implement} joint may bend by {turning} when turning, {standing} when stopped"
             "{wide:|; or take a shaft with a wide-angle joint there}.",
             {{"movement", way.movement}, {"end", way.end}, {"turning", w.angle(way.turning, 3)}, {"standing", w.angle(way.standing, 3)}, {"wide", way.wide_angle_would_serve}});
}

std::string said(const SeriesThatCarries& way, const Wording& w)
{
    const NamedValue power{"power", w.power(way.watts)}, speed{"speed", way.speed};
    if (way.serving.empty()) return w("Take a stronger shaft: none of the series here carries {power} at {speed} min⁻¹.", {power, speed});
    return w("Take a shaft of series {serving}, both halves: it carries {power} at {speed} min⁻¹.", {{"serving", w.either(way.serving)}, power, speed});
}

std::string served(Angle angle, const Wording& w) { return w.angle(Angle::millidegrees(angle.mdeg() / 100 * 100)); }

std::string said(const TurnServed& way, const Wording& w)
{
    return of(way.tractor, w("Turn it by {served} at most {range:at work|with the PTO turning|with the PTO stopped} (now {now}).", {{"served", served(way.served, w)}, {"range", way.range}, {"now", w.angle(way.now)}}), w);
}

std::string said(const PitchServed& way, const Wording& w)
{
    return of(way.tractor, w("Pitch it by {served} at most {range:at work|with the PTO turning|with the PTO stopped} (now {now}).", {{"served", served(way.served, w)}, {"range", way.range}, {"now", w.angle(way.now)}}), w);
}

std::string said(const LiftRangeServed& way, const Wording& w)
{
    const NamedValue range{"range", way.range}, lowest{"lowest", w.both(Rounded::measured, way.lowest)}, highest{"highest", w.both(Rounded::measured, way.highest)};
    const NamedValue up_to{"up_to", way.up_to ? w.both(Rounded::at_most, *way.up_to) : ""}, down_to{"down_to", way.down_to ? w.both(Rounded::at_least, *way.down_to) : ""};
    const auto with = [&](std::string_view pattern) { return of(way.tractor, w(pattern, {range, lowest, highest, up_to, down_to}), w); };
    if (!way.down_to) return with("Lift it only until its lower hitch point is at {up_to} {range:at work|with the PTO turning|with the PTO stopped} (now {highest}).");
    if (!way.up_to) return with("Lower it only until its lower hitch point is at {down_to} {range:at work|with the PTO turning|with the PTO stopped} (now {lowest}).");
    return with("Lift its lower hitch point only up to {up_to} (now {highest}), or lower it only down to {down_to} (now {lowest}), {range:at work|with the PTO turning|with the PTO stopped}.");
}

std::string said(const PinMoveServed& way, const Wording& w)
{
    const bool forwards = way.move < Length();
    return of(way.tractor, w("Move the pin {move} {forwards:rearwards|forwards} along the drawbar, the machine with it.", {{"move", w.both(Rounded::at_least, forwards ? -way.move : way.move)}, {"forwards", forwards}}), w);
}

}  // namespace

std::string way_in_short(const WayOut& way, const Wording& w)
{
    return std::visit([&w](const auto& one) { return said(one, w); }, way);
}

}  // namespace shaftcut::cut_sheet
