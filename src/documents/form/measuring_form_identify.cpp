// The form that asks for what tells a shaft's series: looks, crosses, tubes, each with the tool drawn as it is held.
#include <array>

#include "form/measuring_form_parts.hpp"

namespace shaftcut::measuring_form {
namespace {

constexpr double section_height = 14;

struct Gauge {
    IdentifyingKind kind;
    IdentifyCaption words;
};
constexpr std::array gauges{Gauge{IdentifyingKind::span, IdentifyCaption::span}, Gauge{IdentifyingKind::cap_in_bore, IdentifyCaption::bore}, Gauge{IdentifyingKind::cap, IdentifyCaption::cap},
                            Gauge{IdentifyingKind::spacing, IdentifyCaption::spacing}};

IdentifyCaption width_words(Shape shape)
{
    switch (shape) {
    case Shape::lemon: return IdentifyCaption::width_lemon;
    case Shape::star: return IdentifyCaption::width_star;
    case Shape::triangular: return IdentifyCaption::width_rounding;
    case Shape::square: return IdentifyCaption::width_flats;
    case Shape::splined: return IdentifyCaption::width_splined;
    case Shape::other: break;
    }
    return IdentifyCaption::width_other;
}

// A cross's looks over its boxes.
double draw_cross(Canvas& canvas, Rect room, IdentifyCaption name, const std::string& unit, const Wording& w)
{
    const double line = room.y + 3.4;
    double x = canvas.text({room.x, line}, say(name, w), lettering::strong).right() + 3;
    x = draw_ticks(canvas, {x, line}, "", {say(IdentifyCaption::in_bore, w), say(IdentifyCaption::on_cap, w)}) + 1;
    x = draw_ticks(canvas, {x, line}, say(IdentifyCaption::circlips, w), tick_words<Circlip>(w)) + 1;
    draw_ticks(canvas, {x, line}, say(IdentifyCaption::nipple, w), tick_words<Nipple>(w));
    draw_entries(canvas, {room.x, room.y + tick_pitch, room.width, box_height},
                 {{1, say(IdentifyCaption::cap_box, w), unit}, {0.7, say(IdentifyCaption::again_box, w), unit}, {1, say(IdentifyCaption::second_cap_box, w), unit},
                  {1, say(IdentifyCaption::span_box, w), unit}, {0.7, say(IdentifyCaption::again_box, w), unit}, {1.1, say(IdentifyCaption::second_span_box, w), unit}, {0.6, say(TitleCaption::plus_minus, w), unit}});
    return room.y + tick_pitch + box_height + 1;
}

// The kind of joint beside its name, the spacing at the right.
double draw_end(Canvas& canvas, Rect room, IdentifyCaption name, const std::string& unit, const Wording& w)
{
    const double spacing_width = 78;
    const Rect words = canvas.text({room.x, room.y + 5.4}, say(name, w), lettering::close_name);
    draw_ticks(canvas, {words.right() + 4, room.y + 5.4}, "", tick_words<JointKind>(w));
    draw_entries(canvas, {room.right() - spacing_width, room.y, spacing_width, box_height},
                 {{1, say(IdentifyCaption::spacing_box, w), unit}, {0.8, say(IdentifyCaption::again_box, w), unit}, {0.6, say(TitleCaption::plus_minus, w), unit}});
    room.y += box_height + 0.6;
    for (const IdentifyCaption cross : {IdentifyCaption::one_or_inner, IdentifyCaption::outer}) room.y = draw_cross(canvas, room, cross, unit, w);
    return room.y + 1;
}

double draw_tube(Canvas& canvas, Rect room, IdentifyCaption name, const std::string& unit, const Wording& w)
{
    const double x = canvas.text({room.x, room.y + 3.4}, say(name, w), lettering::close_name).right() + 5;
    std::vector<std::string> which = tick_words<Tube>(w);
    which.push_back(say(IdentifyCaption::not_known, w));
    draw_ticks(canvas, {x, room.y + 3.4}, say(IdentifyCaption::which_tube, w), which);
    draw_entries(canvas, {room.x, room.y + tick_pitch, room.width, box_height},
                 {{1, say(IdentifyCaption::width_box, w), unit}, {0.8, say(IdentifyCaption::again_box, w), unit}, {0.6, say(TitleCaption::plus_minus, w), unit},
                  {1, say(IdentifyCaption::wall_box, w), unit}, {0.8, say(IdentifyCaption::again_box, w), unit}, {0.6, say(TitleCaption::plus_minus, w), unit}});
    return room.y + tick_pitch + box_height + 1;
}

// Each shape between the jaws, its square, and in words where its width is taken.
double draw_shapes(Canvas& canvas, Rect room, const Wording& w)
{
    const double width = room.width / static_cast<double>(Words<Shape>::all.size());
    for (std::size_t i = 0; i < Words<Shape>::all.size(); ++i) {
        const auto shape = static_cast<Shape>(i);
        const double x = room.x + static_cast<double>(i) * width;
        draw_section(canvas, {x, room.y, width - 2, section_height}, shape);
        draw_tick(canvas, {x, room.y + section_height + 4}, tick_word(shape, w));
        canvas.fitted({x, room.y + section_height + 7.8}, width - 2, say(width_words(shape), w), lettering::close_note);
    }
    return room.y + section_height + 9.5;
}

}  // namespace

double draw_identify_title(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    const double boxes = 96, words = room.width - boxes - 4;
    canvas.begin(Part::heading);
    canvas.fitted({room.x, room.y + 4.4}, words, say(IdentifyCaption::title, w), {4, Weight::bold});
    canvas.begin(Part::paragraph);
    canvas.fitted({room.x, room.y + 8.6}, words, say(form.units == Units::mm ? TitleCaption::units_mm : TitleCaption::units_in, w), lettering::note);
    canvas.begin(Part::table);
    draw_entries(canvas, {room.right() - boxes, room.y, boxes, box_height}, {{1.4, say(IdentifyCaption::shaft, w), ""}, {1, say(TitleCaption::date, w), ""}});
    const double y = room.y + box_height + gap;
    draw_entries(canvas, {room.x, y, room.width, box_height},
                 {{1.5, say(IdentifyCaption::writing, w), ""}, {1.2, say(WhoseCaption::measured_by, w), ""}, {1, say(IdentifyCaption::with, w), ""}});
    return y + box_height;
}

double draw_gauges(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    const double top = draw_heading(canvas, room, 1, say(IdentifyCaption::how_heading, w), say(IdentifyCaption::how_hint, w));
    const double column = room.width / static_cast<double>(gauges.size());
    double y = top;
    for (std::size_t i = 0; i < gauges.size(); ++i) {
        const double x = room.x + static_cast<double>(i) * column;
        draw_gauge(canvas, {x, top, column - 3, gauge_height}, gauges[i].kind, std::nullopt);
        y = std::max(y, canvas.paragraph({x, top + gauge_height}, column - 3, say(gauges[i].words, w), lettering::close_note));
    }
    draw_entries(canvas, {room.x, y + 1, 44, box_height}, {{1, say(IdentifyCaption::spacer_box, w), unit_word(form.units)}});
    return y + 1 + box_height;
}

double draw_identify_ends(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    const std::string unit = unit_word(form.units);
    room.y = draw_heading(canvas, room, 2, say(IdentifyCaption::ends_heading, w), say(IdentifyCaption::ends_hint, w));
    for (const IdentifyCaption end : {IdentifyCaption::tractor_end, IdentifyCaption::machine_end}) room.y = draw_end(canvas, room, end, unit, w);
    return room.y;
}

double draw_identify_tubes(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    room.y = draw_heading(canvas, room, 3, say(IdentifyCaption::tubes_heading, w), say(IdentifyCaption::tubes_hint, w));
    room.y = draw_shapes(canvas, room, w);
    for (const IdentifyCaption tube : {IdentifyCaption::tube_a, IdentifyCaption::tube_b}) room.y = draw_tube(canvas, room, tube, unit_word(form.units), w);
    return room.y;
}

double draw_identify_closed(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    const std::string unit = unit_word(form.units);
    room.y = draw_heading(canvas, room, 4, say(IdentifyCaption::closed_heading, w), say(IdentifyCaption::closed_hint, w));
    const double boxes = 74;
    draw_entries(canvas, {room.x, room.y, boxes, box_height}, {{1, say(IdentifyCaption::closed_box, w), unit}, {0.6, say(TitleCaption::plus_minus, w), unit}});
    draw_ticks(canvas, {room.x + boxes + 5, room.y + 5.8}, "", tick_words<Reference>(w));
    return room.y + box_height;
}

}  // namespace shaftcut::measuring_form
