// Lengths that no shaft has, each with the question whether its unit is right where that alone explains it.
#include "data/bounds.hpp"
#include "work_order_book/workbook_lines.hpp"

namespace shaftcut::workbook {
namespace {

struct Bounded {
    std::string label;
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

constexpr const char* were_inches = ": is its unit right? Measured in inches, not in mm, it would do";
constexpr const char* were_millimetres = ": is its unit right? Measured in mm, not in inches, it would do";

// What the stated figure holds beyond the length no slip of the measured figure changes.
std::string as_if(const Bounded& one, const char* slip) { return "(" + one.stated + slip + "-" + one.stated + "+" + one.length + ")"; }

std::string question_now(const Bounded& one, const Bounds& bounds)
{
    if (!one.now || !one.stated_now) return "";
    const Length beyond = *one.stated_now - *one.now;
    if (bounds.hold(Length::micrometres(one.stated_now->um() * 254 / 10) - beyond)) return were_inches;
    if (bounds.hold(Length::micrometres(one.stated_now->um() * 10 / 254) - beyond)) return were_millimetres;
    return "";
}

void add(std::vector<FindingLine>& lines, const WorkOrder& order, const Bounded& one, const Bounds& bounds)
{
    const auto limit = [&](Length length) { return figure_with_unit(length, order.units, Toward::nearest, 1); };
    FindingLine line;
    line.label = one.label + " is not within " + limit(bounds.least) + " to " + limit(bounds.greatest);
    line.formula = {"IF(" + one.known + ",IF(" + within(one.length, bounds) + ",\"no\",\"yes\"),\"no\")", yes_or_no(one.now && !bounds.hold(*one.now))};
    line.more = {"IF(" + within(as_if(one, "*25.4"), bounds) + ",\"" + were_inches + "\",IF(" + within(as_if(one, "/25.4"), bounds) + ",\"" + were_millimetres + "\",\"\"))",
                 question_now(one, bounds)};
    lines.push_back(line);
}

// What is known only as at least so much was held when the order was written: here only what is typed in its place is.
void add_fit(std::vector<FindingLine>& lines, const WorkOrder& order)
{
    for (const FitInput& input : fit_inputs(order)) {
        const std::string length = input.word + "_length";
        const std::string stated = input.between_inner_crosses ? length : in_mm(input.name, order.units);
        const auto now = value_of(input.range ? order.fit.longest[*input.range] : order.fit.shortest);
        add(lines, order, {(input.range ? "the longest " : "the ") + input.word, length, stated, now, input.between_inner_crosses ? now : input.issued,
                            is_number(input.at_least ? input.name : length)}, telescoping_bounds);
    }
}

// A shoulder that nothing states follows from the closed length and the other half: then one of these two is wrong.
FindingLine derived_shoulder_line(const WorkOrder& order, Tube tube)
{
    const auto limit = [&](Length length) { return figure_with_unit(length, order.units, Toward::nearest, 1); };
    const Half& met = order.reading.shaft.halves[other(tube)];
    const bool derived = !order.reading.shaft.halves[tube].shoulder && met.measured;
    const std::string follows = for_tube("IF(ISNUMBER(THIS_shoulder),FALSE,AND(ISNUMBER(closed_length),ISNUMBER(OTHER_half)))", tube);
    return {for_tube("the THIS half's shoulder, closed length less OTHER half, is not within ", tube) + limit(shoulder_bounds.least) + " to " + limit(shoulder_bounds.greatest),
            {"IF(" + follows + ",IF(" + within(for_tube("ROUND(closed_length-OTHER_length,3)", tube), shoulder_bounds) + ",\"no\",\"yes\"),\"no\")",
             yes_or_no(derived && !shoulder_bounds.hold(order.reading.shaft.closed.value - met.length->value))}};
}

}  // namespace

void add_bound_findings(std::vector<FindingLine>& lines, const WorkOrder& order)
{
    const Shaft& shaft = order.reading.shaft;
    add(lines, order, {"the closed length", "closed_length", in_mm("closed", order.units), shaft.closed.value, order.reading.closed.value, is_number("closed_length")}, telescoping_bounds);
    for (const Tube tube : both_tubes) {
        const Half& half = shaft.halves[tube];
        const auto held = [&](const char* label, const char* name, std::optional<Length> now, const Bounds& bounds) {
            add(lines, order, {for_tube(label, tube), for_tube(name, tube), for_tube(name, tube), now, now, is_number(for_tube(name, tube))}, bounds);
        };
        held("the THIS half", "THIS_length", value_of(half.length), half_bounds);
        if (half.guard_used) held("the THIS guard half", "THIS_guard_length", value_of(half.guard), guard_half_bounds);
        lines.push_back(derived_shoulder_line(order, tube));
    }
    add_fit(lines, order);
    bool spacing = false;
    for (const End end : both_ends) spacing = spacing || (shaft.spacing[end] != Length() && !spacing_bounds.hold(shaft.spacing[end]));
    lines.push_back({"the spacing of a wide-angle joint is none that such a joint has (as issued)", {"", yes_or_no(spacing)}});
}

}  // namespace shaftcut::workbook
