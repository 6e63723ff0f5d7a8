#include "labels/labels_sheet.hpp"

#include <algorithm>
#include <map>
#include <memory>

#include "build/build_words.hpp"
#include "labels/labels_words.hpp"
#include "page/canvas.hpp"
#include "page/qr.hpp"
#include "shaft_title_words.hpp"
#include "shaftcut/trade/saw/saw_order.hpp"

namespace shaftcut {
namespace {

constexpr std::size_t columns = 2, rows = 6;
constexpr double edge = 5, quiet = qr_quiet_modules * qr_module, mark = 1.5;
constexpr Lettering to_saw{7, Weight::bold}, closed{5, Weight::bold};

// Of one piece, or of a shaft where there is none.
struct Label {
    const BatchOrder* order = nullptr;
    const BatchPiece* piece = nullptr;
    std::int64_t number = 1;  // of equal pieces or shafts
    std::int64_t bar = 0;     // that the saw takes it from, as its plan numbers them; 0: it stands in no plan
};

// Gives out the labels of a batch's pieces, each piece of equal ones once.
class PieceLabels {
public:
    PieceLabels(const Batch& batch, const Wording& w) : batch_(batch)
    {
        for (const BatchOrder& order : batch.orders) order_.emplace(order.order, &order);
        for (const BatchPiece& piece : batch.pieces) piece_.emplace(piece_label(piece, w), &piece);
    }

    // Bar after bar, from each bar's starting end.
    void add_sawn(std::vector<Label>& labels, const SawOrder& plan)
    {
        std::int64_t bar = 0;
        for (const BarLayout& alike : plan.bars)
            for (std::int64_t i = 0; i < alike.count; ++i) {
                ++bar;
                for (const PlacedPiece& placed : alike.pieces)
                    if (const auto found = piece_.find(placed.label); found != piece_.end()) add(labels, *found->second, bar);
            }
    }

    // What is fetched, and what no plan holds, in the list's order.
    void add_rest(std::vector<Label>& labels)
    {
        for (const BatchPiece& piece : batch_.pieces)
            while (given_[&piece] < piece.count) add(labels, piece, 0);
    }

private:
    void add(std::vector<Label>& labels, const BatchPiece& piece, std::int64_t bar) { labels.push_back({order_.at(piece.order), &piece, ++given_[&piece], bar}); }

    const Batch& batch_;
    std::map<std::string, const BatchOrder*> order_;
    std::map<std::string, const BatchPiece*> piece_;
    std::map<const BatchPiece*, std::int64_t> given_;
};

// In the order in which the saw yields the pieces, then what it does not saw, then the shafts.
std::vector<Label> labels_of(const Batch& batch)
{
    std::vector<Label> labels;
    PieceLabels pieces(batch, wording_of(batch));
    for (const ProfilePlan& plan : batch.plans)
        if (plan.order) pieces.add_sawn(labels, *plan.order);
    pieces.add_rest(labels);
    for (const BatchOrder& order : batch.orders)
        for (std::int64_t i = 1; order.built && i <= order.count; ++i) labels.push_back({&order, nullptr, i});
    return labels;
}

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
double draw_piece(Canvas& canvas, Rect room, const Label& label, std::size_t position, const Wording& w, const Notes& notes)
{
    const BatchPiece& piece = *label.piece;
    double y = draw_order(canvas, room, piece.order);
    canvas.fitted({room.x, y + 4.2}, room.width, labels_words::piece(piece.part, w), lettering::name);
    canvas.fitted({room.x, y + 13.6}, room.width, saw_figure(piece.length, w.units()) + " " + unit_word(w.units()), to_saw);
    y += 15.8;
    const std::string end = labels_words::piece_number(piece, label.number, w), from = labels_words::taken_from(piece, position, label.bar, w);
    const std::string hole = piece.pin_hole ? labels_words::pin_hole(*piece.pin_hole, w) : "";
    const std::string mm = w.units() == Units::in ? figure_with_unit(piece.length, Units::mm, Toward::nearest, 3) : "";
    for (const std::string& note : {end, from, mm, hole})
        if (!note.empty()) y = canvas.paragraph({room.x, y}, room.width, note, notes.plain);
    return y;
}

double draw_shaft(Canvas& canvas, Rect room, const Label& label, const Wording& w, const Notes& notes)
{
    const BatchLengths& built = *label.order->built;
    double y = draw_order(canvas, room, label.order->order);
    canvas.fitted({room.x, y + 6.4}, room.width, labels_words::closed(built, w), closed);
    y = canvas.paragraph({room.x, y + 8.2}, room.width, labels_words::shaft_number(built, label.number, label.order->count, w), notes.plain);
    y = canvas.paragraph({room.x, y}, room.width, labels_words::use(built, w), notes.strong);
    y = canvas.paragraph({room.x, y}, room.width, say(label.order->shaft_title, w), notes.plain);
    return canvas.paragraph({room.x, y}, room.width, labels_words::danger(w), notes.strong);
}

// `position`: the label's place among all, from 1 in the direction of reading.
double draw_words(Canvas& canvas, Rect room, const Label& label, std::size_t position, const Wording& w, const Notes& notes)
{
    return label.piece ? draw_piece(canvas, room, label, position, w, notes) : draw_shaft(canvas, room, label, w, notes);
}

Code code_of(const Label& label, const Wording& w) { return qr_code(label.piece ? piece_label(*label.piece, w) : labels_words::shaft_code(label.order->order, w)); }

bool has_code_of(const Label& a, const Label& b) { return a.order == b.order && a.piece == b.piece; }

void draw_label(Canvas& canvas, Rect cell, const Label& label, std::size_t position, const Code& code, const Wording& w)
{
    const double code_x = cell.right() - edge - code.box.width;
    canvas.begin(Part::figure);
    canvas.code(code, {code_x, cell.y + (cell.height - code.box.height) / 2});
    const Rect room{cell.x + edge, cell.y + edge - 1, code_x - quiet - cell.x - edge, cell.height - 2 * edge + 2};
    canvas.begin(Part::table);
    Canvas trial(canvas.fonts(), room.right(), room.bottom());
    draw_words(canvas, room, label, position, w, draw_words(trial, room, label, position, w, close) <= room.bottom() ? close : closest);
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
    const auto draw = [=, w = wording_of(batch)](std::size_t number) {
        Canvas canvas(*fonts, sheet.width, sheet.height);
        draw_marks(canvas, label);
        Code code;
        for (std::size_t i = number * on_a_sheet; i < std::min((number + 1) * on_a_sheet, labels->size()); ++i) {
            const std::size_t place = i % on_a_sheet, row = place / columns, column = place % columns;
            if (place == 0 || !has_code_of((*labels)[i], (*labels)[i - 1])) code = code_of((*labels)[i], w);
            draw_label(canvas, {static_cast<double>(column) * label.width, static_cast<double>(row) * label.height, label.width, label.height},
                       (*labels)[i], i + 1, code, w);
        }
        return canvas.page();
    };
    return {(labels->size() + on_a_sheet - 1) / on_a_sheet, draw};
}

}  // namespace shaftcut
