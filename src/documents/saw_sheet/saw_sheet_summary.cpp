// What to fetch, the totals, and how to read the sheet.
#include "saw/saw_words.hpp"
#include "saw_sheet/saw_sheet_parts.hpp"

namespace shaftcut::saw_sheet {
namespace {

constexpr double fetch_height = 9, box_side = 4.2, between_cells = 3, between_rows = 2;

void draw_fetch_cell(Canvas& canvas, Rect cell, const SawOrder& order, const BarsToFetch& bars)
{
    canvas.box({cell.x, cell.y, cell.width, cell.height}, pen::guard);
    canvas.box({cell.x + 2, cell.y + (cell.height - box_side) / 2, box_side, box_side}, pen::dimension);
    const std::string text = saw_sheet_words::fetch(bars, wording_of(order));
    canvas.fitted({cell.x + box_side + 4, cell.y + 6.4}, cell.width - box_side - 6, text, {order.units == Units::mm ? 5.0 : 3.5, Weight::bold});
}

}  // namespace

void draw_bars_to_fetch(Sheets& sheets, const SawOrder& order)
{
    sheets.flow({{Lead::heading, say(Caption::bars_to_fetch, wording_of(order)), false}});
    sheets.move_to(sheets.y() + sheet::between_lists);
    const std::size_t across = order.units == Units::mm ? 3 : 2;
    const double width = (sheets.room().width - between_cells * static_cast<double>(across - 1)) / static_cast<double>(across);
    for (std::size_t i = 0; i < order.fetch.size(); i += across) {
        sheets.ensure(fetch_height + between_rows);
        for (std::size_t j = i; j < std::min(i + across, order.fetch.size()); ++j) {
            const double x = sheets.room().x + static_cast<double>(j - i) * (width + between_cells);
            sheets.canvas().begin(Part::table);
            draw_fetch_cell(sheets.canvas(), {x, sheets.y(), width, fetch_height}, order, order.fetch[j]);
        }
        sheets.move_to(sheets.y() + fetch_height + between_rows);
    }
    sheets.move_to(sheets.y() - sheet::between_lists);  // which what follows keeps itself
}

Blocks total_blocks(const SawOrder& order)
{
    const Wording w = wording_of(order);
    Blocks blocks{{Lead::none, saw_sheet_words::totals(order.totals, w), true}, {Lead::none, cost_and_bound(order, w), true}};
    if (const std::string ended = say(order.end, w); !ended.empty()) blocks.push_back({Lead::none, ended, true});
    return blocks;
}

Blocks reading_blocks(const SawOrder& order)
{
    const Wording w = wording_of(order);
    Blocks blocks{{Lead::heading, say(Caption::how_to_saw, w), false}};
    for (const std::string& how : saw_sheet_words::how_to_saw(w)) blocks.push_back({Lead::bullet, how, false});
    for (const SawCaution caution : order.cautions) blocks.push_back({Lead::bullet, say(caution, order, w), false});
    return blocks;
}

}  // namespace shaftcut::saw_sheet
