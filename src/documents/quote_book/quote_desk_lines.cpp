// What is typed in, and the lines with the minimum charge and the discount.
#include "quote/quote_words.hpp"
#include "quote_book/quote_desk_writer.hpp"

namespace shaftcut::quote_book {
namespace {

namespace style = workbook::style;
namespace words = quote_book_words;

constexpr double most_quantity = 100'000;

class Lines : public DeskWriter {
public:
    explicit Lines(DeskWriter begun) : DeskWriter(std::move(begun)) {}

    void add()
    {
        add_inputs();
        add_lines();
    }

private:
    // What is typed in, or stands fixed: its caption over two columns, its value in the third.
    void add_value(const std::string& known, Caption caption, CellContent value, const CellStyle& look, Caption remark)
    {
        sheet_.put(0, say(caption, w_), style::label(), 2);
        sheet_.put(quantity, std::move(value), look);
        if (look.input && known == "discount_percent") sheet_.allow_numbers(quantity, 0, 100, say(Caption::percent_range, w_));
        else if (look.input) sheet_.allow_numbers(quantity, 0, static_cast<double>(most_price), say(Caption::price_range, w_));
        sheet_.put(unit, say(remark, w_), style::small(), 5);
        name(known, quantity);
        sheet_.end_row(18);
    }

    static CellContent percent(const std::optional<Percent>& value) { return value ? CellContent(static_cast<double>(value->thousandths) / 1000) : CellContent(); }

    void add_inputs()
    {
        section(Caption::inputs);
        add_value("hourly_rate", Caption::hourly_rate, money(quote_.hourly_rate), money(style::input()), Caption::hourly_rate_remark);
        if (!figures_.has_charges) return;
        const bool by_percent = quote_.discount && quote_.discount->percent;
        const Money off = quote_.discount ? quote_.discount->amount : Money();
        add_value("discount_percent", Caption::discount_percent, percent(by_percent ? quote_.discount->percent : std::nullopt), decimals(style::input()), Caption::discount_remark);
        add_value("discount_amount", Caption::discount_amount, off == Money() ? CellContent() : money(off), money(style::input()), Caption::discount_remark);
        if (quote_.minimum) add_value("minimum_charge", Caption::minimum, money(quote_.minimum), money(style::figure()), Caption::minimum_remark);
        if (!quote_.deposit || !figures_.ordered) return;
        add_value("deposit_percent", Caption::deposit_percent, percent(quote_.deposit), decimals(style::figure()), Caption::deposit_remark);
        add_value("deposit_from", Caption::deposit_from, money(quote_.deposit_from), money(style::figure()), Caption::deposit_remark);
    }

    void put_quantity(const QuoteLine& line, const std::string& known)
    {
        const bool known_count = line.missing != NotPriced::minutes;
        sheet_.put(quantity, known_count ? CellContent(static_cast<double>(line.quantity.thousandths) / 1000) : CellContent(), decimals(style::input()));
        sheet_.allow_numbers(quantity, 0, most_quantity, say(Caption::quantity_range, w_));
        name(known + "_quantity", quantity);
        sheet_.put(unit, words::unit_name(line.unit, w_), style::label());
    }

    // Of work the hourly rate, which is typed in once.
    void put_price(const QuoteLine& line, const std::string& known)
    {
        if (std::holds_alternative<Labour>(line.what)) {
            const auto now = quote_.hourly_rate ? std::variant<double, std::string>(units_of(*quote_.hourly_rate, quote_.currency)) : std::variant<double, std::string>(std::string());
            sheet_.put(price, CellFormula{"IF(hourly_rate=\"\",\"\",hourly_rate)", now}, money(style::figure()));
        } else {
            sheet_.put(price, money(line.each), money(style::input()));
            sheet_.allow_numbers(price, 0, static_cast<double>(most_price), say(Caption::price_range, w_));
        }
        name(known + "_price", price);
    }

    void put_beside(const Figures::Line& one, const std::string& known)
    {
        const int row = sheet_.row();
        if (!figures_.is_estimate) {
            sheet_.put(beside, one.line->missing ? say_not_priced(*one.line, w_) : std::string(), style::label());
            return;
        }
        sheet_.put(beside, money(one.line->up_to), money(style::input()));
        sheet_.allow_numbers(beside, 0, static_cast<double>(most_price), say(Caption::price_range, w_));
        name(known + "_most", beside);
        const CellContent now = one.state == State::counted ? count_of(one.most) : now_of(one);
        sheet_.put(most, CellFormula{fmt::format("IF({0}=\"\",{1},{2})", cell(row, beside), cell(row, minor), in_minor(cell(row, beside))), now_of(now)}, style::figure());
    }

