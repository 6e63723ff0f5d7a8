// The table behind a machine's curve, and the curve as a chart.
#include "work_order_book/workbook_sheets.hpp"

namespace shaftcut::workbook {
namespace {

constexpr int columns = 6, overlap_column = 5, chart_rows = 24;

void add_head(SheetBuilder& sheet, const WorkOrder& order, const MachineView& view)
{
    sheet.put(0, "Telescoping length over the " + std::string(view.mounted ? "lift" : "turn") + " (" + order.order + (view.tractor.empty() ? "" : ", " + view.tractor) + ")",
              style::title(), columns);
    sheet.end_row(24);
    sheet.put(0, std::string(view.mounted ? "From the machine's geometry. Heights are of the lower hitch point above ground."
                                          : "From the machine's geometry. Shortest and longest are over pitch and roll of the range that turns furthest; a turn to the right is positive."),
              style::small(), columns);
    sheet.end_row();
    sheet.empty_row();
}

double shown_now(Length length, Units units) { return units == Units::mm ? length.mm() : length.mm() / 25.4; }

// A position's overlap after the cut, empty while the job is refused.
CellContent overlap_at(const WorkOrder& order, Length length)
{
    const std::variant<double, std::string> now = order.cut ? std::variant<double, std::string>(shown_now(order.cut->plan.overlap_at(length), order.units)) : std::string();
    return unless_refused(order, shown("ROUND(left_inner_half+left_outer_half-" + literal(length) + ",3)", order.units), now);
}

void add_points(SheetBuilder& sheet, const WorkOrder& order, const MachineView& view)
{
    const std::string unit = std::string(", ") + unit_word(order.units);
    const std::string position = view.mounted ? "height" + unit : "turn, degrees";
    int column = 0;
    for (const std::string& head : {position, "shortest" + unit, (view.mounted ? "length" : "level") + unit, "longest" + unit, std::string("angles, degrees"), "least overlap" + unit})
        sheet.put(column++, head, style::table_head());
    sheet.end_row();
    CellStyle length = style::figure();
    if (order.units == Units::in) length.numbers = "0.000";
    for (const CurvePoint& point : view.curve) {
        sheet.put(0, view.mounted ? shown_now(point.height, order.units) : point.turn.degrees(), view.mounted ? length : style::figure());
        sheet.put(1, shown_now(point.shortest, order.units), length);
        sheet.put(2, shown_now(point.length, order.units), length);
        sheet.put(3, shown_now(point.longest, order.units), length);
        sheet.put(4, figure(point.angles[End::tractor]) + " and " + figure(point.angles[End::implement]), style::label());
        sheet.put(overlap_column, overlap_at(order, point.longest), length);
        sheet.end_row();
    }
}

SheetChart chart_of(const WorkOrder& order, const MachineView& view, int chart_row, int first, int last)
{
    SheetChart chart;
    chart.row = chart_row;
    chart.rows = chart_rows;
    chart.columns = columns;
    const std::string unit = unit_word(order.units);
    chart.x_title = view.mounted ? "implement lifted: height of the lower hitch point above ground, " + unit : "machine turned about the pin, degrees; to the right positive";
    chart.y_title = "length between the inner crosses, overlap: " + unit;
    chart.first_row = first;
    chart.last_row = last;
    if (view.mounted) {
        chart.series.push_back({"telescoping length", 0, 2, false});
    } else {
        chart.series = {{"level", 0, 2, false}, {"shortest", 0, 1, true}, {"longest", 0, 3, true}};
    }
    if (order.cut) chart.series.push_back({"least overlap after the cut", 0, overlap_column, true});
    return chart;
}

}  // namespace

Worksheet machine_sheet(const WorkOrder& order, const MachineView& view, const std::string& name, const std::string& footer)
{
    SheetBuilder sheet(name, {14, 14, 14, 14, 18, 18});
    add_head(sheet, order, view);
    const int chart_row = sheet.row();
    for (int i = 0; i < chart_rows; ++i) sheet.empty_row(15);
    const int first = sheet.row() + 1;
    add_points(sheet, order, view);
    Worksheet done = sheet.take("&L&9Work order " + order.order + "&R&9" + name, footer, 1);
    done.chart = chart_of(order, view, chart_row, first, first + static_cast<int>(view.curve.size()) - 1);
    return done;
}

}  // namespace shaftcut::workbook
