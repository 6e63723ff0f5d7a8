// A workbook as plain data, and its XLSX bytes. What stands behind it (libxlsxwriter) is seen in spreadsheet.cpp only.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "shaftcut/documents/page/paper.hpp"

namespace shaftcut {

// How a cell looks and whether it can be written into. A cell is locked unless `input`.
struct CellStyle {
    enum class Align { left, centre, right };
    bool bold = false;
    bool boxed = false;    // a thin line on all four sides
    bool heavy = false;    // a thick line instead
    bool shaded = false;   // light grey, for headings of tables
    bool wrapped = false;  // breaks lines within the cell's width
    bool input = false;    // unlocked, on a pale ground
    Align align = Align::left;
    double points = 10;
    std::string numbers;   // a number format; empty: as many decimals as the number has
    bool operator==(const CellStyle&) const = default;
};

// A formula (without its "=") and the value it has now: a program that shows a workbook without calculating shows that.
struct CellFormula {
    std::string text;
    std::variant<double, std::string> now;
};

// Nothing, a number, a text (never read as a formula), or a formula.
using CellContent = std::variant<std::monostate, double, std::string, CellFormula>;

// Rows and columns count from 0.
struct Cell {
    int row = 0;
    int column = 0;
    CellStyle style;
    CellContent content;
    int columns = 1;  // merged over this many columns
};

// What may be written into an input cell: a number between two bounds or one of a few words; an empty cell is allowed.
struct CellRule {
    int row = 0;
    int column = 0;
    double least = 0, most = 0;
    std::vector<std::string> words;  // if any, these instead of the numbers
    std::string refusal;             // what a program says to anything else; at most 255 characters
    int rows = 1;                    // from `row` down
};

// A chart of lines through points, over cells of its own sheet. Rows and columns count from 0.
struct SheetChart {
    struct Series {
        std::string name;
        int x_column = 0, y_column = 0;
        bool dashed = false;
    };
    int row = 0;                // of its top left corner, in column 0
    int rows = 0, columns = 0;  // that it covers
    std::string x_title, y_title;
    int first_row = 0, last_row = 0;  // of every series
    std::vector<Series> series;
};

// A row of a sheet that is too long to be held: made when it is written. Its cells are in their columns' order; what they say of
// their row does not count.
struct SheetRow {
    double points = 15;  // its height
    std::vector<Cell> cells;
};

struct Worksheet {
    std::string name;                          // at most 31 characters
    std::vector<double> column_widths;         // in characters of the usual font
    std::vector<std::pair<int, double>> row_heights;  // in points
    std::vector<Cell> cells;
    std::vector<CellRule> rules;
    std::optional<SheetChart> chart;
    std::string header, footer;                // with the format's own & codes
    int repeated_rows = 0;                     // from the top, on every printed page
    std::vector<int> page_breaks;              // a new printed page starts with these rows
    bool landscape = false;
    bool one_page = false;                     // printed on one, however high it is
    int printed_columns = 0;                   // from the left; 0: all
    int rows_begin = 0, rows_end = 0;          // rows that `make_row` makes, below all `cells`
    std::function<SheetRow(int)> make_row;
};

struct Spreadsheet {
    std::string title, author;
    std::string date;  // YYYY-MM-DD, set as the day of creation; empty or no date: a fixed day
    Paper paper = Paper::a4;
    std::string refusal_title;  // above what a program says to something else than a rule allows; at most 32 characters
    // Written row by row with none held: cells and heights must then be in the rows' order, and texts are not shared.
    bool long_sheets = false;
    std::vector<Worksheet> sheets;
    // Workbook-level names: of a cell ("Order!$B$3") or of an expression, without "=". A name and what it stands for have at
    // most 127 characters each; a name is letters, digits and "_" and must not look like a cell.
    std::vector<std::pair<std::string, std::string>> names;
};

// "B" of column 1, "AA" of column 26.
std::string column_letters(int column);
// "$B$3" of row 2, column 1.
std::string absolute_cell(int row, int column);

// The XLSX file: every sheet protected without a password, one page wide. The same bytes for the same spreadsheet.
// Texts over the format's limit of 32767 characters are cut there. Throws WorkbookFault, with what the library
// said, where a name is not allowed or the temporary folder cannot be written.
// Checked by: workbook_test.cpp, which reads the XML parts, and recalculate.py, which opens it in another program.
std::string xlsx_of(const Spreadsheet& spreadsheet);

// The version of libxlsxwriter that the program was built with: "1.1.4".
std::string xlsxwriter_built_with();

}  // namespace shaftcut
