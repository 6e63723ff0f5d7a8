#include "spreadsheet/sheet_builder.hpp"

#include <algorithm>
#include <cmath>

#include "text.hpp"

namespace shaftcut::workbook {
namespace style {

CellStyle plain() { return {}; }

CellStyle small()
{
    CellStyle style;
    style.wrapped = true;
    style.points = 9;
    return style;
}

CellStyle title()
{
    CellStyle style;
    style.bold = true;
    style.points = 16;
    return style;
}

CellStyle section()
{
    CellStyle style;
    style.bold = true;
    style.points = 12;
    return style;
}

CellStyle sentence()
{
    CellStyle style = section();
    style.wrapped = true;
    style.points = 11;
    return style;
}

CellStyle table_head()
{
    CellStyle style;
    style.bold = style.boxed = style.shaded = style.wrapped = true;
    style.points = 9;
    return style;
}

CellStyle label()
{
    CellStyle style;
    style.boxed = style.wrapped = true;
    style.points = 9;
    return style;
}

CellStyle figure()
{
    CellStyle style;
    style.boxed = true;
    style.align = CellStyle::Align::right;
    return style;
}

CellStyle result()
{
    CellStyle style;
    style.boxed = style.bold = true;
    style.align = CellStyle::Align::centre;
    return style;
}

CellStyle great()
{
    CellStyle style;
    style.bold = style.heavy = true;
    style.points = 13;
    style.align = CellStyle::Align::right;
    return style;
}

CellStyle input()
{
    CellStyle style = figure();
    style.input = true;
    return style;
}

CellStyle written()
{
    CellStyle style = label();
    style.input = true;
    return style;
}

}  // namespace style

namespace {

// The longest text that the cell can show.
std::string text_of(const Cell& cell)
{
    if (const auto* text = std::get_if<std::string>(&cell.content)) return *text;
    const auto* formula = std::get_if<CellFormula>(&cell.content);
    if (!formula) return {};
    const auto* now = std::get_if<std::string>(&formula->now);
    return now ? *now : std::string();
}

// A word that is longer than a line is mostly codes in capitals: so much wider than common letters.
constexpr double width_of_capitals = 1.55;

// Lines that the text takes at so many characters a line, broken between words, and within a word that is longer than a line.
int lines_needed(const std::u32string& text, double characters)
{
    int lines = 1;
    double used = 0;
    double word = 0;
    for (const char32_t point : text + U' ') {
        if (point != U' ' && point != U'\n') {
            ++word;
            continue;
        }
        if (word > characters) {
            const double lines_of_word = std::ceil(word * width_of_capitals / characters);
            lines += static_cast<int>(lines_of_word) - (used > 0 ? 0 : 1);
            used = characters;
            word = 0;
        }
        if (used > 0 && used + 1 + word > characters) {
            ++lines;
            used = word;
        } else {
            used += word + (used > 0 ? 1 : 0);
        }
        if (point == U'\n') {
            ++lines;
            used = 0;
        }
        word = 0;
    }
    return lines;
}

}  // namespace

SheetBuilder::SheetBuilder(std::string name, std::vector<double> column_widths)
{
    sheet_.name = std::move(name);
    sheet_.column_widths = std::move(column_widths);
}

void SheetBuilder::put(int column, CellContent content, const CellStyle& style, int columns) { put_at(row_, column, std::move(content), style, columns); }

void SheetBuilder::put_heads(std::span<const char* const> titles)
{
    for (std::size_t column = 0; column < titles.size(); ++column) put(static_cast<int>(column), std::string(titles[column]), style::table_head());
}

void SheetBuilder::put_heads(const std::vector<std::string>& titles)
{
    for (std::size_t column = 0; column < titles.size(); ++column) put(static_cast<int>(column), titles[column], style::table_head());
}

void SheetBuilder::put_at(int row, int column, CellContent content, const CellStyle& style, int columns)
{
    sheet_.cells.push_back({row, column, style, std::move(content), columns});
}

void SheetBuilder::allow_numbers(int column, double least, double most, const std::string& refusal)
{
    sheet_.rules.push_back({row_, column, least, most, {}, refusal});
}

void SheetBuilder::allow_words(int column, const std::vector<std::string>& words, const std::string& refusal)
{
    sheet_.rules.push_back({row_, column, 0, 0, words, refusal});
}

double SheetBuilder::points_needed(const Cell& cell) const
{
    if (cell.row != row_ || !cell.style.wrapped) return 0;
    double width = 0;
    for (int column = cell.column; column < cell.column + cell.columns; ++column) width += sheet_.column_widths[static_cast<std::size_t>(column)];
    const double characters = std::max(1.0, std::floor((width - (cell.style.boxed ? 2 : 0)) * 10.8 / cell.style.points));
    return 3 + lines_needed(code_points(text_of(cell)), characters) * cell.style.points * 1.25;
}

void SheetBuilder::end_row(double least_points)
{
    double points = least_points;
    for (std::size_t i = first_of_row_; i < sheet_.cells.size(); ++i) {
        points = std::max(points, points_needed(sheet_.cells[i]));
        points = std::max(points, sheet_.cells[i].style.points * 1.4);
    }
    sheet_.row_heights.emplace_back(row_, std::min(points, 400.0));
    ++row_;
    first_of_row_ = sheet_.cells.size();
}

void SheetBuilder::empty_row(double points)
{
    sheet_.row_heights.emplace_back(row_, points);
    ++row_;
    first_of_row_ = sheet_.cells.size();
}

void SheetBuilder::start_page() { sheet_.page_breaks.push_back(row_); }

std::string SheetBuilder::here(int column) const { return sheet_.name + "!" + absolute_cell(row_, column); }

Worksheet SheetBuilder::take(const std::string& header, const std::string& footer, int repeated_rows)
{
    sheet_.header = header;
    sheet_.footer = footer;
    sheet_.repeated_rows = repeated_rows;
    return std::move(sheet_);
}

}  // namespace shaftcut::workbook
