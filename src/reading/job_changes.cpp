#include "job_changes_of.hpp"

#include <algorithm>

#include "cut/stated.hpp"

namespace shaftcut {
namespace {

std::string numbered(const std::string& name, std::size_t number, std::size_t of) { return of > 1 ? name + "[" + std::to_string(number) + "]" : name; }

bool is_there(const Place& place) { return !place.file.empty(); }

// Of elements of one name that begin there, the path of the one that begins at `place`; of one that is not there, where it would be.
std::string path_among(const std::string& name, const Place& place, const std::vector<Place>& all)
{
    const auto there = static_cast<std::size_t>(std::count_if(all.begin(), all.end(), is_there));
    if (!is_there(place)) return numbered(name, there + 1, there + 1);
    const auto before = static_cast<std::size_t>(std::count_if(all.begin(), all.end(), [&](const Place& other) { return is_there(other) && other < place; }));
    return numbered(name, before + 1, there);
}

std::vector<JobChoice> only(Changes changes)
{
    if (changes.empty()) return {};
    return {JobChoice{{}, std::move(changes)}};
}

// The least that is left to this range by all of them.
std::optional<Length> most_of(const std::vector<LongestServed>& ways, Range range)
{
    std::optional<Length> most;
    for (const LongestServed& way : ways)
        if (way.longest && way.range >= range) most = std::min(most.value_or(*way.longest), *way.longest);
    return most;
}

}  // namespace

std::string ChangesOf::fit_path(std::size_t fit) const { return numbered("fit", fit + 1, order_.fits.size()); }

std::string ChangesOf::longest_path(std::size_t fit, Range range) const
{
    const FitReading& reading = order_.fits[fit];
    std::vector<Place> all;
    for (const Range each : all_ranges)
        if (reading.longest[each]) all.push_back(reading.fit.longest_places[each]);
    return fit_path(fit) + "/" + path_among("longest", reading.fit.longest_places[range], all);
}

std::string ChangesOf::half_path(Tube tube) const
{
    const auto& halves = order_.shaft.halves;
    return "shaft/" + path_among("half", halves[tube].place, {halves[Tube::inner].place, halves[Tube::outer].place});
}

template <class Kind, class Holds>
std::optional<std::size_t> ChangesOf::fit_of(const std::string& tractor, const Holds& holds) const
{
    for (std::size_t i = 0; i < order_.fits.size(); ++i) {
        const FitReading& fit = order_.fits[i];
        const Kind* machine = fit.geometry ? std::get_if<Kind>(&fit.geometry->machine) : nullptr;
        if (machine && (tractor.empty() || tractor == fit.tractor) && holds(*machine)) return i;
    }
    return std::nullopt;
}

// Over bent joints to the micrometre, for two ranges limited alike are read at other angles, and must not come out the wrong way round.
std::string ChangesOf::distance_written(const FitReading& fit, Range range, Length telescoping) const
{
    const bool bends = fit.reaches[End::tractor].bends() || fit.reaches[End::implement].bends();
    return bends ? written(distance_bent(telescoping, fit.reaches, fit.read_at[range]), Toward::down) : at_most(telescoping);
}

// What limits a range limits those within it. Only where each that is too long was measured: what a machine gives is no figure of the file.
std::vector<JobChoice> ChangesOf::of_longest(const std::vector<LongestServed>& ways) const
{
    Changes changes;
    for (std::size_t i = 0; i < order_.fits.size(); ++i) {
        const FitReading& fit = order_.fits[i];
        for (const Range range : all_ranges) {
            const auto& longest = fit.fit.longest[range];
            const auto most = most_of(ways, range);
            if (!longest || !most || !clearly_above(longest->value, *most)) continue;
            if (!fit.longest[range]) return {};
            changes.push_back({longest_path(i, range) + "@length", distance_written(fit, range, *most)});
        }
    }
    return only(std::move(changes));
}

std::vector<JobChoice> ChangesOf::of(const ShortestServed& way) const
{
    Changes changes;
    for (std::size_t i = 0; i < order_.fits.size(); ++i) {
        const FitReading& fit = order_.fits[i];
        if (!fit.fit.shortest || fit.fit.shortest->value >= way.least) continue;
        if (!fit.shortest) return {};
        changes.push_back({fit_path(i) + "/shortest@length", at_least(distance_in_line(way.least, fit.reaches))});
    }
    return only(std::move(changes));
}

// What was measured of the old one is gone; a shaft of no series stops as the old one did.
void ChangesOf::add_half_of_new(Changes& changes, Tube tube) const
{
    const JobHalf& half = order_.shaft.halves[tube];
    const std::string path = half_path(tube);
    const auto take_away = [&](bool stated, const char* attribute) {
        if (stated) changes.push_back({path + attribute, std::nullopt});
    };
    take_away(half.length.has_value(), "@length");
    take_away(half.guard || half.guard_use != GuardUse::kept, "@guard");
    take_away(half.lubrication_hole.has_value(), "@lubrication-hole");
    take_away(half.stop_depth.has_value(), "@stop-depth");
    take_away(half.cut_to.has_value(), "@cut-to");
    if (order_.shaft.series) return take_away(half.shoulder.has_value(), "@shoulder");
    if (!is_there(half.place)) changes.push_back({path + "@tube", to_word(tube)});
    changes.push_back({path + "@shoulder", written(order_.stops.value().shoulder[tube])});
}

// A joint of another series is no part of a new shaft.
std::optional<Changes> ChangesOf::new_shaft(Length closed, const std::optional<Reference>& reference) const
{
    for (const Tube tube : both_tubes)
        if (order_.shaft.halves[tube].series) return std::nullopt;
    Changes changes{{"shaft/closed@length", written(closed)}};
    if (reference) changes.push_back({"shaft/closed@reference", to_word(*reference)});
    if (!order_.shaft.number.empty()) changes.push_back({"shaft@number", std::nullopt});
    if (order_.shaft.built) changes.push_back({"shaft@built", std::nullopt});
    for (const Tube tube : both_tubes) add_half_of_new(changes, tube);
    return changes;
}

// None of this shaft's own length, which would only take away what the shaft was refused for; and none that is cut where it must be looked for
// first where the new tubes' lubrication holes are.
std::vector<JobChoice> ChangesOf::of(const SeriesLengths& way) const
{
    const Length own = way.reference ? order_.reading.closed_at[*way.reference] : order_.reading.closed.value;
    std::vector<JobChoice> choices;
    const auto add = [&](const std::vector<Length>& lengths, bool cut) {
        for (const Length closed : lengths) {
            auto changes = closed == own ? std::nullopt : new_shaft(closed, way.reference);
            if (changes) choices.push_back({ClosedChosen{closed, cut}, std::move(*changes)});
        }
    };
    add(way.as_is, false);
    if (!way.past_holes) add(way.after_cut, true);
    return choices;
}

std::vector<JobChoice> ChangesOf::of(const NewShaft& way) const { return only(new_shaft(way.closed, way.reference).value_or(Changes())); }

std::vector<JobChoice> ChangesOf::of_movement(const std::string& tractor, Range range, TrailedMovement movement, Angle served, Angle now) const
{
    const auto fit = fit_of<Trailed>(tractor, [&](const Trailed& machine) {
        const auto& whole = machine.ranges[range];
        return whole && (movement == TrailedMovement::turn ? whole->turn : whole->pitch).value == now;
    });
    if (!fit) return {};
    return only({{fit_path(*fit) + "/trailed/" + to_word(range) + "@" + to_word(movement), figure(Angle::millidegrees(served.mdeg() / 100 * 100))}});
}

std::vector<JobChoice> ChangesOf::of(const TurnServed& way) const { return of_movement(way.tractor, way.range, TrailedMovement::turn, way.served, way.now); }
std::vector<JobChoice> ChangesOf::of(const PitchServed& way) const { return of_movement(way.tractor, way.range, TrailedMovement::pitch, way.served, way.now); }

std::vector<JobChoice> ChangesOf::of(const LiftRangeServed& way) const
{
    const auto fit = fit_of<Mounted>(way.tractor, [&](const Mounted& machine) {
        const auto& whole = machine.ranges[way.range];
        return whole && whole->lowest.value == way.lowest && whole->highest.value == way.highest;
    });
    if (!fit) return {};
    const std::string range = fit_path(*fit) + "/mounted/" + to_word(way.range) + "@";
    std::vector<JobChoice> choices;
    if (way.up_to) choices.push_back({LiftedUpTo{*way.up_to}, {{range + to_word(MountedMovement::highest), at_most(*way.up_to)}}});
    if (way.down_to) choices.push_back({LoweredDownTo{*way.down_to}, {{range + to_word(MountedMovement::lowest), at_least(*way.down_to)}}});
    if (choices.size() == 1) choices.front().of = {};
    return choices;
}

std::vector<JobChoice> ChangesOf::of(const PinMoveServed& way) const
{
    const auto fit = fit_of<Trailed>(way.tractor, [](const Trailed&) { return true; });
    if (!fit) return {};
    const Trailed& machine = std::get<Trailed>(order_.fits[*fit].geometry->machine);
    return only({{fit_path(*fit) + "/trailed@" + to_word(TrailedDimension::pin_behind), written(machine.pin_behind.value + way.move)}});
}

std::vector<JobChoice> choices_of(const WorkOrder& order, const std::vector<std::size_t>& ways, Units units)
{
    const ChangesOf changes(order, units);
    std::vector<LongestServed> longest;
    for (const std::size_t way : ways)
        if (const auto* one = std::get_if<LongestServed>(&order.ways_out.at(way))) longest.push_back(*one);
    if (!longest.empty()) return changes.of_longest(longest);
    return std::visit([&](const auto& one) { return changes.of(one); }, order.ways_out.at(ways.front()));
}

}  // namespace shaftcut
