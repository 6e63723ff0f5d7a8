// Checks that need no length: what may be cut, how the yokes lock, what they are coupled to, where the device sits.
#include <algorithm>

#include "checks/check_parts.hpp"

namespace shaftcut {
namespace {

void find_forbidden(std::vector<CheckFinding>& found, const CheckInput& input, Tube tube)
{
    const Half& half = input.reading.shaft.halves[tube];
    if (input.plan->cuts_tube(tube) && half.shortening_forbidden) found.emplace_back(ShorteningForbidden{tube});
    if (half.lubrication_hole && clearly_below(input.plan->half[tube], *half.lubrication_hole)) found.emplace_back(HoleCutOff{tube, *half.lubrication_hole});
}

void find_work(std::vector<CheckFinding>& found, const CheckInput& input, Tube tube)
{
    const Length one_chain = input.limits.length(Limit::one_chain_shortening);
    const bool one_chain_too_few = clearly_above(input.plan->guard_cut[tube].value_or(Length()), one_chain);
    for (const Feature feature : input.reading.shaft.halves[tube].features)
        if (feature == Feature::one_chain_guard ? one_chain_too_few : input.plan->cuts_tube(tube)) found.emplace_back(WorkAfterCut{tube, feature, one_chain});
}

LockRule rule_for(const JobShaft& shaft)
{
    if (shaft.role == Role::secondary) return LockRule::secondary;
    if (!shaft.built) return LockRule::year_not_known;
    return *shaft.built < lock_rule_from ? LockRule::before_it : LockRule::under_it;
}

// Judges one end's lock into `check`.
void judge_lock(Check& check, const JobShaft& shaft, LockRule rule, End end)
{
    const auto& lock = shaft.ends[end].lock;
    if (!lock) {
        at_least(check, CheckResult::not_checked);
        check.findings.emplace_back(LockNotStated{end});
        return;
    }
    if (*lock == Lock::unknown) {
        at_least(check, CheckResult::warn);
        check.findings.emplace_back(LockUnknown{end});
    }
    if (!is_exposed(*lock)) return;
    check.findings.emplace_back(LockStandsOut{end, *lock, rule});
    if (rule != LockRule::secondary) at_least(check, rule == LockRule::under_it ? CheckResult::fail : CheckResult::warn);
}

void judge_speed(Check& check, const CheckInput& input, End end)
{
    const auto& speed = input.job.shaft.speed;
    const auto& name = input.job.shaft.ends[end].connection;
    const Connection* connection = name ? find_connection(input.catalogue, *name) : nullptr;
    if (!speed || !connection || connection->speeds.empty()) return;
    if (std::find(connection->speeds.begin(), connection->speeds.end(), *speed) != connection->speeds.end()) return;
    at_least(check, CheckResult::warn);
    check.findings.emplace_back(SpeedNotRated{end, *name, connection->speeds, *speed});
}

void judge_connection(Check& check, const CheckInput& input, End end)
{
    const JobEnd& job_end = input.job.shaft.ends[end];
    if (!job_end.connection || !job_end.onto) {
        at_least(check, CheckResult::not_checked);
        check.findings.emplace_back(CouplingNotStated{end});
    } else if (*job_end.connection != *job_end.onto) {
        at_least(check, CheckResult::fail);
        check.findings.emplace_back(CouplingDiffers{end, *job_end.connection, *job_end.onto});
    }
    judge_speed(check, input, end);
}

// One source that both ends have is named once.
RatedSpeedsBy sources_of_connections(const CheckInput& input)
{
    RatedSpeedsBy by;
    for (const End end : both_ends) {
        const auto& name = input.job.shaft.ends[end].connection;
        const Connection* connection = name ? find_connection(input.catalogue, *name) : nullptr;
        if (!connection || connection->source.empty()) continue;
        const bool named = std::any_of(by.sources.begin(), by.sources.end(), [&](const RatedSpeedSource& one) { return one.source == connection->source; });
        if (!named) by.sources.push_back({*name, connection->source});
    }
    return by;
}

Check locking(const CheckInput& input, LockRule rule)
{
    Check check = passed(CheckId::locking, CheckUnit::none);
    for (const End end : both_ends) judge_lock(check, input.job.shaft, rule, end);
    if (check.findings.empty()) check.findings = {PlainFinding::no_lock_stands_out};
    check.basis = {PlainBasis::locks};
    if (check.result == CheckResult::not_checked) check.basis.emplace_back(PlainBasis::lock_not_stated);
    return check;
}

PlainFinding nothing_forbids(const CheckInput& input)
{
    if (nothing_to_cut(*input.plan)) return PlainFinding::nothing_cut;
    return input.series ? PlainFinding::nothing_forbids_cut : PlainFinding::nothing_known_forbids_cut;
}

}  // namespace

Check check_shortening_allowed(const CheckInput& input)
{
    const CheckId id = CheckId::shortening_allowed;
    if (!input.plan) return not_checked(id, no_plan_reason(input));
    std::vector<CheckFinding> forbidden, work;
    for (const Tube tube : both_tubes) {
        find_forbidden(forbidden, input, tube);
        find_work(work, input, tube);
    }
    Check check = passed(id, CheckUnit::none);
    if (!work.empty()) check.result = CheckResult::warn;
    if (!forbidden.empty()) check.result = CheckResult::fail;
    check.findings = forbidden.empty() ? work : forbidden;
    if (check.findings.empty()) check.findings = {nothing_forbids(input)};
    check.basis = {PlainBasis::series_statement, PlainBasis::lubrication_passage, OneChainLimit{input.limits.basis(Limit::one_chain_shortening)}};
    return check;
}

Check check_locking(const CheckInput& input)
{
    const JobShaft& shaft = input.job.shaft;
    return locking(input, input.new_shaft && shaft.role == Role::primary ? LockRule::under_it : rule_for(shaft));
}

Check check_connection(const CheckInput& input)
{
    Check check = passed(CheckId::connection, CheckUnit::none);
    for (const End end : both_ends) judge_connection(check, input, end);
    if (check.findings.empty()) check.findings = {PlainFinding::connections_match};
    check.basis = {PlainBasis::coupling};
    if (RatedSpeedsBy by = sources_of_connections(input); !by.sources.empty()) check.basis.emplace_back(std::move(by));
    if (check.result == CheckResult::not_checked) check.basis = {PlainBasis::couplings_not_stated};
    return check;
}

Check check_overload_device(const CheckInput& input)
{
    const CheckId id = CheckId::overload_device;
    const auto& device = input.job.shaft.ends[End::tractor].device;
    if (input.job.shaft.role == Role::primary && !device) return not_checked(id, PlainReason::device_not_stated);
    Check check = passed(id, CheckUnit::none);
    check.findings = {PlainFinding::no_device_at_tractor};
    check.basis = {PlainBasis::device};
    if (input.job.shaft.role == Role::secondary || *device == Device::none) return check;
    check.result = CheckResult::fail;
    check.findings = {DeviceAtTractor{*device}};
    return check;
}

}  // namespace shaftcut
