// The verdict in the largest words on the sheet, and which shaft it is about.
#include <algorithm>

#include "cut_sheet/cut_sheet_parts.hpp"
#include "order/instructions.hpp"
#include "verdict_words.hpp"

namespace shaftcut::cut_sheet {
namespace {

std::string between_words(const WorkOrder& order, Reference reference)
{
    const bool both = order.shaft.ends[End::tractor].joint == JointKind::wide_angle && order.shaft.ends[End::implement].joint == JointKind::wide_angle;
    return both ? "between " + cross_name(reference) + "es" : "from the " + cross_name(reference);
}

std::string at_cross(const WorkOrder& order, Length length, Reference reference, Rounded as)
{
    return printed_with_both(order, length, as) + " " + between_words(order, reference);
}

// "860 mm from the outer cross = 796 mm from the inner cross", the cross that the job stated first.
std::string closed_words(const WorkOrder& order, const PerEach<Reference, Length>& closed, Rounded as)
{
    if (!order.reading.has_wide_angle) return printed_with_both(order, closed[Reference::inner_cross], as) + " between the crosses";
    const Reference stated = order.reading.reference;
    const Reference other = stated == Reference::inner_cross ? Reference::outer_cross : Reference::inner_cross;
    return at_cross(order, closed[stated], stated, as) + " = " + at_cross(order, closed[other], other, as);
}

// " (turned left to the stop)", the position of a decided length as the job names it; empty where it does not.
std::string at_words(const WorkOrder& order, const std::optional<Range>& range, PositionWords positions)
{
    if (positions == PositionWords::alone) return {};
    const auto& decided = range ? order.fit.longest[*range] : order.fit.shortest;
    for (const FitReading& fit : order.fits) {
        const auto& length = range ? fit.fit.longest[*range] : fit.fit.shortest;
        const std::string& at = range ? fit.longest_at[*range] : fit.shortest_at;
        if (length && length->value == decided->value && length->plus_minus == decided->plus_minus) return at.empty() ? "" : " (" + at + ")";
    }
    return {};
}

// "Shortest 742 mm, longest working 800 mm, turning 850 mm, standing 905 mm, INNER crosses": what the steps refer to.
std::string positions_words(const WorkOrder& order, PositionWords positions)
{
    std::string text, before = "Longest ";
    if (order.fit.shortest) {
        text = "Shortest " + printed(order, order.fit.shortest->value, Rounded::shortest) + at_words(order, std::nullopt, positions);
        before = ", longest ";
    }
    for (const Range range : all_ranges)
        if (const auto& length = order.fit.longest[range]) {
            text += before + to_word(range) + " " + printed(order, length->value, Rounded::longest) + at_words(order, range, positions);
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

// In a box at the left; what is beside it begins at the right edge of the box that is given back.
Rect draw_word(Canvas& canvas, Rect room, const WorkOrder& order)
{
    const bool refused = order.verdict == Verdict::refused;
    const Lettering large{refused ? 11.0 : 8.0, Weight::bold};
    const Rect word = canvas.text({room.x + 5, room.y + large.cap_height + 3}, verdict_words(order), large);
    const Rect box{room.x + 1, room.y + 0.5, word.width + 8, large.cap_height + 6};
    canvas.box(box, refused ? 2.0 : 1.2);
    return box;
}

// With what is confirmed first, across the sheet.
double draw_band(Canvas& canvas, Rect room, const WorkOrder& order)
{
    const Lettering large{6.4, Weight::bold};
    const Rect band{room.x + 1, room.y + 0.5, room.width - 2, large.cap_height + 4.8};
    canvas.fitted({room.x + room.width / 2, band.y + large.cap_height + 2.4}, band.width - 6, verdict_words(order), large, Align::centre);
    canvas.box(band, 1.2);
    return band.bottom() + 1.6;
}

// Which shaft it is, its lengths and its positions, from the top of `room` down.
double draw_shaft_words(Canvas& canvas, Rect room, const WorkOrder& order, PositionWords positions)
{
    const auto say = [&](const std::string& text, Lettering lettering) {
        if (!text.empty()) room.y = canvas.paragraph({room.x, room.y}, room.width, text, lettering);
    };
    say(order.shaft_title, lettering::name);
    say("Closed now: " + closed_words(order, order.reading.closed_at, Rounded::measured), lettering::note);
    if (order.verdict == Verdict::cut) say("After the cut: " + closed_words(order, order.cut->closed_at, Rounded::closed_after), lettering::note);
    say(positions_words(order, positions), lettering::note);
    if (order.verdict != Verdict::refused) say(to_be_read(order), lettering::strong);
    return room.y;
}

}  // namespace

double draw_verdict(Canvas& canvas, Rect room, const WorkOrder& order, PositionWords positions)
{
    canvas.begin(Part::heading);
    double below = room.y;
    if (order.confirm.empty()) {
        const Rect box = draw_word(canvas, room, order);
        const double x = box.right() + 4;
        canvas.begin(Part::paragraph);
        below = std::max(box.bottom(), draw_shaft_words(canvas, {x, room.y - 1, room.right() - x, 0}, order, positions));
    } else {
        const double y = draw_band(canvas, room, order);
        canvas.begin(Part::paragraph);
        below = draw_shaft_words(canvas, {room.x, y, room.width, 0}, order, positions);
    }
    for (const std::string& warning : guard_warnings_for(order)) below = canvas.paragraph({room.x, below + 0.8}, room.width, "WARNING: " + warning, lettering::close_name);
    return below;
}

}  // namespace shaftcut::cut_sheet
