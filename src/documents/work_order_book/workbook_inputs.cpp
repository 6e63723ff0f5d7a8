// The measured lengths as they can be typed in, and what each becomes between the crosses.
#include "work_order_book/input_words.hpp"
#include "work_order_book/sheet_words.hpp"
#include "work_order_book/workbook_lines.hpp"

namespace shaftcut::workbook {
namespace {

// The tolerance that the job's element states for its lengths, else the workshop's.
Length half_tolerance(const WorkOrder& order, Tube tube)
{
    const JobHalf& half = order.shaft.halves[tube];
    for (const auto* measured : {&half.length, &half.guard, &half.shoulder, &half.stop_depth, &half.lubrication_hole})
        if (*measured) return (*measured)->plus_minus.value_or(order.measuring_plus_minus);
    return order.measuring_plus_minus;
}

std::optional<Length> length_of(const std::optional<Measurement>& measured)
{
    return measured ? std::optional(measured->length) : std::nullopt;
}

void add_halves(std::vector<InputLine>& lines, const WorkOrder& order, bool guards, const Wording& w)
{
    for (const End end : both_ends) {
        const Tube tube = tube_on(order.shaft, end);
        const JobHalf& half = order.shaft.halves[tube];
        const bool derivable = order.reading.shaft.halves[other(tube)].shoulder.has_value();
        InputLine line;
        line.name = for_tube(guards ? "THIS_guard_half" : "THIS_half", tube);
        line.label = guards ? guard_name(order.reading.shaft.halves[tube].end, tube, w) : half_label(order, tube, w);
        line.used = !guards || half.guard_use == GuardUse::kept;
        line.measured = measured_between(!line.used  ? Measured::guard_not_used
                                         : guards    ? Measured::guard_or_not
                                         : derivable ? Measured::half_or_derived
                                                     : Measured::half,
                                         w);
        line.issued = line.used ? length_of(guards ? half.guard : half.length) : std::nullopt;
        line.plus_minus = half_tolerance(order, tube);
        lines.push_back(line);
    }
}

void add_half_lengths(std::vector<LengthLine>& lines, const WorkOrder& order, const Wording& w)
{
    for (const Tube tube : both_tubes) {
        const Half& half = order.reading.shaft.halves[tube];
        const std::string name = for_tube("THIS_half", tube);
        const std::string derived = for_tube("IF(AND(ISNUMBER(closed_length),ISNUMBER(OTHER_shoulder)),ROUND(closed_length-OTHER_shoulder,3),\"\")", tube);
        const std::string derived_doubt = for_tube("IF(ISNUMBER(OTHER_shoulder),ROUND(closed_plus_minus+OTHER_shoulder_plus_minus,3),closed_plus_minus)", tube);
        LengthLine line;
        line.name = for_tube("THIS_length", tube);
        line.label = half_label(order, tube, w);
        line.formula = {if_number(name, in_mm(name, order.units), derived), now_in_mm(value_of(half.length))};
        line.tolerance_name = for_tube("THIS_plus_minus", tube);
        const Length measured = half_tolerance(order, tube);
        line.tolerance = {if_number(name, literal(measured), derived_doubt), (half.length ? half.length->plus_minus : order.reading.closed.plus_minus).mm()};
        lines.push_back(line);
    }
}

void add_guard_lengths(std::vector<LengthLine>& lines, const WorkOrder& order, const Wording& w)
{
    for (const Tube tube : both_tubes) {
        const Half& half = order.reading.shaft.halves[tube];
        const std::string name = for_tube("THIS_guard_half", tube);
        LengthLine line;
        line.name = for_tube("THIS_guard_length", tube);
        line.label = guard_name(half.end, tube, w);
        line.formula = {half.guard_used ? if_number(name, in_mm(name, order.units)) : "", now_in_mm(value_of(half.guard))};
        line.tolerance_name = for_tube("THIS_guard_plus_minus", tube);
        line.tolerance = {"", half_tolerance(order, tube).mm()};
        lines.push_back(line);
    }
}

}  // namespace

std::vector<InputLine> input_lines(const WorkOrder& order, const Wording& w)
{
    std::vector<InputLine> lines;
    const auto cross = order.reading.has_wide_angle ? std::optional(order.reading.reference) : std::nullopt;
    lines.push_back({"closed", closed_name(w), closed_between(cross, w), order.reading.closed.value,
                     order.reading.closed.plus_minus, true, {}, true});
    add_halves(lines, order, false, w);
    add_halves(lines, order, true, w);
    for (const InputLine& line : fit_lines(order, w)) lines.push_back(line);
    return lines;
}

std::vector<LengthLine> length_lines(const WorkOrder& order, const Wording& w)
{
    std::vector<LengthLine> lines;
    const Length beyond = order.reading.closed.value - order.reading.shaft.closed.value;
    lines.push_back({"closed_length", closed_name(w), {if_number("closed", less_spacing(in_mm("closed", order.units), beyond)), order.reading.shaft.closed.value.mm()},
                     "closed_plus_minus", {"", order.reading.closed.plus_minus.mm()}});
    add_half_lengths(lines, order, w);
    add_guard_lengths(lines, order, w);
    for (const LengthLine& line : fit_lengths(order, w)) lines.push_back(line);
    return lines;
}

}  // namespace shaftcut::workbook
