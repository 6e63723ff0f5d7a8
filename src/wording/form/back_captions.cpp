// Of the back: the halves, and what is measured on the machine.
#include "form/captions.hpp"

namespace shaftcut::measuring_form {

std::string say(HalfCaption caption, const Wording& w)
{
    switch (caption) {
    case HalfCaption::heading: return w("Parted");
    case HalfCaption::hint: return w("each length from the inner cross, a standard joint's only one");
    case HalfCaption::hint_boxes: return w("Dashed: on a wide-angle joint only. Black: the stop of the other tube. Last row of a half: only where its series is another or not known.");
    case HalfCaption::inner_half: return w("Half with the inner tube");
    case HalfCaption::outer_half: return w("Half with the outer tube");
    case HalfCaption::guard: return w("guard, to its end");
    case HalfCaption::guard_missing: return w("missing");
    case HalfCaption::guard_damaged: return w("damaged, not used again");
    case HalfCaption::lubrication_hole: return w("lubrication hole");
    case HalfCaption::shoulder: return w("to the stop");
    case HalfCaption::stop_depth: return w("stop depth");
    case HalfCaption::length: return w("tube, to its free end");
    case HalfCaption::series: return w("series of this half");
    case HalfCaption::spacing: return w("spacing of its crosses");
    case HalfCaption::cross_to_groove: return w("outer cross to groove");
    case HalfCaption::series_not_known: return w("not known");
    case HalfCaption::inner_stop_depth: return w("Stop depth, outside: from the free end along the tube to the yoke's face or collar.");
    case HalfCaption::outer_stop_depth: break;
    }
    return w("Stop depth, inside: a flat-ended rod pushed in to the stop, in two corners: the lesser.");
}

std::string say(FitCaption caption, const Wording& w)
{
    switch (caption) {
    case FitCaption::heading: return w("On the machine");
    case FitCaption::hint: return w("one half on each stub, side by side; the tape straight from one to the other, always the same way");
    case FitCaption::measured: return w("Measured between");
    case FitCaption::outer_crosses: return w("outer crosses");
    case FitCaption::inner_crosses: return w("inner crosses");
    case FitCaption::crosses: return w("crosses");
    case FitCaption::grooves: return w("the stubs' grooves");
    case FitCaption::position: return w("found at");
    case FitCaption::length: break;
    }
    return w("length");
}

std::string say(AngleCaption caption, const Wording& w)
{
    switch (caption) {
    case AngleCaption::heading: return w("Joint angles");
    case AngleCaption::hint: return w("greatest between stub and tube; needed where lengths run from an outer cross or a groove");
    case AngleCaption::two_views: break;
    }
    return w("or two views, when");
}

std::string say(MachineCaption caption, const Wording& w)
{
    switch (caption) {
    case MachineCaption::trailed_heading: return w("On the machine: trailed");
    case MachineCaption::mounted_heading: return w("On the machine: mounted");
    case MachineCaption::computed: return w("its own dimensions; shortest, longest and angles are computed");
    case MachineCaption::trailed_words: return w("Straight ahead on level ground. B from the groove of the PTO stub to the pin, D from the pin. Tick − where it is the other way.");
    case MachineCaption::mounted_words: return w("In any one position. I is square to the mast and J along it, however it leans. Tick − where it is the other way.");
    case MachineCaption::trailed_ranges: return w("How far it moves about the pin, to each side of straight and level, in degrees:");
    case MachineCaption::mounted_ranges: break;
    }
    return w("Height of the lower hitch point above ground:");
}

std::string say(WhoseCaption caption, const Wording& w)
{
    switch (caption) {
    case WhoseCaption::hole_and_hitch: return w("hole and hitch, measured");
    case WhoseCaption::measured_tractor: return w("tractor measured");
    case WhoseCaption::other_tractors: return w("Other tractors that drive this machine (measure them on a back of their own, or name them):");
    case WhoseCaption::other_tractor: return w("other tractor, not measured");
    case WhoseCaption::measured_by: return w("measured by");
    case WhoseCaption::measured_on: return w("on (date)");
    case WhoseCaption::with: break;
    }
    return w("with (tape, rod, angle gauge)");
}

}  // namespace shaftcut::measuring_form
