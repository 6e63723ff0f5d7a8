// What is to be fitted instead, and how far the machine may move.
#include "advice/advice_parts_words.hpp"
#include "whose.hpp"

namespace shaftcut::advice {
namespace {

// What a machine bears is rounded down, to a tenth of a degree.
std::string served_angle(Angle angle, const Wording& w) { return w.angle(Angle::millidegrees(angle.mdeg() / 100 * 100)); }

std::string yoke_sentence(const MatchConnection& way, const Wording& w)
{
    const NamedValue onto{"onto", way.onto}, end{"end", way.end};
    switch (way.rating) {
    case MatchConnection::Rating::serves: return w("Fit a yoke of type {onto} at the {end:tractor|implement} end.", {onto, end});
    case MatchConnection::Rating::too_slow:
        return running_text({w("Do not change the yoke at the {end:tractor|implement} end: {onto} is not rated for the {speed} min⁻¹ of this shaft.", {end, onto, {"speed", way.speed.value()}}),
                             w("Use a stub that is.")});
    case MatchConnection::Rating::unknown: break;
    }
    return w("Fit a yoke of type {onto} at the {end:tractor|implement} end if what it is coupled to runs at the shaft's rated speed.", {onto, end});
}

}  // namespace

std::string said(const MatchConnection& way, const Wording& w)
{
    return running_text({yoke_sentence(way, w), w("Never fit an adaptor that lets a 1000 min⁻¹ tractor drive a 540 min⁻¹ machine.")});
}

std::string said(const LimitMovement& way, const Wording& w)
{
    return w("Limit {movement:the turn|the lift|the turn or the lift} so that the joint at the {end:tractor|implement} end bends by {turning} at most with the PTO turning "
             "and by {standing} at most with it stopped{wide:|, or fit a shaft with a wide-angle joint at that end}.",
             {{"movement", way.movement}, {"end", way.end}, {"turning", w.angle(way.turning, 3)}, {"standing", w.angle(way.standing, 3)}, {"wide", way.wide_angle_would_serve}});
}

std::string said(const SeriesThatCarries& way, const Wording& w)
{
    const NamedValue power{"power", w.power(way.watts)}, speed{"speed", way.speed};
    if (way.serving.empty()) return w("Take a shaft of a series that carries {power} at {speed} min⁻¹: none of the catalogue's does.", {power, speed});
    return w("Take a shaft of a series that carries {power} at {speed} min⁻¹, of the catalogue {serving}, both halves of it.", {power, speed, {"serving", w.either(way.serving)}});
}

// What must be cut with another movement is not known before it is worked out.
std::string said(const TurnServed& way, const Wording& w)
{
    return of_tractor(way.tractor,
                 w("This shaft, cut if its new sheet says so, would serve {range:in the usual working position|with the PTO turning|with the PTO stopped} "
                   "up to a turn of {served} (now {now}), pitch and roll as stated.",
                   {{"range", way.range}, {"served", served_angle(way.served, w)}, {"now", w.angle(way.now)}}),
                 w);
}

std::string said(const PitchServed& way, const Wording& w)
{
    return of_tractor(way.tractor,
                 w("This shaft, cut if its new sheet says so, would serve {range:in the usual working position|with the PTO turning|with the PTO stopped} "
                   "up to a pitch of {served} (now {now}), turn and roll as stated.",
                   {{"range", way.range}, {"served", served_angle(way.served, w)}, {"now", w.angle(way.now)}}),
                 w);
}

std::string said(const LiftRangeServed& way, const Wording& w)
{
    const NamedValue range{"range", way.range}, lowest{"lowest", w.both(Rounded::measured, way.lowest)}, highest{"highest", w.both(Rounded::measured, way.highest)};
    const NamedValue up_to{"up_to", way.up_to ? w.both(Rounded::at_most, *way.up_to) : ""}, down_to{"down_to", way.down_to ? w.both(Rounded::at_least, *way.down_to) : ""};
    if (!way.down_to)
        return of_tractor(way.tractor,
                     w("This shaft, cut if its new sheet says so, would serve {range:in the usual working position|with the PTO turning|with the PTO stopped} "
                       "with the lower hitch point lifted from {lowest} up to {up_to} (now {highest}).",
                       {range, lowest, up_to, highest}),
                     w);
    if (!way.up_to)
        return of_tractor(way.tractor,
                     w("This shaft, cut if its new sheet says so, would serve {range:in the usual working position|with the PTO turning|with the PTO stopped} "
                       "with the lower hitch point lowered from {highest} down to {down_to} (now {lowest}).",
                       {range, lowest, down_to, highest}),
                     w);
    return of_tractor(way.tractor,
                 w("This shaft, cut if its new sheet says so, would serve {range:in the usual working position|with the PTO turning|with the PTO stopped} "
                   "with the lower hitch point lifted from {lowest} up to {up_to} (now {highest}), or lowered from {highest} down to {down_to} (now {lowest}).",
                   {range, lowest, up_to, down_to, highest}),
                 w);
}

std::string said(const PinMoveServed& way, const Wording& w)
{
    const bool forwards = way.move < Length();
    return of_tractor(way.tractor,
                 w("With the pin moved {move} {forwards:rearwards|forwards} along the drawbar, the machine with it, it would serve all ranges as stated, cut if its new sheet says so.",
                   {{"move", w.both(Rounded::at_least, forwards ? -way.move : way.move)}, {"forwards", forwards}}),
                 w);
}

}  // namespace shaftcut::advice
