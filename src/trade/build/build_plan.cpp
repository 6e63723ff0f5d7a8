#include "shaftcut/trade/build/build_plan.hpp"

#include <algorithm>

#include "build/build_trial.hpp"
#include "cut/general_tolerance.hpp"

namespace shaftcut {
namespace {

void fill_heading(BuildPlan& plan, const BuildSetting& setting)
{
    const BuildOrder& order = setting.order;
    plan.order = order.order;
    plan.customer = order.customer;
    plan.machine = order.machine;
    plan.due = order.due;
    plan.owner = setting.workshop.name;
    plan.count = order.count;
    plan.units = setting.units;
    plan.shaft_title = shaft_title(order.shaft, &setting.series);
    plan.shape = setting.series.shape;
    plan.series = setting.series.name;
    plan.guard = order.guard;
    plan.ordered = order.shaft;
    plan.ordered_closed = order.closed;
    plan.reference = setting.ordered.reference;
    plan.has_wide_angle = setting.ordered.has_wide_angle;
    plan.fits = setting.fits;
    plan.fit = setting.fit;
    plan.ordered_use = ordered_use(setting);
    plan.limits = setting.limits;
    plan.saw = setting.saw;
    plan.measuring_plus_minus = setting.workshop.measuring_plus_minus;
}

std::optional<std::int64_t> tubes_mass(const std::vector<ShaftPart>& parts)
{
    std::int64_t mass = 0;
    for (const ShaftPart& part : parts) {
        if (part.kind != PartKind::tube) continue;
        if (!part.mass) return std::nullopt;
        mass += *part.mass;
    }
    return mass;
}

void fill_overlaps(BuiltShaft& built, const CutPlan& as_built, const Fit& fit)
{
    built.overlap_closed = as_built.overlap_at(as_built.closed);
    if (fit.shortest) built.overlap_shortest = as_built.overlap_at(fit.shortest->value);
    for (const Range range : all_ranges)
        if (const auto& longest = fit.longest[range]) built.overlap_longest[range] = as_built.overlap_at(longest->value);
}

BuiltShaft built_shaft(const BuildSetting& setting, const BuildTrial& trial)
{
    BuiltShaft built;
    built.lengths = *trial.lengths;
    built.closed_at = trial.reading.closed_at;
    built.shaft = trial.shaft;
    built.reading = trial.reading;
    fill_overlaps(built, *trial.as_built, setting.fit);
    built.use = use_range(setting, *trial.lengths);
    for (const Tube tube : both_tubes) {
        built.coarse_tolerance[tube] = coarse_tolerance(built.lengths.blank[tube]);
        built.sawn[tube] = !trial.reading.shaft.halves[tube].shortening_forbidden;
    }
    built.parts = parts_of(setting.series, setting.order, *trial.lengths);
    built.tubes_mass = tubes_mass(built.parts);
    built.plate = plate_figures(setting.order, setting.catalogue, setting.series);
    return built;
}

// What no check of a shaft that exists asks: whether there is a piece to saw at all, and a pin hole on it.
std::vector<BuildReason> impossible_pieces(const BuiltLengths& lengths)
{
    std::vector<BuildReason> reasons;
    for (const Tube tube : both_tubes) {
        const auto& guard = lengths.guard_blank[tube];
        const auto& hole = lengths.pin_hole[tube];
        if (lengths.blank[tube] <= Length()) reasons.emplace_back(NothingBeyondSeat{{tube, TubeKind::drive}});
        else if (hole && *hole >= lengths.blank[tube]) reasons.emplace_back(PinHoleBeyondTube{tube});
        if (guard && *guard <= Length()) reasons.emplace_back(NothingBeyondSeat{{tube, TubeKind::guard}});
    }
    return reasons;
}

void build_or_hold(BuildPlan& plan, const BuildSetting& setting, const BuildTrial& trial)
{
    BuiltShaft built = built_shaft(setting, trial);
    plan.open = open_points(setting.series, setting.order, built.parts);
    plan.verdict = plan.open.empty() ? BuildVerdict::build : BuildVerdict::held;
    if (!plan.open.empty()) return;
    plan.built = std::move(built);
    plan.built->operations = operations_of(plan);
}

}  // namespace

std::vector<BuildReason> reasons_of(const BuildSetting& setting, const BuildTrial& trial)
{
    std::vector<BuildReason> reasons;
    if (!setting.unstated.empty()) reasons.emplace_back(SeriesDoesNotState{setting.series.name, setting.unstated});
    for (const Check& check : trial.checks)
        if (check.result == CheckResult::fail) reasons.emplace_back(check);
    if (!trial.lengths) return reasons;
    for (BuildReason& reason : impossible_pieces(*trial.lengths)) reasons.push_back(std::move(reason));
    for (BuildReason& reason : too_long_reasons(setting, *trial.lengths)) reasons.push_back(std::move(reason));
    return reasons;
}

BuildPlan plan_build(const BuildOrder& order, const Catalogue& catalogue, const Workshop& workshop, Units units)
{
    const Series& series = *find_series(catalogue, *order.shaft.series);
    const BuildSetting setting = build_setting(order, catalogue, workshop, units, series);
    const BuildTrial trial = try_building(setting, setting.fit, room_of(setting, setting.fit));
    BuildPlan plan;
    fill_heading(plan, setting);
    plan.checks = trial.checks;
    plan.reasons = reasons_of(setting, trial);
    if (plan.reasons.empty() && trial.lengths) build_or_hold(plan, setting, trial);
    else plan.ways_out = build_ways_out(setting, trial);
    plan.notes = build_notes(plan, setting);
    plan.cautions = build_cautions(plan);
    return plan;
}

}  // namespace shaftcut
