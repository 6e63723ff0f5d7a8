// The boxes that say how much comes off each tube: the largest figures on the sheet.
#include "cut_sheet_parts.hpp"

namespace shaftcut::cut_sheet {
namespace {

constexpr double padding = 2, mm_height = 12.6, inch_height = 18;

std::string kept_text(const WorkOrder& order, const TubeView& view)
{
    return view.kept ? "(kept " + figure(*view.kept, order.units, Toward::down) + ")" : "(not measured)";
}

std::string tolerance_text(const WorkOrder& order)
{
    return "± " + figure_with_unit(order.saw.plus_minus, order.units, Toward::up);
}

// The figure to cut in its heavy frame; its right edge.
double draw_figure(Canvas& canvas, Point top_left, double room, const std::string& text)
{
    const double height = 9;
    const Rect set = canvas.fitted({top_left.x + padding, top_left.y + 7.3}, room - 2 * padding, text, lettering::cut);
    canvas.box({top_left.x, top_left.y, set.width + 2 * padding, height}, pen::outline);
    return set.right() + padding;
}

void draw_nothing_to_cut(Canvas& canvas, Rect box, const WorkOrder& order, const TubeView& view)
{
    draw_number(canvas, {box.x + 4.5, box.y + box.height / 2}, view.number, Fill::white);
    const double x = box.x + 9;
    canvas.text({x, box.y + 4.9}, view.name(), lettering::strong);
    const Rect words = canvas.text({x, box.y + 10.4}, "do not cut", lettering::name);
    const std::string stays = view.kept ? "(stays " + printed_with_both(order, *view.kept) + ")" : "(not measured)";
    canvas.fitted({words.right() + 3, box.y + 10.4}, box.right() - words.right() - 4, stays, lettering::figure);
}

void draw_in_mm(Canvas& canvas, Rect box, const WorkOrder& order, const TubeView& view)
{
    draw_number(canvas, {box.x + 4.5, box.y + box.height / 2}, view.number, Fill::black);
    const double x = box.x + 9;
    const Rect half = canvas.text({x, box.y + 4.9}, half_name(view.end), lettering::strong);
    canvas.text({x, box.y + 10.4}, view.guard ? "GUARD" : "TUBE", lettering::name);
    canvas.text({half.right(), box.y + 10.4}, "cut off", lettering::note, Align::right);
    const double after = draw_figure(canvas, {half.right() + 2, box.y + 1.8}, 40, printed(order, *view.cut, Toward::up)) + 2;
    canvas.text({after, box.y + 5.2}, tolerance_text(order), lettering::figure);
    canvas.fitted({after, box.y + 10.9}, box.right() - after - 1, kept_text(order, view), lettering::figure);
}

void draw_in_inches(Canvas& canvas, Rect box, const WorkOrder& order, const TubeView& view)
{
    draw_number(canvas, {box.x + 4.5, box.y + 3.9}, view.number, Fill::black);
    const Rect name = canvas.text({box.x + 9, box.y + 4.9}, view.name() + " cut off", lettering::strong);
    canvas.fitted({box.right() - 1.5, box.y + 4.9}, box.right() - name.right() - 3, tolerance_text(order), lettering::note, Align::right);
    const double after = draw_figure(canvas, {box.x + 2, box.y + 7}, 54, printed(order, *view.cut, Toward::up)) + 2;
    const double room = box.right() - after - 1;
    canvas.fitted({after, box.y + 11.6}, room, kept_text(order, view), lettering::figure);
    const std::string kept = view.kept ? ", kept " + beside(order, *view.kept, Toward::down) : "";
    canvas.fitted({after, box.y + 16.4}, room, "= " + beside(order, *view.cut, Toward::up) + kept, lettering::note);
}

}  // namespace

double cut_box_height(const WorkOrder& order)
{
    return order.units == Units::in ? inch_height : mm_height;
}

void draw_cut_box(Canvas& canvas, Rect room, const WorkOrder& order, const TubeView& view)
{
    const Rect box{room.x, room.y, room.width, cut_box_height(order)};
    canvas.box(box, pen::guard);
    if (!view.comes_off()) draw_nothing_to_cut(canvas, box, order, view);
    else if (order.units == Units::in) draw_in_inches(canvas, box, order, view);
    else draw_in_mm(canvas, box, order, view);
}

}  // namespace shaftcut::cut_sheet
