// The table below a bar whose figures have no room in its picture: a row of pieces after another, each with its stop.
#include <algorithm>

#include "saw_sheet/saw_sheet_parts.hpp"

namespace shaftcut::saw_sheet {
namespace {

constexpr double head_height = 5, row_height = 6, gap = 2, continued_title = 6.2, above_text = 0.8;
constexpr std::size_t columns = 4;
constexpr std::array heads{Caption::number, Caption::length, Caption::stop, Caption::label};
static_assert(heads.size() == columns);

struct TableForm {
    std::size_t across;                     // pieces in one row
    std::array<double, columns> widths;     // of one piece's cells
};

// In inches the millimetres stand beside, so that a row holds one piece.
TableForm form_of(double width, const SawOrder& order)
{
    if (order.units == Units::in) return {1, {10, 62, 62, width - 134 - gap}};
    return {2, {10, 25, 27, width / 2 - 62 - gap}};
}

double piece_width(const TableForm& form)
{
    double width = gap;
    for (const double cell : form.widths) width += cell;
    return width;
}

double height_of_piece(const Canvas& canvas, const TableForm& form, const PlacedPiece& piece)
{
    if (piece.label.empty()) return row_height;
    const auto lines = canvas.lines_of(piece.label, form.widths[3] - gap, lettering::note);
    return std::max(row_height, static_cast<double>(lines.size()) * lettering::note.pitch() + above_text + 1);
}

double height_of_row(const Canvas& canvas, const TableForm& form, const BarLayout& bar, std::size_t first)
{
    double height = 0;
    for (std::size_t i = first; i < std::min(first + form.across, bar.pieces.size()); ++i)
        height = std::max(height, height_of_piece(canvas, form, bar.pieces[i]));
    return height;
}

void draw_heads(Canvas& canvas, Point top_left, const TableForm& form, std::size_t pieces, const Wording& w)
{
    canvas.begin(Part::table);
    for (std::size_t i = 0; i < std::min(form.across, pieces); ++i) {
        double x = top_left.x + static_cast<double>(i) * piece_width(form);
        for (std::size_t c = 0; c < columns; ++c) {
            canvas.text({x, top_left.y + 3.4}, say(heads[c], w), lettering::strong);
            x += form.widths[c];
        }
    }
}

void draw_piece(Canvas& canvas, Point top_left, const TableForm& form, const SawOrder& order, const PlacedPiece& piece, std::size_t number, const std::string& stop)
{
    const double y = top_left.y + above_text + 3.5;
    double x = top_left.x;
    canvas.text({x, y}, std::to_string(number), lettering::note);
    x += form.widths[0];
    canvas.fitted({x, y}, form.widths[1] - gap, saw_figure_with_unit(piece.length, order.units), lettering::name);
    x += form.widths[1];
    canvas.fitted({x, y}, form.widths[2] - gap, stop, lettering::figure);
    x += form.widths[2];
    if (!piece.label.empty()) canvas.paragraph({x, top_left.y + above_text}, form.widths[3] - gap, piece.label, lettering::note);
}

void continue_table(Sheets& sheets, const SawOrder& order, const NumberedBar& bar, const TableForm& form)
{
    Canvas& canvas = sheets.canvas();
    canvas.begin(Part::heading);
    canvas.text({sheets.room().x, sheets.y() + 3.5}, saw_sheet_words::bar_continued(bar.bar, bar.number, wording_of(order)), lettering::name);
    draw_heads(canvas, {sheets.room().x, sheets.y() + continued_title}, form, bar.bar.pieces.size(), wording_of(order));
    sheets.move_to(sheets.y() + continued_title + head_height);
}

}  // namespace

double height_of_table_start(const Canvas& canvas, double width, const SawOrder& order, const BarLayout& bar)
{
    return head_height + height_of_row(canvas, form_of(width, order), bar, 0);
}

void draw_piece_table(Sheets& sheets, const SawOrder& order, const NumberedBar& bar)
{
    const Rect room = sheets.room();
    const TableForm form = form_of(room.width, order);
    draw_heads(sheets.canvas(), {room.x, sheets.y()}, form, bar.bar.pieces.size(), wording_of(order));
    sheets.move_to(sheets.y() + head_height);
    for (std::size_t first = 0; first < bar.bar.pieces.size(); first += form.across) {
        const double height = height_of_row(sheets.canvas(), form, bar.bar, first);
        const std::size_t before = sheets.count();
        sheets.ensure(height);
        if (sheets.count() != before) continue_table(sheets, order, bar, form);
        Canvas& canvas = sheets.canvas();
        canvas.begin(Part::table);
        canvas.line({room.x, sheets.y()}, {room.right(), sheets.y()}, pen::axis);
        for (std::size_t i = first; i < std::min(first + form.across, bar.bar.pieces.size()); ++i)
            draw_piece(canvas, {room.x + static_cast<double>(i - first) * piece_width(form), sheets.y()}, form, order, bar.bar.pieces[i], i + 1, bar.bar.whole ? say(Caption::use_whole, wording_of(order)) : saw_figure_with_unit(bar.bar.pieces[i].stop, order.units));
        sheets.move_to(sheets.y() + height);
    }
}

}  // namespace shaftcut::saw_sheet
