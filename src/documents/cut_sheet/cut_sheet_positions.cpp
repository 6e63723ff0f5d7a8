// The positions in which the rings are read: each in a frame, with its sums in boxes, so that nobody adds in the head.
#include <algorithm>

#include "cut_sheet/cut_sheet_parts.hpp"
#include "page/fitted_lines.hpp"

namespace shaftcut::cut_sheet {
namespace {

constexpr double inset = 1.5;
constexpr BoxedText figures{{3.5, Weight::regular, 0.64, 1.4}, {3.5, Weight::regular, 0.64}, 13};
constexpr BoxedText notes{{2.5, Weight::regular, 0.85, 1.4}, {3.5, Weight::regular, 0.8}, 15};

std::string sum(Rounded as, Length length, const Wording& w) { return sum_on_rings(pulled_out(as, length, w), w); }

using Lines = std::vector<std::string>;

// Expected and read; from and to what is good; and where nobody goes on.
std::vector<Lines> cells_of(const ReadRings& position, const Wording& w)
{
    const OnRings& rings = position.rings;
    Lines never{say(RingCaption::never_under, w)};
    if (rings.never_under) never.push_back(sum(Rounded::at_least, *rings.never_under, w));
    else never = {say(RingCaption::never_over, w), sum(Rounded::at_most, rings.never_over.value_or(rings.good_to), w)};
    return {{on_rings(RingCaption::expected, sum(Rounded::measured, rings.value, w), w), say(RingCaption::read, w)},
            {on_rings(RingCaption::from, sum(Rounded::at_least, rings.good_from, w), w), on_rings(RingCaption::to, sum(Rounded::at_most, rings.good_to, w), w)}, never};
}

double height_of(const Canvas& canvas, double width, const Lines& cell)
{
    double height = 0;
    for (const std::string& line : cell) height += boxed_height(canvas, width, line, figures);
    return height;
}

double cells_height(const Canvas& canvas, double width, const std::vector<Lines>& cells)
{
    double height = 0;
    for (const Lines& cell : cells) height = std::max(height, height_of(canvas, width, cell));
    return height;
}

std::string remarks(const ReadRings& position, const Wording& w) { return running_text({when_outside(position, w), never(position, w)}); }

double name_height(const Canvas& canvas, double width, const ReadRings& position, const Wording& w)
{
    return fitted_lines_height(canvas, width - 2 * inset, position_of(position, w), lettering::name) + 1;
}

}  // namespace

double position_height(const Canvas& canvas, double width, const ReadRings& position, const Wording& w)
{
    const double cell = width / 3 - 2 * inset;
    return name_height(canvas, width, position, w) + cells_height(canvas, cell, cells_of(position, w)) + boxed_height(canvas, width - 2 * inset, remarks(position, w), notes) + 3;
}

double draw_position(Canvas& canvas, Rect room, const ReadRings& position, const Wording& w)
{
    canvas.begin(Part::table);
    const Rect frame{room.x, room.y + 0.5, room.width, position_height(canvas, room.width, position, w) - 1.2};
    canvas.box(frame, pen::guard);
    draw_fitted_lines(canvas, {frame.x + inset, frame.y + 0.5}, frame.width - 2 * inset, position_of(position, w), lettering::name);
    const std::vector<Lines> cells = cells_of(position, w);
    const double column = frame.width / 3, y = frame.y + name_height(canvas, frame.width, position, w);
    double x = frame.x + inset;
    for (const Lines& cell : cells) {
        double line_y = y;
        for (const std::string& line : cell) line_y = draw_boxed(canvas, {x, line_y}, column - 2 * inset, line, figures);
        x += column;
    }
    draw_boxed(canvas, {frame.x + inset, y + cells_height(canvas, column - 2 * inset, cells)}, frame.width - 2 * inset, remarks(position, w), notes);
    return frame.bottom() + 0.7;
}

}  // namespace shaftcut::cut_sheet
