// Fills a worksheet row by row, and makes each row as high as its wrapped texts need. Private to the workbook.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "shaftcut/words/length.hpp"
#include "spreadsheet/spreadsheet.hpp"

namespace shaftcut::workbook {

namespace style {

CellStyle plain();
CellStyle small();      // wrapped remarks
CellStyle title();
CellStyle section();
CellStyle sentence();   // beside a verdict
CellStyle table_head();
CellStyle label();      // boxed text in a table
CellStyle figure();     // boxed number
CellStyle result();     // boxed, bold, in the middle
CellStyle great();      // the figures that matter most: heavy box
CellStyle input();      // unlocked number
CellStyle written();    // unlocked text

}  // namespace style

// The greatest length that a cell takes: 100 m, the longest that a file may state.
constexpr int longest_input(Units units) { return units == Units::mm ? 100'000 : 3'937; }

class SheetBuilder {
public:
    SheetBuilder(std::string name, std::vector<double> column_widths);

    int row() const { return row_; }
    // In the current row; `columns` are merged.
    void put(int column, CellContent content, const CellStyle& style, int columns = 1);
    // Titles from the first column on.
    void put_heads(std::span<const char* const> titles);
    void put_heads(const std::vector<std::string>& titles);
    void put_at(int row, int column, CellContent content, const CellStyle& style, int columns = 1);
    // In the current row's cell.
    void allow_numbers(int column, double least, double most, const std::string& refusal);
    void allow_words(int column, const std::vector<std::string>& words, const std::string& refusal);
    // Ends the row; it is at least this high.
    void end_row(double least_points = 15);
    void empty_row(double points = 7);
    void start_page();
    // "Order!$B$3" of the current row.
    std::string here(int column) const;

    Worksheet take(const std::string& header, const std::string& footer, int repeated_rows);

private:
    double points_needed(const Cell& cell) const;

    Worksheet sheet_;
    int row_ = 0;
    std::size_t first_of_row_ = 0;
};

}  // namespace shaftcut::workbook
