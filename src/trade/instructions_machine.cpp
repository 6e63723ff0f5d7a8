// Notes on a machine whose geometry is known.
#include <algorithm>

#include "shaftcut/trade/geometry_words.hpp"
#include "shaftcut/trade/hitch_advice.hpp"
#include "shaftcut/trade/instructions.hpp"

namespace shaftcut {
namespace {

std::string length_text(const WorkOrder& order, Length length, Toward toward = Toward::nearest) { return figure_with_unit(length, order.units, toward); }

// "Shortest 579.9 mm between the inner crosses, ± 7 mm, with the lower hitch point at 421 mm."
std::string shortest_note(const WorkOrder& order, const FitReading& fit)
{
    const ExtremeLength& shortest = fit.geometry->lengths.shortest;
    return "From the machine's geometry the shortest is " + length_text(order, shortest.length, Toward::down) + " between the inner crosses, " +
           in_words(shortest.at, order.units) + "; ± " + length_text(order, shortest.plus_minus, Toward::up) + ".";
}

// What a tape measure at the two ends of the lift would miss.
std::string lift_note(const WorkOrder& order, const MachineView& view)
{
    const Length low = view.scenes.front().length, high = view.scenes.back().length, shortest = view.scenes[1].length;
    const Length missed = std::min(low, high) - shortest;
    if (missed < Length::millimetres(1)) return {};
    return "The shortest lies inside the lift: measured at its two ends it would be " + length_text(order, std::min(low, high)) + ", and a shaft cut to that would be " +
           length_text(order, missed, Toward::up) + " too long.";
}

// The side on which a measurement is no protection: the machine reaches past it.
void add_disagreements(std::vector<std::string>& notes, const WorkOrder& order, const FitReading& fit)
{
    const std::string start = whose(fit, order.fits.size()) + "the machine's geometry reaches ";
    const auto& lengths = fit.geometry->lengths;
    if (fit.shortest && fit.fit.shortest && clearly_below(lengths.shortest.length, fit.fit.shortest->value - fit.fit.shortest->plus_minus))
        notes.push_back("Measure again: " + start + length_text(order, lengths.shortest.length) + ", shorter than the measured shortest.");
    for (const Range range : all_ranges) {
        const auto& longest = fit.fit.longest[range];
        if (fit.longest[range] && longest && lengths.ranges[range] && clearly_above(lengths.ranges[range]->longest.length, longest->value + longest->plus_minus))
            notes.push_back("Measure again: " + start + length_text(order, lengths.ranges[range]->longest.length) + ", longer than the measured longest " + to_word(range) + ".");
    }
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
        add_disagreements(notes, order, fit);
        add_pin_notes(notes, order, *fit.geometry);
    }
    return notes;
}

}  // namespace shaftcut
