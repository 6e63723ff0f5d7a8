#include "work_order_book/workbook_sheets.hpp"

namespace shaftcut::workbook {
namespace {

constexpr int columns = 5;

void add_head(SheetBuilder& sheet, const std::string& section, const std::array<const char*, columns>& heads)
{
    sheet.empty_row(9);
    sheet.put(0, section, style::section(), columns);
    sheet.end_row(18);
    sheet.put_heads(heads);
    sheet.end_row();
}

void put_tick(SheetBuilder& sheet, int column)
{
    CellStyle tick = style::written();
    tick.align = CellStyle::Align::centre;
    tick.bold = true;
    sheet.put(column, {}, tick);
    sheet.allow_words(column, {"x", "not needed"}, "x when done, or: not needed");
}

// Unlike the Order sheet's own cells these are only copies to work from.
void add_piece(SheetBuilder& sheet, const WorkOrder& order, int number, Tube tube, bool guard)
{
    const std::string cut = for_tube(guard ? "cut_THIS_guard" : "cut_THIS_tube", tube);
    const std::string keep = for_tube(guard ? "keep_THIS_guard_half" : "keep_THIS_half", tube);
    std::variant<double, std::string> cut_now = std::string(), keep_now = std::string();
    CellStyle figure = style::figure();
    const bool inches = order.units == Units::in;
    if (inches) figure.numbers = fraction_format;
    if (order.cut) {
        const CutPlan& plan = order.cut->plan;
        const auto off = guard ? plan.guard_cut[tube] : std::optional(plan.cut[tube]);
        const auto kept = guard ? plan.guard_half[tube] : std::optional(plan.half[tube]);
        if (off) cut_now = inches ? sixteenths(*off, Toward::nearest) : off->mm();
        if (kept) keep_now = inches ? sixteenths(*kept, Toward::down) : kept->mm();
    }
    sheet.put(0, static_cast<double>(number), style::figure());
    sheet.put(1, half_label(order, tube) + (guard ? ": guard tube (" : ": drive tube (") + unit_word(order.units) + ")", style::label());
    sheet.put(2, CellFormula{"IF(verdict=\"refused\",\"\"," + cut + ")", cut_now}, figure);
    sheet.put(3, CellFormula{"IF(verdict=\"refused\",\"\"," + keep + ")", keep_now}, figure);
    put_tick(sheet, 4);
    sheet.end_row(18);
}

void add_steps(SheetBuilder& sheet, const WorkOrder& order)
{
    add_head(sheet, "Operations, in this order", {"No.", "Operation", "By", "Remark", "Done"});
    int number = 0;
    for (const std::string& step : order.steps) {
        sheet.put(0, static_cast<double>(++number), style::figure());
        sheet.put(1, step, style::label());
        sheet.put(2, {}, style::written());
        sheet.put(3, {}, style::written());
        put_tick(sheet, 4);
        sheet.end_row(20);
    }
    if (!order.steps.empty()) return;
    sheet.put(0, std::string("None: the order was refused as issued."), style::label(), columns);
    sheet.end_row();
}

void add_written_lines(SheetBuilder& sheet)
{
    add_head(sheet, "Parts and consumables used", {"No.", "What", "Count", "Where from", "Done"});
    for (int number = 1; number <= 6; ++number) {
        sheet.put(0, static_cast<double>(number), style::figure());
        for (const int column : {1, 2, 3}) sheet.put(column, {}, style::written());
        put_tick(sheet, 4);
        sheet.end_row(18);
    }
}

// What no longer holds once a length is changed.
void add_warning(SheetBuilder& sheet, const WorkOrder& order)
{
    CellStyle warning = style::small();
    warning.bold = true;
    warning.points = 11;
    const std::string refused = "DO NOT CUT: the order is refused. See the sheet Order.";
    const std::string changed = "LENGTHS CHANGED since issue: run the program again for the operations; the cuts below are for the new lengths.";
    const std::string issued = "The operations below are for the lengths as issued.", first = ": sheet Order, block 2. ";
    const std::string now = order.verdict == Verdict::refused ? refused : order.confirm.empty() ? issued : "CONFIRM " + std::to_string(order.confirm.size()) + " FIRST" + first + issued;
    sheet.put(0, CellFormula{"IF(verdict=\"refused\",\"" + refused + "\",IF(confirm_count>0,\"CONFIRM \"&confirm_count&\" FIRST" + first + "\",\"\")&IF(lengths_changed=\"yes\",\"" + changed +
                                 "\",\"" + issued + "\"))", now}, warning, columns);
    sheet.end_row(30);
}

}  // namespace

Worksheet parts_sheet(const WorkOrder& order, const std::string& footer)
{
    SheetBuilder sheet("Parts and operations", {6, 54, 11, 16, 11});
    sheet.put(0, "Parts and operations, work order " + order.order, style::title(), columns);
    sheet.end_row(24);
    sheet.put(0, order.shaft_title, style::section(), columns);
    sheet.end_row(18);
    add_warning(sheet, order);
    add_head(sheet, "Tubes to saw", {"No.", "Tube", "Cut off", "Keep", "Done"});
    int number = 0;
    for (const End end : both_ends)
        for (const bool guard : {true, false}) add_piece(sheet, order, ++number, tube_on(order.shaft, end), guard);
    add_steps(sheet, order);
    add_written_lines(sheet);
    sheet.empty_row(9);
    sheet.put(0, std::string("Cautions"), style::section(), columns);
    sheet.end_row(18);
    for (const std::string& caution : order.cautions) {
        sheet.put(0, caution, style::small(), columns);
        sheet.end_row();
    }
    return sheet.take("&L&9Work order " + order.order + "&R&9Parts and operations", footer, 1);
}

}  // namespace shaftcut::workbook
