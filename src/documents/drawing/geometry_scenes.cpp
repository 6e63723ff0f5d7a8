// Every position of a machine on its sheet, a cell each: a trailed one from above and from the side, a mounted one from the side.
#include <algorithm>
#include <cmath>

#include "hitch/geometry_figures.hpp"
#include "drawing/geometry_parts.hpp"
#include "drawing/scene_drawing.hpp"
#include "order/instruction_words.hpp"

namespace shaftcut::geometry {
namespace {

constexpr double cell_gap = 4, words_height = 9;

// The greatest of 1 : 5, 1 : 6, … at which `extent` fits.
double scale_for(const Extent& extent, double width, double height)
{
    return std::ceil(std::max({5.0, (extent.right - extent.left) / width, (extent.high - extent.low) / height}));
}

struct SeenIn {
    View view;
    Extent extent;
    double scale;
};

SeenIn seen_in(View view, const MachineView& machine, double width, double height)
{
    const Extent extent = extent_of(view, machine.scenes);
    return {view, extent, scale_for(extent, width - 2 * side_margin, height - head - foot - 3)};
}

void draw_cell(Canvas& canvas, Rect cell, const MachineScene& scene, const SeenIn& seen, const Wording& w)
{
    canvas.begin(Part::figure);
    canvas.box(cell, pen::axis);
    const Rect name = canvas.text({cell.x + 1.5, cell.y + 4}, name_of(scene, w), lettering::strong);
    canvas.text({name.right(), cell.y + 4}, seen_to_scale(seen.view == View::plan ? Seen::from_above : Seen::from_left, static_cast<int>(seen.scale), w), lettering::note);
    canvas.fitted({cell.x + 1.5, cell.y + 8.4}, cell.width - 3, in_words(scene.at, w), lettering::note);
    draw_scene(canvas, cell, seen.view, seen.extent, seen.scale, scene, w);
}

// Cells side by side and below each other, counted along the rows.
struct Grid {
    std::size_t columns, rows;

    Rect cell(const Rect& room, std::size_t count) const
    {
        const auto across = static_cast<double>(columns), down = static_cast<double>(rows);
        const double width = (room.width - (across - 1) * cell_gap) / across, height = (room.height - (down - 1) * cell_gap) / down;
        const std::size_t row = count / columns, column = count % columns;
        return {room.x + static_cast<double>(column) * (width + cell_gap), room.y + static_cast<double>(row) * (height + cell_gap), width, height};
    }
};

// How high a cell must be at this scale, with room for labels above the machine.
double height_needed(const SeenIn& seen) { return head + foot + 3 + labels_above + (seen.extent.high - seen.extent.low) / seen.scale; }

// The one that shows the machine largest.
Grid best_grid(const MachineView& machine, const std::vector<View>& views, double width, double height)
{
    if (views.size() == 2) return {2, 2};
    const auto scale = [&](const Grid& grid) {
        const Rect cell = grid.cell({0, 0, width, height}, 0);
        return seen_in(views.front(), machine, cell.width, cell.height).scale;
    };
    const Grid abreast{3, 1}, stacked{2, 2};
    return scale(abreast) <= scale(stacked) ? abreast : stacked;
}

}  // namespace

void draw_scenes(Sheets& sheets, const MachineView& view, const Wording& w)
{
    std::vector<View> views{View::side};
    if (!view.mounted) views = {View::plan, View::side};
    const double top = sheets.y(), most = sheets.left_over() - plot_height - below_plot - words_height - cell_gap;
    const Grid grid = best_grid(view, views, sheets.room().width, most);
    const Rect first = grid.cell({0, 0, sheets.room().width, most}, 0);
    const double height = grid.rows == 1 ? std::min(most, height_needed(seen_in(views.front(), view, first.width, first.height))) : most;
    std::size_t count = 0;
    for (const MachineScene& scene : view.scenes)
        for (const View one : views) {
            const Rect cell = grid.cell({sheets.room().x, top, sheets.room().width, height}, count++);
            draw_cell(sheets.canvas(), cell, scene, seen_in(one, view, first.width, first.height), w);
        }
    place(sheets.canvas(), {sheets.room().x, top + height + cell_gap / 2, sheets.room().width, words_height}, {{Lead::none, about_scenes(view.mounted, w)}});
    sheets.move_to(top + height + words_height + cell_gap);
}

void draw_machines(Sheets& sheets, const WorkOrder& order, const Wording& w)
{
    std::size_t machine = 0;
    for (const FitReading& fit : order.fits) {
        if (!fit.geometry) continue;
        const MachineView& view = order.machines[machine++];
        sheets.next();
        sheets.flow({{Lead::heading, scale_heading(view.tractor, w)}});
        sheets.move_to(sheets.y() + 1);
        draw_scenes(sheets, view, w);
        draw_plot(sheets, order, view, fit.geometry->machine, w);
    }
}

}  // namespace shaftcut::geometry
