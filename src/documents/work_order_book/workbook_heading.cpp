// The Order sheet's heading: whose shaft, for which machine, as it came in, who measured.
#include "work_order_book/order_sheet_words.hpp"
#include "condition_words.hpp"
#include "work_order_book/sheet_words.hpp"
#include "work_order_book/workbook_sheets.hpp"

namespace shaftcut::workbook {
namespace {

constexpr int last_column = 5;

void add_line(SheetBuilder& sheet, OrderCaption label, const std::string& text, const Wording& w)
{
    sheet.put(0, caption(label, w), style::label());
    sheet.put(1, text, style::label(), last_column);
    sheet.end_row(15);
}

}  // namespace

void add_heading(SheetBuilder& sheet, const WorkOrder& order, const Wording& w)
{
    sheet.put(0, work_order_title(order.order, w), style::title(), 4);
    CellStyle right = style::section();
    right.align = CellStyle::Align::right;
    sheet.put(4, order.owner, right, 2);
    sheet.end_row(24);
    sheet.put(0, shaft_words(order, w), style::section(), last_column + 1);
    sheet.end_row(18);
    const Circumstances& around = order.circumstances;
    add_line(sheet, OrderCaption::customer, customer_words(order, w), w);
    add_line(sheet, OrderCaption::machine, machine_words(order, w), w);
    add_line(sheet, OrderCaption::tractor, order.tractor, w);
    add_line(sheet, OrderCaption::date, order.date, w);
    const std::pair<OrderCaption, std::string> stated[] = {{OrderCaption::hitch, around.hitch},
                                                           {OrderCaption::other_tractors, other_tractors_words(around, w)},
                                                           {OrderCaption::power, power_words(around, w)},
                                                           {OrderCaption::as_it_came_in, order.shaft.condition ? condition_words(*order.shaft.condition, w) : ""},
                                                           {OrderCaption::measured_by, measured_by_words(around.measured_by, w)},
                                                           {OrderCaption::limits_loosened, limits_words(around, w)}};
    for (const auto& [label, text] : stated)
        if (!text.empty()) add_line(sheet, label, text, w);
}

}  // namespace shaftcut::workbook
