// Joint angles against their limits, and how unevenly the output turns.
#include <algorithm>
#include <cmath>

#include "checks/check_parts.hpp"
#include "cut/geometry_words.hpp"
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

// "turning 36.587° (turned 60° to the right), limit 35°"
std::string angle_words(const CheckInput& input, End end, Range range, Angle angle, Angle limit)
{
    const ExtremeAngle* computed = deciding_angle(input.fits, input.fit, end, range);
    const std::string at = computed ? " (" + in_words(computed->at, input.units) + ")" : "";
    // To 0.1 degree where that shows whether it is past the limit.
    const int decimals = figure(angle) == figure(limit) && angle != limit ? 3 : 1;
    return std::string(to_word(range)) + " " + figure(angle, decimals) + "°" + at + ", limit " + figure(limit, 3) + "°";
}

Check check_joint_angle(const CheckInput& input, End end)
{
    const CheckId id = joint_angle_check_id(end);
    const JointKind joint = input.job.shaft.ends[end].joint;
    Check check;
    check.id = id;
    check.unit = CheckUnit::deg;
    std::optional<Angle> least_margin;
    bool folds_past_square = false;
    for (const Range range : all_ranges) {
        const bool known = input.fit.angles[end][range].has_value();
        const auto& angle = known ? input.fit.angles[end][range] : input.fit.angles_at_least[end][range];
        if (!angle) continue;
        if (!least_margin) check.result = CheckResult::pass;
        const Limit name = angle_limit(joint, range);
        const Angle limit = input.limits.angle(name);
        const CheckResult judged_so = judged(input, joint, range, *angle);
        at_least(check, known || judged_so == CheckResult::fail ? judged_so : CheckResult::not_checked);
        if (!known) check.basis += std::string(check.basis.empty() ? "" : "; ") + "not every fit gives the " + to_word(range) + " angle";
        folds_past_square = folds_past_square || *angle > right_angle;
        check.says += (check.says.empty() ? "" : "; ") + angle_words(input, end, range, *angle, limit);
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

std::string percent_text(double percent) { return figure(Length::micrometres(std::llround(percent * 1000.0)), Units::mm) + " %"; }

// Where the greatest ripple occurs, and what it would be one step out of phase, which need not be more.
std::string geometry_words(const CheckInput& input, const FitReading& fit)
{
    const OperatingLengths& lengths = fit.geometry->lengths;
    std::string words = " It is greatest " + in_words(lengths.irregularity->at, input.units) + ".";
    const auto& wrong = lengths.irregularity_out_of_phase;
    if (!is_standard(input, End::tractor) || !is_standard(input, End::implement) || !wrong) return words;
    words += " Put together one step of " + figure(fit.geometry->shaft.phase_step) + "° out of phase it would ";
    return words + (wrong->percent ? "be up to " + percent_text(*wrong->percent) + "." : "not turn.");
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
    const CheckId id = CheckId::irregularity;
    std::optional<double> greatest;
    const FitReading* of = &input.fits.front();  // a job has one at least
    for (const FitReading& fit : input.fits) {
        const auto ripple = ripple_of(input, fit);
        if (!ripple) return not_checked(id, "a working angle below 90° is needed for each standard joint");
        if (greatest && *ripple <= *greatest) continue;
        greatest = ripple;
        of = &fit;
    }
    const bool by_geometry = ripples_by_geometry(input, *of);
    Check check;
    check.id = id;
    check.unit = CheckUnit::percent;
    check.value = std::llround(*greatest * 1000.0);
    check.limit = input.limits[Limit::irregularity].value.numerator;
    check.result = *check.value > *check.limit ? CheckResult::warn : CheckResult::pass;
    check.says = "The output's speed ripples by " + figure(Length::micrometres(*check.value), Units::mm) + " % in the working position; limit " +
                 figure(Length::micrometres(*check.limit), Units::mm) + " %.";
    if (by_geometry) check.says += geometry_words(input, *of);
    check.basis = by_geometry ? "greatest over the whole working range of the machine's geometry, out of plane too, the shaft in phase; "
                              : "1/cos β − cos β of the equivalent single joint; both joints taken in one plane and the shaft in phase; ";
    check.basis += input.limits.basis(Limit::irregularity);
    return check;
}

}  // namespace shaftcut
