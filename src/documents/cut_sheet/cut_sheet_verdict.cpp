// The verdict in the largest words on the sheet, and which shaft it is about.
#include <algorithm>

#include "cut_sheet/cut_sheet_parts.hpp"
#include "cut_sheet/front_lines.hpp"
#include "shaft_title_words.hpp"
#include "order/verdict_words.hpp"

namespace shaftcut::cut_sheet {
namespace {

// A verdict of few words stands beside the shaft's.
constexpr Lettering short_word{8, Weight::bold};
constexpr double most_beside = 50;

// A struck-out saw, for whoever reads no word of it.
Rect draw_no_saw(Canvas& canvas, Rect place)
{
    canvas.begin(Part::figure);
    const double left = place.x, top = place.y + 4, right = place.right(), bottom = top + 7;
    std::vector<Point> blade{{left, top}, {right - 9, top}, {right - 9, bottom}};
    constexpr int teeth = 9;
    const double pitch = (right - 9 - left) / teeth;
    for (int i = 0; i < teeth; ++i) {
        const double x = right - 9 - pitch * i;
        blade.push_back({x - pitch / 2, bottom - 2.2});
        blade.push_back({x - pitch, bottom - 0.3 * (i + 1) * 0.7});
    }
    canvas.shape(blade, pen::outline, Fill::none);
    canvas.shape({{right - 9, top - 1}, {right, top - 1}, {right, bottom + 1}, {right - 9, bottom + 1}}, pen::outline, Fill::none);
    canvas.shape({{right - 6.5, top + 1.5}, {right - 2.5, top + 1.5}, {right - 2.5, bottom - 1.5}, {right - 6.5, bottom - 1.5}}, pen::outline, Fill::none);
    canvas.line({left, place.bottom() - 0.5}, {right, place.y + 0.5}, 2);
    canvas.line({left, place.y + 0.5}, {right, place.bottom() - 0.5}, 2);
    return place;
}

// In a box at the left; what is beside it begins at the right edge of the box that is given back.
Rect draw_word(Canvas& canvas, Rect room, const WorkOrder& order, const Wording& w)
{
    const bool refused = order.verdict == Verdict::refused;
    const Lettering large = refused ? Lettering{11, Weight::bold} : short_word;
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
double draw_shaft_words(Canvas& canvas, Rect room, const WorkOrder& order, const Wording& w, bool with_place)
{
    const auto put = [&](const std::string& text, Lettering lettering) {
        if (!text.empty()) room.y = canvas.paragraph({room.x, room.y}, room.width, text, lettering);
    };
    put(say(order.shaft_title, w), lettering::name);
    put(closed_now(order, w), lettering::note);
    if (order.verdict == Verdict::cut) put(closed_after(order, w), lettering::note);
    put(positions_of(order, with_place, w), lettering::note);
    return room.y;
}

}  // namespace

double draw_verdict(Canvas& canvas, Rect room, const WorkOrder& order, const Wording& w, const Front& front)
{
    canvas.begin(Part::heading);
    if (order.verdict == Verdict::refused) {
        const Rect box = draw_word(canvas, room, order, w);
        draw_no_saw(canvas, {box.right() + 5, box.y, 44, box.height});
        canvas.begin(Part::paragraph);
        return draw_shaft_words(canvas, {room.x, box.bottom() + 1, room.width, 0}, order, w, front.positions_at);
    }
    if (canvas.width_of(verdict_words(order, w), short_word) <= most_beside) {
        const Rect box = draw_word(canvas, room, order, w);
        const double x = box.right() + 4;
        canvas.begin(Part::paragraph);
        return std::max(box.bottom(), draw_shaft_words(canvas, {x, room.y - 1, room.right() - x, 0}, order, w, front.positions_at));
    }
    const double y = draw_band(canvas, room, order, w);
    canvas.begin(Part::paragraph);
    return draw_shaft_words(canvas, {room.x, y, room.width, 0}, order, w, front.positions_at);
}

}  // namespace shaftcut::cut_sheet
