// What is written and seen on the shaft: its series, speed and year, where its inner tube is, and the section of its tubes.
#include "form/measuring_form_parts.hpp"

namespace shaftcut::measuring_form {
namespace {

constexpr double picture_height = 14, picture_width = 15.5;

double draw_series(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    const std::string& name = form.series->name;
    const bool large = canvas.width_of(name, lettering::name) <= room.width;
    const double y = canvas.paragraph({room.x, room.y}, room.width, name, large ? lettering::name : lettering::strong);
    return canvas.paragraph({room.x, y}, room.width, series_states(*form.series, stated_reference(form), w), lettering::note) + 1;
}

double draw_unknown_series(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    draw_entries(canvas, {room.x, room.y, room.width, box_height}, {{2.2, say(ShaftCaption::series, w), ""}, {1, say(ShaftCaption::spacing, w), unit_word(form.units)}});
    return room.y + box_height + gap;
}

// The sections side by side, each with its square: what a series states is left out.
void draw_shapes(Canvas& canvas, Rect room, const Wording& w)
{
    double x = room.x;
    for (std::size_t i = 0; i < Words<Shape>::all.size(); ++i) {
        const auto shape = static_cast<Shape>(i);
        draw_section(canvas, {x, room.y, picture_width, picture_height}, shape);
        draw_tick_box(canvas, {x, room.y + picture_height + 3.6});
        canvas.fitted({x + 4.6, room.y + picture_height + 3.6}, picture_width - 4.6, tick_word(shape, w), lettering::note);
        x += picture_width + 1;
    }
}

std::string expected_of(const MeasuringForm& form, Tube tube, std::optional<Length> SeriesHalf::*what, const Wording& w)
{
    if (!form.series) return {};
    const std::optional<Length>& length = form.series->halves[tube].*what;
    return length ? expected(*length, w) : std::string();
}

}  // namespace

double draw_shaft(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    const Rect below{room.x, draw_heading(canvas, room, 1, say(ShaftCaption::heading, w), say(ShaftCaption::hint, w)), room.width, 0};
    const double y = form.series ? draw_series(canvas, below, form, w) : draw_unknown_series(canvas, below, form, w);
    const double entries_width = 66, x = room.x + entries_width + 4;
    draw_entries(canvas, {room.x, y, entries_width, box_height}, {{1, say(ShaftCaption::speed, w), "min⁻¹"}, {1, say(ShaftCaption::year, w), ""}});
    draw_ticks(canvas, {x, y + 3.4}, "", {say(ShaftCaption::primary_role, w), say(ShaftCaption::secondary_role, w)});
    draw_ticks(canvas, {x, y + 8.4}, say(ShaftCaption::inner_tube, w), tick_words<End>(w));
    return y + box_height;
}

double draw_tube_sections(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    const std::string unit = unit_word(form.units);
    const Rect name = canvas.text({room.x, room.y + 3}, say(ShaftCaption::section, w), lettering::strong);
    canvas.text({name.right() + 2, room.y + 3}, say(ShaftCaption::calliper, w), lettering::note);
    const double y = room.y + 4.6, drawn = 6 * (picture_width + 1);
    draw_shapes(canvas, {room.x, y, drawn, 0}, w);
    const Rect row{room.x + drawn + 1, y, room.width - drawn - 1, box_height};
    draw_entries(canvas, row,
                 {{1.25, say(ShaftCaption::width_outer, w), unit, expected_of(form, Tube::outer, &SeriesHalf::width, w)},
                  {1, say(ShaftCaption::wall_outer, w), unit, expected_of(form, Tube::outer, &SeriesHalf::wall, w)}});
    draw_entries(canvas, {row.x, y + box_height + 0.6, row.width, box_height},
                 {{1.25, say(ShaftCaption::width_inner, w), unit, expected_of(form, Tube::inner, &SeriesHalf::width, w)},
                  {1, say(ShaftCaption::wall_inner, w), unit, expected_of(form, Tube::inner, &SeriesHalf::wall, w)}});
    return y + 2 * box_height + 0.6;
}

}  // namespace shaftcut::measuring_form
