// Tables over the whole width of a sheet, which go on over as many sheets as they need.
#include <algorithm>

#include "page/sheet_parts.hpp"

namespace shaftcut::sheet {
namespace {

constexpr double gap = 1.5, after_row = 0.1;
constexpr Lettering titles{2.5, Weight::bold, 0.82, 1.4}, words{2.5, Weight::regular, 0.82, 1.4};

double height_of_row(const Canvas& canvas, const Table& table, const std::vector<std::string>& cells, Lettering lettering)
{
    std::size_t lines = 1;
    for (std::size_t i = 0; i < cells.size(); ++i) lines = std::max(lines, canvas.lines_of(cells[i], table.widths[i] - gap, lettering).size());
    return static_cast<double>(lines) * lettering.pitch() + after_row;
}

void draw_row(Sheets& sheets, const Table& table, const std::vector<std::string>& cells, Lettering lettering)
{
    Canvas& canvas = sheets.canvas();
    const Rect room = sheets.room();
    const double top = sheets.y();
    canvas.begin(Part::table);
    canvas.line({room.x, top}, {room.right(), top}, pen::axis);
    double x = room.x;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        canvas.paragraph({x, top + 0.25}, table.widths[i] - gap, cells[i], lettering);
        x += table.widths[i];
    }
    sheets.move_to(top + height_of_row(canvas, table, cells, lettering));
}

void draw_titles(Sheets& sheets, const Table& table)
{
    sheets.flow({{Lead::heading, table.heading, false, Spacing::close}});
    draw_row(sheets, table, table.titles, titles);
}

}  // namespace

double names_width(const Canvas& canvas, const Table& table, double most)
{
    double width = canvas.width_of(table.titles.front(), titles);
    for (const std::vector<std::string>& row : table.rows) width = std::max(width, canvas.width_of(row.front(), words));
    return std::min(width + gap + 2, most);
}

void draw_table(Sheets& sheets, const Table& table)
{
    if (table.rows.empty()) return;
    const auto height = [&](const std::vector<std::string>& row) { return height_of_row(sheets.canvas(), table, row, words); };
    sheets.move_to(sheets.y() + 0.8);
    sheets.ensure(12 + height(table.rows.front()));
    draw_titles(sheets, table);
    for (const std::vector<std::string>& row : table.rows) {
        const std::size_t before = sheets.count();
        if (table.is_last && &row == &table.rows.back()) sheets.ensure_last(height(row));
        else sheets.ensure(height(row));
        if (sheets.count() != before) draw_titles(sheets, table);
        draw_row(sheets, table, row, words);
    }
}

}  // namespace shaftcut::sheet
