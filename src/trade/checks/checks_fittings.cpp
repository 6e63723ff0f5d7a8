// Checks that need no length: what may be cut, how the yokes lock, what they are coupled to, where the device sits.
#include <algorithm>

#include "checks/check_parts.hpp"

namespace shaftcut {
namespace {

constexpr int lock_rule_from = 2021;  // year of building from which no lock part may protrude: EN 12965:2019

void find_forbidden(std::vector<std::string>& found, const CheckInput& input, Tube tube)
{
    const Half& half = input.reading.shaft.halves[tube];
    const bool cut = input.plan->cuts_tube(tube);
    if (cut && half.shortening_forbidden)
        found.push_back(std::string("The series forbids shortening the ") + to_word(tube) + " tube.");
    if (half.lubrication_hole && clearly_below(input.plan->half[tube], *half.lubrication_hole))
        found.push_back(std::string("The ") + to_word(tube) + " tube would end before its lubrication hole, whose far edge is " +
                        limit_text(input, *half.lubrication_hole, Rounded::measured) + " from the cross.");
}

void find_work(std::vector<std::string>& found, const CheckInput& input, Tube tube)
{
    const bool cut = input.plan->cuts_tube(tube);
    const Length one_chain = input.limits.length(Limit::one_chain_shortening);
    for (const Feature feature : input.reading.shaft.halves[tube].features) {
        const std::string which = std::string("The ") + to_word(tube);
        if (feature == Feature::coated && cut)
            found.push_back(which + " tube is coated: deburr without tearing the coating and treat the bare edge.");
        if (feature == Feature::end_stop && cut)
            found.push_back(which + " tube has an end stop: take it off before the cut and fit it again at the new end.");
        if (feature == Feature::one_chain_guard && clearly_above(input.plan->guard_cut[tube].value_or(Length()), one_chain))
            found.push_back(which + " guard is held by one chain and loses more than " + value_text(input, one_chain, Rounded::cut) +
                            ": fit a second chain at the tractor end.");
    }
}

// When the shaft was built, as far as the rule on locks asks.
enum class Built { before_the_rule, under_the_rule, unknown };

Built built_of(const JobShaft& shaft)
{
    if (!shaft.built) return Built::unknown;
    return *shaft.built < lock_rule_from ? Built::before_the_rule : Built::under_the_rule;
}

const char* what_of_exposed(Built built)
{
    switch (built) {
    case Built::before_the_rule: return " built before 2021: it can catch clothing.";
    case Built::under_the_rule: return ": no part of a lock may stand out (EN 12965:2019, built from 2021).";
    case Built::unknown: break;
    }
    return " whose year of building is not known: it can catch clothing, and if the shaft was built in 2021 or later no part of a lock may stand out (EN 12965:2019).";
}

// Judges one end's lock into `check`.
void judge_lock(Check& check, const JobShaft& shaft, Built built, End end)
{
    const auto& lock = shaft.ends[end].lock;
    if (!lock) {
        at_least(check, CheckResult::not_checked);
        check.says += " The lock at " + end_named(end) + " is not stated.";
        return;
    }
    if (*lock == Lock::unknown) {
        at_least(check, CheckResult::warn);
        check.says += " The lock at " + end_named(end) + " is unknown: look whether any part of it stands out.";
    }
    if (!is_exposed(*lock)) return;
    const std::string part = *lock == Lock::exposed_collar ? "sliding collar" : "push pin";
    if (shaft.role == Role::secondary) {
        check.says += " The rule on locks is for primary shafts, but the exposed " + part + " at " + end_named(end) + " can catch clothing: see that it is shielded.";
        return;
    }
    at_least(check, built == Built::under_the_rule ? CheckResult::fail : CheckResult::warn);
    check.says += " An exposed " + part + " locks " + end_named(end) + " of a primary shaft" + what_of_exposed(built);
}

void judge_speed(Check& check, const CheckInput& input, End end)
{
    const auto& speed = input.job.shaft.speed;
    const auto& name = input.job.shaft.ends[end].connection;
    const Connection* connection = name ? find_connection(input.catalogue, *name) : nullptr;
    if (!speed || !connection || connection->speeds.empty()) return;
    if (std::find(connection->speeds.begin(), connection->speeds.end(), *speed) != connection->speeds.end()) return;
    at_least(check, CheckResult::warn);
    std::string rated;
    for (const int one : connection->speeds) rated += (rated.empty() ? "" : " or ") + std::to_string(one);
    check.says += " Connection " + *name + " at " + end_named(end) + " is rated for " + rated + " min⁻¹, the shaft is to run at " + std::to_string(*speed) + " min⁻¹.";
}

void judge_connection(Check& check, const CheckInput& input, End end)
{
    const JobEnd& job_end = input.job.shaft.ends[end];
    if (!job_end.connection || !job_end.onto) {
        at_least(check, CheckResult::not_checked);
        check.says += " Not stated for " + end_named(end) + ": its connection or what it goes onto.";
    } else if (*job_end.connection != *job_end.onto) {
        at_least(check, CheckResult::fail);
        check.says += " The " + std::string(to_word(end)) + " end's yoke is " + *job_end.connection + " but goes onto " + *job_end.onto + ".";
    }
    judge_speed(check, input, end);
}

std::string sources_of_connections(const CheckInput& input)
{
    std::string sources;
    for (const End end : both_ends) {
        const auto& name = input.job.shaft.ends[end].connection;
        const Connection* connection = name ? find_connection(input.catalogue, *name) : nullptr;
        if (!connection || connection->source.empty() || sources.find(connection->source) != std::string::npos) continue;
        sources += (sources.empty() ? "" : "; ") + *name + ": " + connection->source;
    }
    return sources;
}

Check judged(CheckId id, const char* when_pass)
{
    Check check;
    check.id = id;
    check.result = CheckResult::pass;
    check.says = when_pass;
    return check;
}

// What the sentences begin with when all is well is dropped once there is something to say.
void finish(Check& check, std::size_t pass_length)
{
    if (check.says.size() > pass_length) check.says.erase(0, pass_length + 1);
}

Check locking(const CheckInput& input, Built built)
{
    Check check = judged(CheckId::locking, "No part of a lock stands out.");
    const std::size_t pass_length = check.says.size();
    for (const End end : both_ends) judge_lock(check, input.job.shaft, built, end);
    finish(check, pass_length);
    check.basis = "EN 12965:2019 (primary shafts, from tractor to first fixed bearing): on shafts built from 2021 the yokes' locks at both ends have no exposed "
                  "or protruding part";
    if (check.result == CheckResult::not_checked) check.basis += "; the lock is not stated at every end";
    return check;
}

}  // namespace

Check check_shortening_allowed(const CheckInput& input)
{
    const CheckId id = CheckId::shortening_allowed;
    if (!input.plan) return not_checked(id, no_plan_reason(input));
    std::vector<std::string> forbidden, work;
    for (const Tube tube : both_tubes) {
        find_forbidden(forbidden, input, tube);
        find_work(work, input, tube);
    }
    Check check = judged(id, nothing_to_cut(*input.plan) ? "Nothing is cut." : input.series ? "Nothing forbids the cut." : "Nothing that is known of this shaft forbids the cut.");
    if (!work.empty()) check.result = CheckResult::warn;
    if (!forbidden.empty()) check.result = CheckResult::fail;
    const auto& found = forbidden.empty() ? work : forbidden;
    if (!found.empty()) check.says = joined(found);
    check.basis = "the series' own statement; two manuals: a lubrication passage in the inner tube limits the cut; one-chain guards: " +
                  input.limits.basis(Limit::one_chain_shortening);
    return check;
}

Check check_locking(const CheckInput& input)
{
    return locking(input, input.new_shaft ? Built::under_the_rule : built_of(input.job.shaft));
}

Check check_connection(const CheckInput& input)
{
    Check check = judged(CheckId::connection, "The connections match what they go onto.");
    const std::size_t pass_length = check.says.size();
    for (const End end : both_ends) judge_connection(check, input, end);
    finish(check, pass_length);
    const std::string sources = sources_of_connections(input);
    check.basis = "the same type on both sides of a coupling" + (sources.empty() ? "" : "; rated speeds by " + sources);
    if (check.result == CheckResult::not_checked) check.basis = "the job does not state every end's connection and what it goes onto";
    return check;
}

Check check_overload_device(const CheckInput& input)
{
    const CheckId id = CheckId::overload_device;
    const auto& device = input.job.shaft.ends[End::tractor].device;
    if (input.job.shaft.role == Role::primary && !device) return not_checked(id, "the job does not state whether the tractor end carries a device");
    Check check = judged(id, "No overload device sits on the tractor end of a primary shaft.");
    check.basis = "three manuals: a torque limiter or overrunning device belongs at the machine end only";
    if (input.job.shaft.role == Role::secondary || *device == Device::none) return check;
    check.result = CheckResult::fail;
    check.says = std::string("A") + (*device == Device::slip_clutch ? " slip clutch" : *device == Device::shear_bolt ? " shear bolt" : "n overrunning clutch") +
                 " sits on the tractor end of a primary shaft; it belongs at the implement end.";
    return check;
}

}  // namespace shaftcut
