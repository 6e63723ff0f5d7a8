// What is to be done, each step with its number and its boxes; and over it what is never forgotten.
#include <algorithm>

#include "cut_sheet/cut_sheet_parts.hpp"
#include "page/fitted_lines.hpp"

namespace shaftcut::cut_sheet {
namespace {

constexpr double indent = 8, between = 0.8;

// A step's text, without the positions, which stand in frames.
std::string text_of(const Step& step, const Wording& w)
{
    Step other{step.number, {}};
    for (const Task& task : step.tasks)
        if (!std::holds_alternative<ReadRings>(task)) other.tasks.push_back(task);
    return say(other, w);
}

double step_height(const Canvas& canvas, double width, const Step& step, const BoxedText& style, const Wording& w)
{
    double height = between + boxed_height(canvas, width - indent, text_of(step, w), style);
    for (const Task& task : step.tasks)
        if (const auto* position = std::get_if<ReadRings>(&task)) height += position_height(canvas, width - indent, *position, w);
    return std::max(height, 5.0);
}

double draw_step(Canvas& canvas, Rect room, const Step& step, const BoxedText& style, const Wording& w)
{
    canvas.begin(Part::paragraph);
    canvas.text({room.x + indent - 2, room.y + 3.9}, step_number(step.number, w), lettering::name, Align::right);
    double y = room.y;
    for (const Task& task : step.tasks)
        if (const auto* position = std::get_if<ReadRings>(&task)) y = draw_position(canvas, {room.x + indent, y, room.width - indent, 0}, *position, w);
    canvas.begin(Part::paragraph);
    y = draw_boxed(canvas, {room.x + indent, y + 0.5}, room.width - indent, text_of(step, w), style);
    return std::max(y + between - 0.5, room.y + 5);
}

}  // namespace

double draw_rules(Canvas& canvas, Rect room, const WorkOrder& order, std::size_t from, const Wording& w)
{
    canvas.begin(Part::paragraph);
    canvas.line({room.x, room.y}, {room.right(), room.y}, pen::outline);
    double y = draw_fitted_lines(canvas, {room.x, room.y + 0.4}, room.width, say(RuleCaption::all_off, w), lettering::name);
    y = canvas.paragraph({room.x, y + 0.4}, room.width, say(RuleCaption::small_steps, w), {2.5, Weight::bold, 0.8, 1.4});
    const bool may_confirm = !order.confirm.empty() && from < order.steps.size() && order.steps[from].number <= last_saw_step;
    return may_confirm ? draw_fitted_lines(canvas, {room.x, y + 0.3}, room.width, confirm_outside(order.verdict, w), lettering::name) : y;
}

bool steps_fit(Sheets& sheets, const WorkOrder& order, std::size_t from, int last, double bottom, const BoxedText& style, const Wording& w)
{
    double height = 0;
    for (std::size_t i = from; i < order.steps.size() && order.steps[i].number <= last; ++i) height += step_height(sheets.canvas(), sheets.room().width, order.steps[i], style, w);
    return sheets.y() + height <= bottom;
}

std::size_t draw_steps(Sheets& sheets, const WorkOrder& order, std::size_t from, int last, double foot, const BoxedText& style, const Wording& w)
{
    const Rect room = sheets.room();
    // Where they go on, the line that says so is left free.
    const bool all = steps_fit(sheets, order, from, last, room.bottom() - foot, style, w);
    const double bottom = all ? room.bottom() - foot : sheets.y() + sheets.left_over();
    std::size_t i = from;
    for (; i < order.steps.size() && order.steps[i].number <= last; ++i) {
        const Step& step = order.steps[i];
        // A side of its own takes a step however long it is.
        const bool may_wait = i > from || sheets.count() == 1;
        if (may_wait && sheets.y() + step_height(sheets.canvas(), room.width, step, style, w) > bottom) break;
        sheets.move_to(draw_step(sheets.canvas(), {room.x, sheets.y(), room.width, 0}, step, style, w));
    }
    return i;
}

double draw_sign_off(Canvas& canvas, Rect room, const Wording& w)
{
    canvas.begin(Part::table);
    const double width = room.width / 3;
    for (const EntryCaption name : {EntryCaption::name, EntryCaption::date, EntryCaption::signature}) {
        draw_entry(canvas, {room.x, room.y, width, sign_off_height}, say(name, w), "");
        room.x += width;
    }
    return room.y + sign_off_height;
}

}  // namespace shaftcut::cut_sheet
