// The lengths to saw, in boxes: the largest figures on the assembly work order; and the boxes to write in.
#include <algorithm>

#include "assembly/assembly_parts.hpp"
#include "shaftcut/trade/saw/saw_order.hpp"

namespace shaftcut::assembly_sheet {
namespace {

constexpr double gap = 2, inset = 1.6, name_at = 3.8, figure_at = 10.7, first_note = 4.4, note_pitch = 3.6, below = 1.4;
constexpr Lettering to_saw{5.2, Weight::bold};

struct Blank {
    ShaftTube tube;
    Length length;
    bool sawn = true;
    std::vector<std::string> notes;
};

Blank tube_blank(const BuildPlan& plan, Tube tube)
{
    const BuiltShaft& built = *plan.built;
    const Wording w = wording_of(plan);
    Blank blank{{tube, TubeKind::drive}, built.lengths.blank[tube], built.sawn[tube], {}};
    if (plan.units == Units::in) blank.notes.push_back(figure_with_unit(blank.length, Units::mm, Toward::nearest, 3));
    blank.notes.push_back(assembly_words::tolerance(plan.saw.plus_minus, built.coarse_tolerance[tube], w));
    const auto& hole = built.lengths.pin_hole[tube];
    blank.notes.push_back(hole ? assembly_words::hole(*hole, w) : say(Caption::hole_through_yoke, w));
    return blank;
}

Blank guard_blank(const BuildPlan& plan, Tube tube)
{
    const BuiltLengths& lengths = plan.built->lengths;
    Blank blank{{tube, TubeKind::guard}, *lengths.guard_blank[tube], true, {}};
    if (plan.units == Units::in) blank.notes.push_back(figure_with_unit(blank.length, Units::mm, Toward::nearest, 3));
    const std::string ends = assembly_words::guard_ends(plan.saw.plus_minus, *lengths.guard_half[tube], is_wide_angle(plan, end_of(plan.ordered, tube)), wording_of(plan));
    const std::size_t line_end = ends.find('\n');
    blank.notes.push_back(ends.substr(0, line_end));
    if (line_end != std::string::npos) blank.notes.push_back(ends.substr(line_end + 1));
    return blank;
}

std::vector<Blank> blanks_of(const BuildPlan& plan)
{
    std::vector<Blank> blanks;
    for (const Tube tube : both_tubes) blanks.push_back(tube_blank(plan, tube));
    for (const Tube tube : both_tubes)
        if (plan.built->lengths.guard_blank[tube]) blanks.push_back(guard_blank(plan, tube));
    return blanks;
}

std::vector<std::string> note_lines(const Canvas& canvas, double width, const Blank& blank)
{
    std::vector<std::string> lines;
    for (const std::string& note : blank.notes)
        for (const std::string& line : canvas.fonts().wrap(note, lettering::note.cap_height, lettering::note.weight, width)) lines.push_back(line);
    return lines;
}

void draw_blank(Canvas& canvas, Rect box, const BuildPlan& plan, const Blank& blank)
{
    const double x = box.x + inset, width = box.width - 2 * inset;
    canvas.box(box, blank.sawn ? pen::outline : pen::dimension);
    canvas.fitted({x, box.y + name_at}, width, assembly_words::blank(blank.tube, blank.sawn, wording_of(plan)), lettering::strong);
    canvas.fitted({x, box.y + figure_at}, width, saw_figure(blank.length, plan.units) + " " + unit_word(plan.units), to_saw);
    double y = box.y + figure_at + first_note - note_pitch;
    for (const std::string& line : note_lines(canvas, width, blank)) canvas.text({x, y += note_pitch}, line, lettering::note);
}

// The boxes of one shaft or two stand on the first sheet, a line of them a shaft; of more on a sheet of their own, and of no more than
// 100.
constexpr int across = 2, most_boxes = 100;
constexpr double entry_height = 10;

bool has_row_of_shafts(const BuildPlan& plan) { return plan.built && plan.count == across; }
bool has_sheet_of_shafts(const BuildPlan& plan) { return plan.built && plan.count > across; }

Length closed_of(const BuildPlan& plan) { return plan.built->closed_at[plan.reference]; }

struct Entry {
    std::string name, expected;
    double share;
};

// Side by side over the whole width of `room`.
void draw_row_of_entries(Canvas& canvas, Rect room, const std::vector<Entry>& entries)
{
    double shares = 0, x = room.x;
    for (const Entry& entry : entries) shares += entry.share;
    for (const Entry& entry : entries) {
        const double width = room.width * entry.share / shares;
        sheet::draw_entry(canvas, {x, room.y, width, entry_height}, entry.name, entry.expected);
        x += width;
    }
}

std::vector<Entry> entries_of_shaft(const std::string& serial, const std::string& closed_expected, const Wording& w)
{
    const double closed = w.units() == Units::in && !closed_expected.empty() ? 66 : 38;  // inches with millimetres beside them
    return {{serial, "", 36}, {say(Caption::closed, w), closed_expected, closed}, {say(Caption::outer, w), "", 21}};
}

// Shafts number `first` to `last`, `across` at most. What is expected stands in the box where it has room, else above them all.
void draw_shafts(Canvas& canvas, Rect room, int first, int last, const BuildPlan& plan)
{
    const Wording w = wording_of(plan);
    const std::string expected = plan.units == Units::mm ? assembly_words::expected(closed_of(plan), closed_plus_minus(plan), w) : "";
    const double width = room.width / across;
    for (int number = first; number <= last; ++number)
        draw_row_of_entries(canvas, {room.x + (number - first) * width, room.y, width, entry_height}, entries_of_shaft(assembly_words::serial_of(number, w), expected, w));
}

std::vector<Entry> entries_of(const BuildPlan& plan)
{
    const Wording w = wording_of(plan);
    std::vector<Entry> entries;
    if (plan.built && plan.count == 1) entries = entries_of_shaft(say(Caption::serial, w), assembly_words::expected(closed_of(plan), closed_plus_minus(plan), w), w);
    if (has_sheet_of_shafts(plan)) entries.push_back({say(Caption::boxes_of_each, w), say(Caption::last_sheet, w), 48});
    for (const auto& [name, share] : {std::pair{Caption::name, 30.0}, std::pair{Caption::date, 24.0}, std::pair{Caption::signature, 36.0}}) entries.push_back({say(name, w), "", share});
    return entries;
}

}  // namespace

double draw_blanks(Canvas& canvas, Rect room, const BuildPlan& plan)
{
    const std::vector<Blank> blanks = blanks_of(plan);
    const double width = (room.width + gap) / static_cast<double>(blanks.size()) - gap;
    std::size_t lines = 0;
    for (const Blank& blank : blanks) lines = std::max(lines, note_lines(canvas, width - 2 * inset, blank).size());
    const double height = figure_at + first_note + note_pitch * static_cast<double>(lines - 1) + below;
    canvas.begin(Part::figure);
    double x = room.x;
    for (const Blank& blank : blanks) {
        draw_blank(canvas, {x, room.y, width, height}, plan, blank);
        x += width + gap;
    }
    return room.y + height;
}

double entries_height(const BuildPlan& plan) { return has_row_of_shafts(plan) ? 2 * entry_height : entry_height; }

void draw_entries(Canvas& canvas, Rect room, const BuildPlan& plan)
{
    canvas.begin(Part::table);
    if (has_row_of_shafts(plan)) {
        draw_shafts(canvas, room, 1, plan.count, plan);
        room.y += entry_height;
    }
    draw_row_of_entries(canvas, room, entries_of(plan));
}

void draw_more_entries(sheet::Sheets& sheets, const BuildPlan& plan)
{
    if (!has_sheet_of_shafts(plan)) return;
    if (sheets.count() == 1) sheets.next();
    const Wording w = wording_of(plan);
    const int boxes = std::min(plan.count, most_boxes);
    sheets.ensure(3 * entry_height);
    sheets.flow({{Lead::heading, assembly_words::boxes_of_each(closed_of(plan), closed_plus_minus(plan), closed_from(plan), w)}});
    for (int first = 1; first <= boxes; first += across) {
        sheets.ensure(entry_height);
        const Rect room = sheets.room();
        sheets.canvas().begin(Part::table);
        draw_shafts(sheets.canvas(), {room.x, sheets.y(), room.width, entry_height}, first, std::min(first + across - 1, boxes), plan);
        sheets.move_to(sheets.y() + entry_height);
    }
    if (boxes < plan.count) sheets.flow({{Lead::none, assembly_words::on_copies(boxes + 1, plan.count, w), true}});
}

}  // namespace shaftcut::assembly_sheet
