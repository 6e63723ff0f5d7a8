// The boxes to write in: the lengths measured after the cut, who did it, when, and a signature.
#include "cut_sheet/cut_sheet_parts.hpp"

namespace shaftcut::cut_sheet {
namespace {

constexpr double heading_height = 6, measured_height = 12.5, signed_height = 9;

std::string entry_name(const TubeView& view)
{
    return std::to_string(view.number) + " " + to_word(view.end) + (view.guard ? " guard" : " tube");
}

double draw_measured(Canvas& canvas, Rect room, const WorkOrder& order)
{
    canvas.paragraph({room.x, room.y + 0.8}, room.width, std::string("Measured after the cut, from the ") + (order.reading.has_wide_angle ? "INNER cross" : "cross") + " to the free end (in brackets: as it should be)", lettering::strong);
    const std::vector<TubeView> views = tube_views(order);
    const double width = room.width / static_cast<double>(views.size() + 1);
    Rect box{room.x, room.y + heading_height, width, measured_height};
    for (const TubeView& view : views) {
        draw_entry(canvas, box, entry_name(view), view.kept ? printed(order, *view.kept, Rounded::kept) : "");
        box.x += width;
    }
    const std::string closed = order.reading.has_wide_angle ? "closed, " + cross_name(order.reading.reference) + "es" : "closed length";
    draw_entry(canvas, box, closed, printed(order, order.cut->closed_at[order.reading.reference], Rounded::closed_after));
    return box.bottom();
}

}  // namespace

double sign_off_height(const WorkOrder& order)
{
    return signed_height + (order.verdict == Verdict::cut ? heading_height + measured_height : 0);
}

double draw_sign_off(Canvas& canvas, Rect room, const WorkOrder& order)
{
    canvas.begin(Part::table);
    const double y = order.verdict == Verdict::cut ? draw_measured(canvas, room, order) : room.y;
    const double width = room.width / 3;
    double x = room.x;
    for (const char* name : {"Name", "Date", "Signature"}) {
        draw_entry(canvas, {x, y, width, signed_height}, name, "");
        x += width;
    }
    return y + signed_height;
}

}  // namespace shaftcut::cut_sheet
