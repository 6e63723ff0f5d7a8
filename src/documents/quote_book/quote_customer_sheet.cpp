// The sheet Customer: what the paper says, with amounts that follow the desk's sheet; without minutes and rate.
#include <fmt/format.h>

#include <algorithm>

#include "money_words.hpp"
#include "quote/quote_words.hpp"
#include "quote_book/quote_book_words.hpp"
#include "quote_book/quote_workbook_sheets.hpp"
#include "spreadsheet/formula_text.hpp"
#include "quote_sheet/quote_sheet_words.hpp"

namespace shaftcut::quote_book {
namespace {

using quote_book_words::Caption;
using PaperCaption = quote_sheet::Caption;
using workbook::SheetBuilder;
namespace style = workbook::style;

constexpr int text_column = 0, count_column = 1, each_column = 2, amount_column = 3, columns = 4;
constexpr std::size_t most_lines_of_one_page = 60;


class Customer {
public:
    Customer(const Quote& quote, const Figures& figures, const DeskRows& desk, const Wording& w)
        : quote_(quote), figures_(figures), desk_(desk), w_(w), sheet_("Customer", {58, 9, 15, 18})
    {
    }

    Worksheet run()
    {
        add_head();
        add_work();
        if (!figures_.lines.empty()) add_lines();
        add_conditions();
        add_acceptance();
        Worksheet made = sheet_.take(quote_book_words::say(Caption::customer_header, w_), quote_book_words::say(Caption::footer, w_), 0);
        made.one_page = figures_.lines.size() <= most_lines_of_one_page;
        return made;
    }

private:
    std::string say(Caption caption) const { return quote_book_words::say(caption, w_); }
    CellStyle money(CellStyle look) const
    {
        look.numbers = money_format(quote_.currency);
        look.align = CellStyle::Align::right;
        return look;
    }

    void add_text(const std::string& text, const CellStyle& look)
    {
        if (text.empty()) return;
        sheet_.put(text_column, text, look, columns);
        sheet_.end_row();
    }

    void add_head()
    {
        add_text(quote_.firm.name, style::title());
        for (const std::string& line : quote_sheet::firm_lines(quote_.firm, w_)) add_text(line, style::small());
        sheet_.empty_row();
        add_text(quote_sheet::document_title(quote_.number, w_), style::title());
        add_field(PaperCaption::customer_name, quote_.customer);
        add_field(PaperCaption::date, day_in_words(quote_.dates.date, w_));
        add_field(PaperCaption::valid_until, day_in_words(quote_.dates.valid_until, w_));
        sheet_.empty_row();
        add_band();
    }

    void add_field(PaperCaption caption, const std::string& value)
    {
        if (value.empty()) return;
        sheet_.put(text_column, quote_sheet::say(caption, w_), style::label());
        sheet_.put(count_column, value, style::label(), columns - 1);
        sheet_.end_row();
    }

    // What the paper is called once all prices are typed in; while one is open it is incomplete.
    void add_band()
    {
        Quote priced = quote_;
        if (quote_.verdict == QuoteVerdict::incomplete && figures_.open > 0) priced.verdict = QuoteVerdict::complete;
        Quote open = quote_;
        open.verdict = QuoteVerdict::incomplete;
        const std::string named = quote_sheet::loudly(priced, w_), incomplete = quote_sheet::loudly(open, w_);
        const bool follows = !figures_.lines.empty() && quote_.verdict != QuoteVerdict::refused;
        CellStyle loud = style::great();
        loud.align = CellStyle::Align::left;
        loud.wrapped = true;
        if (follows)
            sheet_.put(text_column, CellFormula{fmt::format("IF(verdict={},{},{})", text_in_formula(say(Caption::complete)), text_in_formula(named), text_in_formula(incomplete)), figures_.ready ? named : incomplete}, loud, columns);
        else sheet_.put(text_column, named, loud, columns);
        sheet_.end_row(24);
        Quote alone = quote_;  // what else would serve stands on the paper alone
        alone.alternatives.clear();
        if (figures_.ready) add_text(quote_sheet::meaning(alone, w_), style::small());
    }

    void add_work()
    {
        sheet_.empty_row();
        for (const QuotedWork& work : quote_.work) {
            add_text(quote_sheet::what_is_done(quote_, work, w_), style::small());
            for (const std::string& reason : quote_sheet::why_not(work, w_)) add_text(reason, style::small());
            add_text(quote_sheet::found(quote_, work, w_), style::small());
        }
        add_text(quote_sheet::cannot_be_undone(quote_, w_), style::sentence());
    }

