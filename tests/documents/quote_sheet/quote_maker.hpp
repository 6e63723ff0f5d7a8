// Quotes line by line, with invented names and prices.
#pragma once

#include <string>
#include <vector>

#include "shaftcut/trade/quote/totals.hpp"

namespace shaftcut::test {

// A quote as it grows, by prices of one workshop.
class QuoteMaker {
public:
    explicit QuoteMaker(std::string number, Currency currency = {}, PricesStated stated = PricesStated::without_tax)
    {
        prices_.currency = std::move(currency);
        prices_.tax = {21'000};
        prices_.stated = stated;
        quote.number = std::move(number);
        quote.customer = "Demo customer (invented)";
        quote.phone = "555 0199";
        quote.firm = {"Demonstration workshop (invented)", "1 Example Street, Nowhere", "555 0100", "desk@workshop.example", "XX 000 111 222", "HR 0000"};
        quote.dates = {"2026-11-28", "2026-12-28"};
        quote.currency = prices_.currency;
        quote.tax_name = "VAT";
        quote.terms = "Invented terms for demonstration: paid within 14 days; old parts go back to the customer on request.";
        quote.stated = stated;
        quote.binding = Binding::fixed;
        quote.valid_days = 30;
        quote.usual_tax = prices_.tax;
        quote.work = {existing()};
    }

    static QuotedWork existing()
    {
        QuotedWork work;
        work.order = "K-1042";
        work.machine = "trailed mower (invented)";
        work.shaft_number = "S 77";
        work.tractors = {"Demo tractor 90", "Demo tractor 110"};
        work.shaft = {"Alder 2", Shape::lemon, Role::primary, 540, 2018};
        work.verdict = Verdict::cut;
        for (const Tube tube : both_tubes) work.tube_cut[tube] = work.guard_cut[tube] = true;
        return work;
    }

    QuoteMaker& rate(Money of_an_hour)
    {
        quote.hourly_rate = prices_.hourly_rate = of_an_hour;
        return *this;
    }
    QuoteMaker& deposit(Percent percent, Money from)
    {
        quote.deposit = prices_.deposit = percent;
        quote.deposit_from = prices_.deposit_from = from;
        return *this;
    }
    QuoteMaker& minimum(Money least)
    {
        quote.minimum = prices_.minimum = least;
        return *this;
    }
    QuoteMaker& labour(PricedWork work, std::int64_t thousandths)
    {
        return add({Labour{work}, {thousandths}, QuoteUnit::minute, prices_.hourly_rate, 60, {}, {}, usual(), prices_.hourly_rate ? std::nullopt : std::optional(NotPriced::hourly_rate)});
    }
    QuoteMaker& part(const std::string& name, std::int64_t count, std::optional<Money> each)
    {
        PartName part;
        part.known = name;
        return add({PartSold{part}, {count * 1000}, QuoteUnit::piece, each, 1, {}, {}, usual(), each ? std::nullopt : std::optional(NotPriced::part), 2});
    }
    QuoteMaker& tube(const std::string& profile, std::int64_t millimetres, Money per_metre)
    {
        return add({TubeSold{profile}, {millimetres}, QuoteUnit::metre, per_metre, 1, {}, {}, usual(), std::nullopt, 3});
    }
    QuoteMaker& shaft(const std::string& series, Money each) { return add({ShaftSold{series, Length::millimetres(705)}, {1000}, QuoteUnit::piece, each, 1, {}, {}, usual(), std::nullopt, 5}); }
    QuoteMaker& service(const std::string& name, Money each, std::optional<OwnTax> tax = {})
    {
        return add({Service{name}, {1000}, QuoteUnit::piece, each, 1, {}, {}, tax.value_or(usual())});
    }
    QuoteMaker& range(const std::string& name, Money from, Money to)
    {
        add({Service{name}, {1000}, QuoteUnit::piece, from, 1, {}, {}, usual()});
        quote.lines.back().up_to = to;
        return *this;
    }
    // A line of its own, with an amount only.
    QuoteMaker& charge(LineFor what, Money amount)
    {
        return add({std::move(what), {1000}, QuoteUnit::flat, amount, 1, {}, {}, usual()});
    }

    // With its totals, where all has a price.
    Quote finished(QuoteVerdict verdict)
    {
        quote.verdict = verdict;
        quote.totals = totals(quote.lines, verdict == QuoteVerdict::complete);
        if (verdict == QuoteVerdict::estimate) {
            std::vector<QuoteLine> most = quote.lines;
            for (QuoteLine& line : most) line.amount = line.up_to.value_or(*line.amount);
            quote.total_up_to = totals(most, false)->total;
        }
        return quote;
    }
    std::optional<QuoteTotals> totals(const std::vector<QuoteLine>& lines, bool ordered) const
    {
        for (const QuoteLine& line : lines)
            if (!line.amount) return std::nullopt;
        return totals_of(lines, prices_, ordered);
    }

    Quote quote;

private:
    OwnTax usual() const { return {prices_.tax, {}}; }

    QuoteMaker& add(QuoteLine line)
    {
        if (line.each && !line.missing) line.amount = line_amount(*line.each, line.quantity, line.per);
        quote.lines.push_back(std::move(line));
        return *this;
    }

    Prices prices_;
};

inline Money cents(std::int64_t count) { return Money::minor_units(count); }

}  // namespace shaftcut::test
