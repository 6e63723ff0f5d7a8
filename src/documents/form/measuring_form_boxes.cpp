// What every part of the form is made of: headings, boxes to write in, squares to tick.
#include <algorithm>

#include "form/measuring_form_parts.hpp"

namespace shaftcut::measuring_form {
namespace {

constexpr double tick_side = 3.8, after_tick = 5.2, between_words = 3.5, inset = 1.5;

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
    draw_number(canvas, {room.x + number_radius, room.y + 3.2}, number, Fill::black);
    const Rect drawn = canvas.text({room.x + 7.5, room.y + 4.9}, title, lettering::name);
    canvas.begin(Part::paragraph);
    canvas.text({drawn.right() + 3, room.y + 4.9}, hint, lettering::note);
    canvas.begin(Part::figure);
    return room.y + heading_height;
}

void draw_entry(Canvas& canvas, Rect box, const std::string& name, const std::string& unit)
{
    canvas.box(box, pen::guard);
    canvas.text({box.x + inset, box.y + 3.9}, name, lettering::strong);
    canvas.text({box.right() - inset, box.bottom() - 1.6}, unit, lettering::note, Align::right);
}

void draw_entries(Canvas& canvas, Rect row, const std::vector<Entry>& entries)
{
    double shares = 0;
    for (const Entry& entry : entries) shares += entry.share;
    const double unit_width = (row.width - gap * static_cast<double>(entries.size() - 1)) / shares;
    for (const Entry& entry : entries) {
        const double width = entry.share * unit_width;
        draw_entry(canvas, {row.x, row.y, width, row.height}, entry.name, entry.unit);
        row.x += width + gap;
    }
}

void draw_tick_box(Canvas& canvas, Point at) { canvas.box({at.x, at.y - 3.2, tick_side, tick_side}, pen::guard); }

double draw_tick(Canvas& canvas, Point at, const std::string& word, const std::string& hint)
{
    draw_tick_box(canvas, at);
    const Rect drawn = canvas.text({at.x + after_tick, at.y}, word, lettering::strong);
    if (hint.empty()) return drawn.right();
    return canvas.text({drawn.right() + 1.5, at.y}, hint, lettering::note).right();
}

double draw_ticks(Canvas& canvas, Point at, const std::string& name, const std::vector<std::string>& words)
{
    double x = canvas.text(at, name, lettering::strong).right() + 2;
    for (const std::string& word : words) x = draw_tick(canvas, {x, at.y}, word) + between_words;
    return x;
}

}  // namespace shaftcut::measuring_form
