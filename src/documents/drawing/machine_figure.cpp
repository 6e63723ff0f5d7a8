#include "drawing/machine_figure.hpp"

#include <cmath>
#include <numbers>

#include "drawing/captions.hpp"

namespace shaftcut {
namespace {

template <class Letter>
std::string letter_at(Letter which, std::size_t before)
{
    return std::string(1, static_cast<char>('A' + before + static_cast<std::size_t>(which)));
}

}  // namespace

std::string figure_letter(TrailedDimension dimension) { return letter_at(dimension, 0); }
std::string figure_letter(MountedDimension dimension) { return letter_at(dimension, 0); }
std::string figure_letter(TrailedMovement movement) { return letter_at(movement, Words<TrailedDimension>::all.size()); }
std::string figure_letter(MountedMovement movement) { return letter_at(movement, Words<MountedDimension>::all.size()); }

namespace {

using geometry::FigureCaption;

constexpr double scale = machine_figure_width / 190, figure_height = 114 * scale;
constexpr double beyond = 1.5, groove_half = 4.5, shaft_half = 2.2, label_lift = 1.2;

// A figure laid out 190 wide and 114 high, drawn smaller: points are right of its left edge and below its top.
class MachineFigure {
public:
    MachineFigure(Canvas& canvas, Rect room) : canvas_(canvas), left_(room.x), top_(room.y) {}

    Point at(double x, double y) const { return {left_ + scale * x, top_ + scale * y}; }

    void line(Point from, Point to, double width, std::initializer_list<double> dashes = {}) { canvas_.line(at(from.x, from.y), at(to.x, to.y), width, dashes); }
    void axis(Point from, Point to) { line(from, to, pen::axis, {6, 1.2, 0.8, 1.2}); }
    // Part of what is drawn thin from a point to the dimension that it belongs to.
    void extension(Point from, Point to) { line(from, to, pen::dimension); }
    void pivot(Point centre, double radius = 1.6) { canvas_.disc(at(centre.x, centre.y), radius, Fill::white, pen::guard); }
    void note(Point where, const std::string& text, Align align = Align::left) { canvas_.text(at(where.x, where.y), text, lettering::note, align); }
    void word(Point where, const std::string& text, Align align = Align::left) { canvas_.text(at(where.x, where.y), text, lettering::strong, align); }
    void ground(double y) { line({0, y}, {190, y}, pen::outline); }

    // A shaft whose end at `groove` points along `degrees` (0 to the right, rising to the left where negative), drawn `length`
    // long away from it; its locking groove heavy.
    void shaft(Point groove, double degrees, double length)
    {
        const auto from_groove = [&](double along, double across) {
            const double turn = degrees * std::numbers::pi / 180;
            return at(groove.x + along * std::cos(turn) - across * std::sin(turn), groove.y + along * std::sin(turn) + across * std::cos(turn));
        };
        canvas_.shape({from_groove(-3, -shaft_half), from_groove(length, -shaft_half), from_groove(length, shaft_half), from_groove(-3, shaft_half)}, pen::guard, Fill::white);
        canvas_.line(from_groove(0, -groove_half), from_groove(0, groove_half), pen::cut_mark);
    }

    // Level, its word above the middle of the line, or right of it where there is no room.
    void level(double from, double to, double y, const std::string& name)
    {
        measure({from, y}, {to, y});
        const bool fits = canvas_.width_of(name, lettering::strong) < scale * (to - from) - 2;
        if (fits) word({(from + to) / 2, y - label_lift}, name, Align::centre);
        else word({to + beyond, y + 1.2}, name);
    }
    // Upright, its word beside the line.
    void upright(double x, double from, double to, const std::string& name, Align align = Align::left, double word_at = 0)
    {
        measure({x, from}, {x, to});
        word({x + (align == Align::left ? beyond : -beyond), word_at > 0 ? word_at : (from + to) / 2 + 1.2}, name, align);
    }
    // Between two points anywhere.
    void measure(Point from, Point to)
    {
        line(from, to, pen::dimension);
        arrow(to, from);
        arrow(from, to);
    }
    // About a centre, with an arrow at its ends; degrees as in `shaft`.
    void arc(Point centre, double radius, double from, double to, bool both_ends_point)
    {
        constexpr int steps = 24;
        std::vector<Point> points;
        for (int i = 0; i <= steps; ++i) points.push_back(around(centre, radius, from + (to - from) * i / steps));
        std::vector<Point> drawn;
        for (const Point& point : points) drawn.push_back(at(point.x, point.y));
        canvas_.path(drawn, pen::dimension);
        arrow(points[steps - 4], points[steps]);
        if (both_ends_point) arrow(points[4], points[0]);
    }

private:
    static Point around(Point centre, double radius, double degrees)
    {
        const double turn = degrees * std::numbers::pi / 180;
        return {centre.x + radius * std::cos(turn), centre.y + radius * std::sin(turn)};
    }

