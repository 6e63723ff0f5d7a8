#include "page/canvas.hpp"

#include <algorithm>
#include <cmath>

namespace shaftcut {
namespace {

constexpr double least_stretch = 0.7 * text_stretch;
constexpr double arrow_length = 3, arrow_width = 1.1, least_inside = 9, past_line = 1.2;

// Parts of the capital height that brackets reach above it and descenders below the baseline.
constexpr double above_caps = 0.06, below_baseline = 0.33;

double start_of(double x, double width, Align align)
{
    return align == Align::left ? x : align == Align::right ? x - width : x - width / 2;
}

}  // namespace

Canvas::Canvas(const Fonts& fonts, double width, double height) : fonts_(fonts), page_{width, height, {}} {}

void Canvas::line(Point from, Point to, double width, std::initializer_list<double> dashes)
{
    add(Path{{from, to}, false, width, Fill::none, dashes});
}

void Canvas::path(std::vector<Point> points, double width)
{
    add(Path{std::move(points), false, width, Fill::none, {}});
}

void Canvas::shape(std::vector<Point> corners, double width, Fill fill)
{
    add(Path{std::move(corners), true, width, fill, {}});
}

void Canvas::box(Rect r, double width, Fill fill)
{
    shape({{r.x, r.y}, {r.right(), r.y}, {r.right(), r.bottom()}, {r.x, r.bottom()}}, width, fill);
}

void Canvas::disc(Point centre, double radius, Fill fill, double width)
{
    add(Disc{centre, radius, width, fill});
}

void Canvas::code(Code code, Point top_left)
{
    code.box.x = top_left.x;
    code.box.y = top_left.y;
    add(std::move(code));
}

double Canvas::width_of(std::string_view text, Lettering lettering) const
{
    return fonts_.width(fonts_.printable(text), lettering.cap_height, lettering.weight, lettering.stretch);
}

std::vector<std::string> Canvas::lines_of(std::string_view text, double width, Lettering lettering) const
{
    return fonts_.wrap(fonts_.printable(text), lettering.cap_height, lettering.weight, width, lettering.stretch);
}

Rect Canvas::set(Point at, const std::string& printable, Lettering lettering, Align align, Ink ink, double stretch)
{
    if (printable.empty()) return {at.x, at.y, 0, 0};
    const double cap = lettering.cap_height;
    const double width = fonts_.width(printable, cap, lettering.weight, stretch);
    const double x = start_of(at.x, width, align);
    const Rect covered{x, at.y - cap * (1 + above_caps), width, cap * (1 + above_caps + below_baseline)};
    add(Text{printable, {x, at.y}, cap, lettering.weight, stretch, ink, covered});
    return covered;
}

Rect Canvas::text(Point at, std::string_view text, Lettering lettering, Align align, Ink ink)
{
    return set(at, fonts_.printable(text), lettering, align, ink, lettering.stretch);
}

Rect Canvas::fitted(Point at, double room, std::string_view text, Lettering lettering, Align align)
{
    const std::string printable = fonts_.printable(text);
    const double natural = fonts_.width(printable, lettering.cap_height, lettering.weight, 1);
    const double stretch = natural > 0 ? std::clamp(room / natural, least_stretch, lettering.stretch) : lettering.stretch;
    return set(at, printable, lettering, align, Ink::black, stretch);
}

double Canvas::paragraph(Point top_left, double width, std::string_view text, Lettering lettering)
{
    double y = top_left.y;
    for (const std::string& line : lines_of(text, width, lettering)) {
        set({top_left.x, y + lettering.cap_height * 1.2}, line, lettering, Align::left, Ink::black, lettering.stretch);
        y += lettering.pitch();
    }
    return y;
}

void draw_dimension(Canvas& canvas, const DimensionLine& d)
{
    const bool inside = d.to - d.from >= least_inside;
    const double past = d.y < d.from_y ? -past_line : past_line;
    canvas.line({d.from, d.from_y}, {d.from, d.y + past}, pen::dimension);
    canvas.line({d.to, d.to_y}, {d.to, d.y + past}, pen::dimension);
    const double tail = inside ? 0 : 2 * arrow_length;
    const bool gap = d.gap_to > d.gap_from;
    canvas.line({d.from - tail, d.y}, {gap ? d.gap_from : d.to + tail, d.y}, pen::dimension);
    if (gap) canvas.line({d.gap_to, d.y}, {d.to + tail, d.y}, pen::dimension);
    const double middle = (d.from + d.to) / 2, beyond = d.to - d.from;
    draw_arrow(canvas, {inside ? middle : d.from - beyond, d.y}, {d.from, d.y});
    draw_arrow(canvas, {inside ? middle : d.to + beyond, d.y}, {d.to, d.y});
    canvas.text({(d.from + d.to) / 2, d.y - 1.3}, d.figure, lettering::figure, Align::centre);
}

void draw_arrow(Canvas& canvas, Point from, Point tip)
{
    const double length = std::hypot(tip.x - from.x, tip.y - from.y);
    if (length == 0) return;
    const Point along{(tip.x - from.x) / length, (tip.y - from.y) / length};
    const Point back{tip.x - along.x * arrow_length, tip.y - along.y * arrow_length};
    const double half = arrow_width / 2;
    canvas.shape({tip, {back.x - along.y * half, back.y + along.x * half}, {back.x + along.y * half, back.y - along.x * half}}, 0, Fill::black);
}

void draw_mark(Canvas& canvas, Point centre, const std::string& mark, Fill fill)
{
    const bool black = fill == Fill::black;
    canvas.disc(centre, black ? number_radius : number_radius - pen::guard / 2, fill, black ? 0 : pen::guard);
    canvas.text({centre.x, centre.y + 1.4}, mark, {2.8, Weight::bold}, Align::centre, black ? Ink::white : Ink::black);
}

}  // namespace shaftcut
