// What makes up the check on consistency: contradictions and doubts, each as a formula that says yes or no.
#include <algorithm>

#include "data/bounds.hpp"
#include "spreadsheet/sheet_builder.hpp"
#include "work_order_book/finding_words.hpp"
#include "work_order_book/workbook_lines.hpp"

namespace shaftcut::workbook {
namespace {

// Compares two figures where both are numbers.
std::string yes_if_numbers(const std::string& a, const std::string& b, const std::string& condition, const Wording& w)
{
    return yes_if("AND(ISNUMBER(" + a + "),ISNUMBER(" + b + "))", condition, w);
}

struct Figure {
    std::string name;
    std::optional<Length> now;
};

void add_less(std::vector<FindingLine>& lines, const std::string& label, const Figure& a, const Figure& b, const Wording& w)
{
    lines.push_back({label,
                     {yes_if_numbers(a.name, b.name, clearly_below_expression(a.name, b.name), w), yes_or_no(a.now && b.now && clearly_below(*a.now, *b.now), w)}});
}

// Of two longest lengths where both were measured: the ranges of a machine's geometry need not contain each other.
void add_less_if_measured(std::vector<FindingLine>& lines, const WorkOrder& order, const Figure& a, const Figure& b, const FitInput& a_input, const FitInput& b_input, const Wording& w)
{
    const FitReading& fit = order.fits.front();
    const bool both = fit.longest[*a_input.range] && fit.longest[*b_input.range];
    const std::string less = yes_if(b_input.is_measured(order.units), clearly_below_expression(a.name, b.name), w);
    lines.push_back({longest_below_longest_both_measured(*a_input.range, *b_input.range, w),
                     {only_where(a_input.is_measured(order.units), less, w),
                      yes_or_no(both && a.now && b.now && clearly_below(*a.now, *b.now), w)}});
}

void add_not_less(std::vector<FindingLine>& lines, const std::string& label, const Figure& a, const Figure& b, const Wording& w)
{
    lines.push_back({label,
                     {yes_if_numbers(a.name, b.name, "ROUND(" + b.name + "-" + a.name + ",3)<0.01", w), yes_or_no(a.now && b.now && !clearly_below(*a.now, *b.now), w)}});
}

void add_not_more(std::vector<FindingLine>& lines, const std::string& label, const Figure& a, const Figure& b, const Wording& w)
{
    lines.push_back({label,
                     {yes_if_numbers(a.name, b.name, "ROUND(" + a.name + "-" + b.name + ",3)<0.01", w), yes_or_no(a.now && b.now && !clearly_above(*a.now, *b.now), w)}});
}

std::string readable_input(const InputLine& line, Units units)
{
    const std::string most = std::to_string(longest_input(units));
    const std::string number = "IF(ISNUMBER(" + line.name + "),AND(" + line.name + ">=0," + line.name + "<=" + most + "),";
    return number + (line.required ? "FALSE)" : "ISBLANK(" + line.name + "))");
}

FindingLine unreadable_lengths(const WorkOrder& order, const Wording& w)
{
    std::string all;
    for (const InputLine& line : input_lines(order, w)) all += (all.empty() ? "" : ",") + readable_input(line, order.units);
    return {clause(FindingClause::unreadable, w), {word_if("AND(" + all + ")", CellWord::no, CellWord::yes, w), yes_or_no(false, w)}};
}

bool has_geometry(const WorkOrder& order)
{
    return std::any_of(order.fits.begin(), order.fits.end(), [](const FitReading& fit) { return fit.geometry.has_value(); });
}

Figure longest(const WorkOrder& order, Range range)
{
    return {std::string(to_word(range)) + "_length", value_of(known_or_at_least(order, range))};
}

// With several fits each was compared with its own lengths when the order was written. Of the deciding ones, which may come
// from different fits, the longest standing is bound by the longest turning only where every fit has measured one.
void add_ranges(std::vector<FindingLine>& lines, const WorkOrder& order, const Wording& w)
{
    const Figure working = longest(order, Range::working), turning = longest(order, Range::turning), standing = longest(order, Range::standing);
    if (order.fits.size() == 1 && has_geometry(order)) {
        const auto inputs = fit_inputs(order);
        add_less_if_measured(lines, order, turning, working, inputs[2], inputs[1], w);
        add_less_if_measured(lines, order, standing, turning, inputs[3], inputs[2], w);
        return;
    }
    const auto all = [&](Range range) { return std::all_of(order.fits.begin(), order.fits.end(), [&](const FitReading& fit) { return fit.longest[range].has_value(); }); };
    if (!has_geometry(order) || (all(Range::turning) && all(Range::working))) add_less(lines, longest_below_longest(Range::turning, Range::working, w), turning, working, w);
    if (order.fits.size() == 1 || (all(Range::standing) && all(Range::turning))) add_less(lines, longest_below_longest(Range::standing, Range::turning, w), standing, turning, w);
    else if (!has_geometry(order) && order.fit.longest_at_least[Range::standing])
        lines.push_back({longest_below_longest(Range::standing, Range::turning, w),
                         {yes_if("ISNUMBER(longest_standing)", clearly_below_expression(standing.name, turning.name), w), yes_or_no(false, w)}});
}

// Of a range that some tractors leave out what is stated counts: the least shortest of all is not more than its own tractor's.
void add_stated_less(std::vector<FindingLine>& lines, const WorkOrder& order, Range range, const Figure& shortest, const Wording& w)
{
    const std::string input = std::string("longest_") + to_word(range), length = std::string(to_word(range)) + "_length";
    const Length stated = order.fit.longest_at_least[range]->value;
    const std::string compared = "IF(ISNUMBER(" + input + ")," + length + "," + literal(stated) + ")";
    lines.push_back({longest_below_shortest(range, w),
                     {yes_if("ISNUMBER(shortest_length)", "ROUND(shortest_length-" + compared + ",3)>=0.01", w), yes_or_no(shortest.now && clearly_below(stated, *shortest.now), w)}});
}

void add_fit(std::vector<FindingLine>& lines, const WorkOrder& order, const Wording& w)
{
    const Figure shortest{"shortest_length", value_of(order.fit.shortest)};
    for (const Range range : all_ranges)
        if (order.fit.longest_at_least[range]) add_stated_less(lines, order, range, shortest, w);
        else add_less(lines, longest_below_shortest(range, w), longest(order, range), shortest, w);
    add_ranges(lines, order, w);
}

// Of a half that an earlier sheet kept so much of.
void add_cut_to(std::vector<FindingLine>& lines, const WorkOrder& order, Tube tube, const Wording& w)
{
    const Half& half = order.reading.shaft.halves[tube];
    if (!half.cut_to) return;
    const bool less = half.length && clearly_below(half.length->value + saw_and_two_readings(half.length->plus_minus, order.saw), *half.cut_to);
    lines.push_back({half_below_cut_to(tube, w),
                     {for_tube(yes_if("ISNUMBER(THIS_half)", "ROUND(THIS_cut_to-THIS_length-saw_plus_minus-2*THIS_plus_minus,3)>=0.01", w), tube), yes_or_no(less, w)}});
    if (half.seat) lines.push_back({cut_to_within_seat(tube, w), {"", yes_or_no(!clearly_above(*half.cut_to, *half.seat), w)}});
}

void add_halves(std::vector<FindingLine>& lines, const WorkOrder& order, const Wording& w)
{
    const Shaft& shaft = order.reading.shaft;
    const Figure closed{"closed_length", shaft.closed.value};
    for (const Tube tube : both_tubes) {
        const Half& half = shaft.halves[tube];
        const Figure figure{for_tube("THIS_length", tube), value_of(half.length)};
        add_not_less(lines, half_not_below_closed(tube, w), figure, closed, w);
        add_not_less(lines, guard_half_not_below_closed(tube, w), {for_tube("THIS_guard_length", tube), value_of(half.guard)}, closed, w);
        if (half.seat) add_not_more(lines, half_within_its_seat(tube, w), figure, {for_tube("THIS_seat", tube), half.seat}, w);
        add_cut_to(lines, order, tube, w);
    }
    const bool apart = order.stops && !clearly_below(shaft.closed.value, shaft.halves[Tube::inner].length->value + shaft.halves[Tube::outer].length->value);
    lines.push_back({clause(FindingClause::halves_do_not_meet, w),
                     {yes_if(holds("stops_known", CellWord::yes, w), "ROUND(inner_length+outer_length-closed_length,3)<0.01", w), yes_or_no(apart, w)}});
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
void add_fixed(std::vector<FindingLine>& lines, const WorkOrder& order, const Wording& w)
{
    bool angles = false, unreadable = false, own = false;
    for (const FitReading& fit : order.fits) {
        angles = angles || angles_contradict(fit);
        unreadable = unreadable || fit.unreadable;
        own = own || (has_deciding_inputs(order) && lengths_contradict(fit));
    }
    lines.push_back({clause(FindingClause::angles_contradict, w), {"", yes_or_no(angles, w)}});
    lines.push_back({clause(FindingClause::fit_unusable, w), {"", yes_or_no(unreadable, w)}});
    if (has_deciding_inputs(order)) lines.push_back({clause(FindingClause::one_tractor_contradicts, w), {"", yes_or_no(own, w)}});
}

// A longest over a joint that bends and has no angle is read in line, which is not the safe way.
bool read_in_line(const FitReading& fit, Range range)
{
    for (const End end : both_ends)
        if (fit.reaches[end].bends() && !fit.fit.angles[end][range]) return true;
    return false;
}

void add_unbent(std::vector<FindingLine>& lines, const WorkOrder& order, const Wording& w)
{
    const FitReading& fit = order.fits.front();
    if (has_deciding_inputs(order)) {
        const bool in_line = std::any_of(order.fits.begin(), order.fits.end(), [](const FitReading& one) { return !one.unbent.empty(); });
        lines.push_back({clause(FindingClause::read_in_line, w), {"", yes_or_no(in_line, w)}, false});
        return;
    }
    if (fit.unreadable) return;
    for (const FitInput& input : fit_inputs(order))
        if (input.range && !input.between_inner_crosses && read_in_line(fit, *input.range))
            lines.push_back({fit_read_in_line(*input.range, w),
                             {yes_if(input.is_measured(order.units), w), yes_or_no(fit.longest[*input.range].has_value(), w)}, false});
}

// A measured length and what the machine's geometry comes to instead, on either side.
void add_disputed(std::vector<FindingLine>& lines, const WorkOrder& order, const FitInput& input, const Wording& w)
{
    const FitReading& fit = order.fits.front();
    const std::string length = input.word + "_length", plus_minus = input.word + "_plus_minus";
    const std::string reached = literal(input.geometry->length);
    const auto now = [&](bool past) {
        return yes_or_no(std::any_of(fit.disputed.begin(), fit.disputed.end(), [&](const DisputedLength& one) { return one.range == input.range && one.goes_past() == past; }), w);
    };
    const auto add = [&](const std::string& label, const std::string& difference, bool past) {
        lines.push_back({label, {yes_if(input.is_measured(order.units), "ROUND(" + difference + "-" + plus_minus + ",3)>=0.01", w), now(past)}, false});
    };
    add(geometry_goes_past(input.range, w), input.range ? reached + "-" + length : length + "-" + reached, true);
    add(geometry_cannot_reach(input.range, w), input.range ? length + "-" + reached : reached + "-" + length, false);
}

void add_all_disputed(std::vector<FindingLine>& lines, const WorkOrder& order, const Wording& w)
{
    if (!has_geometry(order)) return;
    if (!has_deciding_inputs(order)) {
        for (const FitInput& input : fit_inputs(order))
            if (input.geometry) add_disputed(lines, order, input, w);
        return;
    }
    const bool disputed = std::any_of(order.fits.begin(), order.fits.end(), [](const FitReading& fit) { return !fit.disputed.empty(); });
    lines.push_back({clause(FindingClause::geometry_disputed, w), {"", yes_or_no(disputed, w)}, false});
}

void add_doubts(std::vector<FindingLine>& lines, const WorkOrder& order, const Wording& w)
{
    add_unbent(lines, order, w);
    add_all_disputed(lines, order, w);
    lines.push_back({clause(FindingClause::limits_loosened, w), {"", yes_or_no(!order.limits.loosened().empty(), w)}, false});
}

}  // namespace

std::vector<FindingLine> finding_lines(const WorkOrder& order, const Wording& w)
{
    std::vector<FindingLine> lines;
    lines.push_back(unreadable_lengths(order, w));
    add_fit(lines, order, w);
    add_bound_findings(lines, order, w);
    add_halves(lines, order, w);
    add_stop_findings(lines, order, w);
    add_elsewhere_findings(lines, order, w);
    add_fixed(lines, order, w);
    add_doubts(lines, order, w);
    std::stable_partition(lines.begin(), lines.end(), [](const FindingLine& line) { return line.refuses; });
    return lines;
}

}  // namespace shaftcut::workbook
