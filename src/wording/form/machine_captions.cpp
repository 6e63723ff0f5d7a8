// Of the sheets at the machine: its positions, its own dimensions, and who measured them.
#include "form/captions.hpp"

namespace shaftcut::measuring_form {

std::string say(FitCaption caption, const Wording& w)
{
    switch (caption) {
    case FitCaption::hint: return w("one half on each stub, side by side; the tape straight from one to the other. All lengths the same way.");
    case FitCaption::between_crosses: return w("between crosses");
    case FitCaption::between_grooves: break;
    }
    return w("between grooves, the stubs' (series known, or cross-to-groove measured)");
}

std::string say(PositionCaption caption, const Wording& w)
{
    switch (caption) {
    case PositionCaption::heading: return w("shortest and longest");
    case PositionCaption::hint: return w("move to each position, stop everything, then measure");
    case PositionCaption::mounted: return w("mounted machine");
    case PositionCaption::trailed: return w("trailed machine");
    case PositionCaption::from_side: return w("from the side; solid: the position to measure first, dashed: to try too");
    case PositionCaption::from_above: return w("from above; solid: the position to measure first, dashed: to try too");
    case PositionCaption::at: break;
    }
    return w("at (which position)");
}

std::string say(AngleCaption caption, const Wording& w)
{
    switch (caption) {
    case AngleCaption::hint: return w("the greatest of each joint, between stub and tube; on a wide-angle joint over both its crosses");
    case AngleCaption::two_views: return w("Where one view does not show the whole angle: two views of it instead, at the same position.");
    case AngleCaption::needed_for: return w("Lengths from an outer cross or between grooves need them: the joints bend on the way.");
    case AngleCaption::angle: return w("angle");
    case AngleCaption::stub: return w("stub");
    case AngleCaption::tube: break;
    }
    return w("tube");
}

std::string say(MachineCaption caption, const Wording& w)
{
    switch (caption) {
    case MachineCaption::trailed_hint: return w("straight ahead on level ground; from here shortest, longest and angles are computed");
    case MachineCaption::trailed_words:
        return running_text({w("Heights are above level ground."),
                             w("pin-behind runs from the locking groove of the PTO stub to the middle of the pin, input-behind from the pin to the groove of the input shaft."),
                             w("input-left is to the left of the pin, input-tilt is rising rearwards."), w("Tick − where it is the other way.")});
    case MachineCaption::ranges: return w("working, turning, standing");
    case MachineCaption::trailed_ranges_hint: return w("about the pin, to each side of straight and level");
    case MachineCaption::trailed_ranges_words:
        return running_text({w("turn: seen from above."), w("pitch: rear up or down, over a crest or through a hollow."), w("roll: one side up.")});
    case MachineCaption::mounted_hint: return w("in any one position; from here shortest, longest and angles are computed");
    case MachineCaption::mounted_words:
        return running_text({w("Heights are above level ground, behind is from the locking groove of the PTO stub."),
                             w("Links and mast run from the middle of a pivot to the middle of the next."),
                             w("input-behind is square to the mast and input-above along it, wherever it leans, from the lower hitch point to the groove of the input shaft; input-tilt "
                               "is from square to the mast, rising rearwards."),
                             w("Tick − where it is the other way.")});
    case MachineCaption::mounted_ranges_hint: return w("height of the lower hitch point above ground");
    case MachineCaption::leave_out: break;
    }
    return w("Leave a range out that does not occur; a length of sheet 3 measured as well counts instead of the computed one.");
}

std::string say(WhoseCaption caption, const Wording& w)
{
    switch (caption) {
    case WhoseCaption::other_tractors: return w("that drive this machine");
    case WhoseCaption::other_tractor: return w("other-tractor, not measured");
    case WhoseCaption::tractor: return w("tractor (another: another sheet)");
    case WhoseCaption::tractor_and_another: return w("tractor (for another tractor or machine fill in another sheet 3)");
    case WhoseCaption::measured_by: return w("measured-by: name");
    case WhoseCaption::with_tape: return w("with (tape, rod)");
    case WhoseCaption::with_gauge: return w("with (tape, rod, angle gauge)");
    case WhoseCaption::clearance: return w("closing-clearance (manual)");
    case WhoseCaption::limit: return w("limit loosened, to");
    case WhoseCaption::why: return w("why");
    case WhoseCaption::by_whom: return w("by whom");
    case WhoseCaption::back_at_bench: break;
    }
    return w("Back at the bench: each word here is an attribute of the job file; write it, then shaftcut cut makes the cut sheet.");
}

std::string meaning(Range range, const Wording& w)
{
    switch (range) {
    case Range::working: return w("usual working position");
    case Range::turning: return w("any position with the PTO turning");
    case Range::standing: break;
    }
    return w("any position with the PTO stopped");
}

}  // namespace shaftcut::measuring_form
