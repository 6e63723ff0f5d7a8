// Limits with their defaults, in the second implementation.
#include "support/plain/plain_method.hpp"

namespace shaftcut::test::plain {
namespace {

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

}  // namespace

Um length_limit(const PlainShaft& shaft, Limit limit) { return limit_of(shaft, limit).numerator; }

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

}  // namespace shaftcut::test::plain
