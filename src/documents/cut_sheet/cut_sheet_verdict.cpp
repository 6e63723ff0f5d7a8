// The verdict in the largest words on the sheet, and which shaft it is about.
#include <algorithm>

#include "cut_sheet/cut_sheet_parts.hpp"
#include "order/instruction_words.hpp"
#include "order/instructions.hpp"
#include "shaft_title_words.hpp"
#include "order/verdict_words.hpp"

namespace shaftcut::cut_sheet {
namespace {

// The position of a decided length as the job names it; empty where it does not.
std::string at_of(const WorkOrder& order, const std::optional<Range>& range)
{
    const auto& decided = range ? order.fit.longest[*range] : order.fit.shortest;
    for (const FitReading& fit : order.fits) {
        const auto& length = range ? fit.fit.longest[*range] : fit.fit.shortest;
        if (length && length->value == decided->value && length->plus_minus == decided->plus_minus) return range ? fit.longest_at[*range] : fit.shortest_at;
    }
    return {};
}

std::string positions_words(const WorkOrder& order, PositionWords words, const Wording& w)
{
    const auto said = [&](Length length, const std::optional<Range>& range) { return PositionAt{length, words == PositionWords::alone ? "" : at_of(order, range)}; };
    PositionsSaid all;
    if (order.fit.shortest) all.shortest = said(order.fit.shortest->value, std::nullopt);
    for (const Range range : all_ranges)
        if (const auto& length = order.fit.longest[range]) all.longest[range] = said(length->value, range);
    return positions(all, order.reading.has_wide_angle, w);
}

// What is not to be missed, wherever there is room for it.
std::string warnings_first(const WorkOrder& order, const Wording& w)
{
    const auto count = [&](CheckResult result) {
        return std::count_if(order.checks.begin(), order.checks.end(), [&](const Check& check) { return check.result == result; });
    };
    const auto warnings = count(CheckResult::warn), unchecked = count(CheckResult::not_checked);
    return warnings + unchecked == 0 ? "" : to_be_read(warnings, unchecked, order.verdict, w);
}

// In a box at the left; what is beside it begins at the right edge of the box that is given back.
Rect draw_word(Canvas& canvas, Rect room, const WorkOrder& order, const Wording& w)
{
    const bool refused = order.verdict == Verdict::refused;
    const Lettering large{refused ? 11.0 : 8.0, Weight::bold};
    const Rect word = canvas.text({room.x + 5, room.y + large.cap_height + 3}, verdict_words(order, w), large);
    const Rect box{room.x + 1, room.y + 0.5, word.width + 8, large.cap_height + 6};
    canvas.box(box, refused ? 2.0 : 1.2);
    return box;
}

// With what is confirmed first, across the sheet.
double draw_band(Canvas& canvas, Rect room, const WorkOrder& order, const Wording& w)
{
    const Lettering large{6.4, Weight::bold};
    const Rect band{room.x + 1, room.y + 0.5, room.width - 2, large.cap_height + 4.8};
    canvas.fitted({room.x + room.width / 2, band.y + large.cap_height + 2.4}, band.width - 6, verdict_words(order, w), large, Align::centre);
    canvas.box(band, 1.2);
    return band.bottom() + 1.6;
}

// Which shaft it is, its lengths and its positions, from the top of `room` down.
double draw_shaft_words(Canvas& canvas, Rect room, const WorkOrder& order, const Wording& w, PositionWords positions)
{
    const auto put = [&](const std::string& text, Lettering lettering) {
        if (!text.empty()) room.y = canvas.paragraph({room.x, room.y}, room.width, text, lettering);
    };
    put(say(order.shaft_title, w), lettering::name);
    put(closed_now(order, w), lettering::note);
    if (order.verdict == Verdict::cut) put(closed_after(order, w), lettering::note);
    put(positions_words(order, positions, w), lettering::note);
    if (order.verdict != Verdict::refused) put(warnings_first(order, w), lettering::strong);
    return room.y;
}

}  // namespace

double draw_verdict(Canvas& canvas, Rect room, const WorkOrder& order, const Wording& w, PositionWords positions)
{
    canvas.begin(Part::heading);
    double below = room.y;
    if (order.confirm.empty()) {
        const Rect box = draw_word(canvas, room, order, w);
        const double x = box.right() + 4;
        canvas.begin(Part::paragraph);
        below = std::max(box.bottom(), draw_shaft_words(canvas, {x, room.y - 1, room.right() - x, 0}, order, w, positions));
    } else {
        const double y = draw_band(canvas, room, order, w);
        canvas.begin(Part::paragraph);
        below = draw_shaft_words(canvas, {room.x, y, room.width, 0}, order, w, positions);
    }
    if (const auto warning = guard_warning_for(order)) below = canvas.paragraph({room.x, below + 0.8}, room.width, warned(say(*warning, w), w), lettering::close_name);
    return below;
}

}  // namespace shaftcut::cut_sheet
