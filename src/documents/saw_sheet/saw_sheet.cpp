#include "saw_sheet/saw_sheet.hpp"

#include "saw_sheet/saw_sheet_parts.hpp"

namespace shaftcut {

namespace saw_sheet {

Sheets sheets_of(const Fonts& fonts, const SawOrder& order, Paper paper, std::size_t before)
{
    Sheets sheets(fonts, title_of(order), size_of(paper), before);
    draw_bars_to_fetch(sheets, order);
    sheets.flow(total_blocks(order));
    sheets.flow(reading_blocks(order));
    std::int64_t number = 1;
    for (const BarLayout& bar : order.bars) {
        draw_bar(sheets, order, {bar, number});
        number += bar.count;
    }
    return sheets;
}

}  // namespace saw_sheet

std::vector<Page> draw_saw_sheet(const SawOrder& order, Paper paper, const FontFiles& files)
{
    const Fonts fonts(files);
    const saw_sheet::Sheets sheets = saw_sheet::sheets_of(fonts, order, paper, 0);
    return sheets.finished(sheets.count());
}

DocumentInfo saw_sheet_info(const SawOrder& order)
{
    return document_info("Saw plan " + order.name, order.owner, "Bars, pieces in cutting order and stops");
}

}  // namespace shaftcut
