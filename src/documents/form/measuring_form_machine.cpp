// The sheets for the machine's own dimensions, from which shortest, longest and angles are computed.
#include "data/machine_dimensions.hpp"
#include "drawing/machine_figure.hpp"
#include "form/measuring_form_parts.hpp"

namespace shaftcut::measuring_form {
namespace {

constexpr double entry_height = 10, range_name_width = 60;
constexpr std::size_t in_a_row = 4;

// Boxes in rows of four, each as wide as the others; the y below.
double draw_boxes(Canvas& canvas, Rect room, const std::vector<Entry>& entries)
{
    const double width = (room.width - (in_a_row - 1) * gap) / in_a_row;
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const std::size_t row = i / in_a_row, column = i % in_a_row;
        const Rect box{room.x + static_cast<double>(column) * (width + gap), room.y + static_cast<double>(row) * (entry_height + gap), width, entry_height};
        draw_entry(canvas, box, entries[i].name, entries[i].unit);
        // A sign that is ticked is not lost.
        if (const std::string side = negative_side(entries[i].name); !side.empty()) draw_tick(canvas, {box.x + 1.5, box.bottom() - 1.7}, "−", side);
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
    return draw_boxes(canvas, room, entries);
}

constexpr PerEach<Range, const char*> meanings_of()
{
    PerEach<Range, const char*> meanings;
    meanings[Range::working] = "usual working position";
    meanings[Range::turning] = "any position with the PTO turning";
    meanings[Range::standing] = "any position with the PTO stopped";
    return meanings;
}

// A row of boxes for each range, by the words of its movements.
template <class Movement>
double draw_ranges(Canvas& canvas, Rect room, const std::string& unit)
{
    std::vector<Entry> entries;
    for (const char* word : Words<Movement>::all) entries.push_back({1, word, unit});
    double y = room.y;
    for (const Range range : all_ranges) {
        canvas.text({room.x, y + 4.2}, to_word(range), {3, Weight::bold});
        canvas.fitted({room.x, y + 8.8}, range_name_width, meanings_of()[range], lettering::note);
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

double draw_trailed_dimensions(Canvas& canvas, Rect room, const MeasuringForm& form)
{
    room.y = draw_heading(canvas, room, 9, "trailed", "straight ahead on level ground; from here shortest, longest and angles are computed");
    room.y = draw_trailed_figure(canvas, room) + 2;
    room.y = draw_words(canvas, room, "Heights are above level ground. pin-behind runs from the locking groove of the PTO stub to the middle of the pin, input-behind from the pin "
                                      "to the groove of the input shaft. input-left is to the left of the pin, input-tilt is rising rearwards. Tick − where it is the other way.");
    return draw_dimensions(canvas, room, form, TrailedDimension::input_tilt);
}

double draw_trailed_ranges(Canvas& canvas, Rect room, const MeasuringForm&)
{
    room.y = draw_heading(canvas, room, 10, "working, turning, standing", "about the pin, to each side of straight and level");
    room.y = draw_words(canvas, room, "turn: seen from above. pitch: rear up or down, over a crest or through a hollow. roll: one side up.");
    return draw_ranges<TrailedMovement>(canvas, room, "± °");
}

double draw_mounted_dimensions(Canvas& canvas, Rect room, const MeasuringForm& form)
{
    room.y = draw_heading(canvas, room, 9, "mounted", "in any one position; from here shortest, longest and angles are computed");
    room.y = draw_mounted_figure(canvas, room) + 2;
    room.y = draw_words(canvas, room, "Heights are above level ground, behind is from the locking groove of the PTO stub. Links and mast run from the middle of a pivot to the middle of "
                                      "the next. input-behind is square to the mast and input-above along it, wherever it leans, from the lower hitch point to the groove of the input "
                                      "shaft; input-tilt is from square to the mast, rising rearwards. Tick − where it is the other way.");
    return draw_dimensions(canvas, room, form, MountedDimension::input_tilt);
}

double draw_mounted_ranges(Canvas& canvas, Rect room, const MeasuringForm& form)
{
    room.y = draw_heading(canvas, room, 10, "working, turning, standing", "height of the lower hitch point above ground");
    return draw_ranges<MountedMovement>(canvas, room, unit_word(form.units));
}

double draw_machine_whose(Canvas& canvas, Rect room, const MeasuringForm&)
{
    canvas.begin(Part::paragraph);
    canvas.text({room.x, room.y + 3.4}, "Leave a range out that does not occur; a length of sheet 3 measured as well counts instead of the computed one.", lettering::note);
    draw_entries(canvas, {room.x, room.y + 5, room.width, entry_height},
                 {{1.35, "tractor (another: another sheet)", ""}, {1, "measured-by: name", ""}, {0.65, "date", ""}, {0.75, "with (tape, rod)", ""}});
    return room.y + 5 + entry_height;
}

}  // namespace shaftcut::measuring_form
