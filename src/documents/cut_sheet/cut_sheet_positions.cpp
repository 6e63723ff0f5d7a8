// The positions in which the rings are read: each in a frame, with its sums in boxes, so that nobody adds in the head.
#include <algorithm>

#include "cut_sheet/cut_sheet_parts.hpp"
#include "cut_sheet/front_lines.hpp"
#include "page/fitted_lines.hpp"

namespace shaftcut::cut_sheet {
namespace {

constexpr double inset = 1.5;
constexpr BoxedText figures{{3.5, Weight::regular, 0.64, 1.4}, {3.5, Weight::regular, 0.64}, 13};
constexpr BoxedText nowhere{{3.5, Weight::bold, 0.64, 1.4}, {3.5, Weight::bold, 0.64}, 13};
constexpr BoxedText notes{{2.5, Weight::regular, 0.85, 1.4}, {3.5, Weight::regular, 0.8}, 15};

// The range that is good, and what is read; what is expected, and where nobody goes on: two rows of two sums, and the reading beside them.
struct Cell {
    std::string text;
    double left, right;  // parts of the width
    BoxedText style = figures;
};
using Row = std::vector<Cell>;

std::vector<Row> rows_of(const ReadRings& position, const Wording& w)
{
    constexpr double second = 0.425, third = 0.85;
    const RingLines lines = ring_lines(position, w);
    return {{{lines.from, 0, second}, {lines.to, second, third}, {say(RingCaption::read, w), third, 1}}, {{lines.expected, 0, second}, {lines.never, second, 1, nowhere}}};
}

double cell_width(double width, const Cell& cell) { return (width - 2 * inset) * (cell.right - cell.left) - inset; }

double height_of(const Canvas& canvas, double width, const Row& row)
{
    double height = 0;
    for (const Cell& cell : row) height = std::max(height, boxed_height(canvas, cell_width(width, cell), cell.text, cell.style));
    return height;
}

double name_height(const Canvas& canvas, double width, const ReadRings& position, const Wording& w)
{
    return fitted_lines_height(canvas, width - 2 * inset, position_of(position, w), lettering::name) + 1;
}

}  // namespace

double position_height(const Canvas& canvas, double width, const ReadRings& position, const Wording& w)
{
    double height = name_height(canvas, width, position, w) + boxed_height(canvas, width - 2 * inset, ring_lines(position, w).remarks, notes) + 3.4;
    for (const Row& row : rows_of(position, w)) height += height_of(canvas, width, row);
    return height;
}

double draw_position(Canvas& canvas, Rect room, const ReadRings& position, const Wording& w)
{
    canvas.begin(Part::table);
    const Rect frame{room.x, room.y + 0.5, room.width, position_height(canvas, room.width, position, w) - 1.2};
    canvas.box(frame, pen::guard);
    draw_fitted_lines(canvas, {frame.x + inset, frame.y + 0.5}, frame.width - 2 * inset, position_of(position, w), lettering::name);
    double y = frame.y + name_height(canvas, frame.width, position, w);
    for (const Row& row : rows_of(position, w)) {
        for (const Cell& cell : row) draw_boxed(canvas, {frame.x + inset + (frame.width - 2 * inset) * cell.left, y}, cell_width(frame.width, cell), cell.text, cell.style);
        y += height_of(canvas, frame.width, row);
    }
    draw_boxed(canvas, {frame.x + inset, y + 0.4}, frame.width - 2 * inset, ring_lines(position, w).remarks, notes);
    return frame.bottom() + 0.7;
}

}  // namespace shaftcut::cut_sheet
