// What is confirmed before anything is sawn.
#include "cut_sheet/front_words.hpp"

namespace shaftcut::cut_sheet {
namespace {

Tube tube_of(Confirmed what)
{
    return what == Confirmed::inner_half || what == Confirmed::inner_shoulder || what == Confirmed::inner_guard ? Tube::inner : Tube::outer;
}

}  // namespace

std::string confirm_heading(Verdict verdict, const Wording& w)
{
    return verdict == Verdict::cut ? w("Confirm before anything is sawn: write in what you read") : w("Confirm before it is fitted: write in what you read");
}

std::string confirm_outside(Verdict verdict, const Wording& w)
{
    // Of what is neither measured nor right: nothing is done to the shaft by this sheet.
    return verdict == Verdict::cut ? w("Outside its ±, or a no: nothing is sawn. The figures go back for a new sheet.")
                                   : w("Outside its ±, or a no: it is not fitted. The figures go back for a new sheet.");
}

std::string confirmed_name(const WorkOrder& order, Confirmed what, const Wording& w)
{
    const Tube tube = tube_of(what);
    const NamedValue end{"end", end_of(order.shaft, tube)}, joint{"joint", order.shaft.ends[end_of(order.shaft, tube)].joint};
    switch (what) {
    case Confirmed::closed:
        return order.reading.has_wide_angle ? w("closed length, {reference:outer|inner} cross", {{"reference", order.reading.reference}}) : w("closed length");
    case Confirmed::closed_inner_cross: return w("closed length, inner cross");
    case Confirmed::inner_half:
    case Confirmed::outer_half: return w("{end:tractor|implement} half, {joint:cross|inner cross} to tube's end", {end, joint});
    case Confirmed::inner_shoulder:
    case Confirmed::outer_shoulder: return w("{end:tractor|implement} half, {joint:cross|inner cross} to its stop", {end, joint});
    case Confirmed::inner_guard:
    case Confirmed::outer_guard: return w("{end:tractor|implement} half, guard beside its tube", {end});
    case Confirmed::built: break;
    }
    return w("the year it was built");
}

std::string expected(Length length, Length plus_minus, Units units, const Wording& w)
{
    return w("{length} ± {tolerance}", {{"length", figure_of(Rounded::measured, length, units)}, {"tolerance", figure_of_with_unit(Rounded::allowed, plus_minus, units)}});
}

std::string named(const std::string& name, const std::string& says, const Wording& w) { return w("{name}: {says}", {{"name", name}, {"says", says}}); }

}  // namespace shaftcut::cut_sheet
