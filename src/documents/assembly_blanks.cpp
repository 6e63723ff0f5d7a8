// The lengths to saw, in boxes: the largest figures on the assembly work order; and the boxes to write in.
#include "assembly_parts.hpp"
#include "shaftcut/trade/saw_order.hpp"

namespace shaftcut::assembly_sheet {
namespace {

constexpr double gap = 2, inset = 1.6, name_at = 3.8, figure_at = 10.7, first_note = 4.4, note_pitch = 3.6, below = 1.4;
constexpr Lettering to_saw{5.2, Weight::bold};

struct Blank {
    std::string name;    // "INNER TUBE"
    Length length;
    bool sawn = true;
    std::vector<std::string> notes;
};

// What the finished shaft is held to, so it is not rounded to the paper's unit.
std::string tolerance_text(const BuildPlan& plan, const std::optional<Length>& coarse)
{
    const std::string saw = "± " + figure_with_unit(plan.saw.plus_minus, Units::mm);
    return coarse ? saw + " (ISO 2768-1 c: ± " + figure_with_unit(*coarse, Units::mm) + ")" : saw;
}

Blank tube_blank(const BuildPlan& plan, Tube tube)
{
    const BuiltShaft& built = *plan.built;
    Blank blank{tube == Tube::inner ? "INNER TUBE" : "OUTER TUBE", built.lengths.blank[tube], built.sawn[tube], {}};
    if (plan.units == Units::in) blank.notes.push_back(figure_with_unit(blank.length, Units::mm, Toward::nearest, 3));
    blank.notes.push_back(tolerance_text(plan, built.coarse_tolerance[tube]));
    const auto& hole = built.lengths.pin_hole[tube];
    blank.notes.push_back(hole ? "pin hole " + figure_with_unit(*hole, plan.units) + " from yoke end" : "pin hole: through its yoke");
    return blank;
}

Blank guard_blank(const BuildPlan& plan, Tube tube)
{
    const BuiltLengths& lengths = plan.built->lengths;
    Blank blank{tube == Tube::inner ? "INNER GUARD TUBE" : "OUTER GUARD TUBE", *lengths.guard_blank[tube], true, {}};
    if (plan.units == Units::in) blank.notes.push_back(figure_with_unit(blank.length, Units::mm, Toward::nearest, 3));
    blank.notes.push_back(tolerance_text(plan, std::nullopt));
    blank.notes.push_back("fitted: " + figure_with_unit(*lengths.guard_half[tube], plan.units) + " from " + (is_wide_angle(plan, end_of(plan.ordered, tube)) ? "INNER cross" : "the cross"));
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

void draw_blank(Canvas& canvas, Rect box, const BuildPlan& plan, const Blank& blank)
{
    const double x = box.x + inset, width = box.width - 2 * inset;
    canvas.box(box, blank.sawn ? pen::outline : pen::dimension);
    canvas.fitted({x, box.y + name_at}, width, blank.name + (blank.sawn ? ": saw to" : ": fetch, made to"), lettering::strong);
    canvas.fitted({x, box.y + figure_at}, width, saw_figure(blank.length, plan.units) + " " + unit_word(plan.units), to_saw);
    double y = box.y + figure_at + first_note - note_pitch;
    for (const std::string& note : blank.notes) canvas.fitted({x, y += note_pitch}, width, note, lettering::note);
}

}  // namespace

double draw_blanks(Canvas& canvas, Rect room, const BuildPlan& plan)
{
    const std::vector<Blank> blanks = blanks_of(plan);
    const double width = (room.width + gap) / static_cast<double>(blanks.size()) - gap;
    const double height = figure_at + first_note + note_pitch * static_cast<double>(blanks.front().notes.size() - 1) + below;
    canvas.begin(Part::figure);
    double x = room.x;
    for (const Blank& blank : blanks) {
        draw_blank(canvas, {x, room.y, width, height}, plan, blank);
        x += width + gap;
    }
    return room.y + height;
}

void draw_entries(Canvas& canvas, Rect room, const BuildPlan& plan)
{
    canvas.begin(Part::table);
    struct Entry {
        std::string name, expected;
        double share;
    };
    std::vector<Entry> entries{{"Name", "", 34}, {"Date", "", 24}, {"Signature", "", 36}};
    if (plan.built) {
        const std::string each = plan.count == 1 ? "" : ", each shaft";
        const auto pulled = longest_to_try(plan);
        if (pulled) entries.insert(entries.begin(), {"Pulled out" + each, length_text(plan, *pulled), 48});
        entries.insert(entries.begin(), {"Closed" + each, length_text(plan, plan.built->closed_at[plan.reference]), 48});
    }
    double shares = 0, x = room.x;
    for (const Entry& entry : entries) shares += entry.share;
    for (const Entry& entry : entries) {
        const double width = room.width * entry.share / shares;
        cut_sheet::draw_entry(canvas, {x, room.y, width, entries_height}, entry.name, entry.expected);
        x += width;
    }
}

}  // namespace shaftcut::assembly_sheet
