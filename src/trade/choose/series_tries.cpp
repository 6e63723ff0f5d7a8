#include "choose/series_tries.hpp"

#include <algorithm>

#include "build/build_trial.hpp"
#include "checks/check_rules.hpp"
#include "choose/margin.hpp"
#include "choose/new_shaft.hpp"

namespace shaftcut {
namespace {

// A series with these joints, and what the fits ask of such a shaft, whatever its length.
struct SeriesSetting {
    const Wanted& wanted;
    const Series& series;
    PerEach<End, JointKind> joint;
    LimitsInForce limits;
    SawSettings saw;
    Job job;
    std::vector<FitReading> fits;
    Fit fit;
};

SeriesSetting setting_of(const Wanted& wanted, const Series& series, const PerEach<End, JointKind>& joint, MachineMemory& memory)
{
    const Length measuring = wanted.workshop.measuring_plus_minus;
    SeriesSetting setting{wanted, series, joint, LimitsInForce(wanted.job.job.limits, series.limits, wanted.workshop.limits),
                          saw_settings(wanted.workshop.saw, wanted.units), job_of_series(wanted.job, series, joint), {}, {}};
    const JobShaft& shaft = setting.job.shaft;
    const ShaftReading any_length = read_shaft(shaft, all_of(&series), measuring);
    for (std::size_t i = 0; i < setting.job.fits.size(); ++i)
        setting.fits.push_back(read_fit(setting.job.fits[i], shaft, all_of(&series), any_length, setting.limits, measuring, memory.search_of(i)));
    setting.fit = deciding_fit(setting.fits);
    return setting;
}

Choice choice_of(const Series& series, const PerEach<End, JointKind>& joint, Length closed)
{
    Choice choice;
    choice.series = series.name;
    choice.closed = closed;
    choice.reference = listed_at(series, joint);
    choice.joint = joint;
    return choice;
}

const Check& first_failed(const std::vector<Check>& checks)
{
    return *std::find_if(checks.begin(), checks.end(), [](const Check& check) { return check.result == CheckResult::fail; });
}

// As work_up() answers the job, without what its papers say beside.
Choice try_closed(SeriesSetting& setting, Length closed)
{
    const Length measuring = setting.wanted.workshop.measuring_plus_minus;
    set_closed(setting.job.shaft, setting.series, closed, setting.limits.length(Limit::guard_setback_new), measuring);
    const ShaftReading reading = read_shaft(setting.job.shaft, all_of(&setting.series), measuring);
    const std::optional<Stops> stops = stops_of(reading.shaft);
    const auto plan = plan_cut(reading.shaft, stops, setting.fit.shortest, setting.limits.length(Limit::closing_clearance), setting.saw);
    const std::vector<Check> checks = run_checks({setting.job, setting.wanted.catalogue, &setting.series, setting.limits, setting.saw, reading, setting.fits, setting.fit, stops, plan});
    Choice choice = choice_of(setting.series, setting.joint, closed);
    choice.checks = figures_of(checks);
    choice.least_margin = least_margin(checks, setting.limits);
    if (any_failed(checks)) {
        choice.why_not = first_failed(checks);
        return choice;
    }
    choice.result = nothing_to_cut(*plan) ? ChoiceResult::as_is : ChoiceResult::cut;
    choice.plan = plan;
    return choice;
}

// An order of a list states no power; this one does.
void rate(BuildTrial& trial, const SeriesSetting& setting)
{
    const std::optional<Stops> stops;
    trial.checks[static_cast<std::size_t>(CheckId::rating)] =
        check_rating({setting.job, setting.wanted.catalogue, &setting.series, setting.limits, setting.saw, trial.reading, setting.fits, setting.fit, stops, trial.as_built, true});
}

std::optional<ChoiceToOrder> try_to_order(const SeriesSetting& setting)
{
    const BuildOrder order = order_with(setting.wanted.job, setting.series.name, setting.joint);
    const BuildSetting building = build_setting(order, setting.wanted.catalogue, setting.wanted.workshop, setting.wanted.units, setting.series, setting.fits);
    BuildTrial trial = try_building(building, building.fit, room_of(building, building.fit));
    rate(trial, setting);
    if (!trial.lengths || !reasons_of(building, trial).empty()) return std::nullopt;
    const Reference reference = trial.reading.reference;
    return ChoiceToOrder{setting.series.name,
                         trial.reading.closed_at[reference],
                         listed_at(setting.series, setting.joint),
                         setting.joint,
                         open_points(setting.series, order, parts_of(setting.series, order, *trial.lengths)),
                         least_margin(trial.checks, building.limits),
                         figures_of(trial.checks)};
}

std::size_t count_wide(const PerEach<End, JointKind>& joint)
{
    return static_cast<std::size_t>(std::count_if(both_ends.begin(), both_ends.end(), [&](End end) { return joint[end] == JointKind::wide_angle; }));
}

// A greater margin is the better one; none known the least.
bool has_more(const std::optional<Margin>& one, const std::optional<Margin>& other)
{
    if (!one || !other) return one.has_value() && !other;
    return *other < *one;
}

bool less_to_do(const Choice& one, const Choice& other)
{
    if (one.result != other.result) return one.result < other.result;
    return one.plan && other.plan && one.cut() < other.cut();
}

// Of two that are of one series and length: the one with less to do, then with fewer warnings, then with fewer wide-angle joints.
template <class Tried>
bool plainer(const Tried& one, const Tried& other)
{
    const std::size_t warnings = count_warnings(one.checks), others = count_warnings(other.checks);
    return warnings != others ? warnings < others : count_wide(one.joint) < count_wide(other.joint);
}

bool better_joints(const Choice& one, const Choice& other)
{
    if (less_to_do(one, other) || less_to_do(other, one)) return less_to_do(one, other);
    return one.result != ChoiceResult::no && plainer(one, other);
}

bool better_joints(const ChoiceToOrder& one, const ChoiceToOrder& other)
{
    if (one.open.empty() != other.open.empty()) return one.open.empty();
    return plainer(one, other);
}

// Those that are refused for their joints are as many as the lengths, too.
void keep_better(std::vector<Choice>& kept, std::vector<Choice> tried)
{
    if (kept.empty()) kept = std::move(tried);
    else
        for (std::size_t i = 0; i < kept.size(); ++i)
            if (better_joints(tried[i], kept[i])) kept[i] = std::move(tried[i]);
}

std::vector<Choice> all_refused(const Series& series, const PerEach<End, JointKind>& joint, const WhyNotServed& why)
{
    std::vector<Choice> choices;
    for (const Length closed : series.closed_lengths) {
        choices.push_back(choice_of(series, joint, closed));
        choices.back().why_not = why;
    }
    return choices;
}

}  // namespace

Length Choice::cut() const { return std::max(plan->cut[Tube::inner], plan->cut[Tube::outer]); }

SeriesTries try_series(const Wanted& wanted, const Series& series, MachineMemory& memory)
{
    SeriesTries tries;
    for (const PerEach<End, JointKind>& joint : joints_to_try(wanted.job)) {
        if (const auto why = why_no_such_shaft(series, joint)) {
            keep_better(tries.choices, all_refused(series, joint, *why));
            continue;
        }
        SeriesSetting setting = setting_of(wanted, series, joint, memory);
        std::vector<Choice> choices;
        for (const Length closed : series.closed_lengths) choices.push_back(try_closed(setting, closed));
        keep_better(tries.choices, std::move(choices));
        auto made = try_to_order(setting);
        if (made && (!tries.to_order || better_joints(*made, *tries.to_order))) tries.to_order = std::move(made);
    }
    return tries;
}

bool ranks_before(const Choice& one, const Choice& other)
{
    if (less_to_do(one, other) || less_to_do(other, one)) return less_to_do(one, other);
    return one.result != ChoiceResult::no && has_more(one.least_margin, other.least_margin);
}

bool ranks_before(const ChoiceToOrder& one, const ChoiceToOrder& other)
{
    if (one.open.empty() != other.open.empty()) return one.open.empty();
    return has_more(one.least_margin, other.least_margin);
}

}  // namespace shaftcut
