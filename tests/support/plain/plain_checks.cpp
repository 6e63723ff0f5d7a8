// The checks of lengths, in the second implementation.
#include <algorithm>
#include <cmath>

#include "support/plain/plain_method.hpp"

namespace shaftcut::test::plain {
namespace {

// The limit as that fraction of the new closed overlap, rounded to the micrometre.
Um fraction_limit(const PlainShaft& shaft, Limit limit)
{
    const LimitValue part = limit_of(shaft, limit);
    const long double whole = static_cast<long double>(shaft.cut->half[0] + shaft.cut->half[1] - shaft.cut->closed);
    return std::llround(whole * static_cast<long double>(part.numerator) / static_cast<long double>(part.denominator));
}

// A range that one of several fits leaves out can fail its check, and never pass it.
PlainCheck overlap(const PlainShaft& shaft, std::size_t range, Um limit)
{
    const auto& longest = shaft.deciding.longest[range];
    if (!longest) return {};
    Um doubt = 0;
    for (std::size_t i = 0; i < 2; ++i)
        doubt += shaft.halves[i].length->plus_minus + (shaft.cut->cut[i] > 0 ? shaft.workshop->saw.plus_minus.um() : 0);
    const Um both = shaft.cut->half[0] + shaft.cut->half[1];
    const Um value = both - longest->longest;
    const Um worst = both - longest->at_most - doubt;
    const CheckResult result = graded(below(value, limit), below(worst, limit));
    return {longest->at_least_only && result != CheckResult::fail ? CheckResult::not_checked : result, value, worst, limit};
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
        warns |= half.one_chain && below(length_limit(shaft, Limit::one_chain_shortening), shaft.cut->guard_cut[i].value_or(0));
    }
    return {graded(fails, warns), {}, {}, {}};
}

PlainCheck guard_clearance(const PlainShaft& shaft)
{
    if (!shaft.cut) return {};
    const auto& guard = shaft.cut->guard_half;
    const auto& [a, b] = shaft.halves;
    if (!guard[0] || !guard[1] || !a.guard_shoulder || !b.guard_shoulder) return {};
    const Um value = *shaft.deciding.shortest - std::max(*guard[0] + *b.guard_shoulder, *guard[1] + *a.guard_shoulder);
    return {graded(below(value, 0), below(value, shaft.clearance)), value, {}, shaft.clearance};
}

bool guard_cut_away(const PlainShaft& shaft)
{
    for (std::size_t i = 0; i < 2; ++i) {
        const Maybe& kept = shaft.cut->guard_half[i];
        if (kept && *shaft.cut->guard_cut[i] > 0 && below(*kept, shaft.halves[i].guard_seat.value_or(0) + 50'000)) return true;
    }
    return false;
}

std::optional<PlainReach> greatest_known(const PlainDeciding& deciding)
{
    std::optional<PlainReach> all;
    for (const auto& one : deciding.longest) {
        if (!one) continue;
        if (!all) all = one;
        else all = {std::max(all->longest, one->longest), std::max(all->at_most, one->at_most), all->at_least_only || one->at_least_only};
    }
    return all;
}

PlainCheck guard_cover(const PlainShaft& shaft)
{
    if (!shaft.cut) return {};
    const CheckResult otherwise = guard_cut_away(shaft) ? CheckResult::fail : CheckResult::not_checked;
    const auto longest = greatest_known(shaft.deciding);
    if (!shaft.cut->guard_half[0] || !shaft.cut->guard_half[1] || !longest) return {otherwise, {}, {}, {}};
    Um doubt = 0;
    for (std::size_t i = 0; i < 2; ++i)
        doubt += shaft.halves[i].guard->plus_minus + (*shaft.cut->guard_cut[i] > 0 ? shaft.workshop->saw.plus_minus.um() : 0);
    const Um both = *shaft.cut->guard_half[0] + *shaft.cut->guard_half[1];
    const Um value = both - longest->longest;
    const Um worst = both - longest->at_most - doubt;
    const Um limit = length_limit(shaft, Limit::guard_overlap);
    const CheckResult result = graded(otherwise == CheckResult::fail || below(worst, 0), below(value, limit));
    return {longest->at_least_only && result != CheckResult::fail ? CheckResult::not_checked : result, value, worst, limit};
}

PlainCheck guard_setback(const PlainShaft& shaft)
{
    if (!shaft.cut || !shaft.halves[0].guard_used || !shaft.halves[1].guard_used) return {};
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

// Beside lengths that contradict each other no length passes.
void doubt_lengths(std::array<PlainCheck, check_count>& checks)
{
    if (checks[0].result != CheckResult::fail) return;
    for (const CheckId id : {CheckId::closing_clearance, CheckId::overlap_working, CheckId::overlap_turning, CheckId::overlap_standing,
                             CheckId::tube_left, CheckId::guard_clearance, CheckId::guard_cover, CheckId::guard_setback}) {
        PlainCheck& check = checks[static_cast<std::size_t>(id)];
        if (check.result != CheckResult::fail) check.result = CheckResult::not_checked;
    }
}

}  // namespace

CheckResult graded(bool fails, bool warns)
{
    return fails ? CheckResult::fail : warns ? CheckResult::warn : CheckResult::pass;
}

std::array<PlainCheck, check_count> plain_checks(const PlainShaft& shaft)
{
    std::array<PlainCheck, check_count> checks{
        consistency(shaft), closing_clearance(shaft), overlap_working(shaft), overlap_turning(shaft), overlap_standing(shaft), tube_left(shaft),
        shortening_allowed(shaft), guard_clearance(shaft), guard_cover(shaft), guard_setback(shaft), joint_angle(shaft, 0), joint_angle(shaft, 1),
        irregularity(shaft), locking(shaft), connection(shaft), overload_device(shaft), rating(shaft), condition(shaft)};
    doubt_lengths(checks);
    return checks;
}

}  // namespace shaftcut::test::plain
