#include "hitch/hitch_problems.hpp"

#include <algorithm>
#include <cmath>
#include <string>

#include "text.hpp"

namespace shaftcut {
namespace {

constexpr double reach_slack = 1e-6;  // mm: a height stated at the very end of the reach is within it
constexpr int halvings = 50;

// A possible figure is rounded into what is possible, to a tenth of a millimetre.
std::string figure_at_least(double mm, Units units)
{
    return figure_with_unit(Length::from_mm(std::ceil(mm * 10) / 10), units, Toward::up);
}

std::string figure_at_most(double mm, Units units)
{
    return figure_with_unit(Length::from_mm(std::floor(mm * 10) / 10), units, Toward::down);
}

std::string degrees(Angle angle)
{
    return figure(angle, 3) + " degrees";
}

template <class Range, class Use>
void for_each_range(const Ranges<Range>& ranges, const Use& use)
{
    for (const auto* range : {&ranges.working, &ranges.turning, &ranges.standing})
        if (*range) use(**range);
}

template <class Kind>
void add_common_problems(const Kind& machine, Problems& problems)
{
    const auto& ranges = machine.ranges;
    if (!ranges.working && !ranges.turning && !ranges.standing)
        problems.push_back({machine.place, "no range of movement is stated", "state working, turning or standing"});
    const Angle tilt = machine.input_tilt.value;
    if (std::abs(tilt.mdeg()) >= 90'000)
        problems.push_back({machine.input_tilt.place, "an input-tilt of " + degrees(tilt) + " turns the input shaft's axis back on itself",
                            "between -90 and 90 degrees"});
}

void add_turn_problem(const AngleDimension& angle, const char* name, int below, Problems& problems)
{
    if (angle.value >= Angle() && angle.value < Angle::degrees(below)) return;
    problems.push_back({angle.place, std::string("a ") + name + " of " + degrees(angle.value),
                        "plus or minus 0 to under " + std::to_string(below) + " degrees about straight and level"});
}

Problems problems_of(const Trailed& machine, Units units)
{
    Problems problems;
    add_common_problems(machine, problems);
    if (machine.pin_behind.value < Length())
        problems.push_back({machine.pin_behind.place,
                            "the pin is " + figure_with_unit(-machine.pin_behind.value, units) + " in front of the PTO stub's groove",
                            "a pin 0 or more behind it"});
    for_each_range(machine.ranges, [&](const TrailedRange& range) {
        add_turn_problem(range.turn, "turn", 180, problems);
        add_turn_problem(range.pitch, "pitch", 90, problems);
        add_turn_problem(range.roll, "roll", 90, problems);
    });
    return problems;
}

std::string spans_in_words(const std::vector<HeightSpan>& spans, Units units)
{
    std::vector<std::string> words;
    for (const HeightSpan& span : spans)
        words.push_back("from " + figure_at_least(span.lowest, units) + " to " + figure_at_most(span.highest, units));
    return listed(words);
}

bool reaches(const HeightSpan& span, const Dimension& height)
{
    return height.value.mm() >= span.lowest - reach_slack && height.value.mm() <= span.highest + reach_slack;
}

// One problem for each end out of reach; one where both ends can be reached but not one from the other.
void add_reach_problems(const MountedRange& range, const std::vector<HeightSpan>& spans, Units units, Problems& problems)
{
    const std::string right = "a height " + spans_in_words(spans, units) + " above ground";
    bool each = true;
    for (const Dimension* end : {&range.lowest, &range.highest}) {
        const auto covers = [end](const HeightSpan& span) { return reaches(span, *end); };
        if (std::any_of(spans.begin(), spans.end(), covers)) continue;
        each = false;
        problems.push_back({end->place, "the links cannot bring the lower hitch point to " + figure_with_unit(end->value, units), right});
    }
    const auto both = [&range](const HeightSpan& span) { return reaches(span, range.lowest) && reaches(span, range.highest); };
    if (each && std::none_of(spans.begin(), spans.end(), both))
        problems.push_back({range.highest.place, "the links cannot pass from " + figure_with_unit(range.lowest.value, units) + " to " +
                            figure_with_unit(range.highest.value, units), right});
}

// The linkage closes nowhere: what top link would close it at the height nearest to `wanted` that the lower link reaches.
Problem unclosed_problem(const Mounted& machine, Length wanted, Units units)
{
    const double pivot = machine.lower_pivot_height.value.mm();
    const double link = machine.lower_link.value.mm();
    const double height = std::clamp(wanted.mm(), pivot - link, pivot + link);
    const double behind = machine.lower_pivot_behind.value.mm() + std::sqrt(link * link - (height - pivot) * (height - pivot));
    const double across = behind - machine.top_pivot_behind.value.mm();
    const double apart = std::hypot(across, height - machine.top_pivot_height.value.mm());
    const double mast = machine.mast.value.mm();
    const std::string wrong = "a top-link of " + figure_with_unit(machine.top_link.value, units) + " and a mast of " +
                              figure_with_unit(machine.mast.value, units) + " meet at no height";
    if (across <= 0)
        return {machine.top_pivot_behind.place, wrong, "a top link pivot in front of the lower hitch point, which is " +
                figure_at_most(behind, units) + " behind the PTO stub's groove"};
    return {machine.top_link.place, wrong, "with the lower hitch point at " + figure_with_unit(Length::from_mm(height), units) +
            ", a top-link from " + figure_at_least(std::abs(apart - mast), units) + " to " + figure_at_most(apart + mast, units)};
}

Problems linkage_problems(const Mounted& machine, Units units)
{
    Problems problems;
    const std::vector<HeightSpan> spans = reachable_heights(machine);
    for_each_range(machine.ranges, [&](const MountedRange& range) {
        if (spans.empty() && problems.empty()) problems.push_back(unclosed_problem(machine, range.lowest.value, units));
        if (!spans.empty()) add_reach_problems(range, spans, units, problems);
    });
    return problems;
}

Problems problems_of(const Mounted& machine, Units units)
{
    Problems problems;
    add_common_problems(machine, problems);
    const auto needs_length = [&](const Dimension& dimension, const char* name) {
        if (dimension.value > Length()) return;
        problems.push_back({dimension.place, std::string("a ") + name + " of " + figure_with_unit(dimension.value, units),
                            "a length above 0"});
    };
    needs_length(machine.lower_link, "lower-link");
    needs_length(machine.top_link, "top-link");
    needs_length(machine.mast, "mast");
    for_each_range(machine.ranges, [&](const MountedRange& range) {
        if (range.lowest.value <= range.highest.value) return;
        problems.push_back({range.lowest.place, "a lowest of " + figure_with_unit(range.lowest.value, units) + " is above the highest of " +
                            figure_with_unit(range.highest.value, units), "a lowest that is the highest or below it"});
    });
    return problems.empty() ? linkage_problems(machine, units) : problems;
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

std::string in_words(const Posture& posture, Units units)
{
    if (const auto* lift = std::get_if<MountedPosture>(&posture)) return "a height of " + figure_with_unit(lift->height, units);
    const auto& turned = std::get<TrailedPosture>(posture);
    return "turn " + degrees(turned.turn) + ", pitch " + degrees(turned.pitch) + ", roll " + degrees(turned.roll);
}

// The room that the yokes and joints take up in line, which the input shaft must be behind the PTO stub by, and more.
double room_in_line(const HitchShaft& shaft)
{
    const auto room = [](const HitchEnd& end) { return (end.cross_to_groove + end.spacing).mm(); };
    return room(shaft.tractor) + room(shaft.implement);
}

Problem no_room_problem(const Machine& machine, const HitchShaft& shaft, const Coordinates& start, Units units)
{
    const auto& input_behind = std::visit([](const auto& kind) -> const Dimension& { return kind.input_behind; }, machine);
    const auto groove = [&]() -> double {
        if (const auto* trailed = std::get_if<Trailed>(&machine)) return input_shaft(*trailed, start).groove.x;
        const auto links = linkage(std::get<Mounted>(machine), start[0]);
        return links ? links->input.groove.x : 0.0;
    };
    const double least = input_behind.value.mm() + room_in_line(shaft) - groove();
    return {input_behind.place, "an input-behind of " + figure_with_unit(input_behind.value, units) + " leaves no room for the shaft at " +
            in_words(posture(machine, start), units), "more than " + figure_at_least(least, units)};
}

}  // namespace

Problems geometry_problems(const Machine& machine, Units units)
{
    return std::visit([units](const auto& kind) { return problems_of(kind, units); }, machine);
}

Problem no_answer_problem(const Machine& machine, const HitchShaft& shaft, const NoAnswer& where, Units units)
{
    if (!shaft_in_place(machine, shaft, where.start)) return no_room_problem(machine, shaft, where.start, units);
    return {where.end, "the shaft folds back on itself at " + in_words(posture(machine, where.position), units),
            "on the way there, up to " + in_words(posture(machine, last_answer(machine, shaft, where)), units)};
}

}  // namespace shaftcut
