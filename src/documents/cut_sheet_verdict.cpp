// The verdict in the largest words on the sheet, and which shaft it is about.
#include <algorithm>

#include "cut_sheet_parts.hpp"
#include "shaftcut/trade/geometry_words.hpp"

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

// "Shortest 742 mm, longest working 800 mm, turning 850 mm, standing 905 mm, INNER crosses": what the steps refer to.
std::string positions_words(const WorkOrder& order)
{
    std::string text, before = "Longest ";
    if (order.fit.shortest) {
        text = "Shortest " + printed(order, order.fit.shortest->value, shortest_rounds);
        before = ", longest ";
    }
    for (const Range range : all_ranges)
        if (const auto& length = order.fit.longest[range]) {
            text += before + to_word(range) + " " + printed(order, length->value, longest_rounds);
            before = ", ";
        }
    return text + (order.reading.has_wide_angle && !text.empty() ? ", INNER crosses" : "");
}

// What is not to be missed, wherever there is room for it.
std::string to_be_read(const WorkOrder& order)
{
    const auto count = [&](CheckResult result) {
        return std::count_if(order.checks.begin(), order.checks.end(), [&](const Check& check) { return check.result == result; });
    };
    const auto warnings = count(CheckResult::warn), unchecked = count(CheckResult::not_checked);
    if (warnings + unchecked == 0) return {};
    std::string text;
    if (warnings > 0) text = std::to_string(warnings) + (warnings == 1 ? " WARNING" : " WARNINGS");
    if (unchecked > 0) text += (text.empty() ? "" : ", ") + std::to_string(unchecked) + " NOT CHECKED";
    return text + ": read before you " + (order.verdict == Verdict::cut ? "saw" : "fit it");
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
    if (const std::string positions = positions_words(order); !positions.empty()) y = canvas.paragraph({x, y}, width, positions, lettering::note);
    if (const std::string alarm = to_be_read(order); !refused && !alarm.empty()) y = canvas.paragraph({x, y}, width, alarm, lettering::strong);
    return std::max(room.y + height + 0.5, y);
}

}  // namespace shaftcut::cut_sheet
