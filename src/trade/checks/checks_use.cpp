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

std::string at_speed(std::int64_t speed) { return " at " + std::to_string(speed) + " min⁻¹"; }

std::string basis_of(const Carried& carried, int speed)
{
    const std::string stated = "series " + carried.series + ": " + kilowatts(carried.power) + at_speed(carried.speed_stated);
    const std::string rule = carried.exact ? "" : carried.speed_stated > speed ? ", the next higher speed that it states, and the torque of that" : ", the highest speed that it states";
    return stated + rule + "; warns above 80 % of it (the project's own choice)";
}

Check judged_rating(const Strength& strength, std::int64_t power, int speed)
{
    const Carried& weakest = *strength.weakest;
    Check check;
    check.id = CheckId::rating;
    check.unit = CheckUnit::kilowatt;
    check.value = power;
    check.limit = weakest.watts();
    const bool above = weakest.exceeded_by(power, {1, 1}), near = weakest.exceeded_by(power, warning_share);
    check.result = above ? CheckResult::fail : near ? CheckResult::warn : strength.unknown ? CheckResult::not_checked : CheckResult::pass;
    const std::string limit = kilowatts(weakest.watts()) + " that series " + weakest.series + " carries" + at_speed(speed);
    check.says = "The " + kilowatts(power) + " taken at the PTO " + (above ? "is more than the " : near ? "is more than 80 % of the " : "is within the ") + limit + ".";
    check.basis = basis_of(weakest, speed);
    if (strength.unknown) {
        check.says += " What its other half carries is not known.";
        check.basis += "; a half is of a series without a rating, or of none";
    }
    return check;
}

bool says_anything(const Condition& condition)
{
    return condition.guard || condition.chains || condition.crosses || condition.tubes || condition.locks || condition.weld || condition.device || condition.phase || condition.slides;
}

using Sentences = std::vector<std::string>;

// What refuses: nothing that is done to the lengths mends it.
Sentences refusing(const Condition& condition)
{
    Sentences found;
    if (condition.weld == Weld::welded) found.push_back("The shaft has been welded: put in new parts, do not cut it.");
    if (condition.weld == Weld::cracked) found.push_back("The shaft is cracked: put in new parts, do not cut it.");
    if (condition.tubes == TubeState::bent) found.push_back("A tube is bent: put in a new one.");
    if (condition.tubes == TubeState::twisted) found.push_back("A tube is twisted: put in a new one, and ask what overloaded it.");
    if (condition.slides == Slides::no) found.push_back("The tubes do not slide in each other, also when cleaned: nobody knows how far they close.");
    return found;
}

void add_completeness(Sentences& found, const std::optional<Completeness>& state, const std::string& missing, const std::string& damaged)
{
    if (state == Completeness::missing) found.push_back(missing);
    if (state == Completeness::damaged) found.push_back(damaged);
}

Sentences warning(const Condition& condition)
{
    Sentences found;
    add_completeness(found, condition.guard, "A guard is missing: the shaft must not run without it.", "A guard is damaged: put in what is broken before the shaft runs.");
    add_completeness(found, condition.chains, "A chain is missing: without it the guard turns with the shaft.", "A chain is damaged: put in a new one.");
    if (condition.crosses == CrossWear::worn) found.push_back("A cross is worn: put in a new one.");
    if (condition.tubes == TubeState::dented) found.push_back("A tube is dented: see that the dent lies in what is cut off, or put in a new tube.");
    if (condition.locks == LockState::stiff) found.push_back("A lock is stiff: clean and grease it until it snaps home.");
    if (condition.locks == LockState::damaged) found.push_back("A lock is damaged: put in a new one before the shaft runs.");
    if (condition.device == DeviceState::stuck) found.push_back("The overload device is stuck: free or replace it, it protects nothing.");
    if (condition.phase == Phase::turned) found.push_back("The yokes are not in one plane: put the tubes together in phase.");
    return found;
}

// A half's guard that is not used again, where the shaft's condition has not said so of the shaft.
void add_guards(Sentences& found, const JobShaft& shaft)
{
    for (const Tube tube : both_tubes) {
        const std::string half = std::string("The ") + to_word(tube) + " half";
        if (shaft.halves[tube].guard_use == GuardUse::none) found.push_back(half + " has no guard: the shaft must not run without one.");
        if (shaft.halves[tube].guard_use == GuardUse::damaged) found.push_back(half + "'s guard is damaged and not used again: fit a new one.");
    }
}

Sentences warnings_of(const Job& job)
{
    Sentences found;
    if (job.shaft.condition) found = warning(*job.shaft.condition);
    add_guards(found, job.shaft);
    for (const std::string& tractor : job.circumstances.other_tractors)
        found.push_back("Another tractor drives the machine and was not measured: " + tractor + ". Measure it before this shaft runs behind it.");
    return found;
}

}  // namespace

std::optional<std::int64_t> rated_power(const Series& series, int speed)
{
    const auto found = carried(series, speed);
    return found ? std::optional(found->watts()) : std::nullopt;
}

// Watts print as micrometres do: thousandths of the unit shown.
std::string kilowatts(std::int64_t watts) { return figure(Length::micrometres(watts), Units::mm, Toward::nearest, 3) + " kW"; }

Check check_rating(const CheckInput& input)
{
    const CheckId id = CheckId::rating;
    const auto& power = input.job.circumstances.power;
    const auto& speed = input.job.shaft.speed;
    if (!power) return not_checked(id, "the job does not state the power taken at the PTO");
    if (!speed) return not_checked(id, "the job does not state the speed");
    const Strength strength = strength_of(input, *speed);
    if (strength.weakest) return judged_rating(strength, *power, *speed);
    return not_checked(id, input.series ? "series " + input.series->name + " states no rating" : "of a shaft of no known series no rating is known");
}

Check check_condition(const CheckInput& input)
{
    if (input.new_shaft) return not_checked(CheckId::condition, "the shaft is made new");
    const auto& condition = input.job.shaft.condition;
    const Sentences fails = condition ? refusing(*condition) : Sentences();
    const Sentences warns = warnings_of(input.job);
    const bool is_stated = condition && says_anything(*condition);
    if (fails.empty() && warns.empty() && !is_stated) return not_checked(CheckId::condition, "nothing is said of the shaft as it came in");
    Check check;
    check.id = CheckId::condition;
    check.result = !fails.empty() ? CheckResult::fail : !warns.empty() ? CheckResult::warn : CheckResult::pass;
    check.says = fails.empty() && warns.empty() ? "What was looked at is good." : joined(fails) + (fails.empty() || warns.empty() ? "" : " ") + joined(warns);
    check.contradictions = fails;
    check.basis = "what the job says of the shaft as it came in, and of the tractors that drive the machine";
    return check;
}

}  // namespace shaftcut
