#include "order/instruction_words.hpp"
#include "say_all.hpp"
#include "shaft_title_words.hpp"
#include "work_order_book/parts_sheet_words.hpp"
#include "work_order_book/workbook_sheets.hpp"

namespace shaftcut::workbook {
namespace {

constexpr int columns = 5;

void add_section(SheetBuilder& sheet, PartsBlock block, const Wording& w)
{
    sheet.empty_row(9);
    sheet.put(0, heading(block, w), style::section(), columns);
    sheet.end_row(18);
}

void add_head(SheetBuilder& sheet, PartsBlock block, const Wording& w)
{
    add_section(sheet, block, w);
    sheet.put_heads(heads(block, w));
    sheet.end_row();
}

void put_tick(SheetBuilder& sheet, int column, const Wording& w)
{
    CellStyle tick = style::written();
    tick.align = CellStyle::Align::centre;
    tick.bold = true;
    sheet.put(column, {}, tick);
    sheet.allow_words(column, ticks(w), takes_a_tick(w));
}

// Unlike the Order sheet's own cells these are only copies to work from.
void add_piece(SheetBuilder& sheet, const WorkOrder& order, Tube tube, bool guard, const Wording& w)
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
    sheet.put(0, letter_of(guard ? guard_part(tube) : tube_part(tube)), style::label());
    sheet.put(1, tube_to_saw(order.reading.shaft.halves[tube].end, tube, guard, w), style::label());
    sheet.put(2, CellFormula{"IF(" + holds("verdict", CellWord::refused, w) + ",\"\"," + cut + ")", cut_now}, figure);
    sheet.put(3, CellFormula{"IF(" + holds("verdict", CellWord::refused, w) + ",\"\"," + keep + ")", keep_now}, figure);
    put_tick(sheet, 4, w);
    sheet.end_row(18);
}

void add_steps(SheetBuilder& sheet, const WorkOrder& order, const Wording& w)
{
    add_head(sheet, PartsBlock::operations, w);
    for (const Step& step : order.steps) {
        sheet.put(0, static_cast<double>(step.number), style::figure());
        sheet.put(1, say(step, w), style::label());
        sheet.put(2, {}, style::written());
        sheet.put(3, {}, style::written());
        put_tick(sheet, 4, w);
        sheet.end_row(20);
    }
    if (!order.steps.empty()) return;
    sheet.put(0, no_operations(w), style::label(), columns);
    sheet.end_row();
}

void add_written_lines(SheetBuilder& sheet, const Wording& w)
{
    add_head(sheet, PartsBlock::parts, w);
    for (int number = 1; number <= 6; ++number) {
        sheet.put(0, static_cast<double>(number), style::figure());
        for (const int column : {1, 2, 3}) sheet.put(column, {}, style::written());
        put_tick(sheet, 4, w);
        sheet.end_row(18);
    }
}

// What no longer holds once a length is changed.
void add_warning(SheetBuilder& sheet, const WorkOrder& order, const Wording& w)
{
    CellStyle warning = style::small();
    warning.bold = true;
    warning.points = 11;
    const std::string refused = parts_of_refused(order_sheet_id, w), issued = parts_as_issued(w);
    const auto confirm_before = [&](const std::string& count) { return confirm_before_parts(count, order_sheet_id, w); };
    const std::string now = order.verdict == Verdict::refused ? refused : order.confirm.empty() ? issued : running_text({confirm_before(std::to_string(order.confirm.size())), issued});
    const std::string first = text_in_formula(confirm_before(expression_in_text("confirm_count")) + " ");
    const std::string then = "IF(" + holds("lengths_changed", CellWord::yes, w) + "," + text_in_formula(parts_of_changed(w)) + "," + text_in_formula(issued) + ")";
    sheet.put(0, CellFormula{"IF(" + holds("verdict", CellWord::refused, w) + "," + text_in_formula(refused) + ",IF(confirm_count>0," + first + ",\"\")&" + then + ")", now}, warning,
              columns);
    sheet.end_row(30);
}

}  // namespace

Worksheet parts_sheet(const WorkOrder& order, const std::string& footer, const Wording& w)
{
    SheetBuilder sheet(parts_sheet_name(w), {6, 54, 11, 16, 11});
    sheet.put(0, parts_title(order.order, w), style::title(), columns);
    sheet.end_row(24);
    sheet.put(0, say(order.shaft_title, w), style::section(), columns);
    sheet.end_row(18);
    add_warning(sheet, order, w);
    add_head(sheet, PartsBlock::tubes, w);
    for (const End end : both_ends)
        for (const bool guard : {true, false}) add_piece(sheet, order, tube_on(order.shaft, end), guard, w);
    add_steps(sheet, order, w);
    add_written_lines(sheet, w);
    add_section(sheet, PartsBlock::cautions, w);
    for (const std::string& caution : say_all(order.cautions, w)) {
        sheet.put(0, caution, style::small(), columns);
        sheet.end_row();
    }
    return sheet.take(head_of_pages(order, parts_sheet_name(w), w), footer, 1);
}

}  // namespace shaftcut::workbook
