// What could be built instead of an order that cannot: another shortest, longest or closed length, another series, other fittings.
// Each figure is found by building and checking it.
#include <algorithm>

#include "advice/advice_parts.hpp"
#include "build/build_trial.hpp"
#include "data/bounds.hpp"

namespace shaftcut {
namespace {

// Beyond it a half is longer than any shaft's, whatever is built. The series states both shoulders where anything is built at all.
Length longest_tried(const Series& series)
{
    Length longest = telescoping_bounds.greatest;
    for (const Tube tube : both_tubes) longest = std::min(longest, half_bounds.greatest + series.halves[tube].shoulder.value_or(Length()));
    return longest;
}

// The checks that other lengths could mend; locks, connections, devices and angles are for fittings.
bool is_about_lengths(CheckId id) { return id == CheckId::consistency || (rule_of(id).mended_by_lengths && rule_of(id).needs_lengths); }

bool lengths_fail(const std::vector<Check>& checks)
{
    return std::any_of(checks.begin(), checks.end(), [](const Check& check) { return is_about_lengths(check.id) && check.result == CheckResult::fail; });
}

bool has_all_pieces(const BuiltLengths& lengths)
{
    return std::all_of(both_tubes.begin(), both_tubes.end(), [&](Tube tube) {
        const auto& hole = lengths.pin_hole[tube];
        return lengths.blank[tube] > Length() && (!hole || *hole < lengths.blank[tube]) && lengths.guard_blank[tube].value_or(lengths.blank[tube]) > Length();
    });
}

bool lengths_serve(const BuildSetting& setting, const BuildTrial& trial)
{
    return trial.lengths && has_all_pieces(*trial.lengths) && has_long_enough_bars(setting, *trial.lengths) && !lengths_fail(trial.checks);
}

BuildTrial at_shortest(const BuildSetting& setting, Length shortest)
{
    Fit fit = setting.fit;
    fit.shortest->value = shortest;
    return try_building(setting, fit, room_of(setting, fit));
}

ShortestThatServes shortest_way(const BuildSetting& setting)
{
    const auto most = least_longest(setting.fits);
    const auto least = !most ? std::nullopt : least_serving(setting.fit.shortest->value, *most, [&](Length shortest) { return lengths_serve(setting, at_shortest(setting, shortest)); });
    return {setting.series.name, least, setting.fit.shortest->value, setting.fits.size() > 1, setting.ordered.has_wide_angle};
}

// With the shortest as it is there is one best shaft of the series; what fails of its overlaps says how far it could reach.
void add_longest_ways(std::vector<BuildWay>& ways, const BuildSetting& setting, const BuildTrial& trial)
{
    for (const Range range : all_ranges) {
        const Check& check = check_of(trial.checks, overlap_check_id(range));
        if (check.result != CheckResult::fail || !check.limit) continue;
        const Length greatest = trial.lengths->half[Tube::inner] + trial.lengths->half[Tube::outer] - Length::micrometres(*check.limit);
        const bool none = clearly_below(greatest, setting.fit.shortest->value);
        ways.emplace_back(LongestThatServes{setting.series.name, range, none ? std::nullopt : std::optional(greatest), setting.ordered.has_wide_angle});
    }
}

// At its reference.
ClosedThatServes closed_way(const BuildSetting& setting)
{
    const ShaftReading& ordered = setting.ordered;
    const Length beyond = ordered.closed_at[ordered.reference] - ordered.shaft.closed.value;
    const BuildTrial longest = try_building(setting, setting.fit, longest_tried(setting.series));
    const auto least = least_serving(ordered.shaft.closed.value, longest_tried(setting.series) - excess_over_bars(setting, *longest.lengths),
                                     [&](Length closed) { return lengths_serve(setting, try_building(setting, setting.fit, closed)); });
    return {setting.series.name, least ? std::optional(*least + beyond) : std::nullopt, measured_from(ordered.has_wide_angle, ordered.reference)};
}

bool has_joints(const Series& series, const JobShaft& shaft)
{
    const auto wide = [&](End end) { return shaft.ends[end].joint == JointKind::wide_angle; };
    if (!wide(End::tractor) && !wide(End::implement)) return true;
    return series.wide_angle && (shaft.closed_reference || series.wide_angle_reference || usual_reference(series.shape));
}

bool has_yokes(const Series& series, const JobShaft& shaft)
{
    return std::all_of(both_ends.begin(), both_ends.end(), [&](End end) {
        const JobEnd& of = shaft.ends[end];
        return !of.connection || std::any_of(series.yokes.begin(), series.yokes.end(), [&](const Yoke& yoke) {
            return yoke.connection == *of.connection && yoke.joint.value_or(of.joint) == of.joint;
        });
    });
}

// The other series of which the very same order could be built.
BuildWay series_way(const BuildSetting& setting)
{
    std::vector<std::string> serving;
    for (const Series& series : setting.catalogue.series) {
        const JobShaft& shaft = setting.order.shaft;
        if (&series == &setting.series || !has_joints(series, shaft) || !has_yokes(series, shaft)) continue;
        const BuildSetting other = build_setting(setting.order, setting.catalogue, setting.workshop, setting.units, series);
        const BuildTrial trial = try_building(other, other.fit, room_of(other, other.fit));
        if (lengths_serve(other, trial)) serving.push_back(series.name);
    }
    if (serving.empty()) return BuildAdvice::no_other_series;
    return SeriesThatServe{std::move(serving)};
}

GuardReach guard_way(const BuildSetting& setting, const BuildTrial& trial)
{
    Length reach;
    for (const Tube tube : both_tubes) reach += *trial.lengths->guard_half[tube] - setting.saw.plus_minus;
    Length doubt;
    for (const Range range : all_ranges)
        if (const auto& longest = setting.fit.longest[range]) doubt = std::max(doubt, longest->plus_minus);
    return {reach - doubt, setting.ordered.has_wide_angle};
}

void add_length_ways(std::vector<BuildWay>& ways, const BuildSetting& setting, const BuildTrial& trial)
{
    if (!setting.unstated.empty()) {
        ways.emplace_back(FiguresToState{setting.unstated});
        ways.push_back(series_way(setting));
        return;
    }
    if (!trial.lengths) {
        ways.emplace_back(WayOut(Remedy::measure_between_crosses));
        return;
    }
    if (lengths_serve(setting, trial)) return;
    if (!has_long_enough_bars(setting, *trial.lengths)) {
        ways.emplace_back(long_enough_way(setting, *trial.lengths));
    } else if (setting.order.closed) {
        ways.emplace_back(closed_way(setting));
    } else if (failed(trial.checks, CheckId::closing_clearance)) {
        // No other shortest mends that: the shaft is built to the same clearance.
        ways.emplace_back(ClearanceToAsk{setting.fit.shortest->plus_minus + setting.saw.plus_minus});
        return;
    } else {
        add_longest_ways(ways, setting, trial);
        if (failed(trial.checks, CheckId::guard_cover)) ways.emplace_back(guard_way(setting, trial));
        ways.emplace_back(shortest_way(setting));
    }
    ways.emplace_back(series_way(setting));
}

// The ways of a shaft that exists serve a new one too, but for its lock and its device, which are chosen and not changed.
void add_fitting_ways(std::vector<BuildWay>& ways, const BuildSetting& setting, const BuildTrial& trial)
{
    if (failed(trial.checks, CheckId::locking)) ways.emplace_back(BuildAdvice::locks_that_do_not_stand_out);
    if (failed(trial.checks, CheckId::overload_device)) ways.emplace_back(BuildAdvice::device_at_implement);
    std::vector<Check> others = trial.checks;
    for (const CheckId id : {CheckId::locking, CheckId::overload_device}) others[static_cast<std::size_t>(id)].result = CheckResult::pass;
    Job job;
    job.shaft = trial.shaft;
    const std::optional<Stops> stops;
    const CheckInput input{job, setting.catalogue, &setting.series, setting.limits, setting.saw, trial.reading, setting.fits, setting.fit, stops, trial.as_built};
    for (const WayOut& way : fitting_ways(input, others)) ways.emplace_back(way);
    if (trial.as_built)
        for (const WayOut& way : machine_ways(input, others)) ways.emplace_back(way);
}

// Whether what is ordered contradicts itself, whatever is built to it.
bool contradicts_itself(const BuildSetting& setting)
{
    return setting.fit.shortest && failed(try_building(setting, setting.fit, std::nullopt).checks, CheckId::consistency);
}

}  // namespace

std::vector<BuildWay> build_ways_out(const BuildSetting& setting, const BuildTrial& trial)
{
    std::vector<BuildWay> ways;
    if (contradicts_itself(setting)) ways.emplace_back(BuildAdvice::state_again);
    else add_length_ways(ways, setting, trial);
    add_fitting_ways(ways, setting, trial);
    return ways;
}

}  // namespace shaftcut
