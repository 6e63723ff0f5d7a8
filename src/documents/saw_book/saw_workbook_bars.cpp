// The sheet Bars: a row for each piece of each bar to be cut differently.
#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "saw_book/saw_workbook_parts.hpp"

namespace shaftcut::saw_workbook {
namespace {

using workbook::SheetBuilder;
namespace style = workbook::style;

enum Column { bars, alike, stock, number, label, length, stop, leftover, goes, over, bars_total, pieces_total, rack_total, length_in, stop_in };

struct Head {
    const char* title;
    double width;
};
constexpr std::array heads{Head{"Bars", 11},          Head{"Alike", 8},           Head{"Stock, mm", 12},       Head{"No.", 7},
                           Head{"Label", 30},         Head{"Length, mm", 12},     Head{"Stop, mm", 12},        Head{"Leftover, mm", 12},
                           Head{"Leftover goes", 14}, Head{"Too long by, mm", 12}, Head{"Bars, mm in all", 14}, Head{"Pieces, mm in all", 14},
                           Head{"Rack, mm in all", 14}, Head{"Length, in", 11},    Head{"Stop, in", 11}};
constexpr int first_row = 1;
constexpr double millimetres_in_an_inch = 25.4;

std::size_t columns_for(Units units) { return units == Units::in ? heads.size() : heads.size() - 2; }

std::string cell(int row, Column column) { return fmt::format("{}{}", static_cast<char>('A' + column), row + 1); }

double inches(Length length)
{
    const std::int64_t thousandths = (length.um() * 10 + 127) / 254;
    return static_cast<double>(thousandths) / 1000.0;
}

const char* use_word(LeftoverUse use)
{
    return use == LeftoverUse::rack ? "rack" : use == LeftoverUse::scrap ? "scrap" : "none";
}

CellStyle figure_with_decimals()
{
    CellStyle figure = style::figure();
    figure.numbers = "0.###";
    return figure;
}

// The figures of the whole bar stand in the row of its first piece.
void put_bar(SheetBuilder& sheet, const BarLayout& bar, std::int64_t first_bar)
{
    const int row = sheet.row(), last = row + static_cast<int>(bar.pieces.size()) - 1;
    const std::string last_stop = cell(last, stop), length_of_bar = cell(row, stock), count = cell(row, alike);
    const std::string name = bar.count == 1 ? std::to_string(first_bar) : fmt::format("{}–{}", first_bar, first_bar + bar.count - 1);
    Length pieces_length;
    for (const PlacedPiece& piece : bar.pieces) pieces_length += piece.length;
    const double alike_now = static_cast<double>(bar.count);
    const Length rack = bar.use == LeftoverUse::rack ? bar.leftover : Length();
    const auto put = [&](Column column, CellContent content) { sheet.put(column, std::move(content), style::figure()); };
    put(bars, name);
    put(alike, alike_now);
    put(stock, bar.length.mm());
    put(leftover, CellFormula{fmt::format("MAX(0,ROUND({}-trim_end-{}-kerf,3))", length_of_bar, last_stop), bar.leftover.mm()});
    put(goes, CellFormula{fmt::format("IF({0}>0,\"DOES NOT FIT\",IF({1}=0,\"none\",IF(reusable_leftover=\"\",\"scrap\",IF({1}>=reusable_leftover,\"rack\",\"scrap\"))))",
                                      cell(row, over), cell(row, leftover)),
                          std::string(use_word(bar.use))});
    put(over, CellFormula{fmt::format("MAX(0,ROUND({}-({}-trim_end),3))", last_stop, length_of_bar), 0.0});
    put(bars_total, CellFormula{fmt::format("ROUND({}*{},3)", count, length_of_bar), (bar.count * bar.length).mm()});
    put(pieces_total, CellFormula{fmt::format("ROUND({}*SUM({}:{}),3)", count, cell(row, length), cell(last, length)), (bar.count * pieces_length).mm()});
    put(rack_total, CellFormula{fmt::format("IF({}=\"rack\",ROUND({}*{},3),0)", cell(row, goes), count, cell(row, leftover)), (bar.count * rack).mm()});
}

void put_piece(SheetBuilder& sheet, const SawOrder& order, const PlacedPiece& piece, std::size_t piece_number)
{
    const int row = sheet.row();
    const std::string before = piece_number == 1 ? "trim_start" : cell(row - 1, stop) + "+kerf";
    CellStyle bold = style::figure();
    bold.bold = true;
    sheet.put(number, static_cast<double>(piece_number), style::figure());
    sheet.put(label, piece.label, style::label());
    sheet.put(length, piece.length.mm(), style::figure());
    sheet.put(stop, CellFormula{fmt::format("ROUND({}+{},3)", before, cell(row, length)), piece.stop.mm()}, bold);
    if (order.units == Units::mm) return;
    const auto in_inches = [&](Column column) { return fmt::format("ROUND({}/{},3)", cell(row, column), millimetres_in_an_inch); };
    sheet.put(length_in, CellFormula{in_inches(length), inches(piece.length)}, figure_with_decimals());
    sheet.put(stop_in, CellFormula{in_inches(stop), inches(piece.stop)}, figure_with_decimals());
}

}  // namespace

std::vector<double> bar_column_widths(Units units)
{
    std::vector<double> widths;
    for (std::size_t column = 0; column < columns_for(units); ++column) widths.push_back(heads[column].width);
    return widths;
}

void put_bar_heads(SheetBuilder& sheet, Units units)
{
    for (std::size_t column = 0; column < columns_for(units); ++column) sheet.put(static_cast<int>(column), std::string(heads[column].title), style::table_head());
    sheet.end_row(28);
}

void put_bars(SheetBuilder& sheet, const SawOrder& order)
{
    std::int64_t first_bar = 1;
    for (const BarLayout& bar : order.bars) {
        put_bar(sheet, bar, first_bar);
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
    return sheet.take("&L&9Saw plan&R&9Bars", footer, first_row);
}

std::string range_of(const SawOrder& order, Sum sum)
{
    constexpr std::array columns{alike, bars_total, pieces_total, rack_total, over};
    std::size_t rows = 0;
    for (const BarLayout& bar : order.bars) rows += bar.pieces.size();
    const int column = columns[static_cast<std::size_t>(sum)];
    return "Bars!" + absolute_cell(first_row, column) + ":" + absolute_cell(first_row + static_cast<int>(rows) - 1, column);
}

}  // namespace shaftcut::saw_workbook
