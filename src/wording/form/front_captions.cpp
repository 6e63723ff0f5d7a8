// Of the front: the shaft as it came in, still together.
#include "form/captions.hpp"

namespace shaftcut::measuring_form {

std::string say(TitleCaption caption, const Wording& w)
{
    switch (caption) {
    case TitleCaption::front: return w("Front: at the bench, the shaft still together");
    case TitleCaption::back: return w("Back: parted, then on the machine");
    case TitleCaption::units_mm: return w("Measuring form, all lengths in millimetres");
    case TitleCaption::units_in: return w("Measuring form, all lengths in inches");
    case TitleCaption::order: return w("order");
    case TitleCaption::date: return w("date");
    case TitleCaption::customer: return w("customer");
    case TitleCaption::phone: return w("telephone");
    case TitleCaption::machine: return w("machine");
    case TitleCaption::tractor: return w("tractor");
    case TitleCaption::power: return w("power at the PTO");
    case TitleCaption::shaft_number: return w("number on the shaft");
    case TitleCaption::hitch: return w("hole and hitch");
    case TitleCaption::machine_here: return w("Does the machine stand where the shaft is cut?");
    case TitleCaption::yes: return w("yes");
    case TitleCaption::no: return w("no");
    case TitleCaption::plus_minus: return w("±");
    case TitleCaption::none: return w("none");
    case TitleCaption::minus: break;
    }
    return w("−");
}

std::string say(CautionCaption caption, const Wording& w)
{
    switch (caption) {
    case CautionCaption::turning_shaft: return w("DANGER: a turning shaft catches clothing and kills. First:");
    case CautionCaption::pto_off: return w("PTO off");
    case CautionCaption::engine_off: return w("engine off");
    case CautionCaption::key_out: return w("key out, in your pocket");
    case CautionCaption::machine_blocked: return w("machine blocked: cannot roll, drop or turn");
    case CautionCaption::nothing_moving: return w("DANGER: measure with nothing moving. At each position again:");
    case CautionCaption::each_position: break;
    }
    return w("PTO off, engine off, key in your pocket, machine blocked; nobody between tractor and machine while it moves.");
}

std::string say(ShaftCaption caption, const Wording& w)
{
    switch (caption) {
    case ShaftCaption::heading: return w("Shaft");
    case ShaftCaption::hint: return w("what is written and seen on it");
    case ShaftCaption::series: return w("series (not known: leave empty)");
    case ShaftCaption::spacing: return w("spacing of a wide-angle joint");
    case ShaftCaption::speed: return w("PTO speed");
    case ShaftCaption::year: return w("year built");
    case ShaftCaption::section: return w("Section of the tubes");
    case ShaftCaption::calliper: return w("at a free end, once parted; the calliper's jaws as drawn");
    case ShaftCaption::width_inner: return w("inner tube, jaw to jaw");
    case ShaftCaption::wall_inner: return w("inner tube, wall");
    case ShaftCaption::width_outer: return w("outer tube, jaw to jaw");
    case ShaftCaption::wall_outer: return w("outer tube, wall");
    case ShaftCaption::primary_role: return w("from tractor to machine");
    case ShaftCaption::secondary_role: return w("elsewhere on the machine");
    case ShaftCaption::inner_tube: break;
    }
    return w("Inner tube at the end of");
}

std::string say(ConditionCaption caption, const Wording& w)
{
    switch (caption) {
    case ConditionCaption::heading: return w("As it came in");
    case ConditionCaption::hint: return w("what you did not look at stays empty");
    case ConditionCaption::guard: return w("guard");
    case ConditionCaption::chains: return w("chains");
    case ConditionCaption::locks: return w("locks");
    case ConditionCaption::crosses: return w("crosses");
    case ConditionCaption::tubes: return w("tubes");
    case ConditionCaption::weld: return w("repairs");
    case ConditionCaption::device: return w("clutch");
    case ConditionCaption::phase: return w("tube yokes' forks");
    case ConditionCaption::slides: return w("slides, once cleaned");
    case ConditionCaption::do_not_cut: break;
    }
    return w("welded, cracked, bent, twisted, not sliding: stop");
}

std::string say(EndCaption caption, const Wording& w)
{
    switch (caption) {
    case EndCaption::heading: return w("Ends");
    case EndCaption::hint: return w("T: the end at the tractor, nearer the power. M: the end at the machine. Lock: what holds the yoke on its stub.");
    case EndCaption::tractor_tick: return w("T");
    case EndCaption::machine_tick: return w("M");
    case EndCaption::joint: return w("joint");
    case EndCaption::device: return w("device");
    case EndCaption::tractor_connection: return w("T: bore of the yoke");
    case EndCaption::tractor_onto: return w("T: onto this stub");
    case EndCaption::machine_connection: return w("M: bore of the yoke");
    case EndCaption::machine_onto: break;
    }
    return w("M: onto this stub");
}

std::string say(ClosedCaption caption, const Wording& w)
{
    switch (caption) {
    case ClosedCaption::heading: return w("Closed length");
    case ClosedCaption::together: return w("→ pushed together ←");
    case ClosedCaption::strokes: return w("A paint stroke on each tube yoke, in line: then part it. The back goes on.");
    case ClosedCaption::outer_cross: return w("from the outer cross");
    case ClosedCaption::inner_cross: return w("from the inner cross");
    case ClosedCaption::only_cross: return w("from the cross");
    case ClosedCaption::dashed: return w("dashed: the outer cross, on a wide-angle joint only");
    case ClosedCaption::both: return w("No half will be measured: both lengths; their difference is the spacing.");
    case ClosedCaption::tractor_end: return w("tractor");
    case ClosedCaption::machine_end: break;
    }
    return w("machine");
}

std::string say(LimitCaption caption, const Wording& w)
{
    switch (caption) {
    case LimitCaption::clearance: return w("closing clearance (manual)");
    case LimitCaption::limit: return w("a limit loosened, to");
    case LimitCaption::why: return w("why");
    case LimitCaption::by_whom: break;
    }
    return w("by whom");
}

}  // namespace shaftcut::measuring_form
