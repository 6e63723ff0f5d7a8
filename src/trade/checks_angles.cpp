// Joint angles against their limits, and how unevenly the output turns.
#include <cmath>

#include "check_parts.hpp"

namespace shaftcut {
namespace {

constexpr Angle right_angle = Angle::degrees(90);

CheckResult judged(const CheckInput& input, JointKind joint, Range range, Angle angle)
{
    if (angle > right_angle) return CheckResult::fail;
    // A working position turns, so the working angle is held to the turning limit too.
    const Range failing = range == Range::standing ? Range::standing : Range::turning;
    if (angle > input.limits.angle(angle_limit(joint, failing))) return CheckResult::fail;
    if (range == Range::working && angle > input.limits.angle(angle_limit(joint, range))) return CheckResult::warn;
    return CheckResult::pass;
}

Check check_joint_angle(const CheckInput& input, CheckId id, End end)
{
    const JointKind joint = input.job.shaft.ends[end].joint;
    Check check;
    check.id = id;
    check.unit = CheckUnit::deg;
    std::optional<Angle> least_margin;
    bool folds_past_square = false;
    for (const Range range : all_ranges) {
        const auto& angle = input.fit.angles[end][range];
        if (!angle) continue;
        if (!least_margin) check.result = CheckResult::pass;
        const Limit name = angle_limit(joint, range);
        const Angle limit = input.limits.angle(name);
        at_least(check, judged(input, joint, range, *angle));
        folds_past_square = folds_past_square || *angle > right_angle;
        check.says += std::string(check.says.empty() ? "" : "; ") + to_word(range) + " " + figure(*angle, 3) + "°, limit " + figure(limit, 3) + "°";
        check.basis += std::string(check.basis.empty() ? "" : "; ") + to_word(range) + ": " + input.limits.basis(name);
        if (least_margin && limit - *angle >= *least_margin) continue;
        least_margin = limit - *angle;
        check.value = angle->mdeg();
        check.limit = limit.mdeg();
    }
    if (!least_margin) return not_checked(id, std::string("no angle is given for the ") + to_word(end) + " end");
    check.says = std::string("The ") + (joint == JointKind::standard ? "standard" : "wide-angle") + " joint at the " + to_word(end) + " end: " + check.says + ".";
    if (folds_past_square) check.says += " No joint folds past 90°.";
    return check;
}

// Ripple (max − min)/mean of the output's speed in per cent, both joints in one plane and the shaft in phase: as one joint
// of cos β_e = min/max of the two cosines, 1/cos β_e − cos β_e. A wide-angle joint turns evenly: its cosine counts as 1.
// Nothing where an angle is missing or a joint is folded square.
std::optional<double> ripple_percent(const CheckInput& input, const FitReading& fit)
{
    PerEach<End, double> cosine;
    for (const End end : both_ends) {
        cosine[end] = 1.0;
        if (input.job.shaft.ends[end].joint == JointKind::wide_angle) continue;
        const auto& angle = fit.fit.angles[end][Range::working];
        if (!angle || *angle >= right_angle) return std::nullopt;
        cosine[end] = std::cos(angle->radians());
    }
    const double least = std::min(cosine[End::tractor], cosine[End::implement]);
    const double equivalent = least / std::max(cosine[End::tractor], cosine[End::implement]);
    return 100.0 * (1.0 / equivalent - equivalent);
}

}  // namespace

Check check_joint_angle_tractor(const CheckInput& input) { return check_joint_angle(input, CheckId::joint_angle_tractor, End::tractor); }
Check check_joint_angle_implement(const CheckInput& input) { return check_joint_angle(input, CheckId::joint_angle_implement, End::implement); }

Check check_irregularity(const CheckInput& input)
{
    const CheckId id = CheckId::irregularity;
    std::optional<double> greatest;
    for (const FitReading& fit : input.fits) {
        const auto ripple = ripple_percent(input, fit);
        if (!ripple) return not_checked(id, "a working angle below 90° is needed for each standard joint");
        greatest = std::max(greatest.value_or(*ripple), *ripple);
    }
    Check check;
    check.id = id;
    check.unit = CheckUnit::percent;
    check.value = std::llround(*greatest * 1000.0);
    check.limit = input.limits[Limit::irregularity].value.numerator;
    check.result = *check.value > *check.limit ? CheckResult::warn : CheckResult::pass;
    check.says = "The output's speed ripples by " + figure(Length::micrometres(*check.value), Units::mm) + " % in the working position; limit " +
                 figure(Length::micrometres(*check.limit), Units::mm) + " %.";
    check.basis = "1/cos β − cos β of the equivalent single joint; both joints taken in one plane and the shaft in phase; " +
                  input.limits.basis(Limit::irregularity);
    return check;
}

}  // namespace shaftcut
