#include "shaftcut/documents/saw_sheet.hpp"

#include "saw_sheet_parts.hpp"

namespace shaftcut {

std::vector<Page> draw_saw_sheet(const SawOrder& order, Paper paper)
{
    const Fonts fonts;
    saw_sheet::Sheets sheets(fonts, order, size_of(paper));
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
    return document_info("Saw plan " + order.name, order.owner, "Bars, pieces in cutting order and stops");
}

}  // namespace shaftcut
