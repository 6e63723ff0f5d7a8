// The sheet Saw: for each profile the bars to fetch, then each bar with its pieces and their stops.
#include <algorithm>

#include "build/build_words.hpp"
#include "saw_book/batch_workbook_sheets.hpp"
#include "saw_book/saw_book_words.hpp"
#include "saw_book/saw_workbook_parts.hpp"

namespace shaftcut::batch_workbook {
namespace {

using saw_book_words::Caption;
using workbook::SheetBuilder;
namespace style = workbook::style;

constexpr int name_columns = 4, value_column = 5, text_columns = 9;

// The blade and the trims are the same for every profile.
const SawOrder* first_order(const Batch& batch)
{
    const auto found = std::find_if(batch.plans.begin(), batch.plans.end(), [](const ProfilePlan& plan) { return plan.order.has_value(); });
    return found == batch.plans.end() ? nullptr : &*found->order;
}

std::vector<std::pair<std::string, std::string>> add_inputs(SheetBuilder& sheet, const SawOrder& order, const Wording& w)
{
    std::vector<std::pair<std::string, std::string>> names;
    const auto add = [&](const char* name, Caption label, CellContent value) {
        sheet.put(0, say(label, w), style::label(), name_columns);
        sheet.put(value_column, std::move(value), style::input());
        sheet.allow_numbers(value_column, 0, workbook::longest_input(Units::mm), say(Caption::length_range, w));
        names.emplace_back(name, sheet.here(value_column));
        sheet.end_row();
    };
    add("kerf", Caption::kerf_mm, order.task.kerf.mm());
    add("trim_start", Caption::start_trim_mm, order.task.trim_start.mm());
    add("trim_end", Caption::end_trim_mm, order.task.trim_end.mm());
    add("reusable_leftover", Caption::rack_from_mm, order.reusable ? CellContent(order.reusable->mm()) : CellContent());
    return names;
}

void add_text(SheetBuilder& sheet, const std::string& text, const CellStyle& style)
{
    sheet.put(0, text, style, text_columns);
    sheet.end_row();
}

void add_profile(SheetBuilder& sheet, const ProfilePlan& plan, const Wording& w)
{
    sheet.empty_row(9);
    add_text(sheet, plan.profile, style::section());
    if (plan.refusal) return add_text(sheet, saw_book_words::no_plan(*plan.refusal, w), style::sentence());
    add_text(sheet, saw_book_words::fetch_and_cost(*plan.order, w), style::small());
    saw_workbook::put_bar_heads(sheet, plan.order->units);
    saw_workbook::put_bars(sheet, *plan.order);
}

}  // namespace

NamedSheet saw_sheet(const Batch& batch, const std::string& footer)
{
    const Wording w = wording_of(batch);
    SheetBuilder sheet("Saw", saw_workbook::bar_column_widths(batch.units));
    NamedSheet made;
    add_text(sheet, say(Caption::pieces_by_bar, w), style::small());
    if (const SawOrder* order = first_order(batch)) made.names = add_inputs(sheet, *order, w);
    for (const ProfilePlan& plan : batch.plans) add_profile(sheet, plan, w);
    for (const std::string& profile : batch.unplanned) {
        sheet.empty_row(9);
        add_text(sheet, profile, style::section());
        add_text(sheet, say(Caption::no_bars_stated, w), style::small());
    }
    made.sheet = sheet.take(say(Caption::saw_header, w), footer, 0);
    return made;
}

}  // namespace shaftcut::batch_workbook