    void arrow(Point from, Point tip) { draw_arrow(canvas_, at(from.x, from.y), at(tip.x, tip.y)); }

    Canvas& canvas_;
    double left_, top_;
};

constexpr double groove_x = 30, pin_x = 82, input_x = 152;  // of a trailed machine

void draw_trailed_plan(MachineFigure& figure, const Wording& w)
{
    using enum TrailedDimension;
    constexpr double axis_y = 22, input_y = 33, dimension_y = 46;
    figure.note({0, 6}, say(FigureCaption::trailed_from_above, w));
    figure.axis({4, axis_y}, {186, axis_y});
    figure.axis({112, input_y}, {input_x - 3, input_y});
    figure.line({pin_x, axis_y}, {input_x + 12, axis_y - 1}, pen::outline);
    figure.line({input_x + 12, axis_y - 1}, {input_x + 12, input_y - shaft_half}, pen::outline);
    figure.shaft({groove_x, axis_y}, 180, 16);
    figure.shaft({input_x, input_y}, 0, 18);
    figure.pivot({pin_x, axis_y}, 2.2);
    figure.note({14, axis_y - 5.6}, say(FigureCaption::pto_stub, w));
    figure.note({pin_x, axis_y - 5.6}, say(FigureCaption::hitch_pin, w), Align::centre);
    figure.note({input_x + 3, input_y + 9.6}, say(FigureCaption::input_shaft, w));
    for (const double x : {groove_x, pin_x}) figure.extension({x, axis_y + 5}, {x, dimension_y + beyond});
    figure.extension({input_x, input_y + 5}, {input_x, dimension_y + beyond});
    figure.level(groove_x, pin_x, dimension_y, figure_letter(pin_behind));
    figure.level(pin_x, input_x, dimension_y, figure_letter(input_behind));
    figure.upright(122, axis_y, input_y, figure_letter(input_left), Align::left, 29);
    figure.arc({pin_x, axis_y}, 34, -22, 14, true);
    figure.word({pin_x + 36, axis_y - 7}, figure_letter(TrailedMovement::turn));
}

void draw_trailed_side(MachineFigure& figure, const Wording& w)
{
    using enum TrailedDimension;
    constexpr double ground_y = 112, pto_y = 76, pin_y = 92, input_y = 72, tilt = -16;
    figure.note({0, 55}, say(FigureCaption::trailed_from_left, w));
    figure.ground(ground_y);
    figure.axis({4, pto_y}, {60, pto_y});
    figure.line({pin_x, pin_y}, {118, pin_y - 3}, pen::outline);
    figure.line({118, pin_y - 3}, {input_x + 14, input_y - 1.4}, pen::outline);
    figure.shaft({groove_x, pto_y}, 180, 16);
    figure.shaft({input_x, input_y}, tilt, 18);
    figure.axis({input_x - 4, input_y}, {186, input_y});
    figure.arc({input_x, input_y}, 26, 0, tilt, false);
    figure.word({188, input_y + 8}, figure_letter(input_tilt), Align::right);
    figure.pivot({pin_x, pin_y}, 2.2);
    figure.note({14, pto_y - 5.6}, say(FigureCaption::pto_stub, w));
    figure.note({pin_x, pin_y - 5}, say(FigureCaption::hitch_pin, w), Align::centre);
    figure.note({input_x - 8, input_y - 8}, say(FigureCaption::input_shaft, w), Align::right);
    figure.upright(groove_x, pto_y + 5, ground_y, figure_letter(pto_height));
    figure.upright(pin_x, pin_y + 2.4, ground_y, figure_letter(pin_height));
    figure.upright(input_x, input_y + 5, ground_y, figure_letter(input_height), Align::left, ground_y - 8);
    figure.arc({pin_x, pin_y}, 30, -20, 12, true);
    figure.word({pin_x + 32, pin_y + 7}, figure_letter(TrailedMovement::pitch));
}

}  // namespace

double draw_trailed_figure(Canvas& canvas, Rect room, const Wording& w)
{
    canvas.begin(Part::figure);
    MachineFigure figure(canvas, room);
    draw_trailed_plan(figure, w);
    draw_trailed_side(figure, w);
    return room.y + figure_height;
}

namespace {

// Of a mounted machine.
constexpr double ground_y = 112, stub_x = 68, lower_x = 43, top_x = 54, hitch_x = 122, shaft_x = 164;
constexpr double pto_y = 62, lower_y = 78, top_y = 32, hitch_y = 86, upper_y = 30, shaft_y = 56, tilt = -15;

void draw_linkage(MachineFigure& figure, const Wording& w)
{
    figure.line({lower_x, lower_y}, {hitch_x, hitch_y}, pen::outline);
    figure.line({top_x, top_y}, {hitch_x, upper_y}, pen::outline);
    figure.line({hitch_x, hitch_y}, {hitch_x, upper_y}, pen::cut_mark);
    figure.shaft({stub_x, pto_y}, 180, 12);
    figure.shaft({shaft_x, shaft_y}, tilt, 16);
    figure.axis({shaft_x - 4, shaft_y}, {188, shaft_y});
    for (const Point& pivot : {Point{lower_x, lower_y}, Point{top_x, top_y}, Point{hitch_x, hitch_y}, Point{hitch_x, upper_y}}) figure.pivot(pivot);
    figure.note({stub_x + 3, pto_y - 5}, say(FigureCaption::pto_stub, w));
    figure.note({shaft_x + 4, shaft_y - 11}, say(FigureCaption::input_shaft, w), Align::centre);
    figure.note({hitch_x - 1.2, hitch_y + 7}, say(FigureCaption::lower_hitch_point, w), Align::right);
    figure.note({hitch_x + 3, upper_y - 2}, say(FigureCaption::upper_hitch_point, w));
}

void draw_tractor_dimensions(MachineFigure& figure)
{
    using enum MountedDimension;
    figure.extension({stub_x, pto_y - 5}, {stub_x, 12.5});
    figure.extension({top_x, top_y - 2}, {top_x, 22.5});
    figure.level(top_x, stub_x, 24, figure_letter(top_pivot_behind));
    figure.extension({lower_x, lower_y - 2}, {lower_x, 12.5});
    figure.level(lower_x, stub_x, 14, figure_letter(lower_pivot_behind));
    figure.extension({top_x - 2, top_y}, {1.5, top_y});
    figure.upright(3, top_y, ground_y, figure_letter(top_pivot_height), Align::left, 46);
    figure.upright(stub_x, pto_y + 5, ground_y, figure_letter(pto_height), Align::left, 103);
    figure.upright(lower_x, lower_y + 2, ground_y, figure_letter(lower_pivot_height), Align::right, 96);
}

void draw_implement_dimensions(MachineFigure& figure)
{
    using enum MountedDimension;
    figure.word({58, 76}, figure_letter(lower_link), Align::centre);
    figure.word({88, 28.6}, figure_letter(top_link), Align::centre);
    figure.word({hitch_x - 3, 58}, figure_letter(mast), Align::right);
    figure.extension({hitch_x + 2, hitch_y}, {shaft_x - 12, hitch_y});
    figure.extension({hitch_x + 2, shaft_y}, {shaft_x - 4, shaft_y});
    figure.upright(shaft_x - 16, shaft_y, hitch_y, figure_letter(input_above), Align::right, 74);
    figure.extension({shaft_x, shaft_y + 5}, {shaft_x, 97.5});
    figure.level(hitch_x, shaft_x, 96, figure_letter(input_behind));
    figure.arc({shaft_x, shaft_y}, 22, 0, tilt, false);
    figure.word({190, shaft_y - 8}, figure_letter(input_tilt), Align::right);
    figure.upright(hitch_x, hitch_y + 2, ground_y, figure_letter(MountedMovement::lowest) + " … " + figure_letter(MountedMovement::highest), Align::right, 103);
}

}  // namespace

double draw_mounted_figure(Canvas& canvas, Rect room, const Wording& w)
{
    canvas.begin(Part::figure);
    MachineFigure figure(canvas, room);
    figure.note({76, 6}, say(FigureCaption::mounted_from_left, w));
    figure.ground(ground_y);
    draw_linkage(figure, w);
    draw_tractor_dimensions(figure);
    draw_implement_dimensions(figure);
    return room.y + figure_height;
}

}  // namespace shaftcut
