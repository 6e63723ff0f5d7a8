// The four lengths of a fit and where each was found, each with the positions that it is the least or the greatest of.
#include <algorithm>

#include "form/measuring_form_parts.hpp"

namespace shaftcut::measuring_form {
namespace {

constexpr double name_height = 5, mounted_height = 25, trailed_height = 27, at_height = 10, length_height = 12, tolerance_height = 9;

constexpr std::array all_positions{Position::shortest, Position::working, Position::turning, Position::standing};

// Paragraphs of one line of columns; the y below the deepest.
double draw_words(Canvas& canvas, Rect row, double column, std::string (*words)(Position, const Wording&), const Wording& w)
{
    double bottom = row.y;
    for (const Position position : all_positions) {
        bottom = std::max(bottom, canvas.paragraph({row.x, row.y}, column, words(position, w), lettering::note));
        row.x += column + gap;
    }
    return bottom;
}

double draw_pictures(Canvas& canvas, Rect row, double column, void (*draw)(Canvas&, Rect, Position))
{
    for (const Position position : all_positions) {
        draw(canvas, {row.x, row.y, column, row.height}, position);
        row.x += column + gap;
    }
    return row.y + row.height;
}

// Which kind of machine the pictures below show; their top.
double draw_kind(Canvas& canvas, Rect room, double y, const std::string& kind, const std::string& seen)
{
    canvas.line({room.x, y}, {room.right(), y}, pen::axis);
    const Rect name = canvas.text({room.x, y + 4}, kind, lettering::strong);
    canvas.text({name.right() + 1.5, y + 4}, seen, lettering::note);
    return y + 5.2;
}

double draw_boxes(Canvas& canvas, Rect room, double column, const std::string& unit, const Wording& w)
{
    for (std::size_t i = 0; i < all_positions.size(); ++i) {
        draw_entry(canvas, {room.x, room.y, column, at_height}, say(PositionCaption::at, w));
        draw_entry(canvas, {room.x, room.y + at_height, column, length_height}, "length", unit);
        draw_entry(canvas, {room.x, room.y + at_height + length_height, column, tolerance_height}, "plus-minus", unit);
        room.x += column + gap;
    }
    return room.y + at_height + length_height + tolerance_height;
}

}  // namespace

double draw_positions(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    const double top = draw_heading(canvas, room, 7, say(PositionCaption::heading, w), say(PositionCaption::hint, w));
    const double column = (room.width - 3 * gap) / 4;
    double x = room.x;
    for (const Position position : all_positions) {
        canvas.fitted({x, top + 3.6}, column, position_name(position, w), {3, Weight::bold});
        x += column + gap;
    }
    const auto row_at = [&](double y, double height) { return Rect{room.x, y, room.width, height}; };
    double y = draw_words(canvas, row_at(top + name_height, 0), column, position_meaning, w) + 1;
    y = draw_kind(canvas, room, y, say(PositionCaption::mounted, w), say(PositionCaption::from_side, w));
    y = draw_pictures(canvas, row_at(y, mounted_height), column, draw_mounted);
    y = draw_words(canvas, row_at(y + 0.5, 0), column, mounted_positions, w) + 1;
    y = draw_kind(canvas, room, y, say(PositionCaption::trailed, w), say(PositionCaption::from_above, w));
    y = draw_pictures(canvas, row_at(y, trailed_height), column, draw_trailed);
    y = draw_words(canvas, row_at(y + 0.5, 0), column, trailed_positions, w) + 1.5;
    return draw_boxes(canvas, row_at(y, 0), column, unit_word(form.units), w);
}

}  // namespace shaftcut::measuring_form