    std::string desk(int row, int column) const { return desk_cell(row, column); }
    // What the desk's formula gives, which may be a word.
    void put_amount(int row, const std::variant<double, std::string>& now, const CellStyle& look)
    {
        sheet_.put(amount_column, CellFormula{desk(row, amount), now}, money(look));
    }

    void put_heads()
    {
        sheet_.put(text_column, quote_sheet::say(PaperCaption::line, w_), style::table_head());
        sheet_.put(count_column, quote_sheet::say(PaperCaption::count, w_), style::table_head());
        sheet_.put(each_column, figures_.is_estimate ? say(Caption::from) : quote_sheet::say(PaperCaption::each, w_), style::table_head());
        sheet_.put(amount_column, figures_.is_estimate ? say(Caption::at_most) : quote_sheet::amount_head(quote_.currency, w_), style::table_head());
        sheet_.end_row();
    }

    // From the least to the most.
    void add_estimated(const Figures::Line& one, int row)
    {
        const std::string at_most = desk(row, most);
        const CellFormula least = amount_formula(one, row);
        const bool counted = one.state == Figures::State::counted;
        const auto now = counted ? std::variant<double, std::string>(units_of(one.most, quote_.currency)) : least.now;
        sheet_.put(text_column, quote_sheet::line_text(one.line->what, w_), style::label(), columns - 2);
        sheet_.put(each_column, least, money(style::figure()));
        sheet_.put(amount_column, CellFormula{fmt::format("IF(ISNUMBER({0}),{0}/{1},{0})", at_most, minor_in_unit(quote_.currency)), now}, money(style::figure()));
        sheet_.end_row();
    }

    void add_line(const Figures::Line& one, int row)
    {
        if (figures_.is_estimate) return add_estimated(one, row);
        const QuoteLine& line = *one.line;
        const bool by_piece = line.unit == QuoteUnit::piece;
        sheet_.put(text_column, quote_sheet::line_text(line.what, w_), style::label());
        if (by_piece) sheet_.put(count_column, CellFormula{desk(row, quantity), static_cast<double>(line.quantity.thousandths) / 1000}, style::figure());
        else sheet_.put(count_column, std::string(), style::figure());
        if (by_piece) sheet_.put(each_column, each_formula(line, row), money(style::figure()));
        else sheet_.put(each_column, std::string(), style::figure());
        sheet_.put(amount_column, amount_formula(one, row), money(style::figure()));
        sheet_.end_row();
    }

    CellFormula each_formula(const QuoteLine& line, int row) const
    {
        const std::string at = desk(row, price);
        const auto now = line.each ? std::variant<double, std::string>(units_of(*line.each, quote_.currency)) : std::variant<double, std::string>(std::string());
        return {fmt::format("IF({0}=\"\",\"\",{0})", at), now};
    }

    // A price of nothing is said in words; an estimate has two amounts.
    CellFormula amount_formula(const Figures::Line& one, int row) const
    {
        const std::string of_desk = desk(row, amount), free = say(Caption::free_of_charge), each = desk(row, price);
        const std::string formula = fmt::format("IF(ISNUMBER({0}),IF({1}=0,{2},{0}),{0})", of_desk, each, text_in_formula(free));
        if (one.state == Figures::State::not_priced) return {formula, say(Caption::not_priced)};
        if (one.state == Figures::State::too_great) return {formula, say(Caption::too_great)};
        if (one.line->each->minor() == 0) return {formula, free};
        return {formula, units_of(one.amount, quote_.currency)};
    }

    // A charge that comes to nothing does not show, not even by a box.
    void add_charge(const std::string& text, int row, const std::optional<Money>& now)
    {
        const std::string of_desk = desk(row, amount);
        const bool shows = figures_.counted && now && *now != Money();
        const std::string there = fmt::format("AND(ISNUMBER({0}),ABS(SUM({0}))>0)", of_desk);
        sheet_.put(text_column, CellFormula{fmt::format("IF({},{},\"\")", there, text_in_formula(text)), shows ? text : std::string()}, style::small(), columns - 1);
        const auto amount_now = shows ? std::variant<double, std::string>(units_of(*now, quote_.currency)) : std::variant<double, std::string>(std::string());
        sheet_.put(amount_column, CellFormula{fmt::format("IF({},{},\"\")", there, of_desk), amount_now}, money(style::small()));
        sheet_.end_row();
    }

