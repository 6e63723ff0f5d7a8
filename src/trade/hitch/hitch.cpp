#include "shaftcut/trade/hitch/hitch.hpp"

#include <algorithm>
#include <cmath>

#include "hitch/hitch_problems.hpp"
#include "hitch/shafts_on_grid.hpp"

namespace shaftcut {
namespace {

constexpr double turn_step = 0.2;  // radians: a length has at most a hill and a hollow in a quarter turn of each movement
constexpr int least_turn_points = 5;
constexpr int lift_points = 41;

struct Survey {
    const Machine& machine;
    const HitchShaft& shaft;
    Length measuring;
};

// Odd, so that straight ahead is on the grid.
int turn_points(double half)
{
    if (half == 0) return 1;
    return std::max(least_turn_points, 2 * static_cast<int>(std::ceil(half / turn_step)) + 1);
}

// The end of the range that `position` went towards from the range's middle: the movement with the widest swing.
const Place& end_towards(const TrailedRange& range, const Coordinates& position, const Coordinates&)
{
    const auto share = [&](std::size_t i) { return std::abs(position[i]); };
    if (share(0) >= share(1) && share(0) >= share(2)) return range.turn.place;
    return share(1) >= share(2) ? range.pitch.place : range.roll.place;
}

const Place& end_towards(const MountedRange& range, const Coordinates& position, const Coordinates& middle)
{
    return position[0] < middle[0] ? range.lowest.place : range.highest.place;
}

struct FoundRange {
    Greatest shortest;
    Greatest longest;
    Greatest tractor;
    Greatest implement;
};

// Stops at the first quantity without an answer: the others would say the same.
std::variant<FoundRange, Coordinates> search_range(const Survey& survey, const ShaftsOnGrid& shafts)
{
    FoundRange found;
    const std::pair<Quantity, Greatest*> searches[] = {{Quantity::closeness, &found.shortest},
                                                       {Quantity::length, &found.longest},
                                                       {Quantity::tractor_angle, &found.tractor},
                                                       {Quantity::implement_angle, &found.implement}};
    for (const auto& [quantity, result] : searches) {
        *result = greatest_over(quantity, survey.machine, survey.shaft, shafts);
        if (!result->value) return result->at;
    }
    return found;
}

template <class Range>
HitchProblem problem_at(const Survey& survey, const Range& range, const Box& box, const Coordinates& position)
{
    return no_answer_problem(survey.machine, survey.shaft, {box.middle, position, end_towards(range, position, box.middle)});
}

template <class Range>
ExtremeLength extreme_length(const Survey& survey, const Range& range, const Greatest& found)
{
    ExtremeLength extreme{Length::from_mm(std::abs(*found.value)), posture(survey.machine, found.at), Length(),
                          influences(survey.machine, survey.shaft, found.at, range, survey.measuring)};
    extreme.plus_minus = worst_case(extreme.influences);
    return extreme;
}

template <class Range>
std::optional<RangeExtremes> range_extremes(const Survey& survey, const Range& range, const ShaftsOnGrid& shafts, HitchProblems& problems)
{
    const auto searched = search_range(survey, shafts);
    if (const auto* position = std::get_if<Coordinates>(&searched)) {
        problems.push_back(problem_at(survey, range, shafts.box, *position));
        return std::nullopt;
    }
    const auto& found = std::get<FoundRange>(searched);
    const auto angle = [&](const Greatest& at) { return ExtremeAngle{angle_of_measure(*at.value), posture(survey.machine, at.at)}; };
    return RangeExtremes{extreme_length(survey, range, found.shortest), extreme_length(survey, range, found.longest),
                         angle(found.tractor), angle(found.implement)};
}

ExtremeIrregularity greatest_irregularity(const Survey& survey, const ShaftsOnGrid& shafts, double out_of_phase)
{
    const auto of = [&](const std::optional<BentShaft>& bent) -> std::optional<double> {
        if (!bent) return std::nullopt;
        return unevenness(joints_of(*bent, survey.shaft, out_of_phase));
    };
    const auto measure = [&](const Coordinates& at) { return of(shaft_in_place(survey.machine, survey.shaft, at)); };
    const Greatest found = greatest(measure, shafts.box, shafts.each(of));
    ExtremeIrregularity result{std::nullopt, posture(survey.machine, found.at)};
    if (!found.value) return result;
    const auto joints = joints_in_place(survey.machine, survey.shaft, found.at, out_of_phase);
    result.percent = irregularity(*joints);
    return result;
}

// Out of plane it matters to which side the tubes are put together wrongly: the worse counts.
ExtremeIrregularity worse_irregularity(const Survey& survey, const ShaftsOnGrid& shafts, double phase_step)
{
    const ExtremeIrregularity one = greatest_irregularity(survey, shafts, phase_step);
    const ExtremeIrregularity other = greatest_irregularity(survey, shafts, -phase_step);
    if (!one.percent || !other.percent) return one.percent ? other : one;
    return *other.percent > *one.percent ? other : one;
}

ExtremeLength shortest_of(const Ranges<RangeExtremes>& ranges)
{
    std::optional<ExtremeLength> shortest;
    for (const auto* range : {&ranges.working, &ranges.turning, &ranges.standing})
        if (*range && (!shortest || (*range)->shortest.length < shortest->length)) shortest = (*range)->shortest;
    return shortest.value();
}

// What is found over the working range alone.
void add_irregularity(OperatingLengths& lengths, const Survey& survey, const ShaftsOnGrid& shafts)
{
    lengths.irregularity = greatest_irregularity(survey, shafts, 0);
    lengths.irregularity_out_of_phase = worse_irregularity(survey, shafts, survey.shaft.phase_step.radians());
}

template <class Kind>
std::variant<OperatingLengths, HitchProblems> lengths_over(const Survey& survey, const Kind& machine)
{
    HitchProblems problems;
    OperatingLengths lengths;
    const auto surveyed = [&](const auto& range, std::optional<RangeExtremes>& extremes) -> std::optional<ShaftsOnGrid> {
        if (!range) return std::nullopt;
        ShaftsOnGrid shafts(survey.machine, survey.shaft, box_of(*range));
        extremes = range_extremes(survey, *range, shafts, problems);
        return shafts;
    };
    const auto working = surveyed(machine.ranges.working, lengths.ranges.working);
    surveyed(machine.ranges.turning, lengths.ranges.turning);
    surveyed(machine.ranges.standing, lengths.ranges.standing);
    if (!problems.empty()) return problems;
    lengths.shortest = shortest_of(lengths.ranges);
    if (working) add_irregularity(lengths, survey, *working);
    return lengths;
}

template <class Kind>
HitchProblems problems_over(const Survey& survey, const Kind& machine)
{
    HitchProblems problems;
    for (const auto* range : {&machine.ranges.working, &machine.ranges.turning, &machine.ranges.standing}) {
        if (!*range) continue;
        const ShaftsOnGrid shafts(survey.machine, survey.shaft, box_of(**range));
        const auto searched = search_range(survey, shafts);
        if (const auto* position = std::get_if<Coordinates>(&searched)) problems.push_back(problem_at(survey, **range, shafts.box, *position));
    }
    return problems;
}

double squared_size(Vector a)
{
    return dot(a, a);
}

}  // namespace

Box box_of(const TrailedRange& range)
{
    Box box;
    box.half = {range.turn.value.radians(), range.pitch.value.radians(), range.roll.value.radians()};
    for (std::size_t i = 0; i < 3; ++i) box.points[i] = turn_points(box.half[i]);
    return box;
}

Box box_of(const MountedRange& range)
{
    Box box;
    box.middle[0] = (range.lowest.value + range.highest.value).mm() / 2;
    box.half[0] = (range.highest.value - range.lowest.value).mm() / 2;
    box.points[0] = box.half[0] == 0 ? 1 : lift_points;
    return box;
}

double measure(Quantity quantity, const BentShaft& bent)
{
    switch (quantity) {
    case Quantity::closeness: return -bent.length;
    case Quantity::length: return bent.length;
    case Quantity::tractor_angle: return squared_size(bent.tractor_axis - bent.along);
    case Quantity::implement_angle: break;
    }
    return squared_size(bent.implement_axis - bent.along);
}

BoxFunction measure_of(Quantity quantity, const Machine& machine, const HitchShaft& shaft)
{
    return [quantity, &machine, &shaft](const Coordinates& at) -> std::optional<double> {
        const auto bent = shaft_in_place(machine, shaft, at);
        if (!bent) return std::nullopt;
        return measure(quantity, *bent);
    };
}

ShaftsOnGrid::ShaftsOnGrid(const Machine& machine, const HitchShaft& shaft, const Box& whole) : box(whole)
{
    for (const Coordinates& at : grid_of(box)) shafts.push_back(shaft_in_place(machine, shaft, at));
}

Greatest greatest_over(Quantity quantity, const Machine& machine, const HitchShaft& shaft, const ShaftsOnGrid& shafts)
{
    const auto on_grid = shafts.each([&](const std::optional<BentShaft>& bent) { return bent ? std::optional(measure(quantity, *bent)) : std::nullopt; });
    return greatest(measure_of(quantity, machine, shaft), shafts.box, on_grid);
}

Angle angle_of_measure(double measure)
{
    return Angle::from_radians(2 * std::asin(std::min(std::sqrt(measure) / 2, 1.0)));
}

std::variant<OperatingLengths, HitchProblems> operating_lengths(const Machine& machine, const HitchShaft& shaft, Length measuring)
{
    const HitchProblems problems = geometry_problems(machine);
    if (!problems.empty()) return problems;
    const Survey survey{machine, shaft, measuring};
    return std::visit([&survey](const auto& kind) { return lengths_over(survey, kind); }, machine);
}

HitchProblems operating_problems(const Machine& machine, const HitchShaft& shaft)
{
    HitchProblems problems = geometry_problems(machine);
    if (!problems.empty()) return problems;
    const Survey survey{machine, shaft, Length()};
    return std::visit([&survey](const auto& kind) { return problems_over(survey, kind); }, machine);
}

}  // namespace shaftcut
