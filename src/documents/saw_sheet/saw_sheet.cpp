#include "saw_sheet/saw_sheet.hpp"

#include "saw_sheet/saw_sheet_parts.hpp"

namespace shaftcut {

namespace saw_sheet {

Sheets sheets_of(const Fonts& fonts, const SawOrder& order, Paper paper, std::size_t before)
{
    const Wording w = wording_of(order);
    Sheets sheets = sheets_under({w, saw_sheet_words::title(order.name, w), order.owner, saw_sheet_words::settings(order, w)}, fonts, paper, before);
    draw_bars_to_fetch(sheets, order);
    sheets.flow(total_blocks(order));
    sheets.flow(reading_blocks(order));
    sheets.move_to(sheets.y() + sheet::between_lists);
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
    return sheets.finished();
}

DocumentInfo saw_sheet_info(const SawOrder& order)
{
    return document_info(saw_sheet_words::title(order.name, saw_sheet::wording_of(order)), order.owner, say(saw_sheet::Caption::subject, saw_sheet::wording_of(order)));
}

}  // namespace shaftcut
