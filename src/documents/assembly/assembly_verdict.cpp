// Whether to build, in the largest words on the sheet, and what the finished shaft may be used for.
#include <array>

#include "assembly/assembly_parts.hpp"
#include "shaftcut/trade/saw/saw_order.hpp"

namespace shaftcut::assembly_sheet {
namespace {

constexpr double heads_height = 4.4, row_height = 5.6, above_head = 3.2, above_figure = 4.5, inset = 1.5;
constexpr std::size_t columns = 5;
constexpr std::array<double, columns> shares{43, 34, 34, 34, 34};
using Row = std::array<std::string, columns>;

// Exact, so that sixteenths rounded up in one row and down in the other contradict nothing.
std::string at_reference(const BuildPlan& plan, const std::optional<AtEither>& length, const std::string& otherwise)
{
    return length ? saw_figure((*length)[plan.reference], plan.units) + " " + unit_word(plan.units) : otherwise;
}

Row ordered_row(const BuildPlan& plan)
{
    const Wording w = wording_of(plan);
    if (plan.ordered_closed) return {say(Caption::ordered, w), assembly_words::ordered_closed(plan.ordered_closed->length, w), "", "", ""};
    Row row{say(Caption::ordered, w), at_reference(plan, plan.ordered_use.shortest, "—")};
    for (const Range range : all_ranges) row[2 + static_cast<std::size_t>(range)] = at_reference(plan, plan.ordered_use.longest[range], "—");
    return row;
}

Row finished_row(const BuildPlan& plan)
{
    const UseRange& use = plan.built->use;
    const Wording w = wording_of(plan);
    Row row{say(Caption::allowed, w), at_reference(plan, use.shortest, "")};
    for (const Range range : all_ranges) row[2 + static_cast<std::size_t>(range)] = at_reference(plan, use.longest[range], say(Caption::not_at_all, w));
    return row;
}

void draw_row(Canvas& canvas, Point left, double width, const Row& row, Lettering letters)
{
    double all = 0, x = left.x;
    for (const double share : shares) all += share;
    for (std::size_t column = 0; column < columns; ++column) {
        if (!row[column].empty()) canvas.text({x + inset, left.y}, row[column], column == 0 && letters.cap_height > lettering::note.cap_height ? lettering::strong : letters);
        x += width * shares[column] / all;
    }
}

}  // namespace

double draw_refused(Canvas& canvas, Rect room, const BuildPlan& plan)
{
    constexpr Lettering large{11, Weight::bold};
    canvas.begin(Part::heading);
    const Rect word = canvas.text({room.x + 5, room.y + large.cap_height + 3}, verdict_of(plan), large);
    const double height = large.cap_height + 6;
    canvas.box({room.x + 1, room.y + 0.5, word.width + 8, height}, 2.0);
    return room.y + height + 2;
}

std::string verdict_of(const BuildPlan& plan)
{
    const Wording w = wording_of(plan);
    switch (plan.verdict) {
    case BuildVerdict::build: return assembly_words::build(plan.count, w);
    case BuildVerdict::held: return assembly_words::held(plan.open.size(), w);
    case BuildVerdict::refused: break;
    }
    return say(Caption::do_not_build, w);
}

double draw_use(Canvas& canvas, Rect room, const BuildPlan& plan)
{
    const Wording w = wording_of(plan);
    canvas.begin(Part::table);
    draw_row(canvas, {room.x, room.y + above_head}, room.width,
             {assembly_words::measured(closed_from(plan), w), say(Caption::shortest, w), say(Caption::longest_working, w), say(Caption::longest_turning, w), say(Caption::longest_standing, w)},
             lettering::note);
    double y = room.y + heads_height;
    for (const auto& [row, letters] : {std::pair{ordered_row(plan), lettering::figure}, std::pair{finished_row(plan), lettering::name}}) {
        canvas.line({room.x, y}, {room.right(), y}, pen::axis);
        draw_row(canvas, {room.x, y + above_figure}, room.width, row, letters);
        y += row_height;
    }
    canvas.line({room.x, y}, {room.right(), y}, pen::axis);
    return y + 0.6;
}

}  // namespace shaftcut::assembly_sheet
