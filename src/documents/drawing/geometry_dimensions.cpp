// The machine's dimensions as the job states them, in the boxes of the measuring form: so that whoever measured can hold the one beside
// the other.
#include "data/machine_dimensions.hpp"
#include "drawing/geometry_parts.hpp"
#include "hitch/geometry_figures.hpp"
#include "figures.hpp"

namespace shaftcut::geometry {
namespace {

constexpr std::size_t in_a_row = 4;
constexpr double box_height = 10, inset = 1.2, heading_height = 6.5;

struct Cell {
    std::string name;
    std::string hint;    // what the sign means, or where a tolerance comes from; may be empty
    std::string figure;  // with its unit
    std::string beside;  // its millimetres, on paper in inches
};

void draw_cell(Canvas& canvas, Rect box, const Cell& cell)
{
    canvas.box(box, pen::axis);
    const Rect name = canvas.text({box.x + inset, box.y + 3.5}, cell.name, lettering::strong);
    const double right = box.right() - inset;
    canvas.fitted({right, box.y + 3.5}, right - name.right() - inset, cell.hint, lettering::note, Align::right);
    const double room = canvas.width_of(cell.beside, lettering::note);
    canvas.text({box.x + inset, box.bottom() - 1.5}, cell.beside, lettering::note);
    canvas.fitted({right, box.bottom() - 1.5}, box.width - 3 * inset - room, cell.figure, lettering::name, Align::right);
}

Cell cell_of(const StatedDimension& dimension, const Wording& w, const std::string& before = "")
{
    const std::string lies = dimension.lies ? say(*dimension.lies, w) : "";
    if (const auto* angle = std::get_if<AngleDimension>(&dimension.stated))
        return {dimension.name, lies, before + with_minus(figure(angle->value)) + "°", ""};
    const Length length = std::get<Dimension>(dimension.stated).value;
    return {dimension.name, lies, with_minus(w.length(Rounded::measured, length)), with_minus(millimetres_beside(w, Rounded::measured, length))};
}

// The lengths of one element of a job file share their tolerance.
Cell plus_minus_cell(const WorkOrder& order, const StatedDimension& length, const Wording& w)
{
    const auto& stated = std::get<Dimension>(length.stated).plus_minus;
    const Length plus_minus = stated.value_or(order.measuring_plus_minus);
    return {"plus-minus", say(stated ? StatedCaption::stated : StatedCaption::workshops, w), w.length(Rounded::doubt, plus_minus), millimetres_beside(w, Rounded::doubt, plus_minus)};
}

std::vector<std::vector<Cell>> rows_of(const std::vector<Cell>& cells)
{
    std::vector<std::vector<Cell>> rows;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (i % in_a_row == 0) rows.emplace_back();
        rows.back().push_back(cells[i]);
    }
    return rows;
}

std::vector<std::vector<Cell>> dimension_rows(const WorkOrder& order, const Machine& machine, const Wording& w)
{
    const std::vector<StatedDimension> dimensions = dimensions_of(machine);
    std::vector<Cell> cells;
    for (const StatedDimension& dimension : dimensions) cells.push_back(cell_of(dimension, w));
    cells.push_back(plus_minus_cell(order, dimensions.front(), w));
    return rows_of(cells);
}

std::vector<Cell> range_row(const WorkOrder& order, const Machine& machine, Range range, const Wording& w)
{
    const std::vector<StatedDimension> movements = movements_of(machine, range);
    std::vector<Cell> cells{{to_word(range), movements.empty() ? say(StatedCaption::not_stated, w) : "", "", ""}};
    for (const StatedDimension& movement : movements) cells.push_back(cell_of(movement, w, "± "));
    if (!movements.empty() && std::holds_alternative<Dimension>(movements.front().stated)) cells.push_back(plus_minus_cell(order, movements.front(), w));
    return cells;
}

void draw_one(Sheets& sheets, const WorkOrder& order, const FitReading& fit, const Wording& w)
{
    const Machine& machine = fit.geometry->machine;
    std::vector<std::vector<Cell>> rows = dimension_rows(order, machine, w);
    for (const Range range : all_ranges) rows.push_back(range_row(order, machine, range, w));
    sheets.move_to(sheets.y() + 1);
    const Blocks words{{Lead::heading, stated_heading(tractor_of(order, fit), std::holds_alternative<Mounted>(machine), w)}, {Lead::none, say(StatedCaption::hold_against_form, w)}};
    double height = static_cast<double>(rows.size()) * box_height + between_lists;
    for (const Block& block : words) height += height_of(sheets.canvas(), sheets.room().width, block);
    sheets.ensure(height);
    sheets.flow(words);
    const double width = sheets.room().width / in_a_row;
    sheets.canvas().begin(Part::table);
    for (const std::vector<Cell>& row : rows) {
        double x = sheets.room().x;
        for (const Cell& cell : row) {
            draw_cell(sheets.canvas(), {x, sheets.y(), width, box_height}, cell);
            x += width;
        }
        sheets.move_to(sheets.y() + box_height);
    }
}

}  // namespace

std::string with_minus(const std::string& figure) { return figure.starts_with('-') ? "−" + figure.substr(1) : figure; }

void draw_stated_machines(Sheets& sheets, const WorkOrder& order, const Wording& w)
{
    for (const FitReading& fit : order.fits)
        if (fit.geometry) draw_one(sheets, order, fit, w);
}

}  // namespace shaftcut::geometry
