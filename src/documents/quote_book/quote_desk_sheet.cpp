// The sheet Desk: what is typed in, the lines, what follows from them, and what else is offered.
#include <array>

#include "quote/quote_words.hpp"
#include "quote_book/quote_desk_writer.hpp"

namespace shaftcut::quote_book {
namespace {

namespace style = workbook::style;
namespace words = quote_book_words;

constexpr std::array<double, 13> widths{5, 44, 11, 8, 15, 15, 8, 40, 16, 9, 16, 16, 16};
static_assert(widths.size() == static_cast<std::size_t>(most_tax) + 1);

class Desk : public DeskWriter {
public:
    explicit Desk(DeskWriter begun) : DeskWriter(std::move(begun)) {}

    DeskWriter begun()
    {
        sheet_.put(0, words::desk_title(quote_.number, w_), style::title(), 8);
        sheet_.end_row(24);
        sheet_.put(0, say(Caption::for_the_desk, w_), style::small(), 8);
        sheet_.end_row();
        return std::move(*this);
    }

    DeskSheet finished()
    {
        add_alternatives();
        made_.sheet = sheet_.take(say(Caption::desk_header, w_), say(Caption::footer, w_), 1);
        made_.sheet.landscape = true;
        return std::move(made_);
    }

private:
    void add_alternatives()
    {
        if (quote_.alternatives.empty()) return;
        section(Caption::alternatives);
        sheet_.put(0, say(Caption::alternative, w_), style::table_head(), 5);
        sheet_.put(amount, say(Caption::with_tax, w_), style::table_head());
        sheet_.put(tax, say(Caption::working_days, w_), style::table_head());
        sheet_.put(beside, std::string(), style::table_head());
        sheet_.end_row(28);
        for (const Alternative& one : quote_.alternatives) {
            sheet_.put(0, shaftcut::say(one, w_), style::label(), 5);
            sheet_.put(amount, one.totals ? money(one.totals->total) : CellContent(say(Caption::not_priced, w_)), money(style::figure()));
            sheet_.put(tax, one.lead_days ? CellContent(static_cast<double>(*one.lead_days)) : CellContent(say(Caption::not_known, w_)), style::figure());
            sheet_.put(beside, remark_on(one), style::label());
            sheet_.end_row();
        }
    }

    // Cheapest, soonest, or why it has no price.
    std::string remark_on(const Alternative& one) const
    {
        std::vector<std::string> said;
        if (one.cheapest) said.push_back(say(Caption::cheapest, w_));
        if (one.soonest) said.push_back(say(Caption::soonest, w_));
        for (const QuoteLine& line : one.lines)
            if (line.missing) said.push_back(say_not_priced(line, w_));
        return running_text(said);
    }
};

}  // namespace

DeskSheet desk_sheet(const Quote& quote, const Figures& figures, const Wording& w)
{
    return Desk(with_totals(with_lines(Desk(DeskWriter(quote, figures, w, {widths.begin(), widths.end()})).begun()))).finished();
}

}  // namespace shaftcut::quote_book
