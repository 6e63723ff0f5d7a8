// Lengths that no shaft has, each with the question whether its unit is right where that alone explains it.
#include "data/bounds.hpp"
#include "work_order_book/finding_words.hpp"
#include "work_order_book/workbook_lines.hpp"

namespace shaftcut::workbook {
namespace {

struct Bounded {
    OutOfBounds found;   // its bounds are not set yet
    std::string length;  // the cell that is held to the bounds, in mm
    std::string stated;  // what was measured, in mm: with the spacing or yokes that it holds beyond that length
    std::optional<Length> now, stated_now;
    std::string known;  // an expression: whether the cell holds such a length
};

std::string is_number(const std::string& name) { return "ISNUMBER(" + name + ")"; }

std::string within(const std::string& expression, const Bounds& bounds)
{
    return "IF(" + expression + ">=" + literal(bounds.least) + "," + expression + "<=" + literal(bounds.greatest) + ",FALSE)";
}

std::string no_if(const std::string& condition, const Wording& w) { return word_if(condition, CellWord::no, CellWord::yes, w); }

// What the stated figure holds beyond the length no slip of the measured figure changes.
std::string as_if(const Bounded& one, const char* slip) { return "(" + one.stated + slip + "-" + one.stated + "+" + one.length + ")"; }

std::string question_now(const Bounded& one, const Bounds& bounds, const Wording& w)
{
    if (!one.now || !one.stated_now) return "";
    const Length beyond = *one.stated_now - *one.now;
    if (bounds.hold(Length::micrometres(one.stated_now->um() * 254 / 10) - beyond)) return asks_for_unit(Units::in, w);
    if (bounds.hold(Length::micrometres(one.stated_now->um() * 10 / 254) - beyond)) return asks_for_unit(Units::mm, w);
    return "";
}

std::string label_of(OutOfBounds found, const Bounds& bounds, const Wording& w)
{
    found.least = bounds.least;
    found.greatest = bounds.greatest;
    return out_of_bounds(found, w);
}

void add(std::vector<FindingLine>& lines, const Bounded& one, const Bounds& bounds, const Wording& w)
{
    FindingLine line;
    line.label = label_of(one.found, bounds, w);
    line.formula = {only_where(one.known, no_if(within(one.length, bounds), w), w), yes_or_no(one.now && !bounds.hold(*one.now), w)};
    line.more = {"IF(" + within(as_if(one, "*25.4"), bounds) + "," + text_in_formula(asks_for_unit(Units::in, w)) + ",IF(" + within(as_if(one, "/25.4"), bounds) + "," +
                     text_in_formula(asks_for_unit(Units::mm, w)) + ",\"\"))",
                 question_now(one, bounds, w)};
    lines.push_back(line);
}

// What is known only as at least so much was held when the order was written: here only what is typed in its place is.
void add_fit(std::vector<FindingLine>& lines, const WorkOrder& order, const Wording& w)
{
    for (const FitInput& input : fit_inputs(order)) {
        const std::string length = input.word + "_length";
        const std::string stated = input.between_inner_crosses ? length : in_mm(input.name, order.units);
        const auto now = value_of(input.range ? order.fit.longest[*input.range] : order.fit.shortest);
        add(lines, {{BoundedLength::fit, std::nullopt, input.range, {}, {}}, length, stated, now, input.between_inner_crosses ? now : input.issued,
                            is_number(input.at_least ? input.name : length)}, telescoping_bounds, w);
    }
}

// A shoulder that nothing states follows from the closed length and the other half: then one of these two is wrong.
FindingLine derived_shoulder_line(const WorkOrder& order, Tube tube, const Wording& w)
{
    const Half& met = order.reading.shaft.halves[other(tube)];
    const bool derived = !order.reading.shaft.halves[tube].shoulder && met.measured;
    const std::string follows = for_tube("IF(ISNUMBER(THIS_shoulder),FALSE,AND(ISNUMBER(closed_length),ISNUMBER(OTHER_half)))", tube);
    return {label_of({BoundedLength::derived_shoulder, tube, std::nullopt, {}, {}}, shoulder_bounds, w),
            {only_where(follows, no_if(within(for_tube("ROUND(closed_length-OTHER_length,3)", tube), shoulder_bounds), w), w),
             yes_or_no(derived && !shoulder_bounds.hold(order.reading.shaft.closed.value - met.length->value), w)}};
}

}  // namespace

void add_bound_findings(std::vector<FindingLine>& lines, const WorkOrder& order, const Wording& w)
{
    const Shaft& shaft = order.reading.shaft;
    const OutOfBounds closed{BoundedLength::closed, std::nullopt, std::nullopt, {}, {}};
    add(lines, {closed, "closed_length", in_mm("closed", order.units), shaft.closed.value, order.reading.closed.value, is_number("closed_length")}, telescoping_bounds, w);
    for (const Tube tube : both_tubes) {
        const Half& half = shaft.halves[tube];
        const auto held = [&](BoundedLength length, const char* name, std::optional<Length> now, const Bounds& bounds) {
            add(lines, {{length, tube, std::nullopt, {}, {}}, for_tube(name, tube), for_tube(name, tube), now, now, is_number(for_tube(name, tube))}, bounds, w);
        };
        held(BoundedLength::half, "THIS_length", value_of(half.length), half_bounds);
        if (half.guard_used) held(BoundedLength::guard_half, "THIS_guard_length", value_of(half.guard), guard_half_bounds);
        lines.push_back(derived_shoulder_line(order, tube, w));
    }
    add_fit(lines, order, w);
    bool spacing = false;
    for (const End end : both_ends) spacing = spacing || (shaft.spacing[end] != Length() && !spacing_bounds.hold(shaft.spacing[end]));
    lines.push_back({clause(FindingClause::spacing_out_of_bounds, w), {"", yes_or_no(spacing, w)}});
}

}  // namespace shaftcut::workbook
