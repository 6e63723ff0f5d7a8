// The fixed figures: what series, job and workshop say.
#include "data/slip_limits.hpp"
#include "work_order_book/workbook_lines.hpp"

namespace shaftcut::workbook {
namespace {

ConstantLine constant(const WorkOrder& order, Tube tube, const char* name, const char* label, std::optional<Length> length, std::string origin)
{
    const std::string words = half_label(order, tube) + ": " + label;
    return {for_tube(name, tube), words, length ? std::optional(length->mm()) : std::nullopt, length ? std::move(origin) : "not known"};
}

// What a guard must keep that is cut.
ConstantLine least_guard(const WorkOrder& order, Tube tube)
{
    const auto& seat = order.reading.shaft.halves[tube].guard_seat;
    const std::string origin = "guard seat" + std::string(seat ? "" : " (not known: 0)") + " + " + literal(least_free_guard) + " mm (the project's own choice)";
    return constant(order, tube, "THIS_least_guard", "least that is kept of a guard that is cut", seat.value_or(Length()) + least_free_guard, origin);
}

}  // namespace

std::vector<ConstantLine> shaft_constants(const WorkOrder& order)
{
    std::vector<ConstantLine> lines;
    for (const Tube tube : both_tubes) {
        const Half& half = order.reading.shaft.halves[tube];
        lines.push_back(constant(order, tube, "THIS_guard_shoulder", "guard shoulder", half.guard_shoulder, "the series"));
        lines.push_back(least_guard(order, tube));
        lines.push_back(constant(order, tube, "THIS_seat", "seat", half.seat, "the series"));
        lines.push_back(constant(order, tube, "THIS_least_tube", "least tube", half.least_tube, "the series"));
        lines.push_back(constant(order, tube, "THIS_hole", "lubrication hole, far edge", half.lubrication_hole, "measured on this shaft"));
    }
    const Fraction step = order.saw.step_um;
    lines.push_back({"saw_step", "Saw: step", static_cast<double>(step.numerator) / static_cast<double>(step.denominator) / 1000.0, "the workshop"});
    lines.push_back({"least_cut", "Saw: least cut", order.saw.least_cut.mm(), "the workshop"});
    lines.push_back({"saw_plus_minus", "Saw: ± of a cut", order.saw.plus_minus.mm(), "the workshop"});
    return lines;
}

std::vector<ConstantLine> limit_constants(const WorkOrder& order)
{
    static constexpr std::array<std::pair<Limit, const char*>, 7> used{{
        {Limit::closing_clearance, "closing_clearance"},
        {Limit::closing_clearance_floor, "closing_clearance_floor"},
        {Limit::least_overlap_turning, "least_overlap_turning"},
        {Limit::least_overlap_standing, "least_overlap_standing"},
        {Limit::guard_overlap, "guard_overlap"},
        {Limit::guard_setback, "guard_setback"},
        {Limit::one_chain_shortening, "one_chain_shortening"},
    }};
    std::vector<ConstantLine> lines;
    for (const auto& [limit, name] : used) lines.push_back({name, row_of(limit).name, order.limits.length(limit).mm(), order.limits.basis(limit)});
    return lines;
}

}  // namespace shaftcut::workbook
