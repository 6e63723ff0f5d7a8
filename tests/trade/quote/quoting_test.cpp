#include "shaftcut/trade/quote/quoting.hpp"

#include "quote/lines.hpp"
#include "quote/machine_changes.hpp"
#include "shaftcut/trade/quote/totals.hpp"
#include "support/catch.hpp"
#include "support/engine.hpp"
#include "support/jobs.hpp"
#include "support/some_prices.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

// A demonstration's job, quoted with what is asked.
struct Quoted {
    Prices prices = some_prices();
    QuoteRequest request;
    Workshop workshop = test::workshop();
    Catalogue known = catalogue();
    Firm firm;

    QuoteMeans means() const { return {known, workshop, firm, prices, request}; }
    Quote of(const Job& one) const { return quote_job(one, work_up(one, known, workshop, Units::mm), means()); }
};

std::int64_t amount_for(const Quote& quote, PricedWork work)
{
    for (const QuoteLine& line : quote.lines)
        if (const auto* labour = std::get_if<Labour>(&line.what); labour && labour->work == work) return line.amount.value().minor();
    return -1;
}

}  // namespace

TEST_CASE("a cut is charged by what is really cut")
{
    const Quoted some;
    const Quote quote = some.of(job());
    REQUIRE(quote.work.size() == 1);
    REQUIRE(quote.work[0].verdict == Verdict::cut);
    CHECK(quote.verdict == QuoteVerdict::complete);
    const std::int64_t tubes = quote.work[0].tube_cut[Tube::inner] + quote.work[0].tube_cut[Tube::outer];
    CHECK(amount_for(quote, PricedWork::cut_tube) == tubes * 600);
    CHECK(amount_for(quote, PricedWork::deburr) == tubes * 300);
    CHECK(amount_for(quote, PricedWork::grease) == 400);
    Money sum;
    for (const QuoteLine& one : quote.lines) sum = sum + *one.amount;
    REQUIRE(quote.totals);
    CHECK(quote.totals->net == sum);
    CHECK(quote.totals->total == sum + percent_of({21'000}, sum));
    CHECK_FALSE(quote.totals->deposit);
}

TEST_CASE("what has no price is said, and then there is no total")
{
    Quoted some;
    some.prices.minutes.erase(PricedWork::grease);
    const Quote quote = some.of(job());
    CHECK(quote.verdict == QuoteVerdict::incomplete);
    CHECK_FALSE(quote.totals);
    CHECK(std::count_if(quote.lines.begin(), quote.lines.end(), [](const QuoteLine& one) { return one.missing == NotPriced::minutes; }) == 1);
    some = Quoted();
    some.prices.hourly_rate.reset();
    for (const QuoteLine& one : some.of(job()).lines) CHECK(one.missing == NotPriced::hourly_rate);
}

TEST_CASE("a price of nothing is a price")
{
    Quoted some;
    some.prices.services["collection"].each = Money();
    some.request.services = {"collection"};
    const Quote quote = some.of(job());
    CHECK(quote.verdict == QuoteVerdict::complete);
    CHECK(quote.lines.back().amount == Money());
}

TEST_CASE("a refused cut has no price; what was done has one")
{
    const Quoted some;
    Job refused = job();
    refused.fits[0].longest[Range::turning] = measured(1'400);
    const Quote quote = some.of(refused);
    CHECK(quote.verdict == QuoteVerdict::refused);
    REQUIRE(quote.lines.size() == 1);
    CHECK(std::get<Service>(quote.lines[0].what).name == "measuring");
    REQUIRE(quote.totals);
    CHECK(quote.totals->net == minor(3'000));
    CHECK_FALSE(quote.work[0].failing.empty());
    for (const Alternative& one : quote.alternatives) CHECK(one.kind != AlternativeKind::this_shaft);
}

TEST_CASE("the minimum charge is a line of its own, and none at its edge")
{
    Quoted some;
    const Money sum = some.of(job()).totals->net;
    some.prices.minimum = sum;
    CHECK(some.of(job()).totals->net == sum);
    CHECK_FALSE(std::holds_alternative<MinimumCharge>(some.of(job()).lines.back().what));
    some.prices.minimum = sum + minor(1);
    const Quote more = some.of(job());
    CHECK(more.totals->net == sum + minor(1));
    REQUIRE(std::holds_alternative<MinimumCharge>(more.lines.back().what));
    CHECK(more.lines.back().amount == minor(1));
}

TEST_CASE("a line's quantity is what was asked, and every total follows")
{
    Quoted some;
    const Quote before = some.of(job());
    some.request.quantities = {{1, {20'000}}};
    const Quote after = some.of(job());
    REQUIRE(after.lines.size() == before.lines.size());
    CHECK(after.lines[0].quantity == BilledQuantity{20'000});
    CHECK(after.lines[0].amount == minor(2'000));  // 20 minutes at 60.00 an hour
    CHECK(after.lines[1].amount == before.lines[1].amount);
    CHECK(after.totals.value().net == before.totals.value().net - *before.lines[0].amount + minor(2'000));
    CHECK_FALSE(asks_of_no_line(after, some.request));
    some.request.quantities = {{before.lines.size() + 1, {1'000}}};
    CHECK(asks_of_no_line(some.of(job()), some.request));
}

TEST_CASE("minutes that the configuration does not state are stated by the quantity asked; a charge has none")
{
    Quoted some;
    some.prices.minutes.erase(PricedWork::cut_tube);
    CHECK(some.of(job()).verdict == QuoteVerdict::incomplete);
    some.request.quantities = {{1, {12'000}}};
    CHECK(some.of(job()).verdict == QuoteVerdict::complete);
    some.request.discount = minor(100);
    some.request.quantities = {{some.of(job()).lines.size(), {1'000}}};
    CHECK(asks_of_no_line(some.of(job()), some.request));
}

TEST_CASE("a discount is a line, of each rate its own part")
{
    Quoted some;
    some.request.services = {"collection"};
    some.request.discount = Percent{10'000};
    const Quote quote = some.of(job());
    std::vector<QuoteLine> discounts;
    for (const QuoteLine& one : quote.lines)
        if (std::holds_alternative<Discount>(one.what)) discounts.push_back(one);
    REQUIRE(discounts.size() == 2);
    CHECK(discounts[1].amount == minor(-250));
    CHECK(discounts[1].tax.percent == Percent{9'000});
    some.request.discount = minor(100);
    CHECK(some.of(job()).lines.back().amount == minor(-100));
    CHECK_FALSE(discount_is_too_great(some.of(job())));
    some.request.discount = minor(1'000'000);
    CHECK(discount_is_too_great(some.of(job())));
}

TEST_CASE("an offer holds to a day, counted in the calendar")
{
    Quoted some;
    some.request.date = "2024-01-31";
    CHECK(some.of(job()).dates.valid_until == "2024-03-01");
    some.request.date = "2023-12-15";
    CHECK(some.of(job()).dates.valid_until == "2024-01-14");
}

TEST_CASE("an estimate without a usual line is incomplete")
{
    Quoted some;
    CHECK(quote_before_measuring(job(), some.means()).verdict == QuoteVerdict::incomplete);
    some.prices.ranges["cut, standard"] = {minor(7'500), minor(9'500), {}};
    const Quote quote = quote_before_measuring(job(), some.means());
    CHECK(quote.verdict == QuoteVerdict::estimate);
    CHECK(quote.total_up_to.value() - quote.totals->total == minor(2'420));
}

TEST_CASE("a change at the machine is made in the job, and the checks say whether it serves")
{
    Quoted some;
    Job refused = job();
    refused.fits[0].longest[Range::turning] = measured(1'250);
    refused.fits[0].longest[Range::standing].reset();
    const WorkOrder order = work_up(refused, some.known, some.workshop, Units::mm);
    REQUIRE(order.verdict == Verdict::refused);
    std::size_t changes = 0;
    for (const WayOut& way : order.ways_out) {
        const auto changed = changed_by(way, refused, order);
        if (!changed) continue;
        ++changes;
        CHECK(work_up(*changed, some.known, some.workshop, Units::mm).verdict != Verdict::refused);
    }
    CHECK(changes > 0);
    CHECK_FALSE(changed_by(WayOut(Remedy::measure_halves), refused, order));
}
