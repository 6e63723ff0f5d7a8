// The boxes to write in: the lengths measured after the cut, who did it, when, and a signature.
#include "cut_sheet/cut_sheet_parts.hpp"

namespace shaftcut::cut_sheet {
namespace {

constexpr double heading_height = 6, measured_height = 12.5, signed_height = 9;

double draw_measured(Canvas& canvas, Rect room, const WorkOrder& order, const Wording& w)
{
    canvas.paragraph({room.x, room.y + 0.8}, room.width, measured_after(order.reading.has_wide_angle, w), lettering::strong);
    const std::vector<TubeView> views = tube_views(order);
    const double width = room.width / static_cast<double>(views.size() + 1);
    Rect box{room.x, room.y + heading_height, width, measured_height};
    for (const TubeView& view : views) {
        draw_entry(canvas, box, measured_name(view.number, view.end, view.guard, w), view.kept ? w.length(Rounded::kept, *view.kept) : "");
        box.x += width;
    }
    const std::string closed = order.reading.has_wide_angle ? closed_between(order.reading.reference, w) : say(EntryCaption::closed, w);
    draw_entry(canvas, box, closed, w.length(Rounded::closed_after, order.cut->closed_at[order.reading.reference]));
    return box.bottom();
}

}  // namespace

double sign_off_height(const WorkOrder& order)
{
    return signed_height + (order.verdict == Verdict::cut ? heading_height + measured_height : 0);
}

double draw_sign_off(Canvas& canvas, Rect room, const WorkOrder& order, const Wording& w)
{
    canvas.begin(Part::table);
    const double y = order.verdict == Verdict::cut ? draw_measured(canvas, room, order, w) : room.y;
    const double width = room.width / 3;
    double x = room.x;
    for (const EntryCaption name : {EntryCaption::name, EntryCaption::date, EntryCaption::signature}) {
        draw_entry(canvas, {x, y, width, signed_height}, say(name, w), "");
        x += width;
    }
    return y + signed_height;
}

}  // namespace shaftcut::cut_sheet
