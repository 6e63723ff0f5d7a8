#include "oracle/deciding_job_fits.hpp"

#include <algorithm>

namespace shaftcut::test {

JobFit deciding_job_fit(const WorkOrder& order)
{
    JobFit fit;
    fit.reference = Reference::inner_cross;
    if (order.fit.shortest) fit.shortest = {order.fit.shortest->value, order.fit.shortest->plus_minus, {}};
    for (const Range range : all_ranges)
        if (const auto& longest = order.fit.longest[range]) fit.longest[range] = Measurement{longest->value, longest->plus_minus, {}};
    fit.angles = order.fit.angles;
    return fit;
}

bool knows_some_as_least(const WorkOrder& order)
{
    return std::any_of(all_ranges.begin(), all_ranges.end(), [&](Range range) { return order.fit.longest_at_least[range].has_value(); });
}

// A second fit that states what the deciding one leaves out. Of the ranges that both state the deciding one's is to decide: so this
// one's lesser ranges are at most what it states of the greater ones.
JobFit stating_the_rest(const WorkOrder& order, const JobFit& deciding)
{
    JobFit fit = deciding;
    std::optional<Length> most;
    for (const Range range : {Range::standing, Range::turning, Range::working}) {
        auto& longest = fit.longest[range];
        const auto& at_least = order.fit.longest_at_least[range];
        if (at_least && !longest) longest = Measurement{at_least->value, at_least->plus_minus, {}};
        else if (longest && most) longest->length = std::min(longest->length, *most);
        if (longest) most = longest->length;
        for (const End end : both_ends)
            if (!fit.angles[end][range]) fit.angles[end][range] = order.fit.angles_at_least[end][range];
    }
    return fit;
}

}  // namespace shaftcut::test
