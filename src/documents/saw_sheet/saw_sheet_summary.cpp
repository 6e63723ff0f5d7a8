// What to fetch, the totals, and how to read the sheet.
#include "saw_sheet/saw_sheet_parts.hpp"

namespace shaftcut::saw_sheet {
namespace {

constexpr double fetch_height = 9, box_side = 4.2, between_cells = 3;
constexpr std::int64_t micrometres_in_a_metre = 1'000'000;

// "66.5 m", to the millimetre; in inches "2618-1/8 in (66.5 m)".
std::string sum_of(Length length, Units units)
{
    const std::string metres = figure(Length::micrometres(length.um() / (micrometres_in_a_metre / 1000)), Units::mm, Toward::nearest, 3) + " m";
    return units == Units::mm ? metres : figure_with_unit(length, Units::in) + " (" + metres + ")";
}

std::string per_cent(std::int64_t thousandths)
{
    return figure(Length::micrometres(thousandths), Units::mm, Toward::nearest, 1) + " %";
}

std::string counted(std::int64_t count, const std::string& one)
{
    return std::to_string(count) + " " + one + (count == 1 ? "" : "s");
}

void draw_fetch_cell(Canvas& canvas, Rect cell, const SawOrder& order, const BarsToFetch& bars)
{
    canvas.box({cell.x, cell.y, cell.width, cell.height}, pen::guard);
    canvas.box({cell.x + 2, cell.y + (cell.height - box_side) / 2, box_side, box_side}, pen::dimension);
    const std::string text = std::to_string(bars.count) + " × " + saw_figure_with_unit(bars.length, order.units);
    canvas.fitted({cell.x + box_side + 4, cell.y + 6.4}, cell.width - box_side - 6, text, {order.units == Units::mm ? 5.0 : 3.5, Weight::bold});
}

}  // namespace

void draw_bars_to_fetch(Sheets& sheets, const SawOrder& order)
{
    sheets.flow({{Lead::heading, "Bars to fetch", false}});
    const std::size_t across = order.units == Units::mm ? 3 : 2;
    const double width = (sheets.room().width - between_cells * static_cast<double>(across - 1)) / static_cast<double>(across);
    for (std::size_t i = 0; i < order.fetch.size(); i += across) {
        sheets.ensure(fetch_height + 2);
        for (std::size_t j = i; j < std::min(i + across, order.fetch.size()); ++j) {
            const double x = sheets.room().x + static_cast<double>(j - i) * (width + between_cells);
            sheets.canvas().begin(Part::table);
            draw_fetch_cell(sheets.canvas(), {x, sheets.y(), width, fetch_height}, order, order.fetch[j]);
        }
        sheets.move_to(sheets.y() + fetch_height + 2);
    }
}

Blocks total_blocks(const SawOrder& order)
{
    const SawTotals& totals = order.totals;
    std::string lengths = counted(totals.bars, "bar") + ", " + sum_of(totals.bars_length, order.units) + ", for " + counted(totals.pieces, "piece") + ", "
                          + sum_of(totals.pieces_length, order.units) + ".";
    if (totals.rack_length > Length()) lengths += " Back to the rack: " + sum_of(totals.rack_length, order.units) + ".";
    lengths += " Waste, with kerfs and trims: " + per_cent(totals.waste) + ".";
    Blocks blocks{{Lead::none, lengths, true}, {Lead::none, cost_words(order) + "; " + bound_sentence(order.plan) + ".", true}};
    if (const std::string ended = end_sentence(order.end); !ended.empty()) blocks.push_back({Lead::none, ended, true});
    return blocks;
}

Blocks reading_blocks(const SawOrder& order)
{
    Blocks blocks{
        {Lead::heading, "How to saw from this sheet", false},
        {Lead::bullet, "Bars are drawn to scale from their starting end, pieces in cutting order. Hatched is waste.", false},
        {Lead::bullet, "Bold, in a bar and in a table: the length of the piece. Not bold: its stop, its label, and what is left over.", false},
        {Lead::bullet,
         "Stop: the figure under a cut, or in the table, from the bar's starting end to where the piece ends, with trim and kerfs before it. Mark or feed the "
         "whole bar to the stops; the blade cuts beyond the mark.",
         false},
        {Lead::bullet, "With a fence that the sawn end is pushed against: set it to the length of the piece instead.", false}};
    for (const std::string& caution : order.cautions) blocks.push_back({Lead::bullet, caution, false});
    return blocks;
}

}  // namespace shaftcut::saw_sheet
