// The two tubes in one another, to scale, with the overlap in black: closed, at the shortest and at the longest length.
#include <algorithm>

#include "cut_sheet/cut_sheet_parts.hpp"

namespace shaftcut::cut_sheet {
namespace {

struct Position {
    std::string name;
    Length length;   // telescoping
    Length overlap;
    Rounded as = Rounded::measured;  // the length
};

std::optional<Range> greatest_known(const WorkOrder& order)
{
    if (order.cut->overlap.longest[Range::turning]) return Range::turning;
    for (const Range range : {Range::standing, Range::working})
        if (order.cut->overlap.longest[range]) return range;
    return std::nullopt;
}

std::vector<Position> positions(const WorkOrder& order)
{
    const CutFigures& cut = *order.cut;
    std::vector<Position> all{{order.verdict == Verdict::cut ? "Closed, after the cut" : "Closed", cut.plan.closed, cut.overlap.closed, closed_rounded(order)}};
    if (cut.overlap.shortest) all.push_back({"At the shortest", order.fit.shortest->value, *cut.overlap.shortest, Rounded::shortest});
    if (const auto range = greatest_known(order))
        all.push_back({std::string("At the longest, ") + to_word(*range), order.fit.longest[*range]->value, *cut.overlap.longest[*range], Rounded::longest});
    return all;
}

void draw_position(Canvas& canvas, Rect row, const WorkOrder& order, const Position& position, double scale)
{
    constexpr double outer = 4.6, inner = 2.4, cross = 1.4;
    const CutPlan& plan = order.cut->plan;
    const double left = row.x + cross, right = left + position.length.mm() * scale, axis = row.y + 7.6;
    const bool inner_left = tube_on(order.shaft, End::tractor) == Tube::inner;
    const auto tube = [&](Tube which, double height) {
        const double length = plan.half[which].mm() * scale;
        const double from = (which == Tube::inner) == inner_left ? left : right - length;
        canvas.box({from, axis - height / 2, length, height}, pen::guard, Fill::white);
    };
    tube(Tube::outer, outer);
    tube(Tube::inner, inner);
    const double overlap = std::min(position.overlap.mm() * scale, right - left);
    const double start = right - plan.half[tube_on(order.shaft, End::implement)].mm() * scale;
    if (overlap > 0) canvas.box({std::max(start, left), axis - inner / 2, overlap, inner}, 0, Fill::black);
    for (const double x : {left, right}) canvas.disc({x, axis}, cross, Fill::white, pen::guard);
}

// The overlaps of the ranges that the picture does not show.
std::string other_overlaps(const WorkOrder& order)
{
    std::string text;
    for (const Range range : all_ranges) {
        if (range == greatest_known(order) || !order.cut->overlap.longest[range]) continue;
        text += text.empty() ? "Overlap at the longest, " : "; ";
        text += std::string(to_word(range)) + " " + printed(order, order.fit.longest[range]->value, Rounded::longest) + ": " +
                printed(order, *order.cut->overlap.longest[range], Rounded::overlap);
    }
    return text;
}

std::string clearance_text(const WorkOrder& order)
{
    for (const Check& check : order.checks)
        if (check.id == CheckId::closing_clearance && check.value)
            return "Left to close at the shortest: " + printed_with_both(order, Length::micrometres(*check.value), Rounded::clearance);
    return {};
}

}  // namespace

double draw_overlaps(Canvas& canvas, Rect room, const WorkOrder& order)
{
    const std::vector<Position> all = positions(order);
    Length greatest = Length::micrometres(1);
    for (const Position& position : all) greatest = std::max(greatest, position.length);
    canvas.begin(Part::figure);
    double y = canvas.paragraph(Point{room.x, room.y}, room.width, std::string("Overlap of the tubes, to scale") + (order.reading.has_wide_angle ? " (between INNER crosses)" : ""), lettering::strong);
    for (const Position& position : all) {
        const Rect label = canvas.text({room.x, y + 4}, position.name + " " + printed(order, position.length, position.as), lettering::note);
        canvas.fitted({room.right(), y + 4}, room.right() - label.right() - 2, "overlap " + printed(order, position.overlap, Rounded::overlap), lettering::figure, Align::right);
        draw_position(canvas, {room.x, y, room.width, 0}, order, position, (room.width - 2.8) / greatest.mm());
        y += 11;
    }
    canvas.begin(Part::paragraph);
    const std::string clearance = clearance_text(order), others = other_overlaps(order);
    if (!clearance.empty()) {
        canvas.fitted({room.x, y + 4.7}, room.width, clearance, lettering::figure);
        y += 6.1;
    }
    return others.empty() ? y : canvas.paragraph({room.x, y}, room.width, others, lettering::note);
}

}  // namespace shaftcut::cut_sheet
