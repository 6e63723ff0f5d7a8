#include "plate/plate_sheet.hpp"

#include <algorithm>

#include "page/canvas.hpp"
#include "plate/plate_words.hpp"

namespace shaftcut {
namespace {

using namespace plate;

constexpr double margin = 12, plate_width = 90, plate_height = 56, gap = 4, inset = 3, box_height = 8.5;
constexpr int columns = 2;

double draw_line(Canvas& canvas, Rect room, const std::string& text, Lettering lettering)
{
    return text.empty() ? room.y : canvas.paragraph({room.x, room.y}, room.width, text, lettering) + 0.6;
}

// An empty box with what belongs into it above it, and a hint in it.
void draw_box(Canvas& canvas, Rect box, const std::string& name, const std::string& hint)
{
    canvas.text({box.x, box.y + 2.7}, name, lettering::note);
    canvas.box({box.x, box.y + 3.9, box.width, box_height}, pen::guard);
    if (!hint.empty()) canvas.text({box.right() - 1, box.y + 3.9 + box_height - 1.4}, hint, lettering::note, Align::right);
}

double draw_firm(Canvas& canvas, Rect room, const BuildPlan& plan, const Wording& w)
{
    const std::string& name = plan.firm.name.empty() ? plan.owner : plan.firm.name;
    if (name.empty()) {
        draw_box(canvas, room, say(Caption::made_by, w), "");
        return room.y + 3.9 + box_height + 1.5;
    }
    canvas.fitted({room.x, room.y + 3.5}, room.width, name, lettering::name);
    if (!plan.firm.address.empty()) canvas.fitted({room.x, room.y + 7.6}, room.width, plan.firm.address, lettering::note);
    return room.y + 9.6;
}

double draw_figures(Canvas& canvas, Rect room, const BuildPlan& plan, const Wording& w)
{
    const PlateFigures& figures = plan.built->plate;
    canvas.fitted({room.x, room.y + 3.5}, room.width, series(plan.series, w), lettering::name);
    room.y += 5.6;
    if (figures.speed) room.y = draw_line(canvas, room, greatest_speed(*figures.speed, w), lettering::name);
    else {
        draw_box(canvas, {room.x, room.y, room.width / 2, 0}, say(Caption::speed_unknown, w), "");
        room.y += 3.9 + box_height + 1;
    }
    if (figures.power) room.y = draw_line(canvas, room, rating(*figures.power, *figures.torque, w), lettering::strong);
    return room.y;
}

void draw_plate(Canvas& canvas, Rect plate, const BuildPlan& plan, const Wording& w)
{
    canvas.begin(Part::figure);
    canvas.box(plate, pen::dimension);
    canvas.begin(Part::paragraph);
    Rect room{plate.x + inset, plate.y + inset, plate.width - 2 * inset, 0};
    room.y = draw_firm(canvas, room, plan, w);
    room.y = draw_figures(canvas, room, plan, w);
    const double boxes = plate.bottom() - inset - 4.5 - box_height - 3.9, third = (room.width - 4) / 3;
    const auto box = [&](double from, double thirds) { return Rect{room.x + from * (third + 2), boxes, thirds * third + (thirds - 1) * 2, 0}; };
    draw_box(canvas, box(0, 1), say(Caption::serial_number, w), "");
    draw_box(canvas, box(1, 1), say(Caption::year, w), "");
    draw_box(canvas, box(2, 1), say(Caption::mass, w), say(Caption::weigh, w));
    canvas.text({room.x, plate.bottom() - inset}, say(Caption::read_the_book, w), lettering::strong);
}

}  // namespace

std::vector<Page> draw_plates(const BuildPlan& plan, Paper paper, const FontFiles& files, const Wording& w)
{
    const Fonts fonts(files);
    const auto [width, height] = size_of(paper);
    Canvas canvas(fonts, width, height);
    Rect room{margin, margin, width - 2 * margin, 0};
    room.y = draw_line(canvas, room, whose(plan, w), lettering::name);
    room.y = draw_line(canvas, room, say(Caption::how_to, w), lettering::note);
    room.y = draw_line(canvas, room, plates_bear_no_mark(w), lettering::strong);
    const double top = room.y + 6;
    const int rows = static_cast<int>((height - margin - top + gap) / (plate_height + gap)), most = rows * columns, count = std::min(plan.count, most);
    if (plan.count > most) draw_line(canvas, room, more_sheets((plan.count + most - 1) / most, w), lettering::name);
    const double left = (width - columns * plate_width - gap) / 2;
    for (int i = 0; i < count; ++i)
        draw_plate(canvas, {left + (i % columns) * (plate_width + gap), top + (i / columns) * (plate_height + gap), plate_width, plate_height}, plan, w);
    return {canvas.page()};
}

DocumentInfo plates_info(const BuildPlan& plan, const Wording& w)
{
    return document_info(document_title(plan.order, w), plan.firm.name.empty() ? plan.owner : plan.firm.name, document_subject(w), plan.due);
}

}  // namespace shaftcut
