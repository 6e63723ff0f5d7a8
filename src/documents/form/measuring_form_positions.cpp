// The four lengths of a fit and where each was found, each with the positions that it is the least or the greatest of.
#include <algorithm>

#include "form/measuring_form_parts.hpp"

namespace shaftcut::measuring_form {
namespace {

constexpr double name_height = 5, mounted_height = 25, trailed_height = 27, at_height = 10, length_height = 12, tolerance_height = 9;

struct PositionRow {
    Position position;
    const char* name;
    const char* meaning;
    const char* mounted;
    const char* trailed;
};
constexpr std::array<PositionRow, 4> rows{{
    {Position::shortest, "shortest", "least of all positions, PTO turning or stopped", "raised, level, lowered", "straight, tightest turn, in a hollow"},
    {Position::working, "longest when working", "usual working position", "at working height", "straight ahead"},
    {Position::turning, "longest when turning", "greatest with the PTO turning", "lowest, highest, PTO on", "straight, tightest turn with PTO on, over a crest"},
    {Position::standing, "longest when standing", "greatest with the PTO stopped", "fully raised, fully lowered", "straight, tightest turn, over a crest"},
}};

// Paragraphs of one line of columns; the y below the deepest.
double draw_words(Canvas& canvas, Rect row, double column, const char* PositionRow::*words)
{
    double bottom = row.y;
    for (const PositionRow& position : rows) {
        bottom = std::max(bottom, canvas.paragraph({row.x, row.y}, column, position.*words, lettering::note));
        row.x += column + gap;
    }
    return bottom;
}

double draw_pictures(Canvas& canvas, Rect row, double column, void (*draw)(Canvas&, Rect, Position))
{
    for (const PositionRow& position : rows) {
        draw(canvas, {row.x, row.y, column, row.height}, position.position);
        row.x += column + gap;
    }
    return row.y + row.height;
}

// Which kind of machine the pictures below show; their top.
double draw_kind(Canvas& canvas, Rect room, double y, const std::string& kind, const std::string& seen)
{
    canvas.line({room.x, y}, {room.right(), y}, pen::axis);
    const Rect name = canvas.text({room.x, y + 4}, kind, lettering::strong);
    canvas.text({name.right() + 1.5, y + 4}, seen + "; solid: the position to measure first, dashed: to try too", lettering::note);
    return y + 5.2;
}

double draw_boxes(Canvas& canvas, Rect room, double column, const std::string& unit)
{
    for (std::size_t i = 0; i < rows.size(); ++i) {
        draw_entry(canvas, {room.x, room.y, column, at_height}, "at (which position)");
        draw_entry(canvas, {room.x, room.y + at_height, column, length_height}, "length", unit);
        draw_entry(canvas, {room.x, room.y + at_height + length_height, column, tolerance_height}, "plus-minus", unit);
        room.x += column + gap;
    }
    return room.y + at_height + length_height + tolerance_height;
}

}  // namespace

double draw_positions(Canvas& canvas, Rect room, const MeasuringForm& form)
{
    const double top = draw_heading(canvas, room, 7, "shortest and longest", "move to each position, stop everything, then measure");
    const double column = (room.width - 3 * gap) / 4;
    double x = room.x;
    for (const PositionRow& position : rows) {
        canvas.fitted({x, top + 3.6}, column, position.name, {3, Weight::bold});
        x += column + gap;
    }
    const auto row_at = [&](double y, double height) { return Rect{room.x, y, room.width, height}; };
    double y = draw_words(canvas, row_at(top + name_height, 0), column, &PositionRow::meaning) + 1;
    y = draw_kind(canvas, room, y, "mounted machine", "from the side");
    y = draw_pictures(canvas, row_at(y, mounted_height), column, draw_mounted);
    y = draw_words(canvas, row_at(y + 0.5, 0), column, &PositionRow::mounted) + 1;
    y = draw_kind(canvas, room, y, "trailed machine", "from above");
    y = draw_pictures(canvas, row_at(y, trailed_height), column, draw_trailed);
    y = draw_words(canvas, row_at(y + 0.5, 0), column, &PositionRow::trailed) + 1.5;
    return draw_boxes(canvas, row_at(y, 0), column, unit_word(form.units));
}

}  // namespace shaftcut::measuring_form
