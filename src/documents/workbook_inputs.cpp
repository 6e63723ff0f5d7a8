// The measured lengths as they can be typed in, and what each becomes between the crosses.
#include <fmt/format.h>

#include "workbook_lines.hpp"

namespace shaftcut::workbook {
namespace {

std::string cross_words(const WorkOrder& order, Reference reference)
{
    if (!order.reading.has_wide_angle) return "cross to cross";
    return reference == Reference::outer_cross ? "cross to cross, at a wide-angle joint its OUTER cross (at the connection yoke)"
                                               : "cross to cross, at a wide-angle joint its INNER cross (at the tube yoke)";
}

std::string fit_words(const WorkOrder& order)
{
    if (order.fits.size() > 1) return "cross to cross, between the inner crosses: the deciding one of all tractors";
    if (has_deciding_inputs(order)) return "cross to cross, between the inner crosses; from the machine's geometry where it was not measured";
    const FitReading& fit = order.fits.front();
    return fit.between == Between::grooves ? "between the locking grooves of the two stubs" : cross_words(order, fit.reference);
}

// The tolerance that the job's element states for its lengths, else the workshop's.
Length half_tolerance(const WorkOrder& order, Tube tube)
{
    const JobHalf& half = order.shaft.halves[tube];
    for (const auto* measured : {&half.length, &half.guard, &half.shoulder, &half.lubrication_hole})
        if (*measured) return (*measured)->plus_minus.value_or(order.measuring_plus_minus);
    return order.measuring_plus_minus;
}

std::optional<Length> length_of(const std::optional<Measurement>& measured)
{
    return measured ? std::optional(measured->length) : std::nullopt;
}

std::optional<Length> value_of(const std::optional<Toleranced>& length)
{
    return length ? std::optional(length->value) : std::nullopt;
}

void add_halves(std::vector<InputLine>& lines, const WorkOrder& order, bool guards)
{
    for (const End end : both_ends) {
        const Tube tube = tube_on(order, end);
        const JobHalf& half = order.shaft.halves[tube];
        const bool derivable = order.reading.shaft.halves[other(tube)].shoulder.has_value();
        InputLine line;
        line.name = for_tube(guards ? "THIS_guard_half" : "THIS_half", tube);
        line.label = half_label(order, tube) + (guards ? ": guard" : "");
        line.measured = guards      ? "inner cross to the guard tube's free end; empty: not measured"
                        : derivable ? "inner cross to the tube's free end; empty: from the closed length"
                                    : "inner cross to the tube's free end";
        line.issued = length_of(guards ? half.guard : half.length);
        line.plus_minus = half_tolerance(order, tube);
        lines.push_back(line);
    }
}

void add_fit(std::vector<InputLine>& lines, const WorkOrder& order)
{
    const FitReading& fit = order.fits.front();
    const std::string from = fit_words(order);
    const auto& shortest = has_deciding_inputs(order) ? order.fit.shortest : fit.shortest;
    const Length standard = order.measuring_plus_minus;
    lines.push_back({"shortest", "Shortest, in any position", from, value_of(shortest), shortest ? shortest->plus_minus : standard, true});
    static constexpr std::array labels{"Longest in the usual working position", "Longest with the PTO turning", "Longest with the PTO stopped"};
    for (const Range range : all_ranges) {
        const auto& longest = has_deciding_inputs(order) ? order.fit.longest[range] : fit.longest[range];
        lines.push_back({std::string("longest_") + to_word(range), labels[static_cast<std::size_t>(range)],
                         from + (range == Range::turning ? "" : "; empty: not checked"), value_of(longest),
                         longest ? longest->plus_minus : standard, range == Range::turning});
    }
}

std::string in_mm(const std::string& name, Units units)
{
    return units == Units::mm ? "ROUND(" + name + ",3)" : "ROUND(" + name + "*25.4,3)";
}

std::string if_number(const std::string& name, const std::string& formula, const std::string& otherwise = "\"\"")
{
    return "IF(ISNUMBER(" + name + ")," + formula + "," + otherwise + ")";
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

std::string longest_formula(const WorkOrder& order, Range range, const std::string& name)
{
    const std::string distance = in_mm(name, order.units);
    if (has_deciding_inputs(order)) return distance;
    const Bend bend = bend_of(order.fits.front(), range);
    if (bend.along.empty()) return distance;
    return fmt::format("ROUND(SQRT(MAX(0,{0}*{0}-(0{2})*(0{2})))-(0{1}),3)", distance, bend.along, bend.across);
}

std::string less(const std::string& formula, Length beyond)
{
    return beyond == Length() ? formula : "ROUND(" + formula + "-" + literal(beyond) + ",3)";
}

void add_fit_lengths(std::vector<LengthLine>& lines, const WorkOrder& order)
{
    const FitReading& fit = order.fits.front();
    const Length beyond = has_deciding_inputs(order) ? Length() : Length() - in_line(Length(), fit.reaches);
    const bool readable = order.fit.shortest.has_value();
    const auto inputs = input_lines(order);
    for (std::size_t i = 5; i < inputs.size(); ++i) {
        const std::string& name = inputs[i].name;
        const bool shortest = name == "shortest";
        const Range range = shortest ? Range::working : all_ranges[i - 6];
        const std::string formula = shortest ? less(in_mm(name, order.units), beyond) : longest_formula(order, range, name);
        const auto& length = shortest ? order.fit.shortest : order.fit.longest[range];
        LengthLine line;
        line.name = (shortest ? name : std::string(to_word(range))) + "_length";
        line.label = inputs[i].label;
        line.formula = {readable ? if_number(name, formula) : "\"\"", readable ? now_in_mm(value_of(length)) : std::string()};
        line.tolerance_name = (shortest ? name : std::string(to_word(range))) + "_plus_minus";
        line.tolerance = {"", inputs[i].plus_minus.mm()};
        lines.push_back(line);
    }
}

void add_half_lengths(std::vector<LengthLine>& lines, const WorkOrder& order)
{
    for (const Tube tube : both_tubes) {
        const Half& half = order.reading.shaft.halves[tube];
        const bool derivable = order.reading.shaft.halves[other(tube)].shoulder.has_value();
        const std::string name = for_tube("THIS_half", tube);
        const std::string derived = for_tube("IF(ISNUMBER(closed_length),ROUND(closed_length-OTHER_shoulder,3),\"\")", tube);
        LengthLine line;
        line.name = for_tube("THIS_length", tube);
        line.label = half_label(order, tube);
        line.formula = {if_number(name, in_mm(name, order.units), derivable ? derived : "\"\""), now_in_mm(value_of(half.length))};
        line.tolerance_name = for_tube("THIS_plus_minus", tube);
        const Length measured = half_tolerance(order, tube);
        line.tolerance = {if_number(name, literal(measured), "closed_plus_minus"),
                          (half.measured ? measured : order.reading.closed.plus_minus).mm()};
        lines.push_back(line);
    }
}

void add_guard_lengths(std::vector<LengthLine>& lines, const WorkOrder& order)
{
    for (const Tube tube : both_tubes) {
        const std::string name = for_tube("THIS_guard_half", tube);
        LengthLine line;
        line.name = for_tube("THIS_guard_length", tube);
        line.label = half_label(order, tube) + ": guard";
        line.formula = {if_number(name, in_mm(name, order.units)), now_in_mm(value_of(order.reading.shaft.halves[tube].guard))};
        line.tolerance_name = for_tube("THIS_guard_plus_minus", tube);
        line.tolerance = {"", half_tolerance(order, tube).mm()};
        lines.push_back(line);
    }
}

}  // namespace

std::vector<InputLine> input_lines(const WorkOrder& order)
{
    std::vector<InputLine> lines;
    lines.push_back({"closed", "Closed length", "pushed together, " + cross_words(order, order.reading.reference), order.reading.closed.value,
                     order.reading.closed.plus_minus, true});
    add_halves(lines, order, false);
    add_halves(lines, order, true);
    add_fit(lines, order);
    return lines;
}

std::vector<LengthLine> length_lines(const WorkOrder& order)
{
    std::vector<LengthLine> lines;
    const Length beyond = order.reading.closed.value - order.reading.shaft.closed.value;
    lines.push_back({"closed_length", "Closed length", {if_number("closed", less(in_mm("closed", order.units), beyond)), order.reading.shaft.closed.value.mm()},
                     "closed_plus_minus", {"", order.reading.closed.plus_minus.mm()}});
    add_half_lengths(lines, order);
    add_guard_lengths(lines, order);
    add_fit_lengths(lines, order);
    return lines;
}

}  // namespace shaftcut::workbook
