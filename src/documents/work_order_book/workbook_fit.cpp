// The fit's four lengths as they can be typed in, and what each becomes between the inner crosses.
#include <fmt/format.h>

#include "work_order_book/input_words.hpp"
#include "work_order_book/workbook_lines.hpp"

namespace shaftcut::workbook {
namespace {

const std::optional<Toleranced>& telescoping(const WorkOrder& order, std::optional<Range> range)
{
    return range ? order.fit.longest[*range] : order.fit.shortest;
}

// What the machine gives, whatever was measured; null: nothing.
const ExtremeLength* machine_gives(const FitReading& fit, std::optional<Range> range)
{
    if (!fit.geometry) return nullptr;
    if (!range) return &fit.geometry->lengths.shortest;
    const auto& extremes = fit.geometry->lengths.ranges[*range];
    return extremes ? &extremes->longest : nullptr;
}

FitInput fit_input(const WorkOrder& order, std::optional<Range> range)
{
    const FitReading& fit = order.fits.front();
    FitInput input;
    input.range = range;
    input.word = range ? to_word(*range) : "shortest";
    input.name = (range ? "longest_" : "") + input.word;
    const auto& stated = range ? fit.longest[*range] : fit.shortest;
    const auto& held = has_deciding_inputs(order) ? telescoping(order, range) : stated;
    input.issued = value_of(held);
    input.plus_minus = held ? held->plus_minus : order.measuring_plus_minus;
    if (range) input.at_least = order.fit.longest_at_least[*range];
    input.between_inner_crosses = has_deciding_inputs(order) || (fit.geometry && !stated);
    if (has_deciding_inputs(order)) return input;
    input.geometry = machine_gives(fit, range);
    if (!input.issued && input.geometry) input.issued = input.geometry->length;
    return input;
}

// In which position it was measured, in the fitter's words: of several fits, that of the one that decides.
std::string position_of(const WorkOrder& order, const FitInput& input)
{
    for (const FitReading& fit : order.fits) {
        const auto& read = input.range ? fit.fit.longest[*input.range] : fit.fit.shortest;
        const auto decides = telescoping(order, input.range);
        const std::string& at = input.range ? fit.longest_at[*input.range] : fit.shortest_at;
        if (read && decides && read->value == decides->value && !at.empty()) return at;
    }
    return "";
}

FitBetween between_of(const WorkOrder& order, const FitInput& input)
{
    const FitReading& fit = order.fits.front();
    if (input.between_inner_crosses) return FitBetween::inner_crosses;
    if (fit.between == Between::grooves) return FitBetween::grooves;
    if (!order.reading.has_wide_angle) return FitBetween::crosses;
    return fit.reference == Reference::outer_cross ? FitBetween::outer_cross : FitBetween::inner_cross;
}

std::string words_of(const WorkOrder& order, const FitInput& input, const Wording& w)
{
    const bool may_stay_empty = input.range && input.range != Range::turning && !input.geometry;
    const std::string position = position_of(order, input);
    if (order.fits.size() > 1) return deciding_between(value_of(input.at_least), may_stay_empty, position, w);
    const FitEmpty of_machine = input.between_inner_crosses ? FitEmpty::of_geometry_unless_changed : FitEmpty::of_geometry;
    return fit_between({between_of(order, input), input.geometry ? of_machine : may_stay_empty && !input.at_least ? FitEmpty::not_checked : FitEmpty::nothing, position}, w);
}

// What a straight distance over bent joints holds along and across the tubes.
struct Bend {
    std::string along, across;
};

Bend bend_of(const FitReading& fit, Range range)
{
    Bend bend;
    for (const End end : both_ends) {
        const Reach& reach = fit.reaches[end];
        if (!reach.bends()) continue;
        const std::string angle = "RADIANS(" + figure(fit.fit.angles[end][range].value_or(Angle()), 3) + ")";
        const char* sign = end == End::tractor ? "+" : "-";
        bend.along += fmt::format("+{}*COS({})+{}*COS({}/2)", literal(reach.yoke), angle, literal(reach.spacing), angle);
        bend.across += fmt::format("{}({}*SIN({})+{}*SIN({}/2))", sign, literal(reach.yoke), angle, literal(reach.spacing), angle);
    }
    return bend;
}

// √(D² − across²): what a straight distance leaves along the tubes.
std::string root_formula(const std::string& distance, const Bend& bend) { return fmt::format("SQRT(MAX(0,{0}*{0}-(0{1})*(0{1})))", distance, bend.across); }

// What a typed length becomes.
std::string read_formula(const WorkOrder& order, const FitInput& input)
{
    std::string distance = in_mm(input.name, order.units);
    if (input.between_inner_crosses) return distance;
    const FitReading& fit = order.fits.front();
    if (!input.range) return less_spacing(distance, Length() - in_line(Length(), fit.reaches));
    const Bend bend = bend_of(fit, *input.range);
    if (bend.along.empty()) return distance;
    return fmt::format("ROUND({}-(0{}),3)", root_formula(distance, bend), bend.along);
}

// The ± of a typed length: bent joints make more of a distance's own.
std::string doubt_formula(const WorkOrder& order, const FitInput& input)
{
    const std::string stated = literal(input.plus_minus);
    if (input.between_inner_crosses || !input.range) return stated;
    const Bend bend = bend_of(order.fits.front(), *input.range);
    if (bend.along.empty()) return stated;
    const std::string distance = in_mm(input.name, order.units), root = root_formula(distance, bend);
    return if_number(input.name, fmt::format("IF({0}>0,ROUND({1}*{2}/{0},3),{1})", root, stated, distance), stated);
}

// Of a range that some tractors leave out. One of them is at least as long as its own longest of the lesser range: that binds once the
// deciding one of that range grows.
struct AtLeast {
    std::string value, doubt;
};

AtLeast at_least_formula(const WorkOrder& order, const FitInput& input)
{
    const std::string value = literal(input.at_least->value), doubt = literal(input.at_least->plus_minus);
    if (input.range == Range::working) return {value, doubt};
    const Range lesser = input.range == Range::standing ? Range::turning : Range::working;
    const std::string word = to_word(lesser), length = word + "_length";
    const auto issued = known_or_at_least(order, lesser);
    const std::string grown = "IF(ISNUMBER(" + length + ")," + length + ">" + literal(issued ? issued->value : Length()) + ",FALSE)";
    return {"IF(" + grown + ",MAX(" + value + "," + length + ")," + value + ")",
            fmt::format("IF({},ROUND(MAX({}+{},{}+{}_plus_minus)-{}_length,3),{})", grown, value, doubt, length, word, input.word, doubt)};
}

}  // namespace

std::string FitInput::is_measured(Units units) const
{
    if (!geometry || !between_inner_crosses) return "ISNUMBER(" + name + ")";
    return if_number(name, "ROUND(" + in_mm(name, units) + "-" + literal(geometry->length) + ",3)<>0", "FALSE");
}

std::vector<FitInput> fit_inputs(const WorkOrder& order)
{
    std::vector<FitInput> inputs{fit_input(order, std::nullopt)};
    for (const Range range : all_ranges) inputs.push_back(fit_input(order, range));
    return inputs;
}

std::vector<InputLine> fit_lines(const WorkOrder& order, const Wording& w)
{
    std::vector<InputLine> lines;
    for (const FitInput& input : fit_inputs(order)) {
        InputLine line;
        line.name = input.name;
        line.label = fit_name(input.range, w);
        line.issued = input.issued;
        line.required = !input.geometry && (!input.range || input.range == Range::turning) && input.issued;
        line.measured = words_of(order, input, w);
        const bool of_machine = input.geometry && input.between_inner_crosses;
        line.plus_minus = of_machine ? input.geometry->plus_minus : input.plus_minus;
        if (input.geometry)
            line.plus_minus_expression = "IF(" + input.is_measured(order.units) + "," + literal(input.plus_minus) + "," + literal(input.geometry->plus_minus) + ")";
        lines.push_back(line);
    }
    return lines;
}

std::optional<Toleranced> known_or_at_least(const WorkOrder& order, Range range)
{
    return order.fit.longest[range] ? order.fit.longest[range] : order.fit.longest_at_least[range];
}

std::string is_sure(const WorkOrder& order, Range range)
{
    const std::string word = to_word(range);
    return order.fit.longest_at_least[range] ? "ISNUMBER(longest_" + word + ")" : "ISNUMBER(" + word + "_length)";
}

std::vector<LengthLine> fit_lengths(const WorkOrder& order, const Wording& w)
{
    std::vector<LengthLine> lines;
    const bool readable = order.fit.shortest.has_value();
    for (const FitInput& input : fit_inputs(order)) {
        const auto least = input.at_least ? std::optional(at_least_formula(order, input)) : std::nullopt;
        const std::string otherwise = least ? least->value : input.geometry ? literal(input.geometry->length) : "\"\"";
        const std::string formula = "IF(" + input.is_measured(order.units) + "," + read_formula(order, input) + "," + otherwise + ")";
        const auto now = input.range ? known_or_at_least(order, *input.range) : order.fit.shortest;
        LengthLine line;
        line.name = input.word + "_length";
        line.label = least ? fit_at_least_name(input.range, w) : fit_name(input.range, w);
        line.formula = {readable ? formula : "\"\"", readable ? now_in_mm(value_of(now)) : std::string()};
        line.tolerance_name = input.word + "_plus_minus";
        const std::string typed = doubt_formula(order, input);
        const std::string otherwise_doubt = least ? least->doubt : input.geometry ? literal(input.geometry->plus_minus) : typed;
        const bool follows = readable && (otherwise_doubt != typed || typed != literal(input.plus_minus));
        line.tolerance = {follows ? "IF(" + input.is_measured(order.units) + "," + typed + "," + otherwise_doubt + ")" : "", (now ? now->plus_minus : input.plus_minus).mm()};
        lines.push_back(line);
    }
    return lines;
}

}  // namespace shaftcut::workbook
