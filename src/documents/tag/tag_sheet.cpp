#include "tag/tag_sheet.hpp"

#include <algorithm>

#include "drawing/joint_drawing.hpp"
#include "page/canvas.hpp"
#include "tag/tag_words.hpp"

namespace shaftcut {
namespace {

using namespace tag;

constexpr double margin = 12, tag_width = 160, inset = 4, alarm_height = 9, box_height = 10, box_width = 38;
// Of the drawing: tractor, shaft and machine in a row.
constexpr double drawing_height = 24, body_width = 22, first_cross_at = 14, crosses_apart = 14, inner_half = 2.4, outer_half = 3.8;
constexpr std::size_t most_limits = 3;

// One line of the tag below the last; the y below it.
double draw_line(Canvas& canvas, Rect room, const std::string& text, Lettering lettering)
{
    return text.empty() ? room.y : canvas.paragraph({room.x, room.y}, room.width, text, lettering) + 0.8;
}

double draw_alarm(Canvas& canvas, Rect room, const WorkOrder& order, const Wording& w)
{
    if (order.circumstances.machine_here) return room.y;
    canvas.box({room.x, room.y, room.width, alarm_height}, pen::cut_mark);
    canvas.fitted({room.x + room.width / 2, room.y + 6.3}, room.width - 4, say(TagCaption::not_yet_tried, w), {3.8, Weight::bold}, Align::centre);
    return room.y + alarm_height + 1.5;
}

// A tractor or a machine: a block with its name, and the stub.
void draw_body(Canvas& canvas, Rect block, const std::string& name)
{
    canvas.box(block, pen::outline);
    canvas.fitted({block.x + block.width / 2, block.y + block.height / 2 + 1.3}, block.width - 2, name, lettering::strong, Align::centre);
}

bool is_wide(const WorkOrder& order, End end) { return order.shaft.ends[end].joint == JointKind::wide_angle; }

// The shaft as it goes on: the tube of each half at its end, the wider one the outer.
void draw_shaft(Canvas& canvas, Rect room, const WorkOrder& order, const Wording& w)
{
    const Frame left{room.x, room.width, room.y, room.height / 2, false}, right{room.x, room.width, room.y, room.height / 2, true};
    const auto tube_from = [&](End end) { return first_cross_at + (is_wide(order, end) ? crosses_apart : 0) + yoke; };
    const bool outer_left = tube_on(order.shaft, End::tractor) == Tube::outer;
    const double from = tube_from(End::tractor), to = room.width - tube_from(End::implement), middle = (from + to) / 2 + (outer_left ? 10 : -10);
    for (const End end : both_ends)
        draw_joint(canvas, end == End::tractor ? left : right, first_cross_at, first_cross_at + (is_wide(order, end) ? crosses_apart : 0));
    canvas.box(along_axis(left, from, middle, outer_left ? outer_half : inner_half, outer_left ? -outer_half : -inner_half), pen::outline, Fill::white);
    canvas.box(along_axis(left, middle, to, outer_left ? inner_half : outer_half, outer_left ? -inner_half : -outer_half), pen::outline, Fill::white);
    const double below = room.y + room.height - 0.6;
    canvas.text({left.x(2), below}, tube_name(tube_on(order.shaft, End::tractor), w), lettering::note);
    canvas.text({right.x(2), below}, tube_name(tube_on(order.shaft, End::implement), w), lettering::note, Align::right);
}

double draw_ends(Canvas& canvas, Rect room, const WorkOrder& order, const Wording& w)
{
    canvas.begin(Part::figure);
    const double block = drawing_height - 8;
    draw_body(canvas, {room.x, room.y + 4, body_width, block}, say(TagCaption::tractor, w));
    draw_body(canvas, {room.right() - body_width, room.y + 4, body_width, block}, say(TagCaption::machine, w));
    draw_shaft(canvas, {room.x + body_width, room.y, room.width - 2 * body_width, drawing_height}, order, w);
    canvas.begin(Part::paragraph);
    return room.y + drawing_height + 1;
}

double draw_use(Canvas& canvas, Rect room, const WorkOrder& order, const Wording& w)
{
    room.y = draw_line(canvas, room, order.shaft.speed ? speed(*order.shaft.speed, w) : say(TagCaption::speed_not_stated, w), lettering::name);
    const std::vector<std::string> limits = position_limits(order, w);
    for (std::size_t i = 0; i < std::min(limits.size(), most_limits); ++i) room.y = draw_line(canvas, room, limits[i], lettering::strong);
    if (limits.size() > most_limits) room.y = draw_line(canvas, room, say(TagCaption::more_on_the_sheet, w), lettering::strong);
    return draw_line(canvas, room, say(TagCaption::grease, w), lettering::note);
}

double draw_cautions(Canvas& canvas, Rect room, const Wording& w)
{
    const double top = room.y;
    Rect inside{room.x + 2, top + 1.5, room.width - 4, 0};
    for (const TagCaption caution : {TagCaption::engine_off, TagCaption::stand_clear, TagCaption::guard_complete, TagCaption::never_step_over})
        inside.y = draw_line(canvas, inside, say(caution, w), lettering::name);
    canvas.box({room.x, top, room.width, inside.y + 0.8 - top}, pen::cut_mark);
    return inside.y + 2.5;
}

// For the next fitter, with boxes for what is read on the machine.
double draw_lengths(Canvas& canvas, Rect room, const WorkOrder& order, const Wording& w)
{
    double x = room.right();
    for (const TagCaption name : {TagCaption::rings_box, TagCaption::overall_box}) {
        x -= box_width / 2 + 2;
        canvas.box({x, room.y, box_width / 2 + 1, box_height}, pen::guard);
        canvas.text({x + 1.2, room.y + 3.7}, say(name, w), lettering::strong);
    }
    return std::max(room.y + box_height, canvas.paragraph({room.x, room.y}, x - room.x - 3, lengths(order, w), lettering::note)) + 1;
}

double draw_content(Canvas& canvas, Rect room, const Tag& tag, const Wording& w)
{
    const WorkOrder& order = tag.order;
    canvas.begin(Part::paragraph);
    room.y = draw_alarm(canvas, room, order, w);
    room.y = draw_line(canvas, room, made_for(order, w), lettering::name);
    room.y = draw_line(canvas, room, say(TagCaption::other_machine, w), lettering::name);
    room.y = draw_ends(canvas, room, order, w);
    room.y = draw_use(canvas, room, order, w) + 0.5;
    room.y = draw_cautions(canvas, room, w);
    room.y = draw_lengths(canvas, room, order, w);
    room.y = draw_line(canvas, room, numbers(order.order, order.shaft.number, w), lettering::strong);
    return draw_line(canvas, room, firm_line(tag.firm, w), lettering::name);
}

double draw_instructions(Canvas& canvas, Rect room, const Wording& w)
{
    for (const PageCaption caption : {PageCaption::as_sticker, PageCaption::as_card}) room.y = draw_line(canvas, room, say(caption, w), lettering::note);
    return draw_line(canvas, room, say(PageCaption::never_tie, w), lettering::name) + 2;
}

}  // namespace

std::vector<Page> draw_tag(const Tag& tag, Paper paper, const FontFiles& files, const Wording& w)
{
    const Fonts fonts(files);
    const auto [width, height] = size_of(paper);
    Canvas canvas(fonts, width, height);
    const double left = (width - tag_width) / 2, top = draw_instructions(canvas, {left, margin, tag_width, 0}, w);
    const double bottom = draw_content(canvas, {left + inset, top + inset, tag_width - 2 * inset, 0}, tag, w) + inset - 1;
    canvas.begin(Part::figure);
    canvas.box({left, top, tag_width, bottom - top}, pen::dimension);
    return {canvas.page()};
}

DocumentInfo tag_info(const Tag& tag, const Wording& w)
{
    return document_info(document_title(tag.order.order, w), tag.firm.name.empty() ? tag.order.owner : tag.firm.name, document_subject(w), tag.order.date);
}

}  // namespace shaftcut
