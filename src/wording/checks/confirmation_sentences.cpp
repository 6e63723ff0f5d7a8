// What is measured or looked at before anything is sawn, what is expected, and why.
#include "checks/check_sentences.hpp"

namespace shaftcut {
namespace {

// What a closed length is measured from.
enum class ClosedFrom { crosses, outer_cross, inner_cross };

ClosedFrom closed_from(const Confirmation& confirmation)
{
    if (!confirmation.from) return ClosedFrom::crosses;
    return *confirmation.from == Reference::outer_cross ? ClosedFrom::outer_cross : ClosedFrom::inner_cross;
}

std::string measure(const Confirmation& one, const Wording& w)
{
    const auto with = [&](std::string_view pattern) {
        return w(pattern, {{"from", closed_from(one)}, {"expected", w.length(Rounded::measured, *one.expected)}, {"plus_minus", w.length(Rounded::allowed, *one.plus_minus)}});
    };
    switch (one.what) {
    case Confirmed::closed:
        return with("Closed length, pushed fully together{from:|, from the outer cross of the wide-angle joint|, from the inner cross of the wide-angle joint}: expected {expected} ± {plus_minus}.");
    case Confirmed::closed_inner_cross: return with("Closed length, pushed fully together, between the inner crosses: expected {expected} ± {plus_minus}.");
    case Confirmed::inner_half: return with("Inner half, centre of its inner cross to the tube's free end: expected {expected} ± {plus_minus}.");
    case Confirmed::outer_half: return with("Outer half, centre of its inner cross to the tube's free end: expected {expected} ± {plus_minus}.");
    case Confirmed::inner_shoulder: return with("Inner half's shoulder, centre of its inner cross to the face that stops the other tube: expected {expected} ± {plus_minus}.");
    default: return with("Outer half's shoulder, centre of its inner cross to the face that stops the other tube: expected {expected} ± {plus_minus}.");
    }
}

std::string look(const Confirmation& one, const Wording& w)
{
    if (one.what == Confirmed::built) return w("Year of building: before 2021, by the plate, or by the owner's word and whose.");
    return w("{outer:Inner|Outer} guard: its tube stands out of it by 0 to {setback}.",
             {{"outer", one.what == Confirmed::outer_guard}, {"setback", w.length(Rounded::allowed, one.setback.value_or(Length()))}});
}

std::string why(ConfirmedFor why, const Wording& w)
{
    switch (why) {
    case ConfirmedFor::disagreement: return w("The closed length and the halves disagree.");
    case ConfirmedFor::cross_not_known: return w("No other figure tells from which cross of the wide-angle joint the closed length was measured.");
    case ConfirmedFor::half_not_measured: return w("It was not measured: the cut rests on the closed length and its series.");
    case ConfirmedFor::half_short_alone: return w("It is short by its own figure alone.");
    case ConfirmedFor::stop_alone: return w("No other figure bears it out: too short a cut would let the shaft bottom.");
    case ConfirmedFor::stop_by_measures: return w("The series was told by measuring: what measures alike may stop elsewhere.");
    case ConfirmedFor::guard_not_measured: return w("The guard was not measured and is cut as its tube is.");
    case ConfirmedFor::year_not_stated: break;
    }
    return w("From 2021 on no part of a lock may stand out (EN 12965:2019).");
}

}  // namespace

std::string say(const Confirmation& confirmation, const Wording& w)
{
    return running_text({confirmation.is_look() ? look(confirmation, w) : measure(confirmation, w), why(confirmation.why, w)});
}

}  // namespace shaftcut
