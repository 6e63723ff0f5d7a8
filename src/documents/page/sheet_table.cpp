// Tables over the whole width of a sheet, which go on over as many sheets as they need.
#include <algorithm>

#include "page/sheet_parts.hpp"

namespace shaftcut::sheet {
namespace {

constexpr double gap = 2, after_row = 0.2;

double height_of_row(const Canvas& canvas, const Table& table, const std::vector<std::string>& cells, Lettering lettering)
{
    double height = 0;
    for (std::size_t i = 0; i < cells.size(); ++i)
        height = std::max(height, height_of(canvas, table.widths[i] - gap, {Lead::none, cells[i], lettering.weight == Weight::bold}));
    return height + after_row;
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
        canvas.paragraph({x, top + 0.5}, table.widths[i] - gap, cells[i], lettering);
        x += table.widths[i];
    }
    sheets.move_to(top + height_of_row(canvas, table, cells, lettering));
}

void draw_titles(Sheets& sheets, const Table& table)
{
    sheets.flow({{Lead::heading, table.heading}});
    draw_row(sheets, table, table.titles, lettering::strong);
}

}  // namespace

void draw_table(Sheets& sheets, const Table& table)
{
    if (table.rows.empty()) return;
    const auto height = [&](const std::vector<std::string>& row) { return height_of_row(sheets.canvas(), table, row, lettering::note); };
    sheets.move_to(sheets.y() + 2);
    sheets.ensure(16 + height(table.rows.front()));
    draw_titles(sheets, table);
    for (const std::vector<std::string>& row : table.rows) {
        const std::size_t before = sheets.count();
        sheets.ensure(height(row));
        if (sheets.count() != before) draw_titles(sheets, table);
        draw_row(sheets, table, row, lettering::note);
    }
}

}  // namespace shaftcut::sheet
