#include "shaftcut/documents/saw_sheet.hpp"

#include "saw_sheet_parts.hpp"

namespace shaftcut {

std::vector<Page> draw_saw_sheet(const SawOrder& order, Paper paper)
{
    const Fonts fonts;
    saw_sheet::Sheets sheets(fonts, order, paper == Paper::a4 ? 210 : 215.9, paper == Paper::a4 ? 297 : 279.4);
    draw_bars_to_fetch(sheets, order);
    sheets.flow(saw_sheet::total_blocks(order));
    sheets.flow(saw_sheet::reading_blocks(order));
    std::int64_t number = 1;
    for (const BarLayout& bar : order.bars) {
        draw_bar(sheets, order, {bar, number});
        number += bar.count;
    }
    return sheets.finished();
}

DocumentInfo saw_sheet_info(const SawOrder& order)
{
    return {"Saw plan " + order.name, order.owner.empty() ? "shaftcut" : order.owner, "Bars, pieces in cutting order and stops", "en", "2000-01-01"};
}

}  // namespace shaftcut
