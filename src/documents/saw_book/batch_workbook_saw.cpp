// The sheet Saw: for each profile the bars to fetch, then each bar with its pieces and their stops.
#include <algorithm>

#include "saw_book/batch_workbook_sheets.hpp"
#include "saw_book/saw_workbook_parts.hpp"

namespace shaftcut::batch_workbook {
namespace {

using workbook::SheetBuilder;
namespace style = workbook::style;

constexpr int name_columns = 4, value_column = 5, text_columns = 9;

// The blade and the trims are the same for every profile.
const SawOrder* first_order(const Batch& batch)
{
    const auto found = std::find_if(batch.plans.begin(), batch.plans.end(), [](const ProfilePlan& plan) { return plan.order.has_value(); });
    return found == batch.plans.end() ? nullptr : &*found->order;
}

std::vector<std::pair<std::string, std::string>> add_inputs(SheetBuilder& sheet, const SawOrder& order)
{
    std::vector<std::pair<std::string, std::string>> names;
    const auto add = [&](const char* name, const std::string& label, CellContent value) {
        sheet.put(0, label, style::label(), name_columns);
        sheet.put(value_column, std::move(value), style::input());
        sheet.allow_numbers(value_column, 0, workbook::longest_input(Units::mm), "A length in millimetres, 0 to 100000.");
        names.emplace_back(name, sheet.here(value_column));
        sheet.end_row();
    };
    add("kerf", "Kerf, mm", order.task.kerf.mm());
    add("trim_start", "Start trim, mm", order.task.trim_start.mm());
    add("trim_end", "End trim, mm", order.task.trim_end.mm());
    add("reusable_leftover", "Back to the rack from, mm (empty: never)", order.reusable ? CellContent(order.reusable->mm()) : CellContent());
    return names;
}

void add_text(SheetBuilder& sheet, const std::string& text, const CellStyle& style)
{
    sheet.put(0, text, style, text_columns);
    sheet.end_row();
}

std::string fetch_text(const SawOrder& order)
{
    std::string text;
    for (const BarsToFetch& bars : order.fetch) text += (text.empty() ? "Fetch " : ", ") + std::to_string(bars.count) + " × " + saw_figure_with_unit(bars.length, order.units);
    return text;
}

void add_profile(SheetBuilder& sheet, const ProfilePlan& plan)
{
    sheet.empty_row(9);
    add_text(sheet, plan.profile, style::section());
    if (!plan.order) return add_text(sheet, "NO PLAN: " + plan.refusal, style::sentence());
    add_text(sheet, fetch_text(*plan.order) + ". " + cost_words(*plan.order) + "; " + bound_sentence(plan.order->plan) + ".", style::small());
    saw_workbook::put_bar_heads(sheet, plan.order->units);
    saw_workbook::put_bars(sheet, *plan.order);
}

}  // namespace

NamedSheet saw_sheet(const Batch& batch, const std::string& footer)
{
    SheetBuilder sheet("Saw", saw_workbook::bar_column_widths(batch.units));
    NamedSheet made;
    add_text(sheet, "Pieces by bar, at the lengths first given: a length that changes on Orders needs a new plan", style::small());
    if (const SawOrder* order = first_order(batch)) made.names = add_inputs(sheet, *order);
    for (const ProfilePlan& plan : batch.plans) add_profile(sheet, plan);
    for (const std::string& profile : batch.unplanned) {
        sheet.empty_row(9);
        add_text(sheet, profile, style::section());
        add_text(sheet, "No bars are stated for it: no plan was asked.", style::small());
    }
    made.sheet = sheet.take("&L&9Batch&R&9Saw", footer, 0);
    return made;
}

}  // namespace shaftcut::batch_workbook
