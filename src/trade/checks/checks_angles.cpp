// Joint angles against their limits, and how unevenly the output turns.
#include <algorithm>
#include <cmath>

#include "checks/check_parts.hpp"
#include "cut/deciding.hpp"
#include "shaftcut/trade/hitch/joint.hpp"

namespace shaftcut {
namespace {

constexpr Angle right_angle = Angle::degrees(90);

CheckResult judged(const CheckInput& input, JointKind joint, Range range, Angle angle)
{
    if (angle > greatest_angle(input.limits, joint, range)) return CheckResult::fail;
    if (range == Range::working && angle > input.limits.angle(angle_limit(joint, range))) return CheckResult::warn;
    return CheckResult::pass;
}

AngleInRange angle_found(const CheckInput& input, End end, Range range, Angle angle, Angle limit)
{
    const ExtremeAngle* computed = deciding_angle(input.fits, input.fit, end, range);
    return {range, angle, limit, computed ? std::optional(computed->at) : std::nullopt};
}

Check check_joint_angle(const CheckInput& input, End end)
{
    const JointKind joint = input.job.shaft.ends[end].joint;
    Check check = passed(joint_angle_check_id(end), CheckUnit::deg);
    JointAngles found{end, joint, {}};
    std::optional<Angle> least_margin;
    bool folds_past_square = false;
    for (const Range range : all_ranges) {
        const bool known = input.fit.angles[end][range].has_value();
        const auto& angle = known ? input.fit.angles[end][range] : input.fit.angles_at_least[end][range];
        if (!angle) continue;
        const Limit name = angle_limit(joint, range);
        const Angle limit = input.limits.angle(name);
        const CheckResult judged_so = judged(input, joint, range, *angle);
        at_least(check, known || judged_so == CheckResult::fail ? judged_so : CheckResult::not_checked);
        if (!known) check.basis.emplace_back(AngleNotOfAll{range});
        check.basis.emplace_back(AngleLimitOf{range, input.limits.basis(name)});
        folds_past_square = folds_past_square || *angle > right_angle;
        found.angles.push_back(angle_found(input, end, range, *angle, limit));
        if (least_margin && limit - *angle >= *least_margin) continue;
        least_margin = limit - *angle;
        check.value = angle->mdeg();
        check.limit = limit.mdeg();
    }
    if (!least_margin) return not_checked(check.id, NoAngle{end});
    check.findings = {found};
    if (folds_past_square) check.findings.emplace_back(PlainFinding::no_joint_folds_so_far);
    return check;
}

bool is_standard(const CheckInput& input, End end) { return input.job.shaft.ends[end].joint == JointKind::standard; }

// Of the stated angles, both joints taken in one plane and the shaft in phase; nothing where an angle is missing or a joint is
// folded square. A wide-angle joint turns evenly: its angle counts as 0.
std::optional<double> ripple_percent(const CheckInput& input, const FitReading& fit)
{
    PerEach<End, Angle> bent;
    for (const End end : both_ends) {
        if (!is_standard(input, end)) continue;
        const auto& angle = fit.fit.angles[end][Range::working];
        if (!angle) return std::nullopt;
        bent[end] = *angle;
    }
    return irregularity(in_one_plane(bent[End::tractor], bent[End::implement]));
}

// Whether the machine's geometry says more than measured angles do: no standard joint's working angle was measured.
bool ripples_by_geometry(const CheckInput& input, const FitReading& fit)
{
    if (!fit.geometry || !fit.geometry->lengths.irregularity) return false;
    return std::none_of(both_ends.begin(), both_ends.end(), [&](End end) { return is_standard(input, end) && fit.angles[end][Range::working]; });
}

std::optional<double> ripple_of(const CheckInput& input, const FitReading& fit)
{
    return ripples_by_geometry(input, fit) ? fit.geometry->lengths.irregularity->percent : ripple_percent(input, fit);
}

// Thousandths of a per cent.
std::int64_t thousandths(double percent) { return std::llround(percent * 1000.0); }

// Where the greatest ripple occurs, and what it would be one step out of phase, which need not be more.
void add_geometry(Check& check, const CheckInput& input, const FitReading& fit)
{
    const OperatingLengths& lengths = fit.geometry->lengths;
    check.findings.emplace_back(RippleGreatestAt{lengths.irregularity->at});
    const auto& wrong = lengths.irregularity_out_of_phase;
    if (!is_standard(input, End::tractor) || !is_standard(input, End::implement) || !wrong) return;
    check.findings.emplace_back(RippleOutOfPhase{fit.geometry->shaft.phase_step, wrong->percent ? std::optional(thousandths(*wrong->percent)) : std::nullopt});
}

}  // namespace

Angle greatest_angle(const LimitsInForce& limits, JointKind joint, Range range)
{
    const Range failing = range == Range::standing ? Range::standing : Range::turning;
    return std::min(limits.angle(angle_limit(joint, failing)), right_angle);
}

Check check_joint_angle_tractor(const CheckInput& input) { return check_joint_angle(input, End::tractor); }
Check check_joint_angle_implement(const CheckInput& input) { return check_joint_angle(input, End::implement); }

Check check_irregularity(const CheckInput& input)
{
    std::optional<double> greatest;
    const FitReading* of = &input.fits.front();  // a job has one at least
    for (const FitReading& fit : input.fits) {
        const auto ripple = ripple_of(input, fit);
        if (!ripple) return not_checked(CheckId::irregularity, PlainReason::no_working_angle);
        if (greatest && *ripple <= *greatest) continue;
        greatest = ripple;
        of = &fit;
    }
    const bool by_geometry = ripples_by_geometry(input, *of);
    Check check = passed(CheckId::irregularity, CheckUnit::percent);
    check.value = thousandths(*greatest);
    check.limit = input.limits[Limit::irregularity].value.numerator;
    if (*check.value > *check.limit) check.result = CheckResult::warn;
    check.findings = {SpeedRipple{*check.value, *check.limit}};
    if (by_geometry) add_geometry(check, input, *of);
    check.basis = {by_geometry ? PlainBasis::ripple_of_geometry : PlainBasis::ripple_of_angles, input.limits.basis(Limit::irregularity)};
    return check;
}

}  // namespace shaftcut
