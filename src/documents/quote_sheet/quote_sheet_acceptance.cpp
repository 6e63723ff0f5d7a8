// Where the customer orders: by his name, the day and his signature, or by telephone.
#include <algorithm>

#include "quote_sheet/quote_sheet_parts.hpp"

namespace shaftcut::quote_sheet {
namespace {

constexpr double inset = 2, entry_height = 13, telephone_height = 6.6;

// From its top down, the y below: what is signed, the boxes, and the line for the telephone.
double draw_in(Canvas& canvas, Rect room, const Quote& quote, const std::string& says, const Wording& w)
{
    const Rect inside{room.x + inset, room.y + 1.5, room.width - 2 * inset, 0};
    canvas.begin(Part::paragraph);
    const double below = canvas.paragraph({inside.x, inside.y}, inside.width, says, lettering::close_name) + 1.2;
    const double day = 34, signature = 64, name = inside.width - day - signature;
    sheet::draw_entry(canvas, {inside.x, below, name, entry_height}, say(Caption::name, w), "");
    sheet::draw_entry(canvas, {inside.x + name, below, day, entry_height}, say(Caption::day, w), "");
    sheet::draw_entry(canvas, {inside.x + name + day, below, signature, entry_height}, say(Caption::signature, w), "");
    const double y = below + entry_height + 1, middle = inside.x + inside.width / 2, base = y + 4.3, line = y + 5;
    const double first = canvas.fitted({inside.x, base}, inside.width / 2 - 2, by_telephone(quote.firm, w) + ":", lettering::note).right();
    const double second = canvas.fitted({middle, base}, inside.width / 4, say(Caption::taken_by, w) + ":", lettering::note).right();
    canvas.line({std::min(first + 1.5, middle - 2), line}, {middle - 2, line}, pen::dimension);
    canvas.line({second + 1.5, line}, {inside.right(), line}, pen::dimension);
    return y + telephone_height;
}

}  // namespace

void draw_acceptance(Sheets& sheets, const Quote& quote, const Wording& w)
{
    const std::string says = acceptance(quote, is_choice(quote), w);
    if (says.empty()) return;
    Canvas trial = sheets.canvas();
    const double height = draw_in(trial, {0, 0, sheets.room().width, 0}, quote, says, w);
    sheets.ensure(height + 2);
    const Rect room{sheets.room().x, sheets.y() + 2, sheets.room().width, height};
    draw_in(sheets.canvas(), room, quote, says, w);
    sheets.canvas().box(room, pen::outline);
    sheets.move_to(room.bottom() + 1);
}

}  // namespace shaftcut::quote_sheet
