// The top of each sheet, and what one reads off the shaft before anything is loosened.
#include "form/measuring_form_parts.hpp"
#include "text.hpp"

namespace shaftcut::measuring_form {
namespace {

constexpr double title_height = 10, row_height = 10, caution_height = 12.4;

double draw_strip(Canvas& canvas, Rect room, const std::string& sheet, const std::string& what, const std::vector<Entry>& entries, double entries_width)
{
    canvas.begin(Part::heading);
    canvas.text({room.x, room.y + 4.9}, "Measuring form", {4.6, Weight::bold});
    canvas.begin(Part::paragraph);
    const Rect number = canvas.text({room.x, room.y + 9.4}, sheet, lettering::strong);
    canvas.text({number.right() + 1.5, room.y + 9.4}, what, lettering::note);
    canvas.begin(Part::table);
    draw_entries(canvas, {room.right() - entries_width, room.y, entries_width, title_height}, entries);
    return room.y + title_height;
}

std::string units_note(const MeasuringForm& form)
{
    return form.units == Units::mm ? "units mm: every length in millimetres" : "units in: every length in inches";
}

std::string series_states(const MeasuringForm& form)
{
    const Series& series = *form.series;
    std::string text = std::string("The series states: shape ") + to_word(series.shape);
    if (!series.wide_angle) return text + "; standard joints only, so no spacing and no reference.";
    text += ", spacing " + figure_with_millimetres(series.wide_angle->spacing, form.units);
    return text + (stated_reference(form) ? std::string(", reference ") + to_word(*stated_reference(form)) + " where none is ticked" : ", no reference: tick it") + ".";
}

// The series by its name, large where that fits.
double draw_series(Canvas& canvas, Rect room, const MeasuringForm& form)
{
    const double width = room.width - 18;
    const std::string& name = form.series->name;
    const bool large = canvas.width_of(name, lettering::name) <= width;
    canvas.text({room.x, room.y + 4.6}, "series", lettering::strong);
    double y = canvas.paragraph({room.x + 14, room.y + (large ? 0.4 : 1.6)}, width, name, large ? lettering::name : lettering::strong);
    return canvas.paragraph({room.x, y}, room.width, series_states(form), lettering::note) + 1;
}

double draw_unknown_series(Canvas& canvas, Rect room, const MeasuringForm& form)
{
    draw_entries(canvas, {room.x, room.y, room.width, row_height}, {{2.2, "series (none known: leave empty)", ""}, {1, "spacing of a wide-angle joint", unit_word(form.units)}});
    draw_ticks(canvas, {room.x, room.y + row_height + 4.8}, "shape", words_of<Shape>());
    canvas.text({room.right(), room.y + row_height + 4.8}, "section of the tubes", lettering::note, Align::right);
    return room.y + row_height + 6.4;
}

}  // namespace

double draw_title(Canvas& canvas, Rect room, const MeasuringForm& form)
{
    double y = draw_strip(canvas, room, "Sheet 1: the shaft.", units_note(form), {{1.4, "order", ""}, {1, "date", ""}}, 82) + gap;
    draw_entries(canvas, {room.x, y, room.width, row_height}, {{1.3, "customer", ""}, {1, "phone", ""}, {1.3, "number of the shaft", ""}});
    y += row_height + gap;
    draw_entries(canvas, {room.x, y, room.width, row_height}, {{1.2, "machine", ""}, {1.2, "tractor", ""}, {1, "hitch (hole, coupling)", ""}, {0.6, "power", "kW"}});
    y += row_height;
    const double after = draw_ticks(canvas, {room.x, y + tick_pitch}, "machine-here", {"yes", "no"});
    canvas.text({after, y + tick_pitch}, "the machine stands where the shaft is cut", lettering::note);
    return y + tick_pitch + 1;
}

double draw_parted_title(Canvas& canvas, Rect room, const MeasuringForm& form)
{
    return draw_strip(canvas, room, "Sheet 2: the halves, parted.", units_note(form), {{1, "order", ""}}, 60);
}

double draw_machine_title(Canvas& canvas, Rect room, const MeasuringForm& form)
{
    return draw_strip(canvas, room, "Sheet 3: lengths at the machine.", units_note(form), {{1, "order", ""}}, 60);
}

double draw_trailed_title(Canvas& canvas, Rect room, const MeasuringForm& form)
{
    return draw_strip(canvas, room, "Machine: trailed.", "Instead of sheet 3; " + units_note(form), {{1, "order", ""}}, 60);
}

double draw_mounted_title(Canvas& canvas, Rect room, const MeasuringForm& form)
{
    return draw_strip(canvas, room, "Machine: mounted.", "Instead of sheet 3; " + units_note(form), {{1, "order", ""}}, 60);
}

double draw_cautions(Canvas& canvas, Rect room, const MeasuringForm&)
{
    canvas.begin(Part::paragraph);
    canvas.box({room.x, room.y, room.width, caution_height}, pen::cut_mark);
    canvas.text({room.x + 3, room.y + 5}, "DANGER: a turning shaft catches clothing and kills. First:", lettering::name);
    double x = room.x + 3;
    for (const char* what : {"PTO off", "engine off", "key out, in your pocket", "machine blocked: cannot roll, drop or turn"})
        x = draw_tick(canvas, {x, room.y + 10.2}, what) + 5;
    return room.y + caution_height;
}

double draw_machine_cautions(Canvas& canvas, Rect room, const MeasuringForm&)
{
    canvas.begin(Part::paragraph);
    canvas.box({room.x, room.y, room.width, caution_height}, pen::cut_mark);
    canvas.text({room.x + 3, room.y + 5}, "DANGER: measure with nothing moving. At each position again:", lettering::name);
    canvas.text({room.x + 3, room.y + 10.2}, "PTO off, engine off, key out, machine blocked. Nobody between tractor and machine while it moves.", lettering::strong);
    return room.y + caution_height;
}

double draw_shaft(Canvas& canvas, Rect room, const MeasuringForm& form)
{
    const double top = draw_heading(canvas, room, 1, "shaft", "as it is, before anything is loosened");
    const Rect below{room.x, top, room.width, 0};
    double y = form.series ? draw_series(canvas, below, form) : draw_unknown_series(canvas, below, form);
    const double entries_width = 62, x = room.x + entries_width + 4;
    draw_entries(canvas, {room.x, y, entries_width, row_height}, {{1, "speed", "min⁻¹"}, {1, "built", "year"}});
    double after = draw_ticks(canvas, {x, y + 4}, "role", {"primary"});
    after = canvas.text({after - 2, y + 4}, "tractor to machine", lettering::note).right() + 3;
    draw_tick(canvas, {after, y + 4}, "secondary", "elsewhere on it");
    after = draw_ticks(canvas, {x, y + 9.8}, "inner-tube", words_of<End>());
    canvas.text({after - 1, y + 9.8}, "the end that carries it", lettering::note);
    return y + row_height;
}

}  // namespace shaftcut::measuring_form
