// The sheets for the machine's own dimensions, from which shortest, longest and angles are computed.
#include "data/machine_dimensions.hpp"
#include "drawing/machine_figure.hpp"
#include "form/measuring_form_parts.hpp"
#include "hitch/geometry_figures.hpp"

namespace shaftcut::measuring_form {
namespace {

constexpr double entry_height = 10, range_name_width = 60;
constexpr std::size_t in_a_row = 4;

// Boxes in rows of four, each as wide as the others; the y below.
double draw_boxes(Canvas& canvas, Rect room, const std::vector<Entry>& entries, const Wording& w)
{
    const double width = (room.width - (in_a_row - 1) * gap) / in_a_row;
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const std::size_t row = i / in_a_row, column = i % in_a_row;
        const Rect box{room.x + static_cast<double>(column) * (width + gap), room.y + static_cast<double>(row) * (entry_height + gap), width, entry_height};
        draw_entry(canvas, box, entries[i].name, entries[i].unit);
        // A sign that is ticked is not lost.
        if (const auto side = negative_side(entries[i].name)) draw_tick(canvas, {box.x + 1.5, box.bottom() - 1.7}, "−", say(*side, w));
    }
    const std::size_t rows = (entries.size() + in_a_row - 1) / in_a_row;
    return room.y + static_cast<double>(rows) * (entry_height + gap) - gap;
}

// A box for each dimension by its word, and one for the tolerance of all lengths.
template <class Dimension>
double draw_dimensions(Canvas& canvas, Rect room, const MeasuringForm& form, Dimension tilt)
{
    std::vector<Entry> entries;
    for (const char* word : Words<Dimension>::all) entries.push_back({1, word, word == to_word(tilt) ? "°" : unit_word(form.units)});
    entries.push_back({1, "plus-minus", unit_word(form.units)});
    return draw_boxes(canvas, room, entries, Wording(form.units));
}

// A row of boxes for each range, by the words of its movements.
template <class Movement>
double draw_ranges(Canvas& canvas, Rect room, const std::string& unit, const Wording& w)
{
    std::vector<Entry> entries;
    for (const char* word : Words<Movement>::all) entries.push_back({1, word, unit});
    double y = room.y;
    for (const Range range : all_ranges) {
        canvas.text({room.x, y + 4.2}, to_word(range), {3, Weight::bold});
        canvas.fitted({room.x, y + 8.8}, range_name_width, meaning(range, w), lettering::note);
        draw_entries(canvas, {room.x + range_name_width + gap, y, room.width - range_name_width - gap, entry_height}, entries);
        y += entry_height + gap;
    }
    return y - gap;
}

double draw_words(Canvas& canvas, Rect room, const std::string& words)
{
    canvas.begin(Part::paragraph);
    const double y = canvas.paragraph({room.x, room.y}, room.width, words, lettering::note) + 1.5;
    canvas.begin(Part::figure);
    return y;
}

}  // namespace

double draw_trailed_dimensions(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    room.y = draw_heading(canvas, room, 9, "trailed", say(MachineCaption::trailed_hint, w));
    room.y = draw_trailed_figure(canvas, room, w) + 2;
    room.y = draw_words(canvas, room, say(MachineCaption::trailed_words, w));
    return draw_dimensions(canvas, room, form, TrailedDimension::input_tilt);
}

double draw_trailed_ranges(Canvas& canvas, Rect room, const MeasuringForm&, const Wording& w)
{
    room.y = draw_heading(canvas, room, 10, say(MachineCaption::ranges, w), say(MachineCaption::trailed_ranges_hint, w));
    room.y = draw_words(canvas, room, say(MachineCaption::trailed_ranges_words, w));
    return draw_ranges<TrailedMovement>(canvas, room, "± °", w);
}

double draw_mounted_dimensions(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    room.y = draw_heading(canvas, room, 9, "mounted", say(MachineCaption::mounted_hint, w));
    room.y = draw_mounted_figure(canvas, room, w) + 2;
    room.y = draw_words(canvas, room, say(MachineCaption::mounted_words, w));
    return draw_dimensions(canvas, room, form, MountedDimension::input_tilt);
}

double draw_mounted_ranges(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    room.y = draw_heading(canvas, room, 10, say(MachineCaption::ranges, w), say(MachineCaption::mounted_ranges_hint, w));
    return draw_ranges<MountedMovement>(canvas, room, unit_word(form.units), w);
}

double draw_machine_whose(Canvas& canvas, Rect room, const MeasuringForm&, const Wording& w)
{
    canvas.begin(Part::paragraph);
    canvas.text({room.x, room.y + 3.4}, say(MachineCaption::leave_out, w), lettering::note);
    draw_entries(canvas, {room.x, room.y + 5, room.width, entry_height},
                 {{1.35, say(WhoseCaption::tractor, w), ""}, {1, say(WhoseCaption::measured_by, w), ""}, {0.65, "date", ""}, {0.75, say(WhoseCaption::with_tape, w), ""}});
    return room.y + 5 + entry_height;
}

}  // namespace shaftcut::measuring_form