    std::variant<double, std::string> when_ready(Money now) const
    {
        if (!figures_.ready) return std::string();
        return units_of(now, quote_.currency);
    }

    void add_sum(const std::string& text, int row, const std::variant<double, std::string>& now, const CellStyle& look)
    {
        CellStyle name = style::label();
        name.bold = look.bold;
        sheet_.put(text_column, text, name, columns - 1);
        put_amount(row, now, look);
        sheet_.end_row();
    }

    void add_taxes()
    {
        for (std::size_t i = 0; i < figures_.rates.size(); ++i)
            add_sum(quote_book_words::rate_name(quote_, figures_.rates[i], w_), desk_.taxes[i], when_ready(figures_.ready ? figures_.sums.taxes[i] : Money()), style::figure());
    }

    // Where prices hold their tax, what is paid comes first.
    void add_totals()
    {
        const auto add_total = [&] { add_sum(quote_sheet::total_name(quote_, w_), desk_.total, when_ready(figures_.sums.total), style::great()); };
        if (desk_.total_up_to >= 0) {
            CellStyle name = style::label();
            name.bold = true;
            sheet_.put(text_column, quote_sheet::total_name(quote_, w_), name, columns - 2);
            sheet_.put(each_column, CellFormula{desk(desk_.total, amount), when_ready(figures_.sums.total)}, money(style::great()));
            put_amount(desk_.total_up_to, when_ready(figures_.most.total), style::great());
            sheet_.end_row();
        } else if (quote_.stated == PricesStated::with_tax) {
            add_total();
            add_taxes();
            add_sum(quote_sheet::say(PaperCaption::net, w_), desk_.net, when_ready(figures_.sums.net), style::figure());
        } else {
            add_sum(quote_sheet::say(PaperCaption::net, w_), desk_.net, when_ready(figures_.sums.net), style::figure());
            add_taxes();
            add_total();
        }
        if (desk_.deposit < 0) return;
        const auto due = figures_.deposit ? std::variant<double, std::string>(units_of(*figures_.deposit, quote_.currency)) : std::variant<double, std::string>(std::string());
        add_sum(say(Caption::deposit_due), desk_.deposit, due, style::figure());
    }

    void add_lines()
    {
        sheet_.empty_row();
        put_heads();
        for (std::size_t i = 0; i < figures_.lines.size(); ++i) add_line(figures_.lines[i], desk_.first_line + static_cast<int>(i));
        if (desk_.minimum >= 0) add_charge(shaftcut::say(LineFor(MinimumCharge{}), w_), desk_.minimum, figures_.minimum);
        for (std::size_t i = 0; i < desk_.discounts.size(); ++i) add_charge(say(Caption::off_it), desk_.discounts[i], figures_.discounts[i]);
        add_totals();
    }

    // But for the deposit, which follows the total and stands below it.
    void add_conditions()
    {
        Quote without = quote_;
        if (without.totals) without.totals->deposit.reset();
        sheet_.empty_row();
        for (const std::string& one : quote_sheet::conditions(without, w_)) add_text(one, style::small());
    }

    void add_acceptance()
    {
        const std::string says = quote_sheet::acceptance(quote_, false, w_);
        if (says.empty()) return;
        sheet_.empty_row();
        add_text(says, style::sentence());
        sheet_.put(text_column, quote_sheet::say(PaperCaption::name, w_), style::label());
        sheet_.put(count_column, quote_sheet::say(PaperCaption::day, w_), style::label(), 2);
        sheet_.put(amount_column, quote_sheet::say(PaperCaption::signature, w_), style::label());
        sheet_.end_row(40);
        add_text(quote_sheet::by_telephone(quote_.firm, w_), style::small());
    }

    const Quote& quote_;
    const Figures& figures_;
    const DeskRows& desk_;
    const Wording& w_;
    SheetBuilder sheet_;
};

}  // namespace

Worksheet customer_sheet(const Quote& quote, const Figures& figures, const DeskRows& desk, const Wording& w) { return Customer(quote, figures, desk, w).run(); }

}  // namespace shaftcut::quote_book
