// The table behind a machine's curve, and the curve as a chart.
#include "work_order_book/machine_sheet_words.hpp"
#include "work_order_book/workbook_sheets.hpp"

namespace shaftcut::workbook {
namespace {

constexpr int columns = 6, overlap_column = 5, chart_rows = 24;

void add_head(SheetBuilder& sheet, const WorkOrder& order, const MachineView& view, const Wording& w)
{
    sheet.put(0, machine_title(view.mounted, order.order, view.tractor, w), style::title(), columns);
    sheet.end_row(24);
    sheet.put(0, machine_remark(view.mounted, w), style::small(), columns);
    sheet.end_row();
    sheet.empty_row();
}

double shown_now(Length length, Units units) { return units == Units::mm ? length.mm() : length.mm() / 25.4; }

// A position's overlap after the cut, empty while the job is refused.
CellContent overlap_at(const WorkOrder& order, Length length, const Wording& w)
{
    const std::variant<double, std::string> now = order.cut ? std::variant<double, std::string>(shown_now(order.cut->plan.overlap_at(length), order.units)) : std::string();
    return unless_refused(order, shown("ROUND(left_inner_half+left_outer_half-" + literal(length) + ",3)", order.units), now, w);
}

void add_points(SheetBuilder& sheet, const WorkOrder& order, const MachineView& view, const Wording& w)
{
    sheet.put_heads(machine_heads(view.mounted, w));
    sheet.end_row();
    CellStyle length = style::figure();
    if (order.units == Units::in) length.numbers = "0.000";
    for (const CurvePoint& point : view.curve) {
        sheet.put(0, view.mounted ? shown_now(point.height, order.units) : point.turn.degrees(), view.mounted ? length : style::figure());
        sheet.put(1, shown_now(point.shortest, order.units), length);
        sheet.put(2, shown_now(point.length, order.units), length);
        sheet.put(3, shown_now(point.longest, order.units), length);
        sheet.put(4, joint_angles(point.angles[End::tractor], point.angles[End::implement], w), style::label());
        sheet.put(overlap_column, overlap_at(order, point.longest, w), length);
        sheet.end_row();
    }
}

SheetChart chart_of(const WorkOrder& order, const MachineView& view, int chart_row, int first, int last, const Wording& w)
{
    SheetChart chart;
    chart.row = chart_row;
    chart.rows = chart_rows;
    chart.columns = columns;
    chart.x_title = position_axis(view.mounted, w);
    chart.y_title = length_axis(w);
    chart.first_row = first;
    chart.last_row = last;
    if (view.mounted) {
        chart.series.push_back({name_of(CurveName::telescoping, w), 0, 2, false});
    } else {
        chart.series = {{name_of(CurveName::level, w), 0, 2, false}, {name_of(CurveName::shortest, w), 0, 1, true}, {name_of(CurveName::longest, w), 0, 3, true}};
    }
    if (order.cut) chart.series.push_back({name_of(CurveName::least_overlap, w), 0, overlap_column, true});
    return chart;
}

}  // namespace

Worksheet machine_sheet(const WorkOrder& order, const MachineView& view, const std::string& name, const std::string& footer, const Wording& w)
{
    SheetBuilder sheet(name, {14, 14, 14, 14, 18, 18});
    add_head(sheet, order, view, w);
    const int chart_row = sheet.row();
    for (int i = 0; i < chart_rows; ++i) sheet.empty_row(15);
    const int first = sheet.row() + 1;
    add_points(sheet, order, view, w);
    Worksheet done = sheet.take(head_of_pages(order, name, w), footer, 1);
    done.chart = chart_of(order, view, chart_row, first, first + static_cast<int>(view.curve.size()) - 1, w);
    return done;
}

}  // namespace shaftcut::workbook
