// What the shaft is used for, and the state it came in.
#include <algorithm>

#include "checks/check_parts.hpp"

namespace shaftcut {
namespace {

// Above this share of the rating the check warns: the project's own choice.
constexpr Fraction warning_share{4, 5};

// What a series carries at a speed: `power` · `speed_now` / `speed_stated` watts, the torque that it carries at `speed_stated`;
// where that is no more than the speed now, the power itself.
struct Carried {
    std::string series;
    std::int64_t power = 0;
    std::int64_t speed_stated = 1, speed_now = 1;
    bool exact = false;  // stated for this very speed

    std::int64_t watts() const { return power * speed_now / speed_stated; }
    // Whether `taken` watts are above this share of it; whole numbers, so that nothing is lost by rounding.
    bool exceeded_by(std::int64_t taken, Fraction share) const { return taken * speed_stated * share.denominator > power * speed_now * share.numerator; }
};

// By the rule for a speed that is not stated: the torque of the next higher stated one; above all of them the highest one's power.
std::optional<Carried> carried(const Series& series, int speed)
{
    const Rating* next = nullptr;
    const Rating* highest = nullptr;
    for (const Rating& rating : series.ratings) {
        if (rating.speed >= speed && (!next || rating.speed < next->speed)) next = &rating;
        if (!highest || rating.speed > highest->speed) highest = &rating;
    }
    if (!highest) return std::nullopt;
    if (next) return Carried{series.name, next->power, next->speed, speed, next->speed == speed};
    return Carried{series.name, highest->power, highest->speed, highest->speed, false};
}

// The weakest of what its joints' series carry; `unknown` where a half is of a series that says nothing, or of none.
struct Strength {
    std::optional<Carried> weakest;
    bool unknown = false;
};

Strength strength_of(const CheckInput& input, int speed)
{
    Strength strength;
    const auto take = [&](const Series* series) {
        const auto found = series ? carried(*series, speed) : std::nullopt;
        if (!found) strength.unknown = true;
        if (found && (!strength.weakest || found->watts() < strength.weakest->watts())) strength.weakest = found;
    };
    take(input.series);
    for (const Tube tube : both_tubes)
        if (const auto& other = input.job.shaft.halves[tube].series) take(other->name ? find_series(input.catalogue, *other->name) : nullptr);
    return strength;
}

RatingRule rule_of(const Carried& carried, int speed)
{
    if (carried.exact) return RatingRule::stated;
    return carried.speed_stated > speed ? RatingRule::next_higher : RatingRule::highest;
}

Check judged_rating(const Strength& strength, std::int64_t power, int speed)
{
    const Carried& weakest = *strength.weakest;
    Check check = passed(CheckId::rating, CheckUnit::kilowatt);
    check.value = power;
    check.limit = weakest.watts();
    const bool above = weakest.exceeded_by(power, {1, 1}), near = weakest.exceeded_by(power, warning_share);
    check.result = above ? CheckResult::fail : near ? CheckResult::warn : strength.unknown ? CheckResult::not_checked : CheckResult::pass;
    check.findings = {LoadTaken{power, weakest.watts(), weakest.series, speed, above ? LoadLevel::above : near ? LoadLevel::near : LoadLevel::within}};
    check.basis = {RatingOf{weakest.series, weakest.power, weakest.speed_stated, rule_of(weakest, speed)}, PlainBasis::load_warning};
    if (strength.unknown) {
        check.findings.emplace_back(PlainFinding::other_half_not_rated);
        check.basis.emplace_back(PlainBasis::half_without_rating);
    }
    return check;
}

bool says_anything(const Condition& condition)
{
    return condition.guard || condition.chains || condition.crosses || condition.tubes || condition.locks || condition.weld || condition.device || condition.phase || condition.slides;
}

using Found = std::vector<CheckFinding>;

// What refuses: nothing that is done to the lengths mends it.
Found refusing(const Condition& condition)
{
    Found found;
    if (condition.weld == Weld::welded) found.emplace_back(PlainFinding::welded);
    if (condition.weld == Weld::cracked) found.emplace_back(PlainFinding::cracked);
    if (condition.tubes == TubeState::bent) found.emplace_back(PlainFinding::tube_bent);
    if (condition.tubes == TubeState::twisted) found.emplace_back(PlainFinding::tube_twisted);
    if (condition.slides == Slides::no) found.emplace_back(PlainFinding::tubes_do_not_slide);
    return found;
}

void add_completeness(Found& found, const std::optional<Completeness>& state, PlainFinding missing, PlainFinding damaged)
{
    if (state == Completeness::missing) found.emplace_back(missing);
    if (state == Completeness::damaged) found.emplace_back(damaged);
}

Found warning(const Condition& condition)
{
    Found found;
    add_completeness(found, condition.guard, PlainFinding::guard_missing, PlainFinding::guard_damaged);
    add_completeness(found, condition.chains, PlainFinding::chain_missing, PlainFinding::chain_damaged);
    if (condition.crosses == CrossWear::worn) found.emplace_back(PlainFinding::cross_worn);
    if (condition.tubes == TubeState::dented) found.emplace_back(PlainFinding::tube_dented);
    if (condition.locks == LockState::stiff) found.emplace_back(PlainFinding::lock_stiff);
    if (condition.locks == LockState::damaged) found.emplace_back(PlainFinding::lock_damaged);
    if (condition.device == DeviceState::stuck) found.emplace_back(PlainFinding::device_stuck);
    if (condition.phase == Phase::turned) found.emplace_back(PlainFinding::out_of_phase);
    return found;
}

Found warnings_of(const Job& job)
{
    Found found;
    if (job.shaft.condition) found = warning(*job.shaft.condition);
    for (const Tube tube : both_tubes)
        if (job.shaft.halves[tube].guard_use != GuardUse::kept) found.emplace_back(HalfWithoutGuard{tube, job.shaft.halves[tube].guard_use});
    for (const std::string& tractor : job.circumstances.other_tractors) found.emplace_back(OtherTractor{tractor});
    return found;
}

}  // namespace

std::optional<std::int64_t> rated_power(const Series& series, int speed)
{
    const auto found = carried(series, speed);
    return found ? std::optional(found->watts()) : std::nullopt;
}

Check check_rating(const CheckInput& input)
{
    const CheckId id = CheckId::rating;
    const auto& power = input.job.circumstances.power;
    const auto& speed = input.job.shaft.speed;
    if (!power) return not_checked(id, PlainReason::power_not_stated);
    if (!speed) return not_checked(id, PlainReason::speed_not_stated);
    const Strength strength = strength_of(input, *speed);
    if (strength.weakest) return judged_rating(strength, *power, *speed);
    if (input.series) return not_checked(id, NoRating{input.series->name});
    return not_checked(id, PlainReason::no_known_series);
}

Check check_condition(const CheckInput& input)
{
    if (input.new_shaft) return not_checked(CheckId::condition, PlainReason::made_new);
    const auto& condition = input.job.shaft.condition;
    Check check = passed(CheckId::condition, CheckUnit::none);
    if (condition) check.contradictions = refusing(*condition);
    check.findings = warnings_of(input.job);
    const bool is_good = check.contradictions.empty() && check.findings.empty();
    if (is_good && !(condition && says_anything(*condition))) return not_checked(check.id, PlainReason::condition_not_stated);
    if (is_good) check.findings = {PlainFinding::looks_good};
    else check.result = check.contradictions.empty() ? CheckResult::warn : CheckResult::fail;
    check.basis = {PlainBasis::as_it_came_in};
    return check;
}

}  // namespace shaftcut
