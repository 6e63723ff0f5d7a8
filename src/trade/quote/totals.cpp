#include <algorithm>

#include "shaftcut/trade/quote/totals.hpp"

namespace shaftcut {
namespace {

// Each reason for a rate once.
void add_note(std::string& notes, const std::string& note)
{
    if (note.empty() || notes.find(note) != notes.npos) return;
    notes += notes.empty() ? note : "; " + note;
}

// The sum of the lines of each rate, the usual one first where any line has it, then as they first stand.
std::vector<TaxSum> sums_by_rate(const std::vector<QuoteLine>& lines, Percent usual)
{
    std::vector<TaxSum> sums;
    for (const QuoteLine& line : lines) {
        auto sum = std::find_if(sums.begin(), sums.end(), [&](const TaxSum& one) { return one.rate.percent == line.tax.percent; });
        if (sum == sums.end()) sum = sums.insert(sums.end(), {line.tax, {}, {}});
        add_note(sum->rate.note, line.tax.note);
        sum->base = sum->base + *line.amount;
    }
    std::stable_partition(sums.begin(), sums.end(), [&](const TaxSum& sum) { return sum.rate.percent == usual; });
    return sums;
}

void take_tax(TaxSum& sum, PricesStated stated)
{
    if (stated == PricesStated::without_tax) {
        sum.amount = percent_of(sum.rate.percent, sum.base);
        return;
    }
    sum.amount = tax_within(sum.rate.percent, sum.base);
    sum.base = sum.base - sum.amount;
}

}  // namespace

QuoteTotals totals_of(const std::vector<QuoteLine>& lines, const Prices& prices, bool ordered)
{
    QuoteTotals totals;
    totals.tax = sums_by_rate(lines, prices.tax);
    Money tax;
    for (TaxSum& sum : totals.tax) {
        take_tax(sum, prices.stated);
        totals.net = totals.net + sum.base;
        tax = tax + sum.amount;
    }
    totals.total = totals.net + tax;
    if (ordered && prices.deposit && totals.total >= prices.deposit_from) totals.deposit = percent_of_rounded_down(*prices.deposit, totals.total);
    if (prices.cash_rounding) totals.in_cash = rounded_to(totals.total, *prices.cash_rounding);
    return totals;
}

}  // namespace shaftcut
