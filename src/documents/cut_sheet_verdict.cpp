// The verdict in the largest words on the sheet, and which shaft it is about.
#include <algorithm>

#include "cut_sheet_parts.hpp"

namespace shaftcut::cut_sheet {
namespace {

std::string between_words(const WorkOrder& order, Reference reference)
{
    const bool both = order.shaft.ends[End::tractor].joint == JointKind::wide_angle && order.shaft.ends[End::implement].joint == JointKind::wide_angle;
    return both ? "between " + cross_name(reference) + "es" : "from the " + cross_name(reference);
}

std::string at_cross(const WorkOrder& order, Length length, Reference reference)
{
    return printed_with_both(order, length) + " " + between_words(order, reference);
}

// "860 mm from the outer cross = 796 mm from the inner cross", the cross that the job stated first.
std::string closed_words(const WorkOrder& order, const PerEach<Reference, Length>& closed)
{
    if (!order.reading.has_wide_angle) return printed_with_both(order, closed[Reference::inner_cross]) + " between the crosses";
    const Reference stated = order.reading.reference;
    const Reference other = stated == Reference::inner_cross ? Reference::outer_cross : Reference::inner_cross;
    return at_cross(order, closed[stated], stated) + " = " + at_cross(order, closed[other], other);
}

}  // namespace

double draw_verdict(Canvas& canvas, Rect room, const WorkOrder& order)
{
    const bool refused = order.verdict == Verdict::refused;
    const Lettering large{refused ? 11.0 : 8.0, Weight::bold};
    canvas.begin(Part::heading);
    const Rect word = canvas.text({room.x + 5, room.y + large.cap_height + 3}, verdict_words(order.verdict), large);
    const double height = large.cap_height + 6;
    canvas.box({room.x + 1, room.y + 0.5, word.width + 8, height}, refused ? 2.0 : 1.2);
    const double x = word.right() + 8, width = room.right() - x;
    canvas.begin(Part::paragraph);
    double y = canvas.paragraph({x, room.y - 1}, width, order.shaft_title, lettering::name);
    y = canvas.paragraph({x, y}, width, "Closed now: " + closed_words(order, order.reading.closed_at), lettering::note);
    if (order.verdict == Verdict::cut) y = canvas.paragraph({x, y}, width, "After the cut: " + closed_words(order, order.cut->closed_at), lettering::note);
    return std::max(room.y + height + 0.5, y);
}

}  // namespace shaftcut::cut_sheet
