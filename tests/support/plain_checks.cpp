#include <algorithm>
#include <cmath>

#include "support/plain_method.hpp"

namespace shaftcut::test::plain {
namespace {

CheckResult graded(bool fails, bool warns)
{
    return fails ? CheckResult::fail : warns ? CheckResult::warn : CheckResult::pass;
}

// Of the defaults of method 4, in the order of the enumerators: {numerator, denominator, greater is looser}.
struct Default { std::int64_t top, bottom; bool greater_is_looser; };
constexpr std::array<Default, limit_count> defaults{{
    {40000, 1, false}, {25000, 1, false}, {1, 2, false}, {1, 3, false}, {150000, 1, false}, {100000, 1, false},
    {50000, 1, false}, {25000, 1, true}, {10000, 1, true}, {70000, 1, true},
    {25000, 1, true}, {35000, 1, true}, {90000, 1, true}, {25000, 1, true}, {70000, 1, true}, {70000, 1, true}, {10000, 1, true}}};

LimitValue workshop_limit(const PlainShaft& shaft, std::size_t index)
{
    const auto& set = shaft.workshop->limits[static_cast<Limit>(index)];
    return set ? set->value : LimitValue{defaults[index].top, defaults[index].bottom};
}

Um length_limit(const PlainShaft& shaft, Limit limit) { return limit_of(shaft, limit).numerator; }

// The limit as that fraction of the new closed overlap, rounded to the micrometre.
Um fraction_limit(const PlainShaft& shaft, Limit limit)
{
    const LimitValue part = limit_of(shaft, limit);
    const long double whole = static_cast<long double>(shaft.cut->half[0] + shaft.cut->half[1] - shaft.cut->closed);
    return std::llround(whole * static_cast<long double>(part.numerator) / static_cast<long double>(part.denominator));
}

bool halves_contradict(const PlainShaft& shaft)
{
    const Um c = shaft.closed.value;
    const auto& [a, b] = shaft.halves;
    if (a.length && b.length && !below(c, a.length->value + b.length->value)) return true;
    for (const PlainHalf& half : shaft.halves) {
        if (half.length && !below(half.length->value, c)) return true;
        if (half.guard && !below(half.guard->value, c)) return true;
        if (half.length && half.seat && below(half.length->value, *half.seat)) return true;
    }
    return false;
}

PlainCheck consistency(const PlainShaft& shaft)
{
    bool fails = halves_contradict(shaft);
    bool warns = shaft.shoulders_disagree || any_limit_loosened(shaft);
    for (const PlainFit& fit : shaft.fits) {
        fails |= fit_contradicts(fit) || !fit.shortest;  // lengths between grooves that cannot be converted refuse the job
        warns |= fit.unbent || disputed(fit);
    }
    return {graded(fails, warns), {}, {}, {}};
}

PlainCheck closing_clearance(const PlainShaft& shaft)
{
    if (!shaft.cut) return {};
    const Um value = shaft.deciding.shortest->value - shaft.cut->closed;
    Um doubt = shaft.deciding.shortest->plus_minus + shaft.closed.plus_minus;
    const bool sawn = (shaft.cut->sets_closed[0] && shaft.cut->cut[0] > 0) || (shaft.cut->sets_closed[1] && shaft.cut->cut[1] > 0);
    if (sawn) doubt += shaft.workshop->saw.plus_minus.um();
    const Um worst = value - doubt;
    const bool fails = below(value, shaft.clearance) || worst < 10;
    return {graded(fails, below(worst, length_limit(shaft, Limit::closing_clearance_floor))), value, worst, shaft.clearance};
}

PlainCheck overlap(const PlainShaft& shaft, std::size_t range, Um limit)
{
    const MaybeFigure& longest = shaft.deciding.longest[range];
    if (!longest) return {};
    Um doubt = longest->plus_minus;
    for (std::size_t i = 0; i < 2; ++i)
        doubt += shaft.halves[i].length->plus_minus + (shaft.cut->cut[i] > 0 ? shaft.workshop->saw.plus_minus.um() : 0);
    const Um value = shaft.cut->half[0] + shaft.cut->half[1] - longest->value;
    return {graded(below(value, limit), below(value - doubt, limit)), value, value - doubt, limit};
}

PlainCheck overlap_working(const PlainShaft& shaft)
{
    return shaft.cut ? overlap(shaft, 0, fraction_limit(shaft, Limit::overlap_working)) : PlainCheck{};
}

PlainCheck overlap_turning(const PlainShaft& shaft)
{
    if (!shaft.halves[0].length || !shaft.halves[1].length) return {CheckResult::fail, {}, {}, {}};
    if (!shaft.cut) return {};
    return overlap(shaft, 1, std::max(fraction_limit(shaft, Limit::overlap_turning), length_limit(shaft, Limit::least_overlap_turning)));
}

PlainCheck overlap_standing(const PlainShaft& shaft)
{
    return shaft.cut ? overlap(shaft, 2, length_limit(shaft, Limit::least_overlap_standing)) : PlainCheck{};
}

PlainCheck tube_left(const PlainShaft& shaft)
{
    if (!shaft.cut) return {};
    Maybe least;
    bool unknown = false;
    for (std::size_t i = 0; i < 2; ++i) {
        if (shaft.cut->cut[i] == 0) continue;
        const PlainHalf& half = shaft.halves[i];
        if (!half.seat || !half.least_tube) { unknown = true; continue; }
        const Um left = shaft.cut->half[i] - *half.seat - *half.least_tube;
        least = std::min(least.value_or(left), left);
    }
    if (least && below(*least, 0)) return {CheckResult::fail, least, {}, 0};
    if (unknown) return {};
    return {CheckResult::pass, least, {}, 0};
}

PlainCheck shortening_allowed(const PlainShaft& shaft)
{
    if (!shaft.cut) return {};
    bool fails = false, warns = false;
    for (std::size_t i = 0; i < 2; ++i) {
        const PlainHalf& half = shaft.halves[i];
        fails |= half.hole && below(shaft.cut->half[i], *half.hole);
        fails |= shaft.cut->cut[i] > 0 && half.forbidden;
        warns |= shaft.cut->cut[i] > 0 && (half.coated || half.end_stop);
        warns |= half.one_chain && below(length_limit(shaft, Limit::one_chain_shortening), shaft.cut->guard_cut[i]);
    }
    return {graded(fails, warns), {}, {}, {}};
}

PlainCheck guard_clearance(const PlainShaft& shaft)
{
    if (!shaft.cut) return {};
    const auto& guard = shaft.cut->guard_half;
    const auto& [a, b] = shaft.halves;
    if (!guard[0] || !guard[1] || !a.guard_shoulder || !b.guard_shoulder) return {};
    const Um value = shaft.deciding.shortest->value - std::max(*guard[0] + *b.guard_shoulder, *guard[1] + *a.guard_shoulder);
    return {graded(below(value, 0), below(value, shaft.clearance)), value, {}, shaft.clearance};
}

PlainCheck guard_cover(const PlainShaft& shaft)
{
    if (!shaft.cut || !shaft.cut->guard_half[0] || !shaft.cut->guard_half[1]) return {};
    MaybeFigure longest;
    for (const MaybeFigure& one : shaft.deciding.longest)
        if (one && (!longest || one->value > longest->value || (one->value == longest->value && one->plus_minus > longest->plus_minus)))
            longest = one;
    if (!longest) return {};
    Um doubt = longest->plus_minus;
    for (std::size_t i = 0; i < 2; ++i)
        doubt += shaft.halves[i].guard->plus_minus + (shaft.cut->guard_cut[i] > 0 ? shaft.workshop->saw.plus_minus.um() : 0);
    const Um value = *shaft.cut->guard_half[0] + *shaft.cut->guard_half[1] - longest->value;
    const Um limit = length_limit(shaft, Limit::guard_overlap);
    return {graded(below(value - doubt, 0), below(value, limit)), value, value - doubt, limit};
}

PlainCheck guard_setback(const PlainShaft& shaft)
{
    if (!shaft.cut) return {};
    Maybe least, greatest;
    for (std::size_t i = 0; i < 2; ++i) {
        if (!shaft.cut->guard_half[i]) continue;
        const Um setback = shaft.cut->half[i] - *shaft.cut->guard_half[i];
        least = std::min(least.value_or(setback), setback);
        greatest = std::max(greatest.value_or(setback), setback);
    }
    if (!least) return {};
    const Um value = *least < 0 ? *least : *greatest;
    const Um limit = length_limit(shaft, Limit::guard_setback);
    return {graded(false, below(value, 0) || below(limit, value)), value, {}, limit};
}

PlainCheck joint_angle(const PlainShaft& shaft, std::size_t end)
{
    const bool wide = shaft.job->shaft.ends[static_cast<End>(end)].joint == JointKind::wide_angle;
    const std::array limits = wide ? std::array{Limit::angle_wide_working, Limit::angle_wide_turning, Limit::angle_wide_standing}
                                   : std::array{Limit::angle_standard_working, Limit::angle_standard_turning, Limit::angle_standard_standing};
    PlainCheck check;
    bool fails = false, warns = false;
    for (std::size_t range = 0; range < 3; ++range) {
        const Maybe angle = shaft.deciding.angle[end][range];
        if (!angle) continue;
        const Um limit = length_limit(shaft, limits[range]);
        if (!check.value || *angle - limit > *check.value - *check.limit) { check.value = angle; check.limit = limit; }
        fails |= *angle > 90000 || *angle > length_limit(shaft, limits[std::max<std::size_t>(range, 1)]);
        warns |= range == 0 && *angle > limit;
    }
    if (check.value) check.result = graded(fails, warns);
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

PlainCheck locking(const PlainShaft& shaft)
{
    bool exposed = false, unknown = false, unstated = false;
    for (const End end : both_ends) {
        const auto& lock = shaft.job->shaft.ends[end].lock;
        exposed |= shaft.job->shaft.role == Role::primary && (lock == Lock::exposed_collar || lock == Lock::exposed_push_pin);
        unknown |= lock == Lock::unknown;
        unstated |= !lock;
    }
    const bool old = shaft.job->shaft.built && *shaft.job->shaft.built < 2021;
    if (unstated && !exposed && !unknown) return {};
    return {graded(exposed && !old, exposed || unknown), {}, {}, {}};
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

}  // namespace

LimitValue limit_of(const PlainShaft& shaft, Limit limit)
{
    if (const auto& set = shaft.job->limits[limit]) return set->value;
    if (shaft.series)
        if (const auto& set = shaft.series->limits[limit]) return set->value;
    return workshop_limit(shaft, static_cast<std::size_t>(limit));
}

bool any_limit_loosened(const PlainShaft& shaft)
{
    for (std::size_t i = 0; i < limit_count; ++i) {
        const auto& set = shaft.job->limits[static_cast<Limit>(i)];
        if (!set) continue;
        const LimitValue workshop = workshop_limit(shaft, i);
        const std::int64_t job_side = set->value.numerator * workshop.denominator;
        const std::int64_t workshop_side = workshop.numerator * set->value.denominator;
        if (defaults[i].greater_is_looser ? job_side > workshop_side : job_side < workshop_side) return true;
    }
    return false;
}

std::array<PlainCheck, 18> plain_checks(const PlainShaft& shaft)
{
    return {consistency(shaft), closing_clearance(shaft), overlap_working(shaft), overlap_turning(shaft), overlap_standing(shaft),
            tube_left(shaft), shortening_allowed(shaft), guard_clearance(shaft), guard_cover(shaft), guard_setback(shaft),
            joint_angle(shaft, 0), joint_angle(shaft, 1), irregularity(shaft), locking(shaft), connection(shaft), overload_device(shaft)};
}

}  // namespace shaftcut::test::plain
