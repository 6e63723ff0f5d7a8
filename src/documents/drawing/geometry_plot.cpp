// The telescoping length over the machine's movement, with the limits that the shaft sets.
#include <algorithm>
#include <cmath>

#include "drawing/geometry_parts.hpp"
#include "drawing/labelled_drawing.hpp"
#include "order/instruction_words.hpp"

namespace shaftcut::geometry {
namespace {

constexpr double axis_left = 20, axis_right = 22, above = 9, below = 25, bar_pitch = 3.6;

struct Span {
    double from, to;
    double size() const { return to - from; }
};

// A horizontal line: a length that the shaft must not pass.
struct LimitLine {
    std::string name;
    Length length;
};

std::vector<LimitLine> limit_lines(const WorkOrder& order, const Wording& w)
{
    std::vector<LimitLine> lines;
    if (!order.cut) return lines;
    const CutPlan& plan = order.cut->plan;
    lines.push_back({say(PlotCaption::least_allowed, w), plan.closed + order.limits.length(Limit::closing_clearance)});
    for (const Range range : all_ranges) {
        const Check& check = check_of(order.checks, overlap_check_id(range));
        if (!check.limit) continue;
        lines.push_back({longest_allowed(range, w), plan.half[Tube::inner] + plan.half[Tube::outer] - Length::micrometres(*check.limit)});
    }
    return lines;
}

double position_of(const MachineView& view, const CurvePoint& point) { return view.mounted ? point.height.mm() : point.turn.degrees(); }

double position_of(const Posture& at)
{
    if (const auto* lift = std::get_if<MountedPosture>(&at)) return lift->height.mm();
    return std::get<TrailedPosture>(at).turn.degrees();
}

Span movement_of(const MachineView& view)
{
    Span span{position_of(view, view.curve.front()), position_of(view, view.curve.back())};
    if (span.size() < 1) span = {span.from - 1, span.to + 1};
    return span;
}

Span lengths_of(const MachineView& view, const std::vector<LimitLine>& limits)
{
    Span span{1e9, -1e9};
    const auto hold = [&](Length length) { span = {std::min(span.from, length.mm()), std::max(span.to, length.mm())}; };
    for (const CurvePoint& point : view.curve) hold(point.shortest), hold(point.longest);
    for (const LimitLine& limit : limits) hold(limit.length);
    const double margin = std::max(2.0, 0.06 * span.size());
    const double room_for_a_name = limits.empty() ? margin : 2.5 * margin;
    return {span.from - margin, span.to + room_for_a_name};
}

// A step of 1, 2 or 5 times a power of ten, so that there are at most `most` of them.
double round_step(double size, int most)
{
    double step = std::pow(10, std::floor(std::log10(size / most)));
    for (const double factor : {1.0, 2.0, 5.0, 10.0})
        if (size / (step * factor) <= most) return step * factor;
    return step * 10;
}

// The multiples of the step in [from, to].
std::vector<double> ticks(double from, double to, double step)
{
    std::vector<double> all;
    for (auto multiple = std::llround(std::ceil(from / step)); static_cast<double>(multiple) * step <= to; ++multiple) all.push_back(static_cast<double>(multiple) * step);
    return all;
}

std::string tick_text(double value) { return with_minus(figure(Length::from_mm(value), Units::mm)); }

class Plot {
public:
    Plot(Canvas& canvas, Rect room, const WorkOrder& order, const MachineView& view, const Machine& machine, const Wording& w)
        : canvas_(canvas), order_(order), view_(view), machine_(machine), w_(w), limits_(limit_lines(order, w)), x_(movement_of(view)), y_(lengths_of(view, limits_)),
          frame_{room.x + axis_left, room.y + above, room.width - axis_left - axis_right, room.height - above - below}, drawing_(canvas, inside(frame_)) {}

    void draw()
    {
        canvas_.box(frame_, pen::guard);
        draw_movement_axis();
        draw_length_axis();
        if (order_.cut) draw_overlap_axis();
        draw_ranges();
        draw_curves();
        for (const LimitLine& limit : limits_) drawing_.line({frame_.x, y(limit.length.mm())}, {frame_.right(), y(limit.length.mm())}, pen::dimension, {2, 1.2});
        const auto points = mark_extremes();
        for (const LimitLine& limit : limits_) name(limit);
        for (const auto& [point, words] : points) drawing_.label(point, words, lettering::note);
    }

private:
    // Where labels stand clear of the frame.
    static Rect inside(const Rect& frame) { return {frame.x + 1, frame.y + 1, frame.width - 2, frame.height - 2}; }
    double x(double movement) const { return frame_.x + (movement - x_.from) / x_.size() * frame_.width; }
    double y(double length) const { return frame_.bottom() - (length - y_.from) / y_.size() * frame_.height; }

    double unit() const { return w_.units() == Units::mm ? 1 : 25.4; }

    void draw_movement_axis()
    {
        const double scale = view_.mounted ? unit() : 1, step = scale * round_step(x_.size() / scale, 9);
        for (const double tick : ticks(x_.from, x_.to + 1e-6, step)) {
            canvas_.line({x(tick), frame_.bottom()}, {x(tick), frame_.bottom() + 1.2}, pen::dimension);
            canvas_.text({x(tick), frame_.bottom() + 4.6}, tick_text(tick / scale) + (view_.mounted ? "" : "°"), lettering::note, Align::centre);
        }
        canvas_.text({frame_.x + frame_.width / 2, frame_.bottom() + 9.2},
                     view_.mounted ? height_axis(w_) : say(PlotCaption::turn, w_), lettering::note, Align::centre);
    }

