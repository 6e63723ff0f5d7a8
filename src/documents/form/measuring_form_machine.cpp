// The machine's own dimensions, from which shortest, longest and angles are computed: drawn with letters, a box for each letter.
#include "data/machine_dimensions.hpp"
#include "drawing/machine_figure.hpp"
#include "form/measuring_form_parts.hpp"
#include "hitch/geometry_figures.hpp"

namespace shaftcut::measuring_form {
namespace {

constexpr double between_groups = 4, pitch = box_height + 0.5;

// An entry, and what its figure below 0 means: a sign that is ticked is not lost.
struct SignedEntry {
    Entry entry;
    std::optional<Side> negative;
};

// In two columns, downwards first.
void draw_boxes(Canvas& canvas, Rect room, const std::vector<SignedEntry>& entries, const Wording& w)
{
    const std::size_t rows = (entries.size() + 1) / 2;
    const double width = (room.width - gap) / 2;
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const Rect box{room.x + static_cast<double>(i / rows) * (width + gap), room.y + static_cast<double>(i % rows) * pitch, width, box_height};
        draw_entry(canvas, box, entries[i].entry);
        if (!entries[i].negative) continue;
        const double word = draw_tick(canvas, {box.x + 1.5, box.bottom() - 1.2}, say(TitleCaption::minus, w)) + 1;
        canvas.text({word, box.bottom() - 1.2}, say(*entries[i].negative, w), lettering::close_note);
    }
}

// A box for each dimension, and one for the tolerance of all lengths.
template <class Dimension>
std::vector<SignedEntry> entries_of(const MeasuringForm& form, const Wording& w)
{
    std::vector<SignedEntry> entries;
    for (std::size_t i = 0; i < Words<Dimension>::all.size(); ++i) {
        const auto dimension = static_cast<Dimension>(i);
        entries.push_back({{1, dimension_name(dimension, figure_letter(dimension), w), dimension == Dimension::input_tilt ? "°" : unit_word(form.units)}, negative_side(to_word(dimension))});
    }
    entries.push_back({{1, say(TitleCaption::plus_minus, w), unit_word(form.units)}, std::nullopt});
    return entries;
}

// The three ranges side by side, each with a box for its movements.
template <class Movement>
double draw_ranges(Canvas& canvas, Rect room, const std::string& unit, const std::vector<Entry>& more, const Wording& w)
{
    const double width = (room.width - 2 * between_groups) / 3;
    for (const Range range : all_ranges) {
        std::vector<Entry> entries;
        for (std::size_t i = 0; i < Words<Movement>::all.size(); ++i) entries.push_back({1, dimension_name(static_cast<Movement>(i), figure_letter(static_cast<Movement>(i)), w), unit});
        entries.insert(entries.end(), more.begin(), more.end());
        canvas.text({room.x, room.y + 3}, range_heading(range, w), lettering::strong);
        draw_entries(canvas, {room.x, room.y + 4, width, box_height}, entries);
        room.x += width + between_groups;
    }
    return room.y + 4 + box_height;
}

// Drawing to the left, boxes to the right of it; the y below both.
template <class Dimension>
double draw_dimensions(Canvas& canvas, Rect room, const MeasuringForm& form, double (*draw)(Canvas&, Rect, const Wording&), const Wording& w)
{
    const auto entries = entries_of<Dimension>(form, w);
    const double drawn = machine_figure_width, below_boxes = room.y + static_cast<double>((entries.size() + 1) / 2) * pitch;
    draw_boxes(canvas, {room.x + drawn + 3, room.y, room.width - drawn - 3, 0}, entries, w);
    return std::max(draw(canvas, room, w), below_boxes);
}

double draw_words(Canvas& canvas, Rect room, const std::string& words)
{
    canvas.begin(Part::paragraph);
    canvas.fitted({room.x, room.y + 3}, room.width, words, lettering::note);
    canvas.begin(Part::figure);
    return room.y + 4.4;
}

}  // namespace

double draw_trailed(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    room.y = draw_heading(canvas, room, 6, say(MachineCaption::trailed_heading, w), say(MachineCaption::computed, w));
    room.y = draw_words(canvas, room, say(MachineCaption::trailed_words, w));
    room.y = draw_dimensions<TrailedDimension>(canvas, room, form, draw_trailed_figure, w);
    room.y = draw_words(canvas, room, say(MachineCaption::trailed_ranges, w));
    return draw_ranges<TrailedMovement>(canvas, room, "°", {}, w);
}

double draw_mounted(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    room.y = draw_heading(canvas, room, 6, say(MachineCaption::mounted_heading, w), say(MachineCaption::computed, w));
    room.y = draw_words(canvas, room, say(MachineCaption::mounted_words, w));
    room.y = draw_dimensions<MountedDimension>(canvas, room, form, draw_mounted_figure, w);
    room.y = draw_words(canvas, room, say(MachineCaption::mounted_ranges, w));
    return draw_ranges<MountedMovement>(canvas, room, unit_word(form.units), {{1, say(TitleCaption::plus_minus, w), unit_word(form.units)}}, w);
}

}  // namespace shaftcut::measuring_form
