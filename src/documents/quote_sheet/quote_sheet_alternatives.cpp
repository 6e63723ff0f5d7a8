// What is offered side by side, each in a box of its own with a square to tick.
#include <algorithm>
#include <span>

#include "quote_sheet/quote_sheet_parts.hpp"

namespace shaftcut::quote_sheet {
namespace {

constexpr std::size_t most_beside = 4;
constexpr double gap = 3, inset = 2, tick = 5, mark_height = 4.6;

// One box: one of the alternatives, or the quote's own lines where none of them is that.
struct Offer {
    std::string letter, headline;
    std::vector<std::string> says, included;
    std::string price;
    std::vector<std::string> beside_price, marks;
    bool can_be_ordered = false;
};

Offer offer_of(const Alternative& one, std::size_t place, const Quote& quote, const Wording& w)
{
    Offer offer{letter(place), headline(one, w), {explained(one, w)}, included(one, w), price(one, quote, w), beside_price(one, quote, w), {}, one.totals.has_value()};
    if (one.cheapest) offer.marks.push_back(say(Caption::cheapest, w));
    if (one.soonest) offer.marks.push_back(say(Caption::soonest, w));
    return offer;
}

std::vector<Offer> offers_of(const Quote& quote, const Wording& w)
{
    std::vector<Offer> offers;
    for (const Alternative& one : quote.alternatives) offers.push_back(offer_of(one, offers.size(), quote, w));
    return offers;
}

class OfferBox {
public:
    OfferBox(Canvas& canvas, Rect column, Spacing spacing)
        : canvas_(canvas), room_{column.x + inset, column.y + inset, column.width - 2 * inset, 0}, note_(spacing == Spacing::usual ? lettering::note : lettering::close_note),
          strong_(spacing == Spacing::usual ? lettering::strong : lettering::close_strong)
    {
    }

    // The y below all of it.
    double draw(const Offer& offer)
    {
        canvas_.begin(Part::table);
        draw_head(offer);
        for (const std::string& one : offer.says) put(one, note_);
        if (!offer.marks.empty()) draw_marks(offer.marks);
        put(offer.price, lettering::name);
        for (const std::string& one : offer.beside_price) put(one, note_);
        for (const std::string& one : offer.included) put_item(one);
        return room_.y + inset - 1;
    }

private:
    void put(const std::string& text, Lettering lettering)
    {
        if (!text.empty()) room_.y = canvas_.paragraph({room_.x, room_.y}, room_.width, text, lettering) + 0.5;
    }

    void put_item(const std::string& text)
    {
        canvas_.disc({room_.x + 1.2, room_.y + note_.pitch() / 2 + 0.1}, 0.5, Fill::black);
        room_.y = canvas_.paragraph({room_.x + 3, room_.y}, room_.width - 3, text, note_) + 0.2;
    }

    // The square to tick, the letter and what it is.
    void draw_head(const Offer& offer)
    {
        const double left = tick + 1.5;
        if (offer.can_be_ordered) canvas_.box({room_.x, room_.y, tick, tick}, pen::outline);
        const double right = canvas_.text({room_.x + left, room_.y + 4}, offer.letter, lettering::name).right() + 1.8;
        const double width = room_.x + room_.width - right;
        room_.y = std::max(canvas_.paragraph({right, room_.y + 0.2}, width, offer.headline, lettering::close_name), room_.y + tick) + 0.8;
    }

    void draw_marks(const std::vector<std::string>& marks)
    {
        double x = room_.x;
        for (const std::string& mark : marks) {
            const double width = canvas_.width_of(mark, strong_) + 3;
            if (x > room_.x && x + width > room_.x + room_.width) next_line_of_marks(x);
            canvas_.box({x, room_.y, width, mark_height}, pen::outline);
            canvas_.text({x + 1.5, room_.y + 3.5}, mark, strong_);
            x += width + 2;
        }
        room_.y += mark_height + 0.8;
    }

    void next_line_of_marks(double& x)
    {
        x = room_.x;
        room_.y += mark_height + 0.8;
    }

    Canvas& canvas_;
    Rect room_;
    Lettering note_, strong_;
};

// Those in boxes, and those that are said in a line: of more than stand in one row the ones that have no price.
std::pair<std::vector<Offer>, std::vector<std::string>> parted(std::vector<Offer> offers, const Wording& w)
{
    if (offers.size() <= most_beside) return {std::move(offers), {}};
    std::stable_partition(offers.begin(), offers.end(), [](const Offer& offer) { return offer.can_be_ordered; });
    for (std::size_t place = 0; place < offers.size(); ++place) offers[place].letter = letter(place);
    std::pair<std::vector<Offer>, std::vector<std::string>> parts;
    for (Offer& offer : offers) {
        if (offer.can_be_ordered) parts.first.push_back(std::move(offer));
        else parts.second.push_back(open_offer(offer.letter, offer.headline, offer.says.front(), w));
    }
    return parts;
}

// A row of boxes, as high as the highest of them.
void draw_row(Sheets& sheets, std::span<const Offer> offers, std::size_t beside, Spacing spacing)
{
    const double width = (sheets.room().width - gap * static_cast<double>(beside - 1)) / static_cast<double>(beside);
    double height = 0;
    for (const Offer& offer : offers) {
        Canvas trial = sheets.canvas();
        height = std::max(height, OfferBox(trial, {0, 0, width, 0}, spacing).draw(offer));
    }
    sheets.ensure(height + 1);
    double x = sheets.room().x;
    for (const Offer& offer : offers) {
        OfferBox(sheets.canvas(), {x, sheets.y(), width, 0}, spacing).draw(offer);
        sheets.canvas().box({x, sheets.y(), width, height}, pen::guard);
        x += width + gap;
    }
    sheets.move_to(sheets.y() + height + 1.5);
}

}  // namespace

bool is_choice(const Quote& quote)
{
    return std::any_of(quote.alternatives.begin(), quote.alternatives.end(), [](const Alternative& one) { return one.totals.has_value(); });
}

void draw_alternatives(Sheets& sheets, const Quote& quote, Spacing spacing, const Wording& w)
{
    if (quote.alternatives.empty()) return;
    const auto [boxed, said] = parted(offers_of(quote, w), w);
    const std::size_t beside = std::min(boxed.size(), boxed.size() > most_beside ? most_beside - 1 : most_beside);
    sheets.ensure(40);
    sheets.flow({{Lead::heading, say(kind_of(quote) == Kind::refused ? Caption::what_would_serve : Caption::alternatives, w), false, spacing}});
    for (std::size_t i = 0; i < boxed.size(); i += beside) draw_row(sheets, std::span(boxed).subspan(i, std::min(beside, boxed.size() - i)), beside, spacing);
    Blocks blocks;
    for (const std::string& one : said) blocks.push_back({Lead::bullet, one, false, spacing});
    sheets.flow(blocks);
}

}  // namespace shaftcut::quote_sheet
