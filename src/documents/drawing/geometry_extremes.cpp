// Every extreme with its figure large, where it occurs and how far it can be trusted.
#include <algorithm>

#include "drawing/geometry_parts.hpp"
#include "hitch/geometry_figures.hpp"
#include "figures.hpp"

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

ExtremeRow row_of(const std::string& name, const ExtremeLength& extreme, Rounded as, const Wording& w)
{
    return {name, w.length(as, extreme.length), millimetres_beside(w, as, extreme.length), position_and_doubt(in_words(extreme.at, w), doubt_in_words(extreme, w), w)};
}

ExtremeRow row_of(const std::string& name, const ExtremeAngle& extreme, const Wording& w)
{
    return {name, w.angle(extreme.angle), "", in_words(extreme.at, w)};
}

std::vector<ExtremeRow> rows_of(const OperatingLengths& lengths, const Wording& w)
{
    std::vector<ExtremeRow> rows{row_of(shortest_name(w), lengths.shortest, Rounded::shortest, w)};
    for (const Range range : all_ranges)
        if (lengths.ranges[range]) rows.push_back(row_of(longest_name(range, w), lengths.ranges[range]->longest, Rounded::longest, w));
    for (const Range range : all_ranges) {
        if (!lengths.ranges[range]) continue;
        rows.push_back(row_of(joint_name(End::tractor, range, w), lengths.ranges[range]->tractor, w));
        rows.push_back(row_of(joint_name(End::implement, range, w), lengths.ranges[range]->implement, w));
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
    canvas.fitted({room.x, top + baseline_at}, name_width - 1, row.name, lettering::strong);
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
        if (sheets.count() != before) sheets.flow({{Lead::heading, sheets.words().continued(heading)}});
        draw_row(sheets, row);
    }
}

}  // namespace

void draw_extremes(Sheets& sheets, const WorkOrder& order, const Wording& w)
{
    for (const FitReading& fit : order.fits)
        if (fit.geometry) draw_rows(sheets, extremes_heading(tractor_of(order, fit), w), rows_of(fit.geometry->lengths, w));
    draw_stated_machines(sheets, order, w);
}

}  // namespace shaftcut::geometry
