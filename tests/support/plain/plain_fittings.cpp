// The checks of joints, locks, connections, power and condition, in the second implementation.
#include <algorithm>
#include <cmath>

#include "support/plain/plain_method.hpp"

namespace shaftcut::test::plain {

PlainCheck joint_angle(const PlainShaft& shaft, std::size_t end)
{
    const bool wide = shaft.job->shaft.ends[static_cast<End>(end)].joint == JointKind::wide_angle;
    const std::array limits = wide ? std::array{Limit::angle_wide_working, Limit::angle_wide_turning, Limit::angle_wide_standing}
                                   : std::array{Limit::angle_standard_working, Limit::angle_standard_turning, Limit::angle_standard_standing};
    PlainCheck check;
    bool fails = false, warns = false, left_out = false;
    for (std::size_t range = 0; range < 3; ++range) {
        const Maybe angle = shaft.deciding.angle[end][range];
        left_out |= shaft.deciding.angle_left_out[end][range];
        if (!angle) continue;
        const Um limit = length_limit(shaft, limits[range]);
        if (!check.value || *angle - limit > *check.value - *check.limit) { check.value = angle; check.limit = limit; }
        fails |= *angle > 90000 || *angle > length_limit(shaft, limits[std::max<std::size_t>(range, 1)]);
        warns |= range == 0 && *angle > limit && !shaft.deciding.angle_left_out[end][range];
    }
    if (check.value) check.result = graded(fails, warns);
    if (left_out && check.result == CheckResult::pass) check.result = CheckResult::not_checked;
    return check;
}

// In per cent of the mean speed, thousandths; a wide-angle joint turns evenly.
PlainCheck irregularity(const PlainShaft& shaft)
{
    const long double pi = 3.141592653589793238462643383279502884L;
    Um greatest = 0;
    for (const PlainFit& fit : shaft.fits) {
        if (machine_ripples(fit, *shaft.job)) {
            if (!fit.machine->ripple) return {};
            greatest = std::max(greatest, *fit.machine->ripple);
            continue;
        }
        std::array<long double, 2> cosine{1, 1};
        for (std::size_t end = 0; end < 2; ++end) {
            if (shaft.job->shaft.ends[static_cast<End>(end)].joint == JointKind::wide_angle) continue;
            if (!fit.angle[end][0] || *fit.angle[end][0] >= 90000) return {};
            cosine[end] = std::cos(static_cast<long double>(*fit.angle[end][0]) * pi / 180000);
        }
        const long double equal_to = std::min(cosine[0], cosine[1]) / std::max(cosine[0], cosine[1]);
        greatest = std::max<Um>(greatest, std::llround((1 / equal_to - equal_to) * 100000));
    }
    const Um limit = limit_of(shaft, Limit::irregularity).numerator;
    return {graded(false, greatest > limit), greatest, {}, limit};
}

bool exposed_lock(const PlainShaft& shaft)
{
    if (shaft.job->shaft.role == Role::secondary) return false;
    for (const End end : both_ends) {
        const auto& lock = shaft.job->shaft.ends[end].lock;
        if (lock == Lock::exposed_collar || lock == Lock::exposed_push_pin) return true;
    }
    return false;
}

PlainCheck locking(const PlainShaft& shaft)
{
    const bool exposed = exposed_lock(shaft);
    bool unknown = false, unstated = false;
    for (const End end : both_ends) {
        unknown |= shaft.job->shaft.ends[end].lock == Lock::unknown;
        unstated |= !shaft.job->shaft.ends[end].lock;
    }
    if (unstated && !exposed && !unknown) return {};
    return {graded(exposed && shaft.job->shaft.built.value_or(0) >= 2021, exposed || unknown), {}, {}, {}};
}

PlainCheck connection(const PlainShaft& shaft)
{
    bool fails = false, warns = false;
    bool unknown = false;
    for (const End end : both_ends) {
        const JobEnd& job_end = shaft.job->shaft.ends[end];
        if (!job_end.connection || !job_end.onto) unknown = true;
        else fails |= *job_end.connection != *job_end.onto;
        if (!job_end.connection || !shaft.job->shaft.speed) continue;
        for (const Connection& known : shaft.catalogue->connections)
            if (known.name == *job_end.connection)
                warns |= !known.speeds.empty() && std::find(known.speeds.begin(), known.speeds.end(), *shaft.job->shaft.speed) == known.speeds.end();
    }
    if (!fails && !warns && unknown) return {};
    return {graded(fails, warns), {}, {}, {}};
}

PlainCheck overload_device(const PlainShaft& shaft)
{
    const auto& device = shaft.job->shaft.ends[End::tractor].device;
    if (shaft.job->shaft.role == Role::secondary) return {CheckResult::pass, {}, {}, {}};
    if (!device) return {};
    return {graded(*device != Device::none, false), {}, {}, {}};
}

// What a series carries at this speed, in watts, before rounding: times / over.
struct Carries {
    std::int64_t times = 0, over = 1;
};

std::optional<Carries> carries(const Series* series, int speed)
{
    if (!series || series->ratings.empty()) return std::nullopt;
    const Rating* next = nullptr;     // the lowest speed that is not under the job's
    const Rating* highest = nullptr;
    for (const Rating& one : series->ratings) {
        if (one.speed >= speed && (!next || one.speed < next->speed)) next = &one;
        if (!highest || one.speed > highest->speed) highest = &one;
    }
    return next ? Carries{next->power * speed, next->speed} : Carries{highest->power, 1};
}

// A half of another series carries what that one does: the weakest counts, and what is not known of one keeps the check from passing.
PlainCheck rating(const PlainShaft& shaft)
{
    const auto& power = shaft.job->circumstances.power;
    const auto& speed = shaft.job->shaft.speed;
    if (!power || !speed) return {};
    std::vector<const Series*> all{shaft.series};
    for (const JobHalf& half : {shaft.job->shaft.halves[Tube::inner], shaft.job->shaft.halves[Tube::outer]})
        if (half.series) all.push_back(half.series->name ? find_series(*shaft.catalogue, *half.series->name) : nullptr);
    std::optional<Carries> least;
    bool all_known = true;
    for (const Series* one : all) {
        const auto found = carries(one, *speed);
        all_known = all_known && found;
        if (found && (!least || found->times * least->over < least->times * found->over)) least = found;
    }
    if (!least) return {};
    const bool above = *power * least->over > least->times, near = 5 * *power * least->over > 4 * least->times;
    return {above || near || all_known ? graded(above, near) : CheckResult::not_checked, *power, {}, least->times / least->over};
}

PlainCheck condition(const PlainShaft& shaft)
{
    const auto& seen = shaft.job->shaft.condition;
    bool warns = !shaft.job->circumstances.other_tractors.empty() || !shaft.halves[0].guard_used || !shaft.halves[1].guard_used;
    bool fails = false, said = false;
    if (seen) {
        said = seen->guard || seen->chains || seen->crosses || seen->tubes || seen->locks || seen->weld || seen->device || seen->phase || seen->slides;
        fails = seen->weld.value_or(Weld::none) != Weld::none || seen->tubes == TubeState::bent || seen->tubes == TubeState::twisted ||
                seen->slides == Slides::no;
        warns |= seen->guard.value_or(Completeness::complete) != Completeness::complete;
        warns |= seen->chains.value_or(Completeness::complete) != Completeness::complete;
        warns |= seen->crosses == CrossWear::worn || seen->tubes == TubeState::dented || seen->device == DeviceState::stuck;
        warns |= seen->phase == Phase::turned || seen->locks.value_or(LockState::good) != LockState::good;
    }
    if (!said && !warns) return {};
    return {graded(fails, warns), {}, {}, {}};
}

}  // namespace shaftcut::test::plain
