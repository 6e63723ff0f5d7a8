// What the lines come to: taxes, totals and the deposit.
#include "quote_book/quote_desk_writer.hpp"

namespace shaftcut::quote_book {
namespace {

namespace style = workbook::style;
namespace words = quote_book_words;

// The figures of one column of sums: of the amounts, or of an estimate's amounts at most.
struct Side {
    int of_lines;
    const Figures::Sums& now;
};

class Totals : public DeskWriter {
public:
    explicit Totals(DeskWriter begun) : DeskWriter(std::move(begun)) {}

    bool is_empty() const { return figures_.lines.empty(); }

    void add_totals()
    {
        section(Caption::totals);
        add_verdict();
        for (std::size_t i = 0; i < figures_.rates.size(); ++i) add_tax(i);
        DeskRows& rows = made_.rows;
        add_total(Caption::net, "net", summed(base, minor, true), figures_.sums.net, style::figure(), rows.net);
        add_total(Caption::total, "total", summed(base, minor, false), figures_.sums.total, style::great(), rows.total);
        if (figures_.is_estimate) add_total(Caption::total_up_to, "total_up_to", summed(most, most_tax, false), figures_.most.total, style::great(), rows.total_up_to);
        if (figures_.has_charges && quote_.deposit && figures_.ordered) add_deposit();
    }

private:
    // Whether all can be counted; what stands in the way of it is said.
    void add_verdict()
    {
        const int last = last_charge(), rows = last - made_.rows.first_line + 1;
        const double open = static_cast<double>(figures_.open);
        sheet_.put(what, say(Caption::open_lines, w_), style::label());
        const std::string not_priced = fmt::format("COUNTIF({},{})", range(minor, last_line()), text_in_formula(say(Caption::not_priced, w_)));
        const std::string too_great = fmt::format("COUNTIF({},{})", range(minor, last_line()), text_in_formula(say(Caption::too_great, w_)));
        sheet_.put(amount, CellFormula{not_priced + "+" + too_great, count_of_unready()}, style::figure());
        name("open_lines", amount);
        sheet_.end_row();
        sheet_.put(what, say(Caption::verdict, w_), style::label());
        const std::string both = figures_.has_charges ? fmt::format("IF(AND(discount_percent<>\"\",discount_amount<>\"\"),{},", text_in_formula(say(Caption::one_discount, w_))) : "";
        const std::string formula = fmt::format("IF({}>0,{},{}IF(COUNT({})<{},{},IF(SUM({})<0,{},{})){})", not_priced, text_in_formula(say(Caption::not_priced, w_)), both, range(minor, last), rows,
                                                text_in_formula(say(Caption::too_great, w_)), range(minor, last), text_in_formula(say(Caption::too_great, w_)), text_in_formula(say(Caption::complete, w_)), both.empty() ? "" : ")");
        sheet_.put(amount, CellFormula{formula, say(open > 0 ? Caption::not_priced : figures_.ready ? Caption::complete : Caption::too_great, w_)}, style::result());
        name("verdict", amount);
        sheet_.end_row();
    }

    double count_of_unready() const
    {
        double count = 0;
        for (const Figures::Line& line : figures_.lines) count += line.state == State::counted ? 0 : 1;
        return count;
    }

    std::string if_ready(const std::string& formula) const { return fmt::format("IF(verdict={},{},\"\")", text_in_formula(say(Caption::complete, w_)), formula); }

    // A rate's sum and its tax, of the amounts or of those at most.
    void put_tax(std::size_t of_rate, const Side& side, int base_column, int tax_column)
    {
        const int row = sheet_.row();
        const Share share = tax_share(figures_.rates[of_rate].percent, quote_.stated);
        const std::string sum = fmt::format("SUMIF({},{},{})", range(rate, last_charge()), of_rate + 1, range(side.of_lines, last_charge()));
        const CellContent base_now = when_ready(figures_.ready ? side.now.bases[of_rate] : Money()), tax_now = when_ready(figures_.ready ? side.now.taxes[of_rate] : Money());
        sheet_.put(base_column, CellFormula{if_ready(sum), now_of(base_now)}, style::figure());
        sheet_.put(tax_column, CellFormula{fmt::format("IF(ISNUMBER({0}),{1},\"\")", cell(row, base_column), product(cell(row, base_column), std::to_string(share.numerator), share.denominator)), now_of(tax_now)},
                   style::figure());
    }

