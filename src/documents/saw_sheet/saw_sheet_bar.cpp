// One bar of a saw plan as a picture to scale.
#include <algorithm>

#include "saw_sheet/saw_sheet_parts.hpp"

namespace shaftcut::saw_sheet {
namespace {

constexpr double bar_height = 10, top_line = 4.7, small_line = 3.6, bottom_line = 8.7, beside_text = 0.9, past_bar = 1.3, stop_line = 4.2, below_stops = 6.2;
constexpr double least_between_marks = 0.9, below_bar = 2.2, title_height = 6.2, between_bars = 4, box_side = 3.6, box_gap = 1.6;
constexpr std::int64_t most_boxes = 10;

// One piece on paper: where it lies and what it says.
struct PieceOnPaper {
    double left, right;
    std::string length, label, stop;
    double room() const { return right - left - 2 * beside_text; }
    double middle() const { return (left + right) / 2; }
};

// A piece as long as its bar has no stop.
PieceOnPaper on_paper(const BarPicture& picture, const PlacedPiece& piece)
{
    const auto x = [&](Length length) { return picture.room.x + length.mm() * picture.scale; };
    const Units units = picture.order.units;
    return {x(piece.start), x(piece.stop), saw_figure(piece.length, units), piece.label, picture.bar.whole ? say(Caption::use_whole, wording_of(picture.order)) : saw_figure(piece.stop, units)};
}

// In the greatest lettering of the two in which the text has room; not at all where neither has.
void write(Canvas& canvas, const PieceOnPaper& piece, double y, const std::string& text, std::initializer_list<Lettering> letterings)
{
    for (const Lettering lettering : letterings)
        if (canvas.width_of(text, lettering) <= piece.room()) {
            canvas.text({piece.middle(), y}, text, lettering, Align::centre);
            return;
        }
}

void write_length(Canvas& canvas, const PieceOnPaper& piece, double y) { write(canvas, piece, y, piece.length, {lettering::name, lettering::strong}); }

void write_small(Canvas& canvas, const PieceOnPaper& piece, double y, const std::string& text)
{
    if (canvas.width_of(text, lettering::note) <= piece.room() + beside_text) canvas.text({piece.middle(), y}, text, lettering::note, Align::centre);
}

// A box to tick for each of a few bars alike.
void draw_tick_boxes(Canvas& canvas, Point top_left, std::int64_t count)
{
    for (std::int64_t i = 0; i < count; ++i)
        canvas.box({top_left.x + static_cast<double>(i) * (box_side + box_gap), top_left.y, box_side, box_side}, pen::dimension);
}

void draw_ends(Canvas& canvas, const BarPicture& picture, double y)
{
    const BarLayout& bar = picture.bar;
    const double left = picture.room.x, right = left + bar.length.mm() * picture.scale;
    const double behind = left + bar.pieces.back().stop.mm() * picture.scale;
    const double first = left + bar.pieces.front().start.mm() * picture.scale;
    const double end = left + (bar.length - picture.order.task.trim_end).mm() * picture.scale;
    if (first > left) canvas.shape({{left, y}, {first, y}, {first, y + bar_height}, {left, y + bar_height}}, pen::dimension, Fill::hatched);
    const double waste = bar.use == LeftoverUse::rack ? end : behind;
    if (right > waste) canvas.shape({{waste, y}, {right, y}, {right, y + bar_height}, {waste, y + bar_height}}, pen::dimension, Fill::hatched);
    if (bar.use != LeftoverUse::rack) return;
    const PieceOnPaper leftover{behind, end, {}, {}, {}};
    write_small(canvas, leftover, y + small_line, say(Caption::rack, wording_of(picture.order)));
    write(canvas, leftover, y + bottom_line, saw_figure(bar.leftover, picture.order.units), {lettering::figure, lettering::note});
}

}  // namespace

bool BarPicture::holds_all_figures(const Canvas& canvas) const
{
    if (order.units == Units::in) return false;  // the millimetres stand beside, in the table
    return std::all_of(bar.pieces.begin(), bar.pieces.end(), [&](const PlacedPiece& placed) {
        const PieceOnPaper piece = on_paper(*this, placed);
        const auto fits = [&](const std::string& text, Lettering lettering) { return canvas.width_of(text, lettering) <= piece.room(); };
        return fits(piece.length, lettering::strong) && fits(piece.label, lettering::note) && fits(piece.stop, lettering::figure);
    });
}

double BarPicture::draw(Canvas& canvas, bool with_table) const
{
    const double y = room.y;
    canvas.begin(Part::figure);
    draw_ends(canvas, *this, y);
    double last_mark = room.x - least_between_marks;
    int number = 0;
    for (const PlacedPiece& placed : bar.pieces) {
        const PieceOnPaper piece = on_paper(*this, placed);
        if (piece.right - last_mark >= least_between_marks) {
            canvas.line({piece.right, y - past_bar}, {piece.right, y + bar_height + past_bar}, pen::guard);
            last_mark = piece.right;
        }
        ++number;
        if (with_table) {
            write_small(canvas, piece, y + small_line, std::to_string(number));
            write_length(canvas, piece, y + bottom_line);
            continue;
        }
        write_length(canvas, piece, y + top_line);
        canvas.text({piece.middle(), y + bottom_line}, piece.label, lettering::note, Align::centre);
        canvas.text({piece.right - beside_text, y + bar_height + stop_line + 0.6}, piece.stop, lettering::figure, Align::right);
    }
    canvas.box({room.x, y, bar.length.mm() * scale, bar_height}, pen::outline);
    return y + bar_height + (with_table ? below_bar : below_stops);
}

void draw_bar(Sheets& sheets, const SawOrder& order, const NumberedBar& bar)
{
    const Rect room = sheets.room();
    Length longest;
    for (const BarsToFetch& bars : order.fetch) longest = std::max(longest, bars.length);
    BarPicture picture{order, bar.bar, room, room.width / longest.mm()};
    const bool with_table = !picture.holds_all_figures(sheets.canvas());
    const double table_start = with_table ? height_of_table_start(sheets.canvas(), room.width, order, bar.bar) : 0;
    const std::string title = saw_sheet_words::bar(bar.bar, bar.number, wording_of(order)), leftover = saw_sheet_words::leftover(bar.bar, order.task.trim_end, wording_of(order));
    const Canvas& measure = sheets.canvas();
    const std::int64_t boxes = bar.bar.count <= most_boxes ? bar.bar.count : 0;
    const double boxes_width = static_cast<double>(boxes) * (box_side + box_gap) + 6;
    const bool one_line = measure.width_of(title, lettering::name) + boxes_width + measure.width_of(leftover, lettering::figure) < room.width;
    const double titles = one_line ? title_height : 2 * title_height;
    sheets.ensure(between_bars + titles + past_bar + bar_height + below_stops + table_start);
    Canvas& canvas = sheets.canvas();
    canvas.begin(Part::heading);
    const double y = sheets.y() + between_bars;
    const Rect written = canvas.text({room.x, y + 3.5}, title, lettering::name);
    if (boxes > 0) draw_tick_boxes(canvas, {written.right() + 3, y}, boxes);
    canvas.text({room.right(), y + titles - title_height + 3.5}, leftover, lettering::figure, Align::right);
    picture.room.y = y + titles;
    sheets.move_to(picture.draw(canvas, with_table));
    if (with_table) draw_piece_table(sheets, order, bar);
}

}  // namespace shaftcut::saw_sheet