    void add_line(const Figures::Line& one, std::size_t at)
    {
        const QuoteLine& line = *one.line;
        const std::string known = fmt::format("line_{}", at), count = cell(sheet_.row(), quantity), each = cell(sheet_.row(), price);
        sheet_.put(number, static_cast<double>(at), style::figure());
        sheet_.put(what, shaftcut::say(line.what, w_), style::label());
        put_quantity(line, known);
        put_price(line, known);
        const std::string whole = product(fmt::format("ROUND({}*1000,0)", count), in_minor(each), line.per * 1000);
        put_amount(fmt::format("IF(OR({}=\"\",{}=\"\"),{},{})", count, each, text_in_formula(say(Caption::not_priced, w_)), whole), now_of(one), known + "_amount", style::figure());
        sheet_.put(tax, static_cast<double>(line.tax.percent.thousandths) / 1000, decimals(style::figure()));
        put_beside(one, known);
        sheet_.put(rate, static_cast<double>(one.rate + 1), style::figure());
        sheet_.end_row();
    }

    // One of the lines that follow from the others.
    void add_charge(const std::string& text, const std::string& formula, const std::optional<Money>& now, const std::string& known, std::size_t of_rate)
    {
        sheet_.put(what, text, style::label());
        put_amount("IF(open_lines>0,\"\"," + formula + ")", when_counted(now), known, style::figure());
        sheet_.put(tax, static_cast<double>(figures_.rates[of_rate].percent.thousandths) / 1000, decimals(style::figure()));
        sheet_.put(rate, static_cast<double>(of_rate + 1), style::figure());
        sheet_.end_row();
    }

    void add_minimum()
    {
        made_.rows.minimum = sheet_.row();
        add_charge(shaftcut::say(LineFor(MinimumCharge{}), w_), fmt::format("MAX(0,{}-SUM({}))", in_minor("minimum_charge"), range(minor, last_line())), figures_.minimum.value_or(Money()),
                   "minimum_amount", 0);
    }

    void add_discount(std::size_t of_rate, int last)
    {
        const std::string sum = fmt::format("SUMIF({},{},{})", range(rate, last), of_rate + 1, range(minor, last));
        const std::string by_amount = of_rate == 0 ? fmt::format("IF(discount_amount=\"\",0,0-{})", in_minor("discount_amount")) : "0";
        const std::string by_percent = fmt::format("IF(ABS({0}*ROUND(discount_percent*1000,0))>{1},{2},0-ROUND({0}*ROUND(discount_percent*1000,0)/100000,0))", sum, greatest_product,
                                                   text_in_formula(say(Caption::too_great, w_)));
        made_.rows.discounts.push_back(sheet_.row());
        add_charge(say(Caption::off_it, w_), fmt::format("IF(AND(discount_percent<>\"\",discount_amount<>\"\"),\"\",IF(discount_percent<>\"\",{},{}))", by_percent, by_amount),
                   figures_.discounts[of_rate], fmt::format("discount_{}_amount", of_rate + 1), of_rate);
    }

    void put_heads()
    {
        const int last = figures_.is_estimate ? most_tax : base;
        for (int column = 0; column <= last; ++column) sheet_.put(column, words::head(static_cast<words::Column>(column), figures_.is_estimate, quote_.currency, w_), style::table_head());
        sheet_.end_row(28);
    }

    void add_lines()
    {
        section(Caption::lines);
        if (figures_.lines.empty()) {
            sheet_.put(0, say(Caption::nothing_billed, w_), style::small(), 8);
            sheet_.end_row();
            return;
        }
        put_heads();
        made_.rows.first_line = sheet_.row();
        for (std::size_t i = 0; i < figures_.lines.size(); ++i) add_line(figures_.lines[i], i + 1);
        if (!figures_.has_charges) return;
        if (quote_.minimum) add_minimum();
        const int last = sheet_.row() - 1;
        for (std::size_t i = 0; i < figures_.rates.size(); ++i) add_discount(i, last);
    }
};

}  // namespace

DeskWriter with_lines(DeskWriter desk)
{
    Lines lines(std::move(desk));
    lines.add();
    return lines;
}

}  // namespace shaftcut::quote_book
