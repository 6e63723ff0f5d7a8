#include "hitch/hitch_problems.hpp"

#include <algorithm>
#include <cmath>

namespace shaftcut {
namespace {

constexpr double reach_slack = 1e-6;  // mm: a height stated at the very end of the reach is within it
constexpr int halvings = 50;

// A possible figure is rounded into what is possible, to a tenth of a millimetre.
Length tenths_up(double mm) { return Length::from_mm(std::ceil(mm * 10) / 10); }
Length tenths_down(double mm) { return Length::from_mm(std::floor(mm * 10) / 10); }

template <class Range, class Use>
void for_each_range(const Ranges<Range>& ranges, const Use& use)
{
    for (const auto* range : {&ranges.working, &ranges.turning, &ranges.standing})
        if (*range) use(**range);
}

template <class Kind>
void add_common_problems(const Kind& machine, HitchProblems& problems)
{
    const auto& ranges = machine.ranges;
    if (!ranges.working && !ranges.turning && !ranges.standing)
        problems.push_back({machine.place, NoRangeStated{}});
    const Angle tilt = machine.input_tilt.value;
    if (std::abs(tilt.mdeg()) >= 90'000) problems.push_back({machine.input_tilt.place, TiltedBack{tilt}});
}

void add_turn_problem(const AngleDimension& angle, Movement movement, int below, HitchProblems& problems)
{
    if (angle.value >= Angle() && angle.value < Angle::degrees(below)) return;
    problems.push_back({angle.place, MovementOutOfBounds{movement, angle.value, below}});
}

HitchProblems problems_of(const Trailed& machine)
{
    HitchProblems problems;
    add_common_problems(machine, problems);
    if (machine.pin_behind.value < Length()) problems.push_back({machine.pin_behind.place, PinInFront{-machine.pin_behind.value}});
    for_each_range(machine.ranges, [&](const TrailedRange& range) {
        add_turn_problem(range.turn, Movement::turn, 180, problems);
        add_turn_problem(range.pitch, Movement::pitch, 90, problems);
        add_turn_problem(range.roll, Movement::roll, 90, problems);
    });
    return problems;
}

std::vector<Heights> heights_of(const std::vector<HeightSpan>& spans)
{
    std::vector<Heights> heights;
    for (const HeightSpan& span : spans) heights.push_back({tenths_up(span.lowest), tenths_down(span.highest)});
    return heights;
}

bool reaches(const HeightSpan& span, const Dimension& height)
{
    return height.value.mm() >= span.lowest - reach_slack && height.value.mm() <= span.highest + reach_slack;
}

// One problem for each end out of reach; one where both ends can be reached but not one from the other.
void add_reach_problems(const MountedRange& range, const std::vector<HeightSpan>& spans, HitchProblems& problems)
{
    bool each = true;
    for (const Dimension* end : {&range.lowest, &range.highest}) {
        const auto covers = [end](const HeightSpan& span) { return reaches(span, *end); };
        if (std::any_of(spans.begin(), spans.end(), covers)) continue;
        each = false;
        problems.push_back({end->place, HeightOutOfReach{end->value, heights_of(spans)}});
    }
    const auto both = [&range](const HeightSpan& span) { return reaches(span, range.lowest) && reaches(span, range.highest); };
    if (each && std::none_of(spans.begin(), spans.end(), both))
        problems.push_back({range.highest.place, HeightsApart{range.lowest.value, range.highest.value, heights_of(spans)}});
}

// The linkage closes nowhere: what top link would close it at the height nearest to `wanted` that the lower link reaches.
HitchProblem unclosed_problem(const Mounted& machine, Length wanted)
{
    const double pivot = machine.lower_pivot_height.value.mm();
    const double link = machine.lower_link.value.mm();
    const double height = std::clamp(wanted.mm(), pivot - link, pivot + link);
    const double behind = machine.lower_pivot_behind.value.mm() + std::sqrt(link * link - (height - pivot) * (height - pivot));
    const double across = behind - machine.top_pivot_behind.value.mm();
    const double apart = std::hypot(across, height - machine.top_pivot_height.value.mm());
    const double mast = machine.mast.value.mm();
    if (across <= 0) return {machine.top_pivot_behind.place, TopPivotTooFarBack{machine.top_link.value, machine.mast.value, tenths_down(behind)}};
    return {machine.top_link.place, TopLinkDoesNotClose{machine.top_link.value, machine.mast.value, Length::from_mm(height), tenths_up(std::abs(apart - mast)), tenths_down(apart + mast)}};
}

HitchProblems linkage_problems(const Mounted& machine)
{
    HitchProblems problems;
    const std::vector<HeightSpan> spans = reachable_heights(machine);
    for_each_range(machine.ranges, [&](const MountedRange& range) {
        if (spans.empty() && problems.empty()) problems.push_back(unclosed_problem(machine, range.lowest.value));
        if (!spans.empty()) add_reach_problems(range, spans, problems);
    });
    return problems;
}

HitchProblems problems_of(const Mounted& machine)
{
    HitchProblems problems;
    add_common_problems(machine, problems);
    const auto needs_length = [&](const Dimension& dimension, Link link) {
        if (dimension.value <= Length()) problems.push_back({dimension.place, LinkWithoutLength{link, dimension.value}});
    };
    needs_length(machine.lower_link, Link::lower_link);
    needs_length(machine.top_link, Link::top_link);
    needs_length(machine.mast, Link::mast);
    for_each_range(machine.ranges, [&](const MountedRange& range) {
        if (range.lowest.value > range.highest.value) problems.push_back({range.lowest.place, LowestAboveHighest{range.lowest.value, range.highest.value}});
    });
    return problems.empty() ? linkage_problems(machine) : problems;
}

// The furthest towards `where.position` that has an answer.
Coordinates last_answer(const Machine& machine, const HitchShaft& shaft, const NoAnswer& where)
{
    const auto between = [&where](double share) {
        Coordinates at;
        for (std::size_t i = 0; i < 3; ++i) at[i] = where.start[i] + share * (where.position[i] - where.start[i]);
        return at;
    };
    double good = 0;
    double bad = 1;
    for (int i = 0; i < halvings; ++i) {
        const double middle = (good + bad) / 2;
        (shaft_in_place(machine, shaft, between(middle)) ? good : bad) = middle;
    }
    return between(good);
}

// The room that the yokes and joints take up in line, which the input shaft must be behind the PTO stub by, and more.
double room_in_line(const HitchShaft& shaft)
{
    const auto room = [](const HitchEnd& end) { return (end.cross_to_groove + end.spacing).mm(); };
    return room(shaft.tractor) + room(shaft.implement);
}

HitchProblem no_room_problem(const Machine& machine, const HitchShaft& shaft, const Coordinates& start)
{
    const auto& input_behind = std::visit([](const auto& kind) -> const Dimension& { return kind.input_behind; }, machine);
    const auto groove = [&]() -> double {
        if (const auto* trailed = std::get_if<Trailed>(&machine)) return input_shaft(*trailed, start).groove.x;
        const auto links = linkage(std::get<Mounted>(machine), start[0]);
        return links ? links->input.groove.x : 0.0;
    };
    const double least = input_behind.value.mm() + room_in_line(shaft) - groove();
    return {input_behind.place, NoRoomForShaft{input_behind.value, posture(machine, start), tenths_up(least)}};
}

}  // namespace

HitchProblems geometry_problems(const Machine& machine)
{
    return std::visit([](const auto& kind) { return problems_of(kind); }, machine);
}

HitchProblem no_answer_problem(const Machine& machine, const HitchShaft& shaft, const NoAnswer& where)
{
    if (!shaft_in_place(machine, shaft, where.start)) return no_room_problem(machine, shaft, where.start);
    return {where.end, FoldsBack{posture(machine, where.position), posture(machine, last_answer(machine, shaft, where))}};
}

}  // namespace shaftcut
