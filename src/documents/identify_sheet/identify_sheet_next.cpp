// How sure it is, what to measure next with the tool drawn as it is held, and what comes before an order or a cut.
#include <algorithm>

#include "drawing/gauge_drawing.hpp"
#include "identify_sheet/identify_sheet_parts.hpp"

namespace shaftcut::identify_sheet {
namespace {

constexpr double row_height = 4.4, named_from = 0.1, picture_width = 36, next_height = gauge_height + 3, box_width = 34, box_height = 9;

struct Row {
    std::string name, whole, part;
};

std::vector<Row> rows_of(const IdentifiedShaft& shaft, std::size_t most, const Wording& w)
{
    std::vector<Row> rows;
    std::size_t more = 0;
    for (const ListedSeries& listed : shaft.found.series) {
        if (listed.percent_any_part < named_from) continue;
        if (rows.size() == most) ++more;
        else rows.push_back({listed.series, identify_words::percent(listed.percent, w), identify_words::percent(listed.percent_any_part, w)});
    }
    if (more > 0) rows.push_back({more_series(more, w), "", ""});
    rows.push_back({identify_words::mixed_column(w), identify_words::percent(shaft.found.mixed_percent, w), ""});
    rows.push_back({identify_words::none_column(w), identify_words::percent(shaft.found.none_percent, w), ""});
    return rows;
}

std::vector<NextMeasurement> worth_measuring(const Identification& found, std::size_t most)
{
    std::vector<NextMeasurement> next;
    for (const NextMeasurement& one : found.next)
        if (is_worth_measuring(one) && next.size() < most) next.push_back(one);
    return next;
}

// Where it is not drawn it is a look, and its words have the whole width.
double draw_one(Canvas& canvas, Rect room, std::size_t number, const NextMeasurement& next, const IdentifiedShaft& shaft, const Wording& w)
{
    const bool drawn = has_gauge_drawing(next.figure.kind);
    const double left = drawn ? picture_width + 2 : 0, words = room.width - box_width - left - 3;
    canvas.begin(Part::figure);
    if (drawn) draw_gauge(canvas, {room.x, room.y + 1, picture_width, gauge_height}, next.figure.kind, shaft.measures.shape);
    canvas.begin(Part::paragraph);
    double y = canvas.paragraph({room.x + left, room.y + 1}, words, next_head(number, next, w), lettering::name);
    y = canvas.paragraph({room.x + left, y + 0.6}, words, identify_words::takes(next.figure, shaft.measures.shape, w), lettering::note);
    const Rect box{room.right() - box_width, room.y + 1.5, box_width, box_height};
    canvas.box(box, pen::guard);
    canvas.text({box.x + 1.5, box.y + 3.7}, say(Caption::reading, w), lettering::strong);
    return std::max({y, box.bottom(), drawn ? room.y + next_height : 0.0});
}

}  // namespace

double draw_how_sure(Canvas& canvas, Rect room, const IdentifiedShaft& shaft, std::size_t most, const Wording& w)
{
    canvas.begin(Part::table);
    const double whole = room.x + 96, part = room.x + 124;
    canvas.text({room.x, room.y + 3.6}, say(Caption::how_sure, w), lettering::name);
    canvas.text({whole, room.y + 3.6}, say(Caption::whole_column, w), lettering::note, Align::right);
    canvas.text({part, room.y + 3.6}, say(Caption::part_column, w), lettering::note, Align::right);
    double y = room.y + 3.6;
    for (const Row& row : rows_of(shaft, most, w)) {
        y += row_height;
        canvas.fitted({room.x, y}, 70, row.name, lettering::note);
        canvas.text({whole, y}, row.whole, lettering::note, Align::right);
        canvas.text({part, y}, row.part, lettering::note, Align::right);
    }
    return y + 1;
}

double draw_next(Canvas& canvas, Rect room, const IdentifiedShaft& shaft, std::size_t most, const Wording& w)
{
    const std::vector<NextMeasurement> next = worth_measuring(shaft.found, most);
    canvas.begin(Part::heading);
    canvas.text({room.x, room.y + 3.6}, say(Caption::measure_next, w), lettering::name);
    double y = room.y + 5.4;
    for (std::size_t i = 0; i < next.size(); ++i) y = draw_one(canvas, {room.x, y, room.width, 0}, i + 1, next[i], shaft, w) + 0.6;
    if (!next.empty()) return y;
    canvas.begin(Part::paragraph);
    std::vector<std::string> why = identify_words::next_steps(shaft, w);
    if (why.empty()) why = {say(Caption::nothing_more, w)};
    for (const std::string& sentence : why) y = canvas.paragraph({room.x, y}, room.width, sentence, lettering::note);
    return y;
}

double draw_cautions(Canvas& canvas, Rect room, const IdentifiedShaft& shaft, const Wording& w)
{
    canvas.begin(Part::paragraph);
    double y = room.y + 2;
    for (const std::string& sentence : identify_words::cautions(shaft.found, w)) y = canvas.paragraph({room.x + 3, y}, room.width - 6, sentence, lettering::name);
    canvas.box({room.x, room.y, room.width, y + 1 - room.y}, pen::cut_mark);
    return y + 1;
}

}  // namespace shaftcut::identify_sheet
