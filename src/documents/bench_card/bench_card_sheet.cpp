#include "bench_card/bench_card_sheet.hpp"

#include "bench_card/bench_card_words.hpp"
#include "page/canvas.hpp"
#include "page/qr.hpp"

namespace shaftcut {
namespace {

using bench_card::CardCaption;

constexpr double margin = 20, code_width = 110, heading_height = 9, address_height = 7.5, line_height = 4.2;

// A code as wide as this, its quiet zone included, in the middle of `room`; the y below it.
double draw_code(Canvas& canvas, Rect room, const std::string& address)
{
    Code code = qr_code(address);
    const double module = code_width / (code.modules + 2 * qr_quiet_modules), width = code.modules * module;
    code.box.width = code.box.height = width;
    canvas.begin(Part::figure);
    canvas.code(code, {room.x + (room.width - width) / 2, room.y + qr_quiet_modules * module});
    canvas.begin(Part::paragraph);
    return room.y + code_width;
}

double draw_paragraph(Canvas& canvas, Rect room, CardCaption caption, Weight weight, const Wording& w)
{
    return canvas.paragraph({room.x, room.y}, room.width, say(caption, w), {line_height, weight}) + 3;
}

}  // namespace

std::vector<Page> draw_bench_card(const BenchCard& card, Paper paper, const FontFiles& files, const Wording& w)
{
    const Fonts fonts(files);
    const auto [width, height] = size_of(paper);
    Canvas canvas(fonts, width, height);
    Rect room{margin, margin + heading_height, width - 2 * margin, 0};
    const double middle = width / 2;
    canvas.begin(Part::heading);
    canvas.fitted({middle, room.y}, room.width, say(CardCaption::heading, w), {heading_height, Weight::bold}, Align::centre);
    room.y = draw_code(canvas, {room.x, room.y + 4, room.width, 0}, card.address) + address_height + 2;
    canvas.fitted({middle, room.y}, room.width, card.address, {address_height, Weight::bold}, Align::centre);
    room.y += 10;
    for (const CardCaption step : {CardCaption::scan, CardCaption::pair}) room.y = draw_paragraph(canvas, room, step, Weight::bold, w);
    for (const CardCaption note : {CardCaption::once, CardCaption::same_network, CardCaption::read_along}) room.y = draw_paragraph(canvas, room, note, Weight::regular, w);
    return {canvas.page()};
}

DocumentInfo bench_card_info(const BenchCard&, const Wording& w) { return document_info(bench_card::document_title(w), "", bench_card::document_subject(w)); }

}  // namespace shaftcut
