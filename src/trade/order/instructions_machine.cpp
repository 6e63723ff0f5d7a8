// Notes on a machine whose geometry is known.
#include "hitch/hitch_advice.hpp"
#include "order/instructions.hpp"

namespace shaftcut {
namespace {

// What a tape measure at the two ends of the lift would miss; nothing below a millimetre.
std::optional<MissedByLift> missed_by_lift(const WorkOrder& order, const MachineView& view)
{
    const MachineScene &lowest = view.scenes.front(), &highest = view.scenes.back();
    const MachineScene& shorter = highest.length < lowest.length ? highest : lowest;
    const Length missed = shorter.length - view.scenes[1].length;
    if (missed < Length::millimetres(1)) return std::nullopt;
    return MissedByLift{shorter.length, shorter.printed_as, missed, order.limits.length(Limit::closing_clearance)};
}

std::optional<PinForEqualAngles> pin_for_angles(const Trailed& machine, const HitchShaft& shaft)
{
    const auto& range = machine.ranges.working ? machine.ranges.working : machine.ranges.turning;
    const auto advice = range ? pin_for_equal_angles(machine, shaft, *range) : std::nullopt;
    if (!advice) return std::nullopt;
    const bool stands_there = clearly_below(advice->move, Length::millimetres(1)) && clearly_above(advice->move, -Length::millimetres(1));
    return PinForEqualAngles{advice->tractor, advice->implement, advice->equal, stands_there ? Length() : advice->move};
}

void add_pin_notes(std::vector<Note>& notes, const GeometryReading& geometry)
{
    const auto* machine = std::get_if<Trailed>(&geometry.machine);
    if (!machine) return;
    const PinFromCentre centre = pin_from_wide_angle_centre(*machine, geometry.shaft);
    if (centre.tractor) notes.emplace_back(PinBehindCentre{End::tractor, *centre.tractor});
    if (centre.implement) notes.emplace_back(PinBehindCentre{End::implement, *centre.implement});
    if (centre.tractor || centre.implement) return;
    if (const auto pin = pin_for_angles(*machine, geometry.shaft)) notes.emplace_back(*pin);
}

}  // namespace

std::vector<Note> machine_notes_for(const WorkOrder& order)
{
    std::vector<Note> notes;
    std::size_t machine = 0;
    for (const FitReading& fit : order.fits) {
        if (!fit.geometry) continue;
        const MachineView& view = order.machines[machine++];
        ShortestOfMachine note{order.fits.size() > 1 ? fit.tractor : "", fit.geometry->lengths.shortest, std::nullopt};
        if (view.mounted) note.missed = missed_by_lift(order, view);
        notes.emplace_back(note);
        add_pin_notes(notes, *fit.geometry);
    }
    return notes;
}

}  // namespace shaftcut
