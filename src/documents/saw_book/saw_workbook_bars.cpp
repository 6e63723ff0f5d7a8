// The sheet Bars: a row for each piece of each bar to be cut differently.
#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "saw_book/saw_book_words.hpp"
#include "saw_book/saw_workbook_parts.hpp"

namespace shaftcut::saw_workbook {
namespace {

using saw_book_words::Caption;
using workbook::SheetBuilder;
namespace style = workbook::style;

using enum saw_book_words::BarColumn;
using Column = saw_book_words::BarColumn;
constexpr std::array<double, 15> widths{11, 8, 12, 7, 30, 12, 12, 12, 14, 12, 14, 14, 14, 11, 11};
constexpr int number_of(Column column) { return static_cast<int>(column); }
static_assert(widths.size() == static_cast<std::size_t>(stop_in) + 1);
constexpr int first_row = 1;
constexpr double millimetres_in_an_inch = 25.4;

std::size_t columns_for(Units units) { return units == Units::in ? widths.size() : widths.size() - 2; }

std::string cell(int row, Column column) { return fmt::format("{}{}", static_cast<char>('A' + number_of(column)), row + 1); }

double inches(Length length)
{
    const std::int64_t thousandths = (length.um() * 10 + 127) / 254;
    return static_cast<double>(thousandths) / 1000.0;
}

CellStyle figure_with_decimals()
{
    CellStyle figure = style::figure();
    figure.numbers = "0.###";
    return figure;
}

// The figures of the whole bar stand in the row of its first piece.
void put_bar(SheetBuilder& sheet, const BarLayout& bar, std::int64_t first_bar, const Wording& w)
{
    const int row = sheet.row(), last = row + static_cast<int>(bar.pieces.size()) - 1;
    const std::string last_stop = cell(last, stop), length_of_bar = cell(row, stock), count = cell(row, alike);
    const std::string name = bar.count == 1 ? std::to_string(first_bar) : fmt::format("{}–{}", first_bar, first_bar + bar.count - 1);
    Length pieces_length;
    for (const PlacedPiece& piece : bar.pieces) pieces_length += piece.length;
    const double alike_now = static_cast<double>(bar.count);
    const Length rack = bar.use == LeftoverUse::rack ? bar.leftover : Length();
    const auto put = [&](Column column, CellContent content) { sheet.put(number_of(column), std::move(content), style::figure()); };
    put(bars, name);
    put(alike, alike_now);
    put(stock, bar.length.mm());
    put(leftover, CellFormula{fmt::format("MAX(0,ROUND({}-trim_end-{}-kerf,3))", length_of_bar, last_stop), bar.leftover.mm()});
    const std::string to_rack = saw_book_words::say(LeftoverUse::rack, w);
    put(goes, CellFormula{fmt::format("IF({0}>0,\"{2}\",IF({1}=0,\"{3}\",IF(reusable_leftover=\"\",\"{4}\",IF({1}>=reusable_leftover,\"{5}\",\"{4}\"))))", cell(row, over), cell(row, leftover),
                                      say(Caption::does_not_fit, w), saw_book_words::say(LeftoverUse::none, w), saw_book_words::say(LeftoverUse::scrap, w), to_rack),
                          saw_book_words::say(bar.use, w)});
    put(over, CellFormula{fmt::format("MAX(0,ROUND({}-({}-trim_end),3))", last_stop, length_of_bar), 0.0});
    put(bars_total, CellFormula{fmt::format("ROUND({}*{},3)", count, length_of_bar), (bar.count * bar.length).mm()});
    put(pieces_total, CellFormula{fmt::format("ROUND({}*SUM({}:{}),3)", count, cell(row, length), cell(last, length)), (bar.count * pieces_length).mm()});
    put(rack_total, CellFormula{fmt::format("IF({}=\"{}\",ROUND({}*{},3),0)", cell(row, goes), to_rack, count, cell(row, leftover)), (bar.count * rack).mm()});
}

void put_piece(SheetBuilder& sheet, const SawOrder& order, const PlacedPiece& piece, std::size_t piece_number)
{
    const int row = sheet.row();
    const std::string before = piece_number == 1 ? "trim_start" : cell(row - 1, stop) + "+kerf";
    CellStyle bold = style::figure();
    bold.bold = true;
    sheet.put(number_of(number), static_cast<double>(piece_number), style::figure());
    sheet.put(number_of(label), piece.label, style::label());
    sheet.put(number_of(length), piece.length.mm(), style::figure());
    sheet.put(number_of(stop), CellFormula{fmt::format("ROUND({}+{},3)", before, cell(row, length)), piece.stop.mm()}, bold);
    if (order.units == Units::mm) return;
    const auto in_inches = [&](Column column) { return fmt::format("ROUND({}/{},3)", cell(row, column), millimetres_in_an_inch); };
    sheet.put(number_of(length_in), CellFormula{in_inches(length), inches(piece.length)}, figure_with_decimals());
    sheet.put(number_of(stop_in), CellFormula{in_inches(stop), inches(piece.stop)}, figure_with_decimals());
}

}  // namespace

std::vector<double> bar_column_widths(Units units)
{
    return {widths.begin(), widths.begin() + static_cast<std::ptrdiff_t>(columns_for(units))};
}

void put_bar_heads(SheetBuilder& sheet, Units units)
{
    const Wording w(units);
    for (std::size_t column = 0; column < columns_for(units); ++column) sheet.put(static_cast<int>(column), saw_book_words::head(static_cast<Column>(column), w), style::table_head());
    sheet.end_row(28);
}

void put_bars(SheetBuilder& sheet, const SawOrder& order)
{
    std::int64_t first_bar = 1;
    for (const BarLayout& bar : order.bars) {
        put_bar(sheet, bar, first_bar, Wording(order.units));
        for (std::size_t i = 0; i < bar.pieces.size(); ++i) {
            put_piece(sheet, order, bar.pieces[i], i + 1);
            sheet.end_row();
        }
        first_bar += bar.count;
    }
}

Worksheet bars_sheet(const SawOrder& order, const std::string& footer)
{
    SheetBuilder sheet("Bars", bar_column_widths(order.units));
    put_bar_heads(sheet, order.units);
    put_bars(sheet, order);
    return sheet.take(say(Caption::bars_header, Wording(order.units)), footer, first_row);
}

std::string range_of(const SawOrder& order, Sum sum)
{
    constexpr std::array columns{alike, bars_total, pieces_total, rack_total, over};
    std::size_t rows = 0;
    for (const BarLayout& bar : order.bars) rows += bar.pieces.size();
    const int column = number_of(columns[static_cast<std::size_t>(sum)]);
    return "Bars!" + absolute_cell(first_row, column) + ":" + absolute_cell(first_row + static_cast<int>(rows) - 1, column);
}

}  // namespace shaftcut::saw_workbook
