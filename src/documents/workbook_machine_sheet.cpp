// The table behind a machine's curve, and the curve as a chart.
#include "workbook_sheets.hpp"

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

// A position's overlap after the cut, empty while the job is refused; nothing where it was refused when this was written.
CellContent overlap_at(const WorkOrder& order, Length length)
{
    if (!order.cut) return {};
    return unless_refused(order, "ROUND(left_inner_half+left_outer_half-" + literal(length) + ",3)", order.cut->plan.overlap_at(length).mm());
}

void add_points(SheetBuilder& sheet, const WorkOrder& order, const MachineView& view)
{
    const char* position = view.mounted ? "height, mm" : "turn, degrees";
    const char* middle = view.mounted ? "length, mm" : "level, mm";
    int column = 0;
    for (const char* head : {position, "shortest, mm", middle, "longest, mm", "angles, degrees", "least overlap, mm"}) sheet.put(column++, std::string(head), style::table_head());
    sheet.end_row();
    for (const CurvePoint& point : view.curve) {
        sheet.put(0, view.mounted ? point.height.mm() : point.turn.degrees(), style::figure());
        sheet.put(1, point.shortest.mm(), style::figure());
        sheet.put(2, point.length.mm(), style::figure());
        sheet.put(3, point.longest.mm(), style::figure());
        sheet.put(4, figure(point.angles[End::tractor]) + " and " + figure(point.angles[End::implement]), style::label());
        sheet.put(overlap_column, overlap_at(order, point.longest), style::figure());
        sheet.end_row();
    }
}

SheetChart chart_of(const WorkOrder& order, const MachineView& view, int chart_row, int first, int last)
{
    SheetChart chart;
    chart.row = chart_row;
    chart.rows = chart_rows;
    chart.columns = columns;
    chart.x_title = view.mounted ? "height of the lower hitch point, mm" : "turn, degrees";
    chart.y_title = "mm";
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
