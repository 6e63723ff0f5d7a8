#include "quote_book/quote_figures.hpp"

#include <algorithm>
#include <numeric>

namespace shaftcut::quote_book {
namespace {

constexpr std::int64_t hundred_percent = 100'000;

bool is_charge(const QuoteLine& line) { return std::holds_alternative<MinimumCharge>(line.what) || std::holds_alternative<Discount>(line.what); }

bool is_ordered(const QuoteLine& line)
{
    return std::holds_alternative<PartSold>(line.what) || std::holds_alternative<TubeSold>(line.what) || std::holds_alternative<ShaftSold>(line.what);
}

// Whether two whole numbers may be multiplied in the workbook.
bool is_too_great(std::int64_t one, std::int64_t other) { return other != 0 && std::abs(one) > greatest_product / std::abs(other); }

std::size_t rate_of(std::vector<OwnTax>& rates, const OwnTax& tax)
{
    const auto found = std::find_if(rates.begin(), rates.end(), [&](const OwnTax& one) { return one.percent == tax.percent; });
    if (found != rates.end()) {
        if (found->note.empty()) found->note = tax.note;
        return static_cast<std::size_t>(found - rates.begin());
    }
    rates.push_back(tax);
    return rates.size() - 1;
}

Figures::Line counted(const QuoteLine& line, std::size_t rate)
{
    Figures::Line one{&line, rate, Figures::State::counted, {}, {}};
    if (!line.amount) one.state = Figures::State::not_priced;
    else if (is_too_great(line.each->minor(), line.quantity.thousandths)) one.state = Figures::State::too_great;
    else one.amount = line_amount(*line.each, line.quantity, line.per);
    one.most = line.up_to.value_or(one.amount);
    return one;
}

Money sum_of(const Figures& figures, std::size_t rate)
{
    Money sum = rate == 0 && figures.minimum ? *figures.minimum : Money();
    for (const Figures::Line& line : figures.lines)
        if (line.rate == rate) sum = sum + line.amount;
    return sum;
}

std::optional<Money> off(const Quote& quote, Money sum, std::size_t rate)
{
    if (!quote.discount || (!quote.discount->percent && rate > 0)) return Money();
    if (const auto& percent = quote.discount->percent) return is_too_great(sum.minor(), percent->thousandths) ? std::nullopt : std::optional(-percent_of(*percent, sum));
    const auto line = std::find_if(quote.lines.begin(), quote.lines.end(), [](const QuoteLine& one) { return std::holds_alternative<Discount>(one.what); });
    return line == quote.lines.end() ? Money() : line->amount;
}

void add_charges(Figures& figures, const Quote& quote)
{
    Money all;
    for (const Figures::Line& line : figures.lines) all = all + line.amount;
    if (quote.minimum) figures.minimum = std::max(Money(), *quote.minimum - all);
    for (std::size_t rate = 0; rate < figures.rates.size(); ++rate) figures.discounts[rate] = off(quote, sum_of(figures, rate), rate);
}

Figures::Sums sums_of(const Figures& figures, const Quote& quote, Money Figures::Line::* amount)
{
    Figures::Sums sums;
    for (std::size_t rate = 0; rate < figures.rates.size(); ++rate) {
        Money base = figures.has_charges ? *figures.discounts[rate] + (rate == 0 && figures.minimum ? *figures.minimum : Money()) : Money();
        for (const Figures::Line& line : figures.lines)
            if (line.rate == rate) base = base + line.*amount;
        const Percent percent = figures.rates[rate].percent;
        const bool within = quote.stated == PricesStated::with_tax;
        const Money tax = within ? tax_within(percent, base) : percent_of(percent, base);
        sums.bases.push_back(base);
        sums.taxes.push_back(tax);
        sums.net = sums.net + (within ? base - tax : base);
        sums.total = sums.total + (within ? base : base + tax);
    }
    return sums;
}

}  // namespace

Share tax_share(Percent percent, PricesStated stated)
{
    const std::int64_t whole = hundred_percent + (stated == PricesStated::with_tax ? percent.thousandths : 0), common = std::gcd(percent.thousandths, whole);
    return {percent.thousandths / common, whole / common};
}

Figures figures_of(const Quote& quote)
{
    Figures figures;
    figures.rates = {{quote.usual_tax, {}}};
    figures.is_estimate = quote.verdict == QuoteVerdict::estimate;
    for (const QuoteLine& line : quote.lines) {
        if (is_charge(line)) continue;
        figures.lines.push_back(counted(line, rate_of(figures.rates, line.tax)));
        figures.open += line.amount ? 0 : 1;
        figures.ordered = figures.ordered || is_ordered(line);
    }
    figures.has_charges = !figures.is_estimate && quote.verdict != QuoteVerdict::refused && !figures.lines.empty();
    figures.counted = !figures.lines.empty() && std::all_of(figures.lines.begin(), figures.lines.end(), [](const Figures::Line& one) { return one.state == Figures::State::counted; });
    if (quote.minimum && figures.has_charges) figures.minimum = Money();
    figures.discounts.assign(figures.rates.size(), Money());
    if (!figures.counted) return figures;
    if (figures.has_charges) add_charges(figures, quote);
    figures.ready = std::all_of(figures.discounts.begin(), figures.discounts.end(), [](const std::optional<Money>& one) { return one.has_value(); });
    if (!figures.ready) return figures;
    figures.sums = sums_of(figures, quote, &Figures::Line::amount);
    figures.most = sums_of(figures, quote, &Figures::Line::most);
    figures.ready = std::accumulate(figures.sums.bases.begin(), figures.sums.bases.end(), Money()) >= Money();
    if (figures.ready && figures.has_charges && figures.ordered && quote.deposit && figures.sums.total >= quote.deposit_from)
        figures.deposit = percent_of_rounded_down(*quote.deposit, figures.sums.total);
    return figures;
}

}  // namespace shaftcut::quote_book
