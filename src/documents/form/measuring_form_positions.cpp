// The four lengths of a fit and where each was found, each with the positions that it is the least or the greatest of.
#include <algorithm>

#include "form/measuring_form_parts.hpp"

namespace shaftcut::measuring_form {
namespace {

constexpr std::array all_positions{Position::shortest, Position::working, Position::turning, Position::standing};

// One column: what it is and where to look for it; the y below.
double draw_words(Canvas& canvas, Rect room, Position position, const Wording& w)
{
    canvas.fitted({room.x, room.y + 3.4}, room.width, position_name(position, w), lettering::name);
    double y = room.y + 4.4;
    for (const auto& words : {position_meaning(position, w), mounted_positions(position, w), trailed_positions(position, w)})
        y = canvas.paragraph({room.x, y}, room.width, words, lettering::close_note);
    return y;
}

void draw_boxes(Canvas& canvas, Rect room, const std::string& unit, const Wording& w)
{
    draw_entry(canvas, {room.x, room.y, room.width, box_height}, {1, say(FitCaption::position, w), ""});
    room.y += box_height;
    const double length = room.width * 0.62;
    draw_entry(canvas, {room.x, room.y, length, box_height}, {1, say(FitCaption::length, w), unit});
    draw_entry(canvas, {room.x + length, room.y, room.width - length, box_height}, {1, say(TitleCaption::plus_minus, w), unit});
}

std::vector<std::string> ways(const MeasuringForm& form, const Wording& w)
{
    if (!may_be_wide_angle(form)) return {say(FitCaption::crosses, w), say(FitCaption::grooves, w)};
    return {say(FitCaption::outer_crosses, w), say(FitCaption::inner_crosses, w), say(FitCaption::grooves, w)};
}

}  // namespace

double draw_positions(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    const double top = draw_heading(canvas, room, 6, say(FitCaption::heading, w), say(FitCaption::hint, w));
    draw_ticks(canvas, {room.x, top + 3.2}, say(FitCaption::measured, w), ways(form, w));
    const double column = (room.width - 3 * gap) / 4;
    double y = 0, x = room.x;
    for (const Position position : all_positions) {
        y = std::max(y, draw_words(canvas, {x, top + 4.8, column, 0}, position, w));
        x += column + gap;
    }
    y += 0.8;
    for (std::size_t i = 0; i < all_positions.size(); ++i) draw_boxes(canvas, {room.x + static_cast<double>(i) * (column + gap), y, column, 0}, unit_word(form.units), w);
    return y + 2 * box_height;
}

}  // namespace shaftcut::measuring_form