    void draw_length_axis()
    {
        const double step = unit() * round_step(y_.size() / unit(), 7);
        for (const double tick : ticks(y_.from, y_.to, step)) {
            canvas_.line({frame_.x - 1.2, y(tick)}, {frame_.x, y(tick)}, pen::dimension);
            canvas_.text({frame_.x - 2, y(tick) + 1.2}, tick_text(tick / unit()), lettering::note, Align::right);
        }
        canvas_.text({frame_.x - axis_left, frame_.y - 3}, length_axis(w_), lettering::strong);
    }

    // What is left of overlap after the cut falls as the length grows.
    void draw_overlap_axis()
    {
        const double most = (order_.cut->plan.half[Tube::inner] + order_.cut->plan.half[Tube::outer]).mm();
        const double step = unit() * round_step(y_.size() / unit(), 7);
        for (const double tick : ticks(most - y_.to, most - y_.from, step)) {
            canvas_.line({frame_.right(), y(most - tick)}, {frame_.right() + 1.2, y(most - tick)}, pen::dimension);
            canvas_.text({frame_.right() + 2, y(most - tick) + 1.2}, tick_text(tick / unit()), lettering::note);
        }
        canvas_.text({frame_.right() + axis_right, frame_.y - 3}, overlap_axis(w_), lettering::strong, Align::right);
    }

    std::optional<Span> span_of(Range range) const
    {
        if (const auto* trailed = std::get_if<Trailed>(&machine_)) {
            const auto& turns = trailed->ranges[range];
            return turns ? std::optional(Span{-turns->turn.value.degrees(), turns->turn.value.degrees()}) : std::nullopt;
        }
        const auto& heights = std::get<Mounted>(machine_).ranges[range];
        return heights ? std::optional(Span{heights->lowest.value.mm(), heights->highest.value.mm()}) : std::nullopt;
    }

    // Bars below the axis: how far each range goes.
    void draw_ranges()
    {
        double at = frame_.bottom() + 13;
        for (const Range range : all_ranges) {
            const auto span = span_of(range);
            if (!span) continue;
            const double left = x(span->from), right = x(span->to);
            canvas_.line({left, at}, {right, at}, pen::outline);
            for (const double end : {left, right}) canvas_.line({end, at - 1}, {end, at + 1}, pen::outline);
            canvas_.text({frame_.x - 2, at + 1.2}, range_name(range, w_), lettering::note, Align::right);
            at += bar_pitch;
        }
    }

    // On the first place along the line that has room.
    void name(const LimitLine& limit)
    {
        for (const double part : {0.8, 0.55, 0.3})
            if (drawing_.label({frame_.x + part * frame_.width, y(limit.length.mm())}, limit.name, lettering::note)) return;
    }

    void draw_curve(Length CurvePoint::*which, double width)
    {
        std::vector<Point> points;
        for (const CurvePoint& point : view_.curve) points.push_back({x(position_of(view_, point)), y((point.*which).mm())});
        drawing_.path(points, width);
    }

    void draw_curves()
    {
        draw_curve(&CurvePoint::length, pen::outline);
        if (view_.mounted) return;
        draw_curve(&CurvePoint::shortest, pen::axis);
        draw_curve(&CurvePoint::longest, pen::axis);
    }

    // Positions that are drawn at one point have one label.
    std::vector<std::pair<Point, std::string>> mark_extremes()
    {
        std::vector<std::pair<Point, std::string>> labels;
        for (const MachineScene& scene : view_.scenes) {
            const Point at{x(position_of(scene.at)), y(scene.length.mm())};
            const std::string words = extreme(name_of(scene, w_), w_.length(scene.printed_as, scene.length), w_);
            const auto same = std::find_if(labels.begin(), labels.end(), [&](const auto& label) { return std::hypot(label.first.x - at.x, label.first.y - at.y) < 0.5; });
            if (same != labels.end()) {
                same->second += "; " + words;
                continue;
            }
            drawing_.disc(at, 1.1, Fill::black);
            labels.emplace_back(at, words);
        }
        return labels;
    }

    Canvas& canvas_;
    const WorkOrder& order_;
    const MachineView& view_;
    const Machine& machine_;
    const Wording& w_;
    std::vector<LimitLine> limits_;
    Span x_, y_;
    Rect frame_;
    LabelledDrawing drawing_;
};

}  // namespace

void draw_plot(Sheets& sheets, const WorkOrder& order, const MachineView& view, const Machine& machine, const Wording& w)
{
    const Blocks words{{Lead::none, about_plot(view.curve_range, order.cut.has_value(), w)}};
    sheets.ensure(plot_height + below_plot);
    sheets.canvas().begin(Part::figure);
    Plot(sheets.canvas(), {sheets.room().x, sheets.y(), sheets.room().width, plot_height}, order, view, machine, w).draw();
    sheets.move_to(sheets.y() + plot_height);
    sheets.flow(words);
}

}  // namespace shaftcut::geometry
