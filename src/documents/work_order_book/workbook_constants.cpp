// The fixed figures: what series, job and workshop say.
#include "checks/limit_words.hpp"
#include "data/slip_limits.hpp"
#include "work_order_book/figure_words.hpp"
#include "work_order_book/sheet_words.hpp"
#include "work_order_book/workbook_lines.hpp"

namespace shaftcut::workbook {
namespace {

ConstantLine constant(const WorkOrder& order, Tube tube, const char* name, HalfFigure which, std::optional<Length> length, std::string origin, const Wording& w)
{
    return {for_tube(name, tube), name_of(which, order.reading.shaft.halves[tube].end, tube, w), length ? std::optional(length->mm()) : std::nullopt,
            length ? std::move(origin) : not_known(w)};
}

// What a guard must keep that is cut.
ConstantLine least_guard(const WorkOrder& order, Tube tube, const Wording& w)
{
    const auto& seat = order.reading.shaft.halves[tube].guard_seat;
    const std::string from = origin_of_least_guard(seat.has_value(), least_free_guard, w);
    return constant(order, tube, "THIS_least_guard", HalfFigure::least_guard, seat.value_or(Length()) + least_free_guard, from, w);
}

}  // namespace

std::vector<ConstantLine> shaft_constants(const WorkOrder& order, const Wording& w)
{
    std::vector<ConstantLine> lines;
    for (const Tube tube : both_tubes) {
        const Half& half = order.reading.shaft.halves[tube];
        lines.push_back(constant(order, tube, "THIS_guard_shoulder", HalfFigure::guard_shoulder, half.guard_shoulder, origin(Origin::series, w), w));
        lines.push_back(least_guard(order, tube, w));
        lines.push_back(constant(order, tube, "THIS_seat", HalfFigure::seat, half.seat, origin(Origin::series, w), w));
        lines.push_back(constant(order, tube, "THIS_least_tube", HalfFigure::least_tube, half.least_tube, origin(Origin::series, w), w));
        lines.push_back(constant(order, tube, "THIS_hole", HalfFigure::lubrication_hole, half.lubrication_hole, origin(Origin::measured, w), w));
        if (half.cut_to) lines.push_back(constant(order, tube, "THIS_cut_to", HalfFigure::cut_to, half.cut_to, origin(Origin::earlier_sheet, w), w));
    }
    const Fraction step = order.saw.step_um;
    lines.push_back({"saw_step", name_of(FigureName::saw_step, w), static_cast<double>(step.numerator) / static_cast<double>(step.denominator) / 1000.0, origin(Origin::workshop, w)});
    lines.push_back({"least_cut", name_of(FigureName::least_cut, w), order.saw.least_cut.mm(), origin(Origin::workshop, w)});
    lines.push_back({"saw_plus_minus", name_of(FigureName::saw_plus_minus, w), order.saw.plus_minus.mm(), origin(Origin::workshop, w)});
    return lines;
}

std::vector<ConstantLine> limit_constants(const WorkOrder& order, const Wording& w)
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
    for (const auto& [limit, name] : used) lines.push_back({name, row_of(limit).name, order.limits.length(limit).mm(), say(order.limits.basis(limit), w)});
    return lines;
}

}  // namespace shaftcut::workbook
