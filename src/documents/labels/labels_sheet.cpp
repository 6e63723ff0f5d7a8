#include "labels/labels_sheet.hpp"

#include <algorithm>
#include <memory>

#include "page/canvas.hpp"
#include "page/qr.hpp"
#include "shaftcut/trade/saw/saw_order.hpp"

namespace shaftcut {
namespace {

constexpr std::size_t columns = 2, rows = 6;
constexpr double edge = 5, quiet = qr_quiet_modules * qr_module, mark = 1.5;
constexpr Lettering to_saw{7, Weight::bold}, closed{5, Weight::bold};

// One of equal labels: of a piece, or of a shaft where there is none.
struct Label {
    const BatchOrder* order = nullptr;
    const BatchPiece* piece = nullptr;
    std::int64_t number = 1;
};

// An order's pieces, then its shafts; both lists are in the list's order.
std::vector<Label> labels_of(const Batch& batch)
{
    std::vector<Label> labels;
    auto piece = batch.pieces.begin();
    for (const BatchOrder& order : batch.orders) {
        if (!order.built) continue;
        for (; piece != batch.pieces.end() && piece->order == order.order; ++piece)
            for (std::int64_t i = 1; i <= piece->count; ++i) labels.push_back({&order, &*piece, i});
        for (std::int64_t i = 1; i <= order.count; ++i) labels.push_back({&order, nullptr, i});
    }
    return labels;
}

std::string upper(std::string text)
{
    for (char& letter : text)
        if (letter >= 'a' && letter <= 'z') letter = static_cast<char>(letter - 'a' + 'A');
    return text;
}

std::string of_all(const Label& label, std::int64_t count) { return std::to_string(label.number) + " of " + std::to_string(count); }

// Letters of the notes: nearer where an order's number or inches take much room.
struct Notes {
    Lettering plain, strong;
};
constexpr Notes close{{2.5, Weight::regular, 0.75, 1.4}, {2.5, Weight::bold, 0.75, 1.4}}, closest{{2.5, Weight::regular, 0.63, 1.4}, {2.5, Weight::bold, 0.63, 1.4}};

// The order's number, which may have 40 signs.
double draw_order(Canvas& canvas, Rect room, const std::string& order)
{
    const bool large = canvas.width_of(order, lettering::name) <= room.width;
    return canvas.paragraph({room.x, room.y}, room.width, order, large ? lettering::name : closest.strong);
}

// The y below what is drawn.
double draw_piece(Canvas& canvas, Rect room, const Label& label, Units units, const Notes& notes)
{
    const BatchPiece& piece = *label.piece;
    double y = draw_order(canvas, room, piece.order);
    canvas.fitted({room.x, y + 4.2}, room.width, upper(piece.part), lettering::name);
    canvas.fitted({room.x, y + 13.6}, room.width, saw_figure(piece.length, units) + " " + unit_word(units), to_saw);
    y += 15.8;
    const std::string end = std::string(to_word(piece.end)) + " end" + (piece.sawn ? "" : ", made to length") + ", no. " + of_all(label, piece.count);
    const std::string hole = piece.pin_hole ? "pin hole " + hole_text(*piece.pin_hole, units) + " from its yoke end" : "";
    const std::string mm = units == Units::in ? figure_with_unit(piece.length, Units::mm, Toward::nearest, 3) : "";
    for (const std::string& note : {mm, end, hole, label.order->shaft_title})
        if (!note.empty()) y = canvas.paragraph({room.x, y}, room.width, note, notes.plain);
    return y;
}

std::string cross_words(const BatchLengths& built)
{
    if (!built.has_wide_angle) return "between the crosses";
    return built.reference == Reference::outer_cross ? "from the OUTER cross" : "from the INNER cross";
}

std::string longest_text(const BatchLengths& built, Range range, Units units)
{
    const auto& longest = built.use.longest[range];
    return std::string(to_word(range)) + " " + (longest ? figure_with_unit((*longest)[built.reference], units, Toward::down) : "NOT AT ALL");
}

double draw_shaft(Canvas& canvas, Rect room, const Label& label, Units units, const Notes& notes)
{
    const BatchLengths& built = *label.order->built;
    double y = draw_order(canvas, room, label.order->order);
    canvas.fitted({room.x, y + 6.4}, room.width, "closed " + figure_with_unit(built.closed, units), closed);
    y = canvas.paragraph({room.x, y + 8.2}, room.width, cross_words(built) + "; shaft " + of_all(label, label.order->count), notes.plain);
    const std::string pull = "Pull to at most: " + longest_text(built, Range::working, units) + ", " + longest_text(built, Range::turning, units) + ", " +
                             longest_text(built, Range::standing, units) + "; push to no less than " + figure_with_unit(built.use.shortest[built.reference], units, Toward::up) + ".";
    y = canvas.paragraph({room.x, y}, room.width, pull, notes.strong);
    y = canvas.paragraph({room.x, y}, room.width, label.order->shaft_title, notes.plain);
    return canvas.paragraph({room.x, y}, room.width, "DANGER: a turning shaft kills.", notes.strong);
}

double draw_words(Canvas& canvas, Rect room, const Label& label, Units units, const Notes& notes)
{
    return label.piece ? draw_piece(canvas, room, label, units, notes) : draw_shaft(canvas, room, label, units, notes);
}

Code code_of(const Label& label) { return qr_code(label.order->order + " " + (label.piece ? label.piece->part : "shaft")); }

bool has_code_of(const Label& a, const Label& b) { return a.order == b.order && a.piece == b.piece; }

void draw_label(Canvas& canvas, Rect cell, const Label& label, const Code& code, Units units)
{
    const double code_x = cell.right() - edge - code.box.width;
    canvas.begin(Part::figure);
    canvas.code(code, {code_x, cell.y + (cell.height - code.box.height) / 2});
    const Rect room{cell.x + edge, cell.y + edge - 1, code_x - quiet - cell.x - edge, cell.height - 2 * edge + 2};
    canvas.begin(Part::table);
    Canvas trial(canvas.fonts(), room.right(), room.bottom());
    draw_words(canvas, room, label, units, draw_words(trial, room, label, units, close) <= room.bottom() ? close : closest);
}

// Where four labels meet, or two and the sheet's edge.
void draw_marks(Canvas& canvas, PaperSize label)
{
    canvas.begin(Part::figure);
    for (std::size_t row = 1; row < rows; ++row)
        for (std::size_t column = 0; column <= columns; ++column) {
            const double x = static_cast<double>(column) * label.width, y = static_cast<double>(row) * label.height;
            canvas.line({x - mark, y}, {x + mark, y}, pen::axis);
            if (column == 1) canvas.line({x, y - mark}, {x, y + mark}, pen::axis);
        }
}

}  // namespace

std::int64_t count_labels(const Batch& batch)
{
    std::int64_t count = 0;
    for (const BatchPiece& piece : batch.pieces) count += piece.count;
    for (const BatchOrder& order : batch.orders)
        if (order.built) count += order.count;
    return count;
}

LabelSheets label_sheets(const Batch& batch, Paper paper, const FontFiles& files)
{
    constexpr std::size_t on_a_sheet = columns * rows;
    const auto fonts = std::make_shared<const Fonts>(files);
    const auto labels = std::make_shared<const std::vector<Label>>(labels_of(batch));
    const PaperSize sheet = size_of(paper), label{sheet.width / columns, sheet.height / rows};
    const auto draw = [=, units = batch.units](std::size_t number) {
        Canvas canvas(*fonts, sheet.width, sheet.height);
        draw_marks(canvas, label);
        Code code;
        for (std::size_t i = number * on_a_sheet; i < std::min((number + 1) * on_a_sheet, labels->size()); ++i) {
            const std::size_t place = i % on_a_sheet, row = place / columns, column = place % columns;
            if (place == 0 || !has_code_of((*labels)[i], (*labels)[i - 1])) code = code_of((*labels)[i]);
            draw_label(canvas, {static_cast<double>(column) * label.width, static_cast<double>(row) * label.height, label.width, label.height},
                       (*labels)[i], code, units);
        }
        return canvas.page();
    };
    return {(labels->size() + on_a_sheet - 1) / on_a_sheet, draw};
}

}  // namespace shaftcut
