// What every part of the form is made of: headings, boxes to write in, squares to tick.
#include "form/measuring_form_parts.hpp"

namespace shaftcut::measuring_form {
namespace {

constexpr double tick_side = 3.8, after_tick = 5, between_words = 3, inset = 1.5;

}  // namespace

bool may_be_wide_angle(const MeasuringForm& form) { return !form.series || form.series->wide_angle; }

std::optional<Reference> stated_reference(const MeasuringForm& form)
{
    if (!form.series) return std::nullopt;
    return form.series->wide_angle_reference ? form.series->wide_angle_reference : usual_reference(form.series->shape);
}

double draw_heading(Canvas& canvas, Rect room, int number, const std::string& title, const std::string& hint)
{
    canvas.begin(Part::heading);
    draw_mark(canvas, {room.x + number_radius, room.y + 3}, std::to_string(number), Fill::black);
    const Rect drawn = canvas.text({room.x + 7.5, room.y + 4.7}, title, lettering::name);
    canvas.begin(Part::paragraph);
    canvas.fitted({drawn.right() + 3, room.y + 4.7}, room.right() - drawn.right() - 3, hint, lettering::note);
    canvas.begin(Part::figure);
    return room.y + heading_height;
}

void draw_entry(Canvas& canvas, Rect box, const Entry& entry)
{
    canvas.box(box, pen::guard);
    canvas.fitted({box.x + inset, box.y + 3.7}, box.width - 2 * inset, entry.name, lettering::strong);
    canvas.text({box.right() - inset, box.bottom() - 1.4}, entry.unit, lettering::note, Align::right);
    if (!entry.expected.empty()) canvas.text({box.x + inset, box.bottom() - 1.4}, entry.expected, lettering::close_note);
}

void draw_entries(Canvas& canvas, Rect row, const std::vector<Entry>& entries)
{
    double shares = 0;
    for (const Entry& entry : entries) shares += entry.share;
    const double unit_width = (row.width - gap * static_cast<double>(entries.size() - 1)) / shares;
    for (const Entry& entry : entries) {
        const double width = entry.share * unit_width;
        draw_entry(canvas, {row.x, row.y, width, row.height}, entry);
        row.x += width + gap;
    }
}

void draw_tick_box(Canvas& canvas, Point at) { canvas.box({at.x, at.y - 3.2, tick_side, tick_side}, pen::guard); }

double draw_tick(Canvas& canvas, Point at, const std::string& word)
{
    draw_tick_box(canvas, at);
    return canvas.text({at.x + after_tick, at.y}, word, lettering::note).right();
}

double draw_ticks(Canvas& canvas, Point at, const std::string& name, const std::vector<std::string>& words)
{
    double x = name.empty() ? at.x : canvas.text(at, name, lettering::strong).right() + 2;
    for (const std::string& word : words) x = draw_tick(canvas, {x, at.y}, word) + between_words;
    return x;
}

}  // namespace shaftcut::measuring_form
