// Notes on a machine whose geometry is known.
#include "cut/geometry_words.hpp"
#include "hitch/hitch_advice.hpp"
#include "order/instructions.hpp"

namespace shaftcut {
namespace {

std::string length_text(const WorkOrder& order, Length length, Rounded as = Rounded::measured) { return figure_of_with_unit(as, length, order.units); }

// "Shortest 579.9 mm between the inner crosses, ± 7 mm, with the lower hitch point at 421 mm."
std::string shortest_note(const WorkOrder& order, const FitReading& fit)
{
    const ExtremeLength& shortest = fit.geometry->lengths.shortest;
    return "From the machine's geometry the shortest is " + length_text(order, shortest.length, Rounded::shortest) + " between the inner crosses, " +
           in_words(shortest.at, order.units) + "; " + doubt_in_words(shortest, order.units) + ".";
}

// What a tape measure at the two ends of the lift would miss.
std::string lift_note(const WorkOrder& order, const MachineView& view)
{
    const MachineScene &lowest = view.scenes.front(), &highest = view.scenes.back();
    const MachineScene& shorter = highest.length < lowest.length ? highest : lowest;
    const Length missed = shorter.length - view.scenes[1].length;
    if (missed < Length::millimetres(1)) return {};
    const Length clearance = order.limits.length(Limit::closing_clearance);
    const std::string start = "The shortest lies inside the lift: measured at its two ends it would be " + length_text(order, shorter.length, shorter.printed_as) + ", " +
                              length_text(order, missed) + " more. A shaft cut to that with a closing clearance of " + length_text(order, clearance, Rounded::clearance) + " would ";
    if (missed < clearance) return start + "have only " + length_text(order, clearance - missed, Rounded::clearance) + " left on the way.";
    return start + "bottom on the way, " + length_text(order, missed - clearance) + " too long, and bend.";
}

std::string moved(const WorkOrder& order, Length move, const char* rearwards, const char* forwards)
{
    return length_text(order, move < Length() ? -move : move) + " " + (move < Length() ? forwards : rearwards);
}

std::string equal_angles_note(const WorkOrder& order, const Trailed& machine, const HitchShaft& shaft)
{
    const auto& range = machine.ranges.working ? machine.ranges.working : machine.ranges.turning;
    const auto advice = range ? pin_for_equal_angles(machine, shaft, *range) : std::nullopt;
    if (!advice) return {};
    const std::string angles = figure(advice->tractor) + "° and " + figure(advice->implement) + "°";
    if (clearly_below(advice->move, Length::millimetres(1)) && clearly_above(advice->move, -Length::millimetres(1)))
        return "The pin stands where the joint angles come out nearest to equal, " + angles + " at most.";
    return std::string("The joint angles would come out ") + (advice->equal ? "equal" : "nearest to equal") + ", " + angles + " at most, with the pin " +
           moved(order, advice->move, "further rearwards", "further forwards") + ", the machine with it.";
}

std::string from_centre_note(const WorkOrder& order, const char* end, Length distance)
{
    if (distance == Length()) return std::string("The pin stands under the centre of the wide-angle joint at the ") + end + " end.";
    return "The pin is " + moved(order, distance, "behind", "in front of") + " the centre of the wide-angle joint at the " + end +
           " end; right under it that joint would take the whole turn.";
}

void add_pin_notes(std::vector<std::string>& notes, const WorkOrder& order, const GeometryReading& geometry)
{
    const auto* machine = std::get_if<Trailed>(&geometry.machine);
    if (!machine) return;
    const PinFromCentre centre = pin_from_wide_angle_centre(*machine, geometry.shaft);
    if (centre.tractor) notes.push_back(from_centre_note(order, "tractor", *centre.tractor));
    if (centre.implement) notes.push_back(from_centre_note(order, "implement", *centre.implement));
    if (centre.tractor || centre.implement) return;
    const std::string note = equal_angles_note(order, *machine, geometry.shaft);
    if (!note.empty()) notes.push_back(note);
}

}  // namespace

std::vector<std::string> machine_notes_for(const WorkOrder& order)
{
    std::vector<std::string> notes;
    std::size_t machine = 0;
    for (const FitReading& fit : order.fits) {
        if (!fit.geometry) continue;
        const MachineView& view = order.machines[machine++];
        std::string note = whose(fit, order.fits.size()) + shortest_note(order, fit);
        if (view.mounted) {
            const std::string lift = lift_note(order, view);
            note += lift.empty() ? "" : " " + lift;
        }
        notes.push_back(note);
        add_pin_notes(notes, order, *fit.geometry);
    }
    return notes;
}

}  // namespace shaftcut
