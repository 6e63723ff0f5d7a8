// Each part's figures: as measured, as the series states them, and by how much they are off.
#include <algorithm>
#include <array>
#include <cmath>

#include "identify_sheet/identify_sheet_parts.hpp"

namespace shaftcut::identify_sheet {
namespace {

constexpr double row_height = 4.6, gap = 4, measured_at = 15, series_at = 28, inset = 1.5;
// So many rows a part has at most: a wide-angle joint all of whose figures were read has nine.
constexpr std::size_t most_rows = 9;
// More spreads off than this is printed strong: seldom the series' own figure (own choice).
constexpr double loud_from = 2.5;

// What all parts' figures stand against: of a mixed shaft the series of all but the odd part, where that is of one.
bool is_against_others(const Identification& found) { return found.mixed && found.mixed->others_series; }

const std::string& series_against(const Identification& found) { return is_against_others(found) ? *found.mixed->others_series : found.fits.series; }

const std::vector<ComparedFigure>& figures_against(const Identification& found, IdentifiedPart part)
{
    if (!is_against_others(found)) return found.fits.figures;
    return found.mixed->odd == part ? found.mixed->odd_figures : found.mixed->others_figures;
}

std::vector<const ComparedFigure*> figures_of(const Identification& found, IdentifiedPart part)
{
    std::vector<const ComparedFigure*> figures;
    for (const ComparedFigure& figure : figures_against(found, part))
        if (figure.figure.part == part) figures.push_back(&figure);
    return figures;
}

void draw_head(Canvas& canvas, Rect room, double y, const Wording& w)
{
    canvas.fitted({room.x + inset, y}, room.width - series_at - 17, say(Caption::figure, w), lettering::close_note);
    canvas.fitted({room.right() - series_at, y}, 14, say(Caption::measured, w), lettering::close_note, Align::right);
    canvas.fitted({room.right() - measured_at, y}, 12, say(Caption::series, w), lettering::close_note, Align::right);
    canvas.fitted({room.right() - inset, y}, 12, say(Caption::off, w), lettering::close_note, Align::right);
}

void draw_row(Canvas& canvas, Rect room, double y, const ComparedFigure& figure, const Wording& w)
{
    const bool loud = figure.off_sigma && std::abs(*figure.off_sigma) >= loud_from;
    const Lettering letters = loud ? lettering::strong : lettering::note;
    canvas.fitted({room.x + inset, y}, room.width - series_at - 12, identify_words::short_name(figure.figure, w), letters);
    canvas.text({room.right() - series_at, y}, identify_words::bare_figure(figure.measured, w), letters, Align::right);
    canvas.text({room.right() - measured_at, y}, figure.series ? identify_words::bare_figure(*figure.series, w) : say(Caption::not_stated, w), letters, Align::right);
    canvas.text({room.right() - inset, y}, figure.series ? identify_words::bare_off(identify_words::printed_off(figure), w) : say(Caption::not_stated, w), letters, Align::right);
}

double draw_part(Canvas& canvas, Rect room, Caption name, const PartOrigin& origin, const std::vector<const ComparedFigure*>& figures, const Wording& w)
{
    canvas.fitted({room.x + inset, room.y + 4.4}, room.width - 2 * inset, say(name, w), lettering::close_name);
    double y = canvas.paragraph({room.x + inset, room.y + 5.4}, room.width - 2 * inset, like(origin, w), lettering::close_strong) + 3.4;
    if (figures.empty()) {
        canvas.text({room.x + inset, y}, say(Caption::not_measured, w), lettering::close_note);
        return y + 1.6;
    }
    draw_head(canvas, room, y, w);
    for (std::size_t i = 0; i < std::min(figures.size(), most_rows); ++i) draw_row(canvas, room, y += row_height, *figures[i], w);
    if (figures.size() > most_rows) canvas.text({room.x + inset, y += row_height}, more_figures(figures.size() - most_rows, w), lettering::close_note);
    return y + 1.6;
}

}  // namespace

double draw_parts(Canvas& canvas, Rect room, const IdentifiedShaft& shaft, const Wording& w)
{
    struct Column {
        Caption name;
        IdentifiedPart part;
    };
    constexpr std::array columns{Column{Caption::tractor, IdentifiedPart::tractor}, Column{Caption::tubes, IdentifiedPart::tubes}, Column{Caption::implement, IdentifiedPart::implement}};
    const Identification& found = shaft.found;
    canvas.begin(Part::heading);
    canvas.fitted({room.x, room.y + 3.6}, room.width, against(series_against(found), w), lettering::name);
    canvas.begin(Part::table);
    const double top = room.y + 5.4, width = (room.width - 2 * gap) / 3;
    double bottom = top, x = room.x;
    for (const Column& column : columns) {
        bottom = std::max(bottom, draw_part(canvas, {x, top, width, 0}, column.name, found.parts[column.part], figures_of(found, column.part), w));
        x += width + gap;
    }
    for (int i = 0; i < 3; ++i) canvas.box({room.x + i * (width + gap), top, width, bottom - top}, pen::guard);
    return bottom;
}

}  // namespace shaftcut::identify_sheet
