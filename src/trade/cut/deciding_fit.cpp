// Of several tractors and machines, the lengths and angles that decide.
#include <algorithm>

#include "shaftcut/trade/cut/datum.hpp"

namespace shaftcut {
namespace {

// The least shortest, with the ± that reaches down to the least that any of them may be.
void decide_shortest(Fit& decides, const std::vector<FitReading>& fits)
{
    Length least_at_worst;
    for (const FitReading& reading : fits) {
        const Fit& fit = reading.fit;
        if (!fit.shortest) {
            decides.shortest.reset();
            return;
        }
        const Length at_worst = fit.shortest->value - fit.shortest->plus_minus;
        least_at_worst = decides.shortest ? std::min(least_at_worst, at_worst) : at_worst;
        if (decides.shortest && fit.shortest->value >= decides.shortest->value) continue;
        decides.shortest = fit.shortest;
        decides.shortest_place = fit.shortest_place;
    }
    decides.shortest->plus_minus = decides.shortest->value - least_at_worst;
}

// What is stated of this range, or of the next lesser one: a standing longest is at least the greatest turning one of the same fit, a
// turning one at least its working one.
template <class Stated>
Stated least_known(const PerEach<Range, Stated>& stated, Range range)
{
    if (stated[range] || range == Range::working) return stated[range];
    return least_known(stated, range == Range::standing ? Range::turning : Range::working);
}

void keep_greatest(std::optional<Toleranced>& kept, const std::optional<Toleranced>& found)
{
    if (!found) return;
    if (!kept) kept = found;
    const Length at_worst = std::max(kept->value + kept->plus_minus, found->value + found->plus_minus);
    kept->value = std::max(kept->value, found->value);
    kept->plus_minus = at_worst - kept->value;
}

void keep_greatest(std::optional<Angle>& kept, const std::optional<Angle>& found) { kept = std::max(kept, found); }

// The greatest of what the fits know of this range: in `sure` where all of them state it, in `at_least` where only some do.
template <class Stated, class Of>
void decide_range(Stated& sure, Stated& at_least, const std::vector<FitReading>& fits, Range range, const Of& of)
{
    const auto states = [&](const FitReading& reading) { return of(reading.fit)[range].has_value(); };
    if (std::none_of(fits.begin(), fits.end(), states)) return;
    Stated& greatest = std::all_of(fits.begin(), fits.end(), states) ? sure : at_least;
    for (const FitReading& reading : fits) keep_greatest(greatest, least_known(of(reading.fit), range));
}

void decide_longest(Fit& decides, const std::vector<FitReading>& fits, Range range)
{
    decide_range(decides.longest[range], decides.longest_at_least[range], fits, range, [](const Fit& fit) -> const auto& { return fit.longest; });
    for (const FitReading& reading : fits)
        if (decides.longest[range] && reading.fit.longest[range]->value == decides.longest[range]->value) decides.longest_places[range] = reading.fit.longest_places[range];
}

}  // namespace

Fit deciding_fit(const std::vector<FitReading>& fits)
{
    Fit decides;
    decide_shortest(decides, fits);
    for (const Range range : all_ranges) {
        decide_longest(decides, fits, range);
        for (const End end : both_ends)
            decide_range(decides.angles[end][range], decides.angles_at_least[end][range], fits, range, [&](const Fit& fit) -> const auto& { return fit.angles[end]; });
    }
    return decides;
}

}  // namespace shaftcut
