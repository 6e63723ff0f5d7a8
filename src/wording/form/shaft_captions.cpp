// Of the first two sheets: the shaft and its halves.
#include "form/captions.hpp"

namespace shaftcut::measuring_form {

std::string say(TitleCaption caption, const Wording& w)
{
    switch (caption) {
    case TitleCaption::title: return w("Measuring form");
    case TitleCaption::sheet_shaft: return w("Sheet 1: the shaft.");
    case TitleCaption::sheet_halves: return w("Sheet 2: the halves, parted.");
    case TitleCaption::sheet_lengths: return w("Sheet 3: lengths at the machine.");
    case TitleCaption::sheet_trailed: return w("Machine: trailed.");
    case TitleCaption::sheet_mounted: return w("Machine: mounted.");
    case TitleCaption::units_mm: return w("units mm: every length in millimetres");
    case TitleCaption::units_in: return w("units in: every length in inches");
    case TitleCaption::instead_units_mm: return w("Instead of sheet 3; units mm: every length in millimetres");
    case TitleCaption::instead_units_in: return w("Instead of sheet 3; units in: every length in inches");
    case TitleCaption::shaft_number: return w("number of the shaft");
    case TitleCaption::hitch: return w("hitch (hole, coupling)");
    case TitleCaption::machine_here: break;
    }
    return w("the machine stands where the shaft is cut");
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
    return w("PTO off, engine off, key out, machine blocked. Nobody between tractor and machine while it moves.");
}

std::string say(ShaftCaption caption, const Wording& w)
{
    switch (caption) {
    case ShaftCaption::hint: return w("as it is, before anything is loosened");
    case ShaftCaption::series: return w("series (none known: leave empty)");
    case ShaftCaption::spacing: return w("spacing of a wide-angle joint");
    case ShaftCaption::shape: return w("section of the tubes");
    case ShaftCaption::primary_role: return w("tractor to machine");
    case ShaftCaption::secondary_role: return w("elsewhere on it");
    case ShaftCaption::inner_tube: return w("the end that carries it");
    case ShaftCaption::year: break;
    }
    return w("year");
}

std::string say(ConditionCaption caption, const Wording& w)
{
    switch (caption) {
    case ConditionCaption::hint: return w("as it came in, still together; what you did not look at stays empty");
    case ConditionCaption::locks: return w("spring back?");
    case ConditionCaption::crosses: return w("play, a rough place?");
    case ConditionCaption::device: return w("clutch, shear bolt");
    case ConditionCaption::phase: return w("tube yokes' forks");
    case ConditionCaption::slides: return w("by hand, once cleaned");
    case ConditionCaption::do_not_cut: break;
    }
    return w("welded, cracked, bent, twisted, not sliding: do not cut");
}

std::string say(ClosedCaption caption, const Wording& w)
{
    switch (caption) {
    case ClosedCaption::wide_angle_joint: return w("wide-angle joint");
    case ClosedCaption::standard_joint: return w("standard joint");
    case ClosedCaption::pushed_together: return w("→ pushed together ←");
    case ClosedCaption::one_cross: return w("its one cross");
    case ClosedCaption::outer_cross: return w("outer cross");
    case ClosedCaption::inner_cross: break;
    }
    return w("inner cross");
}

std::string say(EndCaption caption, const Wording& w)
{
    switch (caption) {
    case EndCaption::hint: return w("side T: tractor, the end nearer the power source · side I: implement, the other");
    case EndCaption::lock: return w("lock: holds the yoke on its stub");
    case EndCaption::device: return w("device: built into the end");
    case EndCaption::where_connections: return w("a connection's name, as shaftcut catalogue lists them");
    case EndCaption::connection_and_where: return w("connection and onto: a connection's name, as shaftcut catalogue lists them");
    case EndCaption::tractor_connection: return w("tractor: connection");
    case EndCaption::tractor_onto: return w("tractor: onto (stub)");
    case EndCaption::implement_connection: return w("implement: connection");
    case EndCaption::implement_onto: break;
    }
    return w("implement: onto (stub)");
}

std::string say(HalfCaption caption, const Wording& w)
{
    switch (caption) {
    case HalfCaption::hint: return w("a paint stroke on both tube yokes, in line, then part them; each length from the inner cross");
    case HalfCaption::hint_black: return w("(a standard joint's one). Black: the shoulder, stops the other tube. Dot: the lubrication hole, to its far edge.");
    case HalfCaption::hint_boxes: return w("Boxes below each half: only where its series is not the shaft's, or the shaft's is not known.");
    case HalfCaption::guard_not_used: return w("not used again");
    case HalfCaption::inner_stop_depth: return w("stop-depth: from the free end along the tube to the yoke's face, or what else stops the other tube. Then no shoulder.");
    case HalfCaption::outer_stop_depth: return w("stop-depth: push the bare inner tube in until it stops, or a flat-ended rod along the wall, in two corners: the lesser depth.");
    case HalfCaption::series: return w("series of this half, if not the shaft's");
    case HalfCaption::spacing: return w("spacing of a wide-angle joint");
    case HalfCaption::series_not_known: return w("not known");
    case HalfCaption::wide_angle_joint: return w("here with a wide-angle joint");
    case HalfCaption::standard_joint: break;
    }
    return w("here with a standard joint");
}

std::string meaning(JointKind joint, const Wording& w) { return w("{joint:one cross|two crosses}", {{"joint", joint}}); }

std::string meaning(Lock lock, const Wording& w)
{
    switch (lock) {
    case Lock::exposed_collar: return w("collar to pull, bare");
    case Lock::covered_collar: return w("collar to pull, under a cover");
    case Lock::exposed_push_pin: return w("pin to press, stands out");
    case Lock::shrouded_push_pin: return w("pin to press, sunk in");
    case Lock::clamp_bolt: return w("bolt across the stub's groove");
    case Lock::tapered_clamp: return w("bolt with a cone, drawn tight");
    case Lock::flange: return w("bolted face to face");
    case Lock::unknown: break;
    }
    return w("cannot be told");
}

std::string meaning(Device device, const Wording& w)
{
    switch (device) {
    case Device::slip_clutch: return w("springs press plates");
    case Device::overrunning_clutch: return w("lets the machine run on");
    case Device::shear_bolt: return w("a bolt that breaks");
    case Device::none: break;
    }
    return w("plain yoke");
}

}  // namespace shaftcut::measuring_form
