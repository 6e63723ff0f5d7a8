// The top of each sheet, and what one reads off the shaft before anything is loosened.
#include "form/measuring_form_parts.hpp"

namespace shaftcut::measuring_form {
namespace {

constexpr double title_height = 10, row_height = 10, caution_height = 12.4;

double draw_strip(Canvas& canvas, Rect room, TitleCaption sheet, const std::string& what, const std::vector<Entry>& entries, double entries_width, const Wording& w)
{
    canvas.begin(Part::heading);
    canvas.text({room.x, room.y + 4.9}, say(TitleCaption::title, w), {4.6, Weight::bold});
    canvas.begin(Part::paragraph);
    const Rect number = canvas.text({room.x, room.y + 9.4}, say(sheet, w), lettering::strong);
    canvas.text({number.right() + 1.5, room.y + 9.4}, what, lettering::note);
    canvas.begin(Part::table);
    draw_entries(canvas, {room.right() - entries_width, room.y, entries_width, title_height}, entries);
    return room.y + title_height;
}

std::string units_note(const MeasuringForm& form, const Wording& w) { return say(form.units == Units::mm ? TitleCaption::units_mm : TitleCaption::units_in, w); }
std::string instead_note(const MeasuringForm& form, const Wording& w) { return say(form.units == Units::mm ? TitleCaption::instead_units_mm : TitleCaption::instead_units_in, w); }

// The series by its name, large where that fits.
double draw_series(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    const double width = room.width - 18;
    const std::string& name = form.series->name;
    const bool large = canvas.width_of(name, lettering::name) <= width;
    canvas.text({room.x, room.y + 4.6}, "series", lettering::strong);
    double y = canvas.paragraph({room.x + 14, room.y + (large ? 0.4 : 1.6)}, width, name, large ? lettering::name : lettering::strong);
    return canvas.paragraph({room.x, y}, room.width, series_states(*form.series, stated_reference(form), w), lettering::note) + 1;
}

double draw_unknown_series(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    draw_entries(canvas, {room.x, room.y, room.width, row_height}, {{2.2, say(ShaftCaption::series, w), ""}, {1, say(ShaftCaption::spacing, w), unit_word(form.units)}});
    draw_ticks(canvas, {room.x, room.y + row_height + 4.8}, "shape", words_of<Shape>());
    canvas.text({room.right(), room.y + row_height + 4.8}, say(ShaftCaption::shape, w), lettering::note, Align::right);
    return room.y + row_height + 6.4;
}

}  // namespace

double draw_title(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    double y = draw_strip(canvas, room, TitleCaption::sheet_shaft, units_note(form, w), {{1.4, "order", ""}, {1, "date", ""}}, 82, w) + gap;
    draw_entries(canvas, {room.x, y, room.width, row_height}, {{1.3, "customer", ""}, {1, "phone", ""}, {1.3, say(TitleCaption::shaft_number, w), ""}});
    y += row_height + gap;
    draw_entries(canvas, {room.x, y, room.width, row_height}, {{1.2, "machine", ""}, {1.2, "tractor", ""}, {1, say(TitleCaption::hitch, w), ""}, {0.6, "power", "kW"}});
    y += row_height;
    const double after = draw_ticks(canvas, {room.x, y + tick_pitch}, "machine-here", {"yes", "no"});
    canvas.text({after, y + tick_pitch}, say(TitleCaption::machine_here, w), lettering::note);
    return y + tick_pitch + 1;
}

double draw_parted_title(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    return draw_strip(canvas, room, TitleCaption::sheet_halves, units_note(form, w), {{1, "order", ""}}, 60, w);
}

double draw_machine_title(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    return draw_strip(canvas, room, TitleCaption::sheet_lengths, units_note(form, w), {{1, "order", ""}}, 60, w);
}

double draw_trailed_title(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    return draw_strip(canvas, room, TitleCaption::sheet_trailed, instead_note(form, w), {{1, "order", ""}}, 60, w);
}

double draw_mounted_title(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    return draw_strip(canvas, room, TitleCaption::sheet_mounted, instead_note(form, w), {{1, "order", ""}}, 60, w);
}

double draw_cautions(Canvas& canvas, Rect room, const MeasuringForm&, const Wording& w)
{
    canvas.begin(Part::paragraph);
    canvas.box({room.x, room.y, room.width, caution_height}, pen::cut_mark);
    canvas.text({room.x + 3, room.y + 5}, say(CautionCaption::turning_shaft, w), lettering::name);
    double x = room.x + 3;
    for (const CautionCaption what : {CautionCaption::pto_off, CautionCaption::engine_off, CautionCaption::key_out, CautionCaption::machine_blocked})
        x = draw_tick(canvas, {x, room.y + 10.2}, say(what, w)) + 5;
    return room.y + caution_height;
}

double draw_machine_cautions(Canvas& canvas, Rect room, const MeasuringForm&, const Wording& w)
{
    canvas.begin(Part::paragraph);
    canvas.box({room.x, room.y, room.width, caution_height}, pen::cut_mark);
    canvas.text({room.x + 3, room.y + 5}, say(CautionCaption::nothing_moving, w), lettering::name);
    canvas.text({room.x + 3, room.y + 10.2}, say(CautionCaption::each_position, w), lettering::strong);
    return room.y + caution_height;
}

double draw_shaft(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    const double top = draw_heading(canvas, room, 1, "shaft", say(ShaftCaption::hint, w));
    const Rect below{room.x, top, room.width, 0};
    double y = form.series ? draw_series(canvas, below, form, w) : draw_unknown_series(canvas, below, form, w);
    const double entries_width = 62, x = room.x + entries_width + 4;
    draw_entries(canvas, {room.x, y, entries_width, row_height}, {{1, "speed", "min⁻¹"}, {1, "built", say(ShaftCaption::year, w)}});
    double after = draw_ticks(canvas, {x, y + 4}, "role", {"primary"});
    after = canvas.text({after - 2, y + 4}, say(ShaftCaption::primary_role, w), lettering::note).right() + 3;
    draw_tick(canvas, {after, y + 4}, "secondary", say(ShaftCaption::secondary_role, w));
    after = draw_ticks(canvas, {x, y + 9.8}, "inner-tube", words_of<End>());
    canvas.text({after - 1, y + 9.8}, say(ShaftCaption::inner_tube, w), lettering::note);
    return y + row_height;
}

}  // namespace shaftcut::measuring_form
