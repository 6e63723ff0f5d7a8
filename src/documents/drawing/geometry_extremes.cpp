// Every extreme with its figure large, where it occurs and how far it can be trusted.
#include <algorithm>

#include "cut/geometry_words.hpp"
#include "drawing/geometry_parts.hpp"

namespace shaftcut::geometry {
namespace {

constexpr double name_width = 48, figure_width = 30, baseline_at = 5, to_beside = 4.2, after_row = 0.6;

struct ExtremeRow {
    std::string name;
    std::string figure;
    std::string millimetres;  // below it, on paper in inches
    std::string words;
};

double words_width(const Sheets& sheets) { return sheets.room().width - name_width - figure_width; }

ExtremeRow row_of(const WorkOrder& order, const std::string& name, const ExtremeLength& extreme, Rounded as)
{
    return {name, printed(order, extreme.length, as), beside(order, extreme.length, as), in_words(extreme.at, order.units) + "; " + doubt_in_words(extreme, order.units)};
}

ExtremeRow row_of(const WorkOrder& order, const std::string& name, const ExtremeAngle& extreme)
{
    return {name, figure(extreme.angle) + "°", "", in_words(extreme.at, order.units)};
}

std::vector<ExtremeRow> rows_of(const WorkOrder& order, const OperatingLengths& lengths)
{
    std::vector<ExtremeRow> rows{row_of(order, "shortest", lengths.shortest, Rounded::shortest)};
    for (const Range range : all_ranges)
        if (lengths.ranges[range]) rows.push_back(row_of(order, std::string("longest, ") + to_word(range), lengths.ranges[range]->longest, Rounded::longest));
    for (const Range range : all_ranges) {
        if (!lengths.ranges[range]) continue;
        rows.push_back(row_of(order, std::string("tractor joint, ") + to_word(range), lengths.ranges[range]->tractor));
        rows.push_back(row_of(order, std::string("implement joint, ") + to_word(range), lengths.ranges[range]->implement));
    }
    return rows;
}

// Where a paragraph of notes begins whose first line stands on the row's baseline.
double notes_at(double top) { return top + baseline_at - 1.2 * lettering::note.cap_height; }

double height_of_row(Sheets& sheets, const ExtremeRow& row)
{
    const double words = height_of(sheets.canvas(), words_width(sheets), {Lead::none, row.words});
    const double figure = baseline_at + (row.millimetres.empty() ? 0.33 * lettering::name.cap_height : to_beside + 0.33 * lettering::note.cap_height);
    return std::max(figure, notes_at(0) + words) + after_row;
}

void draw_row(Sheets& sheets, const ExtremeRow& row)
{
    Canvas& canvas = sheets.canvas();
    const Rect room = sheets.room();
    const double top = sheets.y(), height = height_of_row(sheets, row), x = room.x + name_width;
    canvas.begin(Part::table);
    canvas.line({room.x, top}, {room.right(), top}, pen::axis);
    canvas.text({room.x, top + baseline_at}, row.name, lettering::strong);
    canvas.text({x, top + baseline_at}, row.figure, lettering::name);
    canvas.text({x, top + baseline_at + to_beside}, row.millimetres, lettering::note);
    canvas.paragraph({x + figure_width, notes_at(top)}, words_width(sheets), row.words, lettering::note);
    sheets.move_to(top + height);
}

// With its heading again on every sheet that it goes on to.
void draw_rows(Sheets& sheets, const std::string& heading, const std::vector<ExtremeRow>& rows)
{
    constexpr double room_for_the_first = 24;
    sheets.move_to(sheets.y() + 1);
    sheets.ensure(room_for_the_first);
    sheets.flow({{Lead::heading, heading}});
    for (const ExtremeRow& row : rows) {
        const std::size_t before = sheets.count();
        sheets.ensure(height_of_row(sheets, row));
        if (sheets.count() != before) sheets.flow({{Lead::heading, heading + ", continued"}});
        draw_row(sheets, row);
    }
}

}  // namespace

void draw_extremes(Sheets& sheets, const WorkOrder& order)
{
    for (const FitReading& fit : order.fits)
        if (fit.geometry)
            draw_rows(sheets, whose(fit, order.fits.size()) + "From the machine's geometry, between the inner crosses", rows_of(order, fit.geometry->lengths));
    draw_stated_machines(sheets, order);
}

}  // namespace shaftcut::geometry
