#include "shaftcut/trade/quote/quoting.hpp"

#include <algorithm>

#include "day.hpp"
#include "quote/alternatives.hpp"
#include "quote/lines.hpp"
#include "shaftcut/trade/quote/totals.hpp"

namespace shaftcut {
namespace {

const std::string measuring = "measuring";  // the service

std::string days_later(const std::string& date, int days)
{
    const auto day = parse_day(date);
    return day ? day_text(later(*day, days)) : std::string();
}

// What the workshop says of all its quotes.
Quote begun(const QuoteMeans& means, const std::string& own_date)
{
    const Prices& prices = means.prices;
    Quote quote;
    quote.firm = means.firm;
    quote.dates.date = means.request.date.empty() ? own_date : means.request.date;
    if (prices.valid_days) quote.dates.valid_until = days_later(quote.dates.date, *prices.valid_days);
    quote.currency = prices.currency;
    quote.tax_name = prices.tax_name;
    quote.terms = prices.terms;
    quote.stated = prices.stated;
    quote.binding = prices.binding;
    quote.valid_days = prices.valid_days;
    quote.deposit = prices.deposit;
    quote.deposit_from = prices.deposit_from;
    quote.hourly_rate = prices.hourly_rate;
    quote.minimum = prices.minimum;
    quote.usual_tax = prices.tax;
    if (const auto& discount = means.request.discount) quote.discount = std::holds_alternative<Percent>(*discount) ? Discount{std::get<Percent>(*discount), {}} : Discount{{}, std::get<Money>(*discount)};
    return quote;
}

void add_services(std::vector<QuoteLine>& lines, const QuoteMeans& means)
{
    for (const std::string& name : means.request.services) lines.push_back(LineMaker(means.prices).service(name));
}

void finish(Quote& quote, std::vector<QuoteLine> lines, const QuoteMeans& means)
{
    quote.lines = with_charges(with_quantities(merged(lines), means.request), means);
    const bool ordered = any_ordered(quote.lines), priced = all_priced(quote.lines);
    if (ordered) quote.lead_days = lead_days_of(quote.lines);
    if (priced && !quote.lines.empty()) quote.totals = totals_of(quote.lines, means.prices, ordered);
    quote.verdict = priced ? QuoteVerdict::complete : QuoteVerdict::incomplete;
}

QuotedWork work_of(const WorkOrder& order)
{
    QuotedWork work;
    work.order = order.order;
    work.machine = order.machine;
    work.shaft_number = order.shaft.number;
    if (!order.tractor.empty()) work.tractors.push_back(order.tractor);
    for (const FitReading& fit : order.fits)
        if (!fit.tractor.empty() && std::find(work.tractors.begin(), work.tractors.end(), fit.tractor) == work.tractors.end()) work.tractors.push_back(fit.tractor);
    work.shaft = order.shaft_title;
    work.verdict = order.verdict;
    work.condition = order.shaft.condition;
    for (const Tube tube : both_tubes) {
        work.tube_cut[tube] = order.cut && order.cut->plan.cuts_tube(tube);
        work.guard_cut[tube] = order.cut && order.cut->plan.cuts_guard(tube);
    }
    for (const Check& check : order.checks)
        if (check.result == CheckResult::fail) work.failing.push_back(check.id);
    return work;
}

QuotedWork work_of(const BuildPlan& plan)
{
    QuotedWork work;
    work.order = plan.order;
    work.machine = plan.machine;
    work.shaft = plan.shaft_title;
    work.count = plan.count;
    work.made_to_order = true;
    work.held = plan.verdict == BuildVerdict::held;
    if (plan.verdict == BuildVerdict::refused) work.verdict = Verdict::refused;
    for (const FitReading& fit : plan.fits)
        if (!fit.tractor.empty()) work.tractors.push_back(fit.tractor);
    for (const Check& check : plan.checks)
        if (check.result == CheckResult::fail) work.failing.push_back(check.id);
    return work;
}

// What the workshop has done for a shaft that it refuses to cut.
std::vector<QuoteLine> done_all_the_same(const QuoteMeans& means)
{
    const auto& services = means.request.services;
    std::vector<QuoteLine> lines;
    const bool is_asked = std::find(services.begin(), services.end(), measuring) != services.end();
    if (means.prices.services.contains(measuring) && !is_asked) lines.push_back(LineMaker(means.prices).service(measuring));
    add_services(lines, means);
    return lines;
}

// A bill of what was done has neither a minimum nor a discount.
void finish_refused(Quote& quote, const QuoteMeans& means)
{
    quote.lines = with_quantities(merged(done_all_the_same(means)), means.request);
    if (all_priced(quote.lines) && !quote.lines.empty()) quote.totals = totals_of(quote.lines, means.prices, false);
    quote.discount.reset();
    quote.verdict = QuoteVerdict::refused;
}

QuoteLine range_line(const std::string& service, const PriceRange& range, const Prices& prices)
{
    QuoteLine line;
    line.what = Service{service};
    line.tax = range.tax.value_or(OwnTax{prices.tax, {}});
    line.each = line.amount = range.from;
    line.up_to = range.to;
    return line;
}

std::vector<QuoteLine> at_most(std::vector<QuoteLine> lines)
{
    for (QuoteLine& line : lines) line.amount = line.up_to.value_or(*line.amount);
    return lines;
}

}  // namespace

Quote quote_job(const Job& job, const WorkOrder& order, const QuoteMeans& means)
{
    Quote quote = begun(means, order.date);
    quote.number = order.order;
    quote.customer = order.customer;
    quote.phone = order.circumstances.phone;
    quote.units = order.units;
    quote.work = {work_of(order)};
    if (order.verdict == Verdict::refused) {
        finish_refused(quote, means);
    } else {
        std::vector<QuoteLine> lines = lines_of(order, means.prices);
        add_services(lines, means);
        finish(quote, std::move(lines), means);
    }
    if (order.verdict == Verdict::refused || means.request.alternatives) quote.alternatives = alternatives_to(job, order, means);
    return quote;
}

void OrdersToQuote::add(const BuildPlan& plan, const Catalogue& catalogue, const Workshop& workshop)
{
    customer_ = plan.customer;
    units_ = plan.units;
    work_.push_back(work_of(plan));
    all_built_ = all_built_ && plan.built;
    std::vector<QuoteLine> lines = std::move(lines_);
    for (QuoteLine& line : lines_of(plan, catalogue, workshop, prices_)) lines.push_back(std::move(line));
    lines_ = merged(lines);
}

Quote OrdersToQuote::quote(const std::string& number, const QuoteMeans& means) const
{
    Quote quote = begun(means, {});
    quote.number = number;
    quote.customer = customer_;
    quote.units = units_;
    quote.work = work_;
    std::vector<QuoteLine> lines = lines_;
    if (!lines.empty()) add_services(lines, means);
    finish(quote, std::move(lines), means);
    if (!all_built_) quote.verdict = QuoteVerdict::incomplete;
    return quote;
}

Quote quote_before_measuring(const Job& job, const QuoteMeans& means)
{
    Quote quote = begun(means, job.date);
    quote.number = job.order;
    quote.customer = job.customer;
    quote.phone = job.circumstances.phone;
    quote.units = job.units;
    QuotedWork work;
    work.order = job.order;
    work.machine = job.machine;
    if (!job.tractor.empty()) work.tractors.push_back(job.tractor);
    quote.work = {work};
    quote.binding = Binding::estimate;
    for (const auto& [service, range] : means.prices.ranges) quote.lines.push_back(range_line(service, range, means.prices));
    for (QuoteLine& line : done_all_the_same(means)) quote.lines.push_back(std::move(line));
    quote.verdict = QuoteVerdict::estimate;
    if (!all_priced(quote.lines) || means.prices.ranges.empty()) {
        quote.verdict = QuoteVerdict::incomplete;
        return quote;
    }
    quote.totals = totals_of(quote.lines, means.prices, false);
    quote.total_up_to = totals_of(at_most(quote.lines), means.prices, false).total;
    return quote;
}

bool asks_of_no_line(const Quote& quote, const QuoteRequest& request)
{
    const auto is_charge = [](const QuoteLine& line) { return std::holds_alternative<MinimumCharge>(line.what) || std::holds_alternative<Discount>(line.what); };
    return std::any_of(request.quantities.begin(), request.quantities.end(),
                       [&](const QuantityAsked& asked) { return asked.line == 0 || asked.line > quote.lines.size() || is_charge(quote.lines[asked.line - 1]); });
}

bool discount_is_too_great(const Quote& quote)
{
    // Nothing can be taken off one rate's lines that they do not come to.
    const auto below_nothing = [](const std::optional<QuoteTotals>& totals) {
        return totals && std::any_of(totals->tax.begin(), totals->tax.end(), [](const TaxSum& sum) { return sum.base < Money(); });
    };
    return below_nothing(quote.totals) || std::any_of(quote.alternatives.begin(), quote.alternatives.end(), [&](const Alternative& one) { return below_nothing(one.totals); });
}

}  // namespace shaftcut
