// The head of a quote: who offers, to whom, under which number, until when; and what kind of paper it is.
#include <algorithm>

#include "money_words.hpp"
#include "quote_sheet/quote_sheet_parts.hpp"

namespace shaftcut::quote_sheet {
namespace {

constexpr double right_part = 70, inset = 1.8, row = 5.4, next_title_height = 8;
constexpr Lettering large{5, Weight::bold};

double draw_field(Canvas& canvas, Rect cell, const std::string& name, const std::string& value)
{
    canvas.line({cell.x, cell.y}, {cell.right(), cell.y}, pen::dimension);
    const double x = canvas.text({cell.x + inset, cell.y + 3.9}, name, lettering::note).right() + 1.5;
    canvas.fitted({x, cell.y + 3.9}, cell.right() - x - 1, value.empty() ? "—" : value, lettering::strong);
    return cell.y + row;
}

}  // namespace

double QuoteTitle::draw_firm(Canvas& canvas, Rect cell) const
{
    const double x = cell.x + inset, width = cell.width - 2 * inset;
    double y = cell.y + 1.2;
    if (!quote_.firm.name.empty()) y = canvas.paragraph({x, y}, width, quote_.firm.name, lettering::name);
    for (const std::string& line : firm_lines(quote_.firm, w_)) y = canvas.paragraph({x, y}, width, line, lettering::note);
    const std::string phone = customer_phone(quote_, w_);
    if (quote_.customer.empty() && phone.empty()) return y + 1;
    if (y > cell.y + 2) canvas.line({cell.x, y + 0.9}, {cell.right(), y + 0.9}, pen::dimension);
    y = canvas.paragraph({x, y + 1.8}, width, say(Caption::customer_name, w_), lettering::note);
    if (!quote_.customer.empty()) y = canvas.paragraph({x, y}, width, quote_.customer, lettering::name);
    return (phone.empty() ? y : canvas.paragraph({x, y}, width, phone, lettering::note)) + 1;
}

double QuoteTitle::draw_numbers(Canvas& canvas, Rect cell) const
{
    const Rect label = canvas.text({cell.x + inset, cell.y + 7}, say(Caption::quote, w_), lettering::name);
    const double room = cell.right() - inset - label.right() - 3;
    double y = cell.y + 9.4;
    if (canvas.width_of(quote_.number, large) <= room) canvas.text({cell.right() - inset, cell.y + 7}, quote_.number, large, Align::right);
    else y = canvas.paragraph({cell.x + inset, cell.y + 8.4}, cell.width - 2 * inset, quote_.number, lettering::name) + 1;
    y = draw_field(canvas, {cell.x, y, cell.width, row}, say(Caption::date, w_), day_in_words(quote_.dates.date, w_));
    if (quote_.dates.valid_until.empty()) return y;
    return draw_field(canvas, {cell.x, y, cell.width, row}, say(Caption::valid_until, w_), day_in_words(quote_.dates.valid_until, w_));
}

double QuoteTitle::draw_first(Canvas& canvas, Rect room) const
{
    canvas.begin(Part::table);
    const double left = room.width - right_part;
    const double bottom = std::max(draw_firm(canvas, {room.x, room.y, left, 0}), draw_numbers(canvas, {room.x + left, room.y, right_part, 0}));
    canvas.line({room.x + left, room.y}, {room.x + left, bottom}, pen::dimension);
    canvas.box({room.x, room.y, room.width, bottom - room.y}, pen::outline);
    return bottom;
}

double QuoteTitle::draw_next(Canvas& canvas, Rect room) const
{
    canvas.begin(Part::table);
    canvas.box({room.x, room.y, room.width, next_title_height}, pen::guard);
    const double x = canvas.text({room.x + inset, room.y + 5.4}, say(Caption::quote, w_), lettering::note).right() + 2;
    const double kind = room.x + room.width / 2;
    canvas.fitted({x, room.y + 5.4}, kind - x - 2, quote_.number, lettering::name);
    canvas.fitted({kind, room.y + 5.4}, room.right() - inset - kind, loudly(quote_, w_), lettering::name);
    return room.y + next_title_height;
}

// At the foot, in the strip that every sheet leaves free.
void QuoteTitle::draw_number(Canvas& canvas, Rect room, bool, std::size_t number, std::size_t of) const
{
    canvas.begin(Part::paragraph);
    canvas.text({room.x, room.bottom() - 0.9}, words_.numbered_sheet(number, of), lettering::note);
}

void draw_band(Sheets& sheets, const Quote& quote, const Wording& w)
{
    Canvas& canvas = sheets.canvas();
    const Rect room = sheets.room();
    const std::string sum = total(quote, w);
    const double top = sheets.y(), right = sum.empty() || kind_of(quote) == Kind::refused || kind_of(quote) == Kind::incomplete ? 0 : 70, width = room.width - right - 2 * inset;
    canvas.begin(Part::heading);
    double y = top + 1.5;
    for (const std::string& line : canvas.lines_of(loudly(quote, w), width, {4.5, Weight::bold})) y = canvas.paragraph({room.x + inset, y}, width, line, {4.5, Weight::bold});
    canvas.begin(Part::paragraph);
    y = std::max(canvas.paragraph({room.x + inset, y}, width, meaning(quote, w), lettering::note) + 0.8, top + 13);
    if (right > 0) {
        const double x = room.right() - right;
        canvas.line({x, top}, {x, y}, pen::guard);
        canvas.fitted({x + inset, top + 4.6}, right - 2 * inset, total_name(quote, w), lettering::note);
        canvas.fitted({room.right() - inset, top + 11}, right - 2 * inset, sum, large, Align::right);
    }
    canvas.box({room.x, top, room.width, y - top}, pen::cut_mark);
    sheets.move_to(y + 1);
}

}  // namespace shaftcut::quote_sheet
