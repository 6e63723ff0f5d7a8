// What makes up the check on consistency: contradictions and doubts, each as a formula that says yes or no.
#include <algorithm>

#include "data/bounds.hpp"
#include "spreadsheet/sheet_builder.hpp"
#include "work_order_book/workbook_lines.hpp"

namespace shaftcut::workbook {
namespace {

// Compares two figures where both are numbers.
std::string yes_if_numbers(const std::string& a, const std::string& b, const std::string& condition)
{
    return "IF(AND(ISNUMBER(" + a + "),ISNUMBER(" + b + "))," + yes_if(condition) + ",\"no\")";
}

struct Figure {
    std::string label, name;
    std::optional<Length> now;
};

void add_less(std::vector<FindingLine>& lines, const Figure& a, const Figure& b)
{
    lines.push_back({a.label + " is less than " + b.label,
                     {yes_if_numbers(a.name, b.name, clearly_below_expression(a.name, b.name)), yes_or_no(a.now && b.now && clearly_below(*a.now, *b.now))}});
}

// Of two longest lengths where both were measured: the ranges of a machine's geometry need not contain each other.
void add_less_if_measured(std::vector<FindingLine>& lines, const WorkOrder& order, const Figure& a, const Figure& b, const FitInput& a_input, const FitInput& b_input)
{
    const FitReading& fit = order.fits.front();
    const bool both = fit.longest[*a_input.range] && fit.longest[*b_input.range];
    const std::string less = yes_if(clearly_below_expression(a.name, b.name));
    lines.push_back({a.label + " is less than " + b.label + ", both measured",
                     {"IF(" + a_input.is_measured(order.units) + ",IF(" + b_input.is_measured(order.units) + "," + less + ",\"no\"),\"no\")",
                      yes_or_no(both && a.now && b.now && clearly_below(*a.now, *b.now))}});
}

void add_not_less(std::vector<FindingLine>& lines, const Figure& a, const Figure& b)
{
    lines.push_back({a.label + " is not less than " + b.label,
                     {yes_if_numbers(a.name, b.name, "ROUND(" + b.name + "-" + a.name + ",3)<0.01"), yes_or_no(a.now && b.now && !clearly_below(*a.now, *b.now))}});
}

void add_not_more(std::vector<FindingLine>& lines, const Figure& a, const Figure& b)
{
    lines.push_back({a.label + " is not more than " + b.label,
                     {yes_if_numbers(a.name, b.name, "ROUND(" + a.name + "-" + b.name + ",3)<0.01"), yes_or_no(a.now && b.now && !clearly_above(*a.now, *b.now))}});
}

std::string readable_input(const InputLine& line, Units units)
{
    const std::string most = std::to_string(longest_input(units));
    const std::string number = "IF(ISNUMBER(" + line.name + "),AND(" + line.name + ">=0," + line.name + "<=" + most + "),";
    return number + (line.required ? "FALSE)" : "ISBLANK(" + line.name + "))");
}

FindingLine unreadable_lengths(const WorkOrder& order)
{
    std::string all;
    for (const InputLine& line : input_lines(order)) all += (all.empty() ? "" : ",") + readable_input(line, order.units);
    return {"a length is missing, is no number, is negative or is over 100 m", {"IF(AND(" + all + "),\"no\",\"yes\")", yes_or_no(false)}};
}

bool has_geometry(const WorkOrder& order)
{
    return std::any_of(order.fits.begin(), order.fits.end(), [](const FitReading& fit) { return fit.geometry.has_value(); });
}

Figure longest(const WorkOrder& order, Range range)
{
    return {std::string("longest ") + to_word(range), std::string(to_word(range)) + "_length", value_of(known_or_at_least(order, range))};
}

// With several fits each was compared with its own lengths when the order was written. Of the deciding ones, which may come
// from different fits, the longest standing is bound by the longest turning only where every fit has measured one.
void add_ranges(std::vector<FindingLine>& lines, const WorkOrder& order)
{
    const Figure working = longest(order, Range::working), turning = longest(order, Range::turning), standing = longest(order, Range::standing);
    if (order.fits.size() == 1 && has_geometry(order)) {
        const auto inputs = fit_inputs(order);
        add_less_if_measured(lines, order, turning, working, inputs[2], inputs[1]);
        add_less_if_measured(lines, order, standing, turning, inputs[3], inputs[2]);
        return;
    }
    const auto all = [&](Range range) { return std::all_of(order.fits.begin(), order.fits.end(), [&](const FitReading& fit) { return fit.longest[range].has_value(); }); };
    if (!has_geometry(order) || (all(Range::turning) && all(Range::working))) add_less(lines, turning, working);
    if (order.fits.size() == 1 || (all(Range::standing) && all(Range::turning))) add_less(lines, standing, turning);
    else if (!has_geometry(order) && order.fit.longest_at_least[Range::standing])
        lines.push_back({"longest standing is less than longest turning", {yes_if("ISNUMBER(longest_standing)", clearly_below_expression(standing.name, turning.name)), "no"}});
}

// Of a range that some tractors leave out what is stated counts: the least shortest of all is not more than its own tractor's.
void add_stated_less(std::vector<FindingLine>& lines, const WorkOrder& order, Range range, const Figure& shortest)
{
    const std::string input = std::string("longest_") + to_word(range), length = std::string(to_word(range)) + "_length";
    const Length stated = order.fit.longest_at_least[range]->value;
    const std::string compared = "IF(ISNUMBER(" + input + ")," + length + "," + literal(stated) + ")";
    lines.push_back({std::string("longest ") + to_word(range) + " is less than shortest",
                     {yes_if("ISNUMBER(shortest_length)", "ROUND(shortest_length-" + compared + ",3)>=0.01"), yes_or_no(shortest.now && clearly_below(stated, *shortest.now))}});
}

void add_fit(std::vector<FindingLine>& lines, const WorkOrder& order)
{
    const Figure shortest{"shortest", "shortest_length", value_of(order.fit.shortest)};
    for (const Range range : all_ranges)
        if (order.fit.longest_at_least[range]) add_stated_less(lines, order, range, shortest);
        else add_less(lines, longest(order, range), shortest);
    add_ranges(lines, order);
}

void add_halves(std::vector<FindingLine>& lines, const WorkOrder& order)
{
    const Shaft& shaft = order.reading.shaft;
    const Figure closed{"the closed length", "closed_length", shaft.closed.value};
    for (const Tube tube : both_tubes) {
        const Half& half = shaft.halves[tube];
        const Figure figure{for_tube("the THIS half", tube), for_tube("THIS_length", tube), value_of(half.length)};
        add_not_less(lines, figure, closed);
        add_not_less(lines, {for_tube("the THIS guard half", tube), for_tube("THIS_guard_length", tube), value_of(half.guard)}, closed);
        if (half.seat) add_not_more(lines, figure, {"its seat in the series", for_tube("THIS_seat", tube), half.seat});
    }
    const bool apart = order.stops && !clearly_below(shaft.closed.value, shaft.halves[Tube::inner].length->value + shaft.halves[Tube::outer].length->value);
    lines.push_back({"the closed length is not less than both halves together: the tubes would not meet",
                     {"IF(stops_known=\"yes\"," + yes_if("ROUND(inner_length+outer_length-closed_length,3)<0.01") + ",\"no\")", yes_or_no(apart)}});
}

bool angles_contradict(const FitReading& fit)
{
    for (const End end : both_ends) {
        const auto& working = fit.angles[end][Range::working];
        const auto& turning = fit.angles[end][Range::turning];
        if (working && turning && *working > *turning) return true;
    }
    return false;
}

bool lengths_contradict(const FitReading& reading)
{
    const Fit& fit = reading.fit;
    const auto measured = [&](Range range) { return reading.longest[range] ? fit.longest[range] : std::nullopt; };
    const auto turning = measured(Range::turning), working = measured(Range::working), standing = measured(Range::standing);
    if (working && turning && clearly_above(working->value, turning->value)) return true;
    if (standing && turning && clearly_below(standing->value, turning->value)) return true;
    for (const Range range : all_ranges)
        if (fit.shortest && fit.longest[range] && clearly_below(fit.longest[range]->value, fit.shortest->value)) return true;
    const auto outside = [](const std::optional<Toleranced>& length) { return length && !telescoping_bounds.hold(length->value); };
    return outside(fit.shortest) || std::any_of(all_ranges.begin(), all_ranges.end(), [&](Range range) { return outside(fit.longest[range]); });
}

// What no input of the workbook can change: written as found.
void add_fixed(std::vector<FindingLine>& lines, const WorkOrder& order)
{
    bool angles = false, unreadable = false, own = false;
    for (const FitReading& fit : order.fits) {
        angles = angles || angles_contradict(fit);
        unreadable = unreadable || !fit.unreadable.empty();
        own = own || (has_deciding_inputs(order) && lengths_contradict(fit));
    }
    lines.push_back({"a working angle is above its turning angle (as issued)", {"", yes_or_no(angles)}});
    lines.push_back({"lengths between grooves, or the machine's geometry, cannot be used (as issued)", {"", yes_or_no(unreadable)}});
    if (has_deciding_inputs(order)) lines.push_back({"one tractor's own lengths contradict each other (as issued)", {"", yes_or_no(own)}});
}

// A longest over a joint that bends and has no angle is read in line, which is not the safe way.
bool read_in_line(const FitReading& fit, Range range)
{
    for (const End end : both_ends)
        if (fit.reaches[end].bends() && !fit.fit.angles[end][range]) return true;
    return false;
}

void add_unbent(std::vector<FindingLine>& lines, const WorkOrder& order)
{
    const FitReading& fit = order.fits.front();
    if (has_deciding_inputs(order)) {
        const bool in_line = std::any_of(order.fits.begin(), order.fits.end(), [](const FitReading& one) { return !one.unbent.empty(); });
        lines.push_back({"a longest was read with the joints in line, for want of an angle (as issued)", {"", yes_or_no(in_line)}, false});
        return;
    }
    if (!fit.unreadable.empty()) return;
    for (const FitInput& input : fit_inputs(order))
        if (input.range && !input.between_inner_crosses && read_in_line(fit, *input.range))
            lines.push_back({"the longest " + input.word + " is read with the joints in line, for want of an angle",
                             {yes_if(input.is_measured(order.units)), yes_or_no(fit.longest[*input.range].has_value())}, false});
}

// A measured length and what the machine's geometry comes to instead, on either side.
void add_disputed(std::vector<FindingLine>& lines, const WorkOrder& order, const FitInput& input)
{
    const FitReading& fit = order.fits.front();
    const std::string name = (input.range ? "longest " : "") + input.word, length = input.word + "_length", plus_minus = input.word + "_plus_minus";
    const std::string reached = literal(input.geometry->length);
    const auto now = [&](bool past) {
        return yes_or_no(std::any_of(fit.disputed.begin(), fit.disputed.end(), [&](const DisputedLength& one) { return one.range == input.range && one.goes_past() == past; }));
    };
    const auto add = [&](const std::string& label, const std::string& difference, bool past) {
        const std::string further = yes_if("ROUND(" + difference + "-" + plus_minus + ",3)>=0.01");
        lines.push_back({label, {"IF(" + input.is_measured(order.units) + "," + further + ",\"no\")", now(past)}, false});
    };
    add("the machine's geometry goes past the measured " + name, input.range ? reached + "-" + length : length + "-" + reached, true);
    add("the machine's geometry cannot reach the measured " + name, input.range ? length + "-" + reached : reached + "-" + length, false);
}

void add_all_disputed(std::vector<FindingLine>& lines, const WorkOrder& order)
{
    if (!has_geometry(order)) return;
    if (!has_deciding_inputs(order)) {
        for (const FitInput& input : fit_inputs(order))
            if (input.geometry) add_disputed(lines, order, input);
        return;
    }
    const bool disputed = std::any_of(order.fits.begin(), order.fits.end(), [](const FitReading& fit) { return !fit.disputed.empty(); });
    lines.push_back({"a measured length is not what the machine's geometry comes to (as issued)", {"", yes_or_no(disputed)}, false});
}

void add_doubts(std::vector<FindingLine>& lines, const WorkOrder& order)
{
    add_unbent(lines, order);
    add_all_disputed(lines, order);
    lines.push_back({"a limit of the job is looser than the workshop's (as issued)", {"", yes_or_no(!order.limits.loosened().empty())}, false});
}

}  // namespace

std::vector<FindingLine> finding_lines(const WorkOrder& order)
{
    std::vector<FindingLine> lines;
    lines.push_back(unreadable_lengths(order));
    add_fit(lines, order);
    add_bound_findings(lines, order);
    add_halves(lines, order);
    add_stop_findings(lines, order);
    add_elsewhere_findings(lines, order);
    add_fixed(lines, order);
    add_doubts(lines, order);
    std::stable_partition(lines.begin(), lines.end(), [](const FindingLine& line) { return line.refuses; });
    return lines;
}

}  // namespace shaftcut::workbook
