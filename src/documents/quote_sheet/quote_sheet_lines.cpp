// The table of a quote's lines, and its totals.
#include <algorithm>

#include "money_words.hpp"
#include "quote_sheet/quote_sheet_parts.hpp"

namespace shaftcut::quote_sheet {
namespace {

constexpr double gap = 2, head_height = 5.2, total_height = 4.6;

struct Columns {
    double count = 18, each = 28, amount = 42;
    double text(double width) const { return width - count - each - amount; }
};
constexpr Columns columns;

struct Row {
    std::string text, count, each, amount;
};

// A line that is said by its amount alone has no price of one; nor has one that comes to nothing or is not priced.
Row row_of(const QuoteLine& line, const Quote& quote, const Wording& w)
{
    const std::string count = count_of(line);
    const bool priced = !count.empty() && line.each && line.each->minor() != 0 && !line.up_to;
    return {line_text(line.what, w), count, priced ? bare_amount(*line.each, quote.currency) : std::string(), amount_of(line, quote.currency, w)};
}

class TableOfLines {
public:
    TableOfLines(Sheets& sheets, const Quote& quote, Spacing spacing, const Wording& w)
        : sheets_(sheets), quote_(quote), spacing_(spacing), w_(w), note_(spacing == Spacing::usual ? lettering::note : lettering::close_note),
          strong_(spacing == Spacing::usual ? lettering::strong : lettering::close_strong)
    {
    }

    void draw()
    {
        begin(say(heading(), w_));
        for (const QuoteLine& line : quote_.lines) draw_row(row_of(line, quote_, w_), note_, line.amount ? Weight::regular : Weight::bold);
        if (quote_.totals) draw_totals(*quote_.totals);
    }

private:
    Caption heading() const
    {
        const Kind kind = kind_of(quote_);
        return kind == Kind::refused ? Caption::what_was_done : kind == Kind::before_measuring ? Caption::what_it_would_be : Caption::what_it_comes_to;
    }

    void begin(const std::string& heading)
    {
        sheets_.move_to(sheets_.y() + 1);
        sheets_.ensure(20);
        sheets_.flow({{Lead::heading, heading, false, spacing_}});
        draw_head();
    }

    void draw_head()
    {
        Canvas& canvas = sheets_.canvas();
        const Rect room = sheets_.room();
        const double base = sheets_.y() + 3.6;
        canvas.begin(Part::table);
        canvas.fitted({room.x, base}, columns.text(room.width) - gap, say(Caption::line, w_), strong_);
        put_right(base, columns.amount + columns.each, columns.count, say(Caption::count, w_), strong_);
        put_right(base, columns.amount, columns.each, say(Caption::each, w_), strong_);
        put_right(base, 0, columns.amount, amount_head(quote_.currency, w_), strong_);
        sheets_.move_to(sheets_.y() + head_height);
        canvas.line({room.x, sheets_.y() - 0.2}, {room.right(), sheets_.y() - 0.2}, pen::dimension);
    }

    // A figure whose right end stands so far from the right margin.
    void put_right(double base, double from_right, double width, const std::string& text, Lettering lettering)
    {
        sheets_.canvas().fitted({sheets_.room().right() - from_right, base}, width - gap, text, lettering, Align::right);
    }

    void draw_row(const Row& row, Lettering lettering, Weight of_amount)
    {
        const double width = columns.text(sheets_.room().width) - gap;
        const double height = static_cast<double>(sheets_.canvas().lines_of(row.text, width, lettering).size()) * lettering.pitch() + (spacing_ == Spacing::usual ? 0.5 : 0.2);
        const std::size_t before = sheets_.count();
        sheets_.ensure(row.amount.empty() ? 2 * height : height);  // an order's number stays with its first line
        if (sheets_.count() != before) draw_head();
        sheets_.canvas().begin(Part::table);
        const double top = sheets_.y() + 0.2;
        sheets_.canvas().paragraph({sheets_.room().x, top}, width, row.text, lettering);
        const double base = top + lettering.cap_height * 1.2;  // as a paragraph's first line
        put_right(base, columns.amount + columns.each, columns.count, row.count, lettering);
        put_right(base, columns.amount, columns.each, row.each, lettering);
        lettering.weight = of_amount;
        put_right(base, 0, columns.amount, row.amount, lettering);
        sheets_.move_to(sheets_.y() + height);
    }

    void draw_total(const std::string& name, const std::string& amount, Lettering lettering)
    {
        const double base = sheets_.y() + 3.5 + (lettering.cap_height - lettering::note.cap_height);
        sheets_.canvas().fitted({sheets_.room().right() - columns.amount, base}, sheets_.room().width - columns.amount - gap, name, lettering, Align::right);
        put_right(base, 0, columns.amount, amount, lettering);
        sheets_.move_to(sheets_.y() + total_height - (spacing_ == Spacing::usual ? 0 : 0.5) + (lettering.cap_height - lettering::note.cap_height));
    }

    void draw_taxes(const QuoteTotals& totals)
    {
        for (const TaxSum& sum : totals.tax) draw_total(tax_line(quote_, sum, w_), bare_amount(sum.amount, quote_.currency), note_);
    }

    // Where prices hold their tax, what is paid comes first.
    void draw_totals(const QuoteTotals& totals)
    {
        sheets_.ensure(total_height * static_cast<double>(totals.tax.size() + 3));
        sheets_.canvas().begin(Part::table);
        const Rect room = sheets_.room();
        sheets_.canvas().line({room.right() - columns.amount - columns.each, sheets_.y() + 0.4}, {room.right(), sheets_.y() + 0.4}, pen::dimension);
        sheets_.move_to(sheets_.y() + 0.6);
        const std::string net = bare_amount(totals.net, quote_.currency), sum = total(quote_, w_);
        // From one sum to another: only what is paid is said of both.
        if (quote_.total_up_to && *quote_.total_up_to != totals.total) {
            draw_total(total_name(quote_, w_), sum, lettering::close_name);
        } else if (quote_.stated == PricesStated::with_tax) {
            draw_total(total_name(quote_, w_), sum, lettering::close_name);
            draw_taxes(totals);
            draw_total(say(Caption::without_tax, w_), net, note_);
        } else {
            draw_total(say(Caption::net, w_), net, note_);
            draw_taxes(totals);
            draw_total(total_name(quote_, w_), sum, lettering::close_name);
        }
    }

    Sheets& sheets_;
    const Quote& quote_;
    Spacing spacing_;
    const Wording& w_;
    Lettering note_, strong_;
};

}  // namespace

void draw_lines(Sheets& sheets, const Quote& quote, Spacing spacing, const Wording& w)
{
    if (!quote.lines.empty()) TableOfLines(sheets, quote, spacing, w).draw();
}

}  // namespace shaftcut::quote_sheet
