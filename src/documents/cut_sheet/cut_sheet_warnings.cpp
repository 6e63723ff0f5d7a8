// What can hurt, one line each, the worst first; and why a shaft is refused.
#include "cut_sheet/cut_sheet_parts.hpp"
#include "cut_sheet/front_lines.hpp"
#include "cut_sheet/refusal_words.hpp"
#include "drawing/lock_drawing.hpp"
#include "page/fitted_lines.hpp"
#include "order/instruction_words.hpp"
#include "say_all.hpp"

namespace shaftcut::cut_sheet {
namespace {

// To be read by two people across a counter.
void draw_large(Sheets& sheets, const std::string& heading, const std::vector<std::string>& texts, Weight weight)
{
    const Lettering letters{3.5, weight, 0.85, 1.5};
    sheets.flow({{Lead::heading, heading}});
    for (const std::string& text : texts) {
        const double height = letters.pitch() * static_cast<double>(sheets.canvas().lines_of(text, sheets.room().width, letters).size());
        sheets.ensure(height);
        sheets.canvas().begin(Part::paragraph);
        sheets.move_to(sheets.canvas().paragraph({sheets.room().x, sheets.y()}, sheets.room().width, text, letters) + 1.5);
    }
}

// The locks that refuse, each under its end's name, to be known by looking.
void draw_refused_locks(Sheets& sheets, const WorkOrder& order, const Wording& w)
{
    const Check& locking = check_of(order.checks, CheckId::locking);
    if (locking.result != CheckResult::fail) return;
    const double width = 46, height = 18;
    sheets.ensure(height + 6);
    Rect place{sheets.room().x, sheets.y() + 1, width, height};
    for (const CheckFinding& finding : locking.findings) {
        const auto* lock = std::get_if<LockStandsOut>(&finding);
        if (!lock) continue;
        sheets.canvas().begin(Part::figure);
        sheets.canvas().text({place.x, place.y + 3}, half_name(lock->end, w), lettering::strong);
        draw_lock(sheets.canvas(), {place.x, place.y + 3, place.width, place.height - 3}, lock->lock);
        place.x += width + 6;
    }
    sheets.move_to(place.bottom() + 2);
}

}  // namespace

double draw_warnings(Canvas& canvas, Rect room, const WorkOrder& order, const Wording& w)
{
    canvas.begin(Part::paragraph);
    for (const std::string& line : warning_lines(order, w)) room.y = draw_fitted_lines(canvas, {room.x, room.y}, room.width, line, lettering::name);
    return room.y;
}

void draw_refusal(Sheets& sheets, const WorkOrder& order, const Wording& w)
{
    const Rect room = sheets.room();
    sheets.move_to(draw_verdict(sheets.canvas(), {room.x, sheets.y(), room.width, 0}, order, w) + 2);
    sheets.flow({caution_block(say_all(order.cautions, w))});
    draw_large(sheets, say(ListHeading::why, w), refusal_reasons(order, w), Weight::bold);
    draw_refused_locks(sheets, order, w);
    std::vector<std::string> ways;
    for (const WayLine& line : ways_out(order, w)) ways.push_back(line.says);
    if (!ways.empty()) draw_large(sheets, say(ListHeading::instead, w), ways, Weight::regular);
    if (sheets.left_over() < sign_off_height) return;
    draw_sign_off(sheets.canvas(), {room.x, room.bottom() - sign_off_height, room.width, 0}, w);
}

}  // namespace shaftcut::cut_sheet
