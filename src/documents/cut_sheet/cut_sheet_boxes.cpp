// The boxes that say how much comes off each tube: the largest figures on the sheet.
#include <algorithm>

#include "cut_sheet/cut_sheet_parts.hpp"
#include "cut_sheet/front_lines.hpp"

namespace shaftcut::cut_sheet {
namespace {

constexpr double padding = 1.7, low_height = 12.6, high_height = 17, names_at = 8, names_width = 29.5;
// How far the kept length may be narrowed before the box becomes a high one.
constexpr double narrowest_kept = 0.8;

// The figure to cut in its heavy frame; its right edge.
double draw_figure(Canvas& canvas, Point top_left, double room, const std::string& text)
{
    const double height = 9;
    const Rect set = canvas.fitted({top_left.x + padding, top_left.y + 7.3}, room - 2 * padding, text, lettering::cut);
    canvas.box({top_left.x, top_left.y, set.width + 2 * padding, height}, pen::outline);
    return set.right() + padding;
}

void draw_nothing_to_cut(Canvas& canvas, Rect box, const TubeView& view, const Wording& w)
{
    draw_mark(canvas, {box.x + 4.5, box.y + box.height / 2}, letter_of(view.part()), Fill::white);
    draw_strike(canvas, {box.x + 4.5, box.y + box.height / 2});
    const double x = box.x + 9;
    canvas.text({x, box.y + 4.9}, part_name(view.end, view.guard, w), lettering::strong);
    const Rect words = canvas.text({x, box.y + 10.4}, say(HalfCaption::do_not_cut, w), lettering::name);
    const std::string stays = stays_said(view, w);
    if (box.height == high_height) canvas.fitted({x, box.y + 15.6}, box.right() - x - 1, stays, lettering::figure);
    else canvas.fitted({words.right() + 3, box.y + 10.4}, box.right() - words.right() - 4, stays, lettering::figure);
}

// All in one row: name, figure, kept length.
void draw_low(Canvas& canvas, Rect box, const WorkOrder& order, const TubeView& view, const Wording& w)
{
    draw_mark(canvas, {box.x + 4.2, box.y + box.height / 2}, letter_of(view.part()), Fill::black);
    const double x = box.x + names_at, figure_at = x + names_width;
    canvas.fitted({x, box.y + 4.9}, names_width - 1, half_name(view.end, w), lettering::strong);
    canvas.text({x, box.y + 10.4}, say(view.guard ? HalfCaption::guard : HalfCaption::tube, w), lettering::name);
    canvas.text({figure_at - 1, box.y + 10.4}, say(HalfCaption::cut_off, w), lettering::note, Align::right);
    const double after = draw_figure(canvas, {figure_at, box.y + 1.8}, box.right() - figure_at, cut_said(view, w)) + 1.5;
    const double room = box.right() - after - 1;
    canvas.fitted({after, box.y + 5.2}, room, cut_plus_minus(order.saw.plus_minus, w), lettering::figure);
    canvas.fitted({after, box.y + 10.9}, room, kept_said(view, w), lettering::figure);
}

// The name above the figure; in inches the millimetres below the kept length.
void draw_high(Canvas& canvas, Rect box, const WorkOrder& order, const TubeView& view, const Wording& w)
{
    draw_mark(canvas, {box.x + 4.5, box.y + 3.5}, letter_of(view.part()), Fill::black);
    const Rect name = canvas.text({box.x + 9, box.y + 4.7}, part_to_cut(view.end, view.guard, w), lettering::strong);
    canvas.fitted({box.right() - 1.5, box.y + 4.7}, box.right() - name.right() - 3, cut_plus_minus(order.saw.plus_minus, w), lettering::note, Align::right);
    const double after = draw_figure(canvas, {box.x + 2, box.y + 6.6}, 52, cut_said(view, w)) + 2;
    const double room = box.right() - after - 1;
    const bool alone = w.units() == Units::mm && view.kept;
    canvas.fitted({after, box.y + (alone ? 13 : 11)}, room, kept_said(view, w), lettering::figure);
    if (w.units() == Units::in) canvas.fitted({after, box.y + 15.5}, room, millimetres_of(*view.cut, view.kept, w), lettering::note);
    else if (!view.kept) canvas.fitted({after, box.y + 15.5}, room, say(HalfCaption::hold_side_by_side, w), lettering::note);
}

bool fits_low(const Canvas& canvas, double width, const WorkOrder& order, const TubeView& view, const Wording& w)
{
    const double cut = canvas.width_of(cut_said(view, w), lettering::cut) + 2 * padding;
    const double kept = std::max(canvas.width_of(cut_plus_minus(order.saw.plus_minus, w), lettering::figure), narrowest_kept * canvas.width_of(kept_said(view, w), lettering::figure));
    const double named = canvas.width_of(say(view.guard ? HalfCaption::guard : HalfCaption::tube, w), lettering::name) + canvas.width_of(say(HalfCaption::cut_off, w), lettering::note);
    return named + 2.5 <= names_width && names_at + names_width + cut + 1.5 + kept + 1 <= width;
}

}  // namespace

void draw_strike(Canvas& canvas, Point centre)
{
    constexpr double far = number_radius + 0.9, near = 2.05;
    for (const double side : {1.0, -1.0}) canvas.line({centre.x - side * far * 0.7, centre.y + side * far * 0.7}, {centre.x - side * near * 0.7, centre.y + side * near * 0.7}, pen::guard);
}

double cut_box_height(const Canvas& canvas, double width, const WorkOrder& order, const Wording& w)
{
    const std::vector<TubeView> views = tube_views(order);
    const bool low = w.units() == Units::mm && std::all_of(views.begin(), views.end(), [&](const TubeView& view) { return fits_low(canvas, width, order, view, w); });
    return low ? low_height : high_height;
}

void draw_cut_box(Canvas& canvas, Rect room, const WorkOrder& order, const TubeView& view, const Wording& w)
{
    const Rect box{room.x, room.y, room.width, cut_box_height(canvas, room.width, order, w)};
    canvas.box(box, pen::guard);
    if (!view.comes_off()) draw_nothing_to_cut(canvas, box, view, w);
    else if (box.height == high_height) draw_high(canvas, box, order, view, w);
    else draw_low(canvas, box, order, view, w);
}

}  // namespace shaftcut::cut_sheet
