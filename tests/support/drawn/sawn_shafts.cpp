// What an answer does to the true shaft.
#include <algorithm>
#include <cstdlib>

#include "support/drawn/true_shafts.hpp"

namespace shaftcut::test {
namespace {

struct Ends {
    Um longest = 0, shortest = 0;
};

// Marked from the free end, what comes off is right but for the saw; marked from the cross, what is kept is.
Ends sawn(Um truth, Um cut, Um kept, Um saw)
{
    if (cut == 0) return {truth, truth};
    return {std::max(truth - cut, kept) + saw, std::min(truth - cut, kept) - saw};
}

Um um(const std::optional<Length>& length) { return length ? length->um() : 0; }

std::optional<Um> greatest(const TrueShaft& shaft, const Promise& promise, std::size_t range)
{
    if (!promise.longest_known[range]) return std::nullopt;
    Um found = shaft.fits[0].longest[range];
    for (const TrueFit& fit : shaft.fits) found = std::max(found, fit.longest[range]);
    return found;
}

std::optional<Um> true_length(const TrueShaft& shaft, const Promise& promise, Confirmed what)
{
    switch (what) {
    case Confirmed::closed: return shaft.closed() + promise.in_line_sum;
    case Confirmed::closed_inner_cross: return shaft.closed();
    case Confirmed::inner_half: return shaft.half[0];
    case Confirmed::outer_half: return shaft.half[1];
    case Confirmed::inner_shoulder: return shaft.shoulder[0];
    case Confirmed::outer_shoulder: return shaft.shoulder[1];
    default: return std::nullopt;
    }
}

// A check that is not made promises nothing.
template <class Checks>
void take_checks(Promise& promise, const Checks& checks)
{
    for (std::size_t i = 0; i < promise.worst.size(); ++i)
        if (checks[i].result == CheckResult::pass || checks[i].result == CheckResult::warn) promise.worst[i] = checks[i].worst;
}

}  // namespace

Promise promise_of(const WorkOrder& order)
{
    Promise found;
    found.verdict = order.verdict;
    if (!order.cut) return found;
    const CutPlan& plan = order.cut->plan;
    for (const Tube tube : both_tubes) {
        const std::size_t i = static_cast<std::size_t>(tube);
        found.cut[i] = um(plan.cut[tube]);
        found.kept[i] = um(plan.half[tube]);
        found.guard_cut[i] = um(plan.guard_cut[tube]);
        if (plan.guard_half[tube]) found.guard_kept[i] = um(*plan.guard_half[tube]);
    }
    found.saw = order.saw.plus_minus.um();
    found.in_line_sum = order.reading.closed.value.um() - order.reading.shaft.closed.value.um();
    take_checks(found, order.checks);
    for (const Range range : all_ranges) found.longest_known[static_cast<std::size_t>(range)] = order.fit.longest[range].has_value();
    const auto figure = [](const std::optional<Length>& length) { return length ? std::optional(length->um()) : std::nullopt; };
    for (const Confirmation& one : order.confirm) found.confirm.push_back({one.what, figure(one.expected), figure(one.plus_minus)});
    return found;
}

Promise promise_of(const plain::PlainAnswer& answer)
{
    Promise found;
    found.verdict = answer.verdict;
    if (answer.verdict == Verdict::refused) return found;
    const plain::PlainCut& plan = *answer.shaft.cut;
    found.cut = plan.cut;
    found.kept = plan.half;
    for (std::size_t i = 0; i < 2; ++i) found.guard_cut[i] = plan.guard_cut[i].value_or(0);
    found.guard_kept = plan.guard_half;
    found.saw = answer.shaft.workshop->saw.plus_minus.um();
    found.in_line_sum = answer.shaft.closed_as_stated.value - answer.shaft.closed.value;
    take_checks(found, answer.checks);
    for (std::size_t range = 0; range < 3; ++range) found.longest_known[range] = answer.shaft.deciding.longest[range].has_value();
    for (const plain::PlainConfirmation& one : answer.confirm) found.confirm.push_back({one.what, one.expected, one.plus_minus});
    return found;
}

Sawn saw(const TrueShaft& shaft, const Promise& promise)
{
    std::array<Ends, 2> half, guard;
    for (std::size_t i = 0; i < 2; ++i) {
        half[i] = sawn(shaft.half[i], promise.cut[i], promise.kept[i], promise.saw);
        guard[i] = sawn(shaft.guard[i], promise.guard_cut[i], promise.guard_kept[i].value_or(0), promise.saw);
    }
    Um shortest = shaft.fits[0].shortest;
    for (const TrueFit& fit : shaft.fits) shortest = std::min(shortest, fit.shortest);
    Sawn found;
    found.clearance = shortest - std::max(half[0].longest + shaft.shoulder[1], half[1].longest + shaft.shoulder[0]);
    std::optional<Um> longest_of_all;
    for (std::size_t range = 0; range < 3; ++range) {
        const auto longest = greatest(shaft, promise, range);
        if (!longest) continue;
        found.overlap[range] = half[0].shortest + half[1].shortest - *longest;
        longest_of_all = std::max(longest_of_all.value_or(*longest), *longest);
    }
    if (promise.guard_kept[0] && promise.guard_kept[1] && longest_of_all)
        found.guard_cover = guard[0].shortest + guard[1].shortest - *longest_of_all;
    return found;
}

bool confirmation_stops(const TrueShaft& shaft, const Promise& promise)
{
    return std::any_of(promise.confirm.begin(), promise.confirm.end(), [&](const Promise::Asked& one) {
        const auto truth = true_length(shaft, promise, one.what);
        return truth && one.expected && std::abs(*truth - *one.expected) > *one.plus_minus + 10;
    });
}

}  // namespace shaftcut::test
