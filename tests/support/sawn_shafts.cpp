// What an answer does to the true shaft.
#include <algorithm>
#include <cstdlib>

#include "support/true_shafts.hpp"

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

Um um(Length length) { return length.um(); }
Um um(const std::optional<Length>& length) { return length ? length->um() : 0; }

std::optional<Um> greatest(const TrueShaft& shaft, const WorkOrder& order, std::size_t range)
{
    if (!order.fit.longest[static_cast<Range>(range)]) return std::nullopt;
    Um found = shaft.fits[0].longest[range];
    for (const TrueFit& fit : shaft.fits) found = std::max(found, fit.longest[range]);
    return found;
}

std::optional<Um> true_length(const TrueShaft& shaft, const WorkOrder& order, Confirmed what)
{
    switch (what) {
    case Confirmed::closed: return shaft.closed() + order.reading.closed.value.um() - order.reading.shaft.closed.value.um();
    case Confirmed::closed_inner_cross: return shaft.closed();
    case Confirmed::inner_half: return shaft.half[0];
    case Confirmed::outer_half: return shaft.half[1];
    case Confirmed::inner_shoulder: return shaft.shoulder[0];
    case Confirmed::outer_shoulder: return shaft.shoulder[1];
    default: return std::nullopt;
    }
}

}  // namespace

Sawn saw(const TrueShaft& shaft, const WorkOrder& order)
{
    const CutPlan& plan = order.cut->plan;
    const Um saw = order.saw.plus_minus.um();
    std::array<Ends, 2> half, guard;
    for (std::size_t i = 0; i < 2; ++i) {
        const Tube tube = static_cast<Tube>(i);
        half[i] = sawn(shaft.half[i], um(plan.cut[tube]), um(plan.half[tube]), saw);
        guard[i] = sawn(shaft.guard[i], um(plan.guard_cut[tube]), um(plan.guard_half[tube]), saw);
    }
    Um shortest = shaft.fits[0].shortest;
    for (const TrueFit& fit : shaft.fits) shortest = std::min(shortest, fit.shortest);
    Sawn found;
    found.clearance = shortest - std::max(half[0].longest + shaft.shoulder[1], half[1].longest + shaft.shoulder[0]);
    std::optional<Um> longest_of_all;
    for (std::size_t range = 0; range < 3; ++range) {
        const auto longest = greatest(shaft, order, range);
        if (!longest) continue;
        found.overlap[range] = half[0].shortest + half[1].shortest - *longest;
        longest_of_all = std::max(longest_of_all.value_or(*longest), *longest);
    }
    if (plan.guard_half[Tube::inner] && plan.guard_half[Tube::outer] && longest_of_all)
        found.guard_cover = guard[0].shortest + guard[1].shortest - *longest_of_all;
    return found;
}

bool confirmation_stops(const TrueShaft& shaft, const WorkOrder& order)
{
    for (const Confirmation& one : order.confirm) {
        const auto truth = true_length(shaft, order, one.what);
        if (truth && one.expected && std::abs(*truth - one.expected->um()) > one.plus_minus->um() + 10) return true;
    }
    return false;
}

}  // namespace shaftcut::test
