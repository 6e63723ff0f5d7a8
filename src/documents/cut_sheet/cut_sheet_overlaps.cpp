// The two tubes in one another, to scale, with the overlap in black: closed, at the shortest and at the longest length.
#include <algorithm>

#include "cut_sheet/cut_sheet_parts.hpp"

namespace shaftcut::cut_sheet {
namespace {

struct Position {
    std::string name;  // with its length
    Length length;     // telescoping
    Length overlap;
};

std::optional<Range> greatest_known(const WorkOrder& order)
{
    if (order.cut->overlap.longest[Range::turning]) return Range::turning;
    for (const Range range : {Range::standing, Range::working})
        if (order.cut->overlap.longest[range]) return range;
    return std::nullopt;
}

std::vector<Position> positions(const WorkOrder& order, const Wording& w)
{
    const CutFigures& cut = *order.cut;
    std::vector<Position> all{{closed_position(order.verdict, cut.plan.closed, w), cut.plan.closed, cut.overlap.closed}};
    if (cut.overlap.shortest) all.push_back({shortest_position(order.fit.shortest->value, w), order.fit.shortest->value, *cut.overlap.shortest});
    if (const auto range = greatest_known(order)) {
        const Length longest = order.fit.longest[*range]->value;
        all.push_back({longest_position(*range, longest, w), longest, *cut.overlap.longest[*range]});
    }
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

// Of the ranges that the picture does not show.
std::vector<RangeOverlap> not_shown(const WorkOrder& order)
{
    std::vector<RangeOverlap> ranges;
    for (const Range range : all_ranges)
        if (range != greatest_known(order) && order.cut->overlap.longest[range]) ranges.push_back({range, order.fit.longest[range]->value, *order.cut->overlap.longest[range]});
    return ranges;
}

std::optional<Length> clearance_of(const WorkOrder& order)
{
    const Check& check = check_of(order.checks, CheckId::closing_clearance);
    return check.value ? std::optional(Length::micrometres(*check.value)) : std::nullopt;
}

}  // namespace

double draw_overlaps(Canvas& canvas, Rect room, const WorkOrder& order, const Wording& w)
{
    const std::vector<Position> all = positions(order, w);
    Length greatest = Length::micrometres(1);
    for (const Position& position : all) greatest = std::max(greatest, position.length);
    canvas.begin(Part::figure);
    double y = canvas.paragraph(Point{room.x, room.y}, room.width, overlaps_heading(order.reading.has_wide_angle, w), lettering::strong);
    for (const Position& position : all) {
        const Rect label = canvas.text({room.x, y + 4}, position.name, lettering::note);
        canvas.fitted({room.right(), y + 4}, room.right() - label.right() - 2, overlap(position.overlap, w), lettering::figure, Align::right);
        draw_position(canvas, {room.x, y, room.width, 0}, order, position, (room.width - 2.8) / greatest.mm());
        y += 11;
    }
    canvas.begin(Part::paragraph);
    const std::string others = other_overlaps(not_shown(order), w);
    if (const auto clearance = clearance_of(order)) {
        canvas.fitted({room.x, y + 4.7}, room.width, left_to_close(*clearance, w), lettering::figure);
        y += 6.1;
    }
    return others.empty() ? y : canvas.paragraph({room.x, y}, room.width, others, lettering::note);
}

}  // namespace shaftcut::cut_sheet