    void add_tax(std::size_t of_rate)
    {
        const bool within = quote_.stated == PricesStated::with_tax;
        const int row = sheet_.row();
        made_.rows.taxes.push_back(row);
        sheet_.put(what, words::rate_name(quote_, figures_.rates[of_rate], w_), style::label());
        put_tax(of_rate, {minor, figures_.sums}, base, minor);
        const CellContent tax_now = when_ready(figures_.ready ? figures_.sums.taxes[of_rate] : Money());
        sheet_.put(amount, shown_now(row, minor, tax_now), money(style::figure()));
        name(fmt::format("tax_{}_amount", of_rate + 1), amount);
        // What is taxed, without its tax.
        const Money untaxed = figures_.ready ? (within ? figures_.sums.bases[of_rate] - figures_.sums.taxes[of_rate] : figures_.sums.bases[of_rate]) : Money();
        const std::string taxed = within ? fmt::format("({}-{})", cell(row, base), cell(row, minor)) : cell(row, base);
        const auto base_now = figures_.ready ? std::variant<double, std::string>(units_of(untaxed, quote_.currency)) : std::variant<double, std::string>(std::string());
        sheet_.put(price, CellFormula{fmt::format("IF(ISNUMBER({}),{}/{},\"\")", cell(row, minor), taxed, unit_), base_now}, money(style::figure()));
        name(fmt::format("tax_{}_base", of_rate + 1), price);
        if (figures_.is_estimate) put_tax(of_rate, {most, figures_.most}, most, most_tax);
        sheet_.end_row();
    }

    std::string of_rates(int column) const { return absolute_cell(made_.rows.taxes.front(), column) + ":" + absolute_cell(made_.rows.taxes.back(), column); }

    void add_total(Caption caption, const std::string& known, const std::string& formula, Money now, const CellStyle& look, int& row)
    {
        row = sheet_.row();
        sheet_.put(what, say(caption, w_), style::label());
        put_amount(formula, when_ready(now), known, look);
        sheet_.end_row();
    }

    // The sum of bases and taxes where all of them could be counted.
    std::string summed(int bases, int taxes, bool net) const
    {
        const bool within = quote_.stated == PricesStated::with_tax;
        const std::string all = net == within ? fmt::format("SUM({}){}SUM({})", of_rates(bases), net ? "-" : "+", of_rates(taxes)) : fmt::format("SUM({})", of_rates(bases));
        return fmt::format("IF(COUNT({})<{},\"\",{})", of_rates(taxes), figures_.rates.size(), all);
    }

    void add_deposit()
    {
        const std::string total_cell = absolute_cell(made_.rows.total, minor);
        const Share share = tax_share(*quote_.deposit, PricesStated::without_tax);
        const std::string part = fmt::format("IF({0}*{1}>{2},{3},ROUNDDOWN({0}*{1}/{4},0))", total_cell, share.numerator, greatest_product, text_in_formula(say(Caption::too_great, w_)), share.denominator);
        const std::string formula = fmt::format("IF(ISNUMBER({0}),IF({0}<{1},\"\",{2}),\"\")", total_cell, in_minor("deposit_from"), part);
        made_.rows.deposit = sheet_.row();
        sheet_.put(what, say(Caption::deposit, w_), style::label());
        put_amount(formula, figures_.deposit ? count_of(*figures_.deposit) : CellContent(std::string()), "deposit", style::figure());
        sheet_.end_row();
    }
};

}  // namespace

DeskWriter with_totals(DeskWriter desk)
{
    Totals totals(std::move(desk));
    if (!totals.is_empty()) totals.add_totals();
    return totals;
}

}  // namespace shaftcut::quote_book
