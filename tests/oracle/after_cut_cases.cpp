#include "oracle/after_cut_cases.hpp"

namespace shaftcut::test {
namespace {

int between(std::mt19937& random, int least, int most) { return std::uniform_int_distribution<int>(least, most)(random); }

// Around what is kept: mostly about where a result changes, in tenths of a millimetre.
std::optional<Measurement> read(std::optional<Length> kept, std::mt19937& random)
{
    const int kind = between(random, 0, 9);
    if (kind == 0) return std::nullopt;
    const int most = kind < 4 ? 30 : kind < 7 ? 120 : kind < 9 ? 600 : 2500;
    const Length off = Length::micrometres(std::int64_t{100} * between(random, -most, most));
    return Measurement{std::max(Length::millimetres(1), kept.value_or(Length::millimetres(500)) + off), std::nullopt, {}};
}

MeasuredAfterCut measured_at_random(const WorkOrder& order, std::mt19937& random)
{
    MeasuredAfterCut measured;
    measured.order = order.order;
    const bool exchanged = between(random, 0, 7) == 0;
    for (const Tube tube : both_tubes) {
        measured.halves[tube].length = read(order.cut->plan.half[exchanged ? other(tube) : tube], random);
        if (order.reading.shaft.halves[tube].guard_used) measured.halves[tube].guard = read(order.cut->plan.guard_half[tube], random);
    }
    return measured;
}

bool holds_a_reading(const MeasuredAfterCut& measured)
{
    for (const Tube tube : both_tubes)
        if (measured.halves[tube].length || measured.halves[tube].guard) return true;
    return false;
}

}  // namespace

std::vector<AfterCutCase> after_cut_cases(const BaseJob& base, const Job& job, const WorkOrder& order, int count, std::mt19937& random)
{
    std::vector<AfterCutCase> cases;
    if (!order.cut) return cases;
    for (int i = 0; i < count; ++i) {
        const MeasuredAfterCut measured = measured_at_random(order, random);
        if (holds_a_reading(measured)) cases.push_back({measured, after_cut(order, job, base.catalogue, measured).value()});
    }
    return cases;
}

}  // namespace shaftcut::test
