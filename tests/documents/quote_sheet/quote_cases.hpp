// Quotes of every kind, for the papers' tests.
#pragma once

#include <string>
#include <vector>

#include "documents/quote_sheet/quote_maker.hpp"

namespace shaftcut::test {

struct QuoteCase {
    std::string name;
    Quote quote;
};

// The bench's usual work on a shaft that is cut.
inline QuoteMaker cut_lines(QuoteMaker maker)
{
    maker.labour(PricedWork::cut_tube, 12'000).labour(PricedWork::cut_guard, 6'000).labour(PricedWork::deburr, 6'000);
    return maker.labour(PricedWork::grease, 4'000).labour(PricedWork::refit, 5'000).labour(PricedWork::closing_test, 6'000);
}

inline Quote complete_quote(Currency currency = {}, PricesStated stated = PricesStated::without_tax)
{
    const std::int64_t unit = currency.digits == 0 ? 1 : currency.digits == 2 ? 100 : 1000;
    QuoteMaker maker("K-1042", currency, stated);
    maker.rate(cents(62 * unit)).deposit({25'000}, cents(30 * unit)).minimum(cents(35 * unit));
    maker = cut_lines(maker).part("cross 22 x 54", 2, cents(18 * unit + 2 * unit / 5)).part("lubrication nipple (invented)", 2, cents(0));
    maker.service("collection", cents(25 * unit), OwnTax{{9'000}, "carriage, at the invented lower rate"});
    maker.quote.lead_days = 2;
    maker.quote.work.front().condition.emplace().crosses = CrossWear::worn;
    maker.quote.work.front().condition->guard = Completeness::damaged;
    maker.quote.work.front().condition->tubes = TubeState::straight;
    return maker.finished(QuoteVerdict::complete);
}

inline Alternative alternative(AlternativeKind kind, const QuoteMaker& maker, bool ordered, std::optional<int> days)
{
    Alternative made;
    made.kind = kind;
    made.lines = maker.quote.lines;
    made.totals = maker.totals(made.lines, ordered);
    made.lead_days = days;
    return made;
}

inline std::vector<Alternative> alternatives()
{
    const auto begun = [] { return QuoteMaker("").rate(cents(6'200)).deposit({25'000}, cents(20'000)); };
    std::vector<Alternative> list;
    list.push_back(alternative(AlternativeKind::change_at_machine, cut_lines(begun().service("lift stop", cents(1'800))), false, 0));
    list.back().change = LiftRangeServed{"", Range::turning, Length::millimetres(400), Length::millimetres(900), Length::millimetres(812), std::nullopt};
    list.back().is_cut = list.back().cheapest = true;
    list.push_back(alternative(AlternativeKind::new_shaft, begun().shaft("Larch 6", cents(26'400)), true, 5));
    list.back().series = "Larch 6";
    list.back().closed = Length::millimetres(705);
    list.back().soonest = true;
    QuoteMaker made = begun();
    for (const PricedWork work : {PricedWork::pieces, PricedWork::outer_yoke, PricedWork::inner_yoke, PricedWork::crosses}) made.labour(work, 8'000);
    made.tube("lemon tube 43 x 3.4", 705, cents(3'150)).tube("guard tube 80", 640, cents(940));
    for (const char* name : {"cross 22 x 54", "tube yoke (invented)", "guard bearing (invented)", "chain (invented)", "pin (invented)"}) made.part(name, 2, cents(1'840));
    list.push_back(alternative(AlternativeKind::made_to_order, made, true, 5));
    list.back().series = "Alder 2";
    list.back().closed = Length::millimetres(690);
    return list;
}

inline Quote refused_quote()
{
    QuoteMaker maker("K-1050");
    maker.rate(cents(6'200)).service("measuring", cents(3'000));
    QuotedWork& work = maker.quote.work.front();
    work.verdict = Verdict::refused;
    for (const Tube tube : both_tubes) work.tube_cut[tube] = work.guard_cut[tube] = false;
    work.failing = {CheckId::overlap_turning, CheckId::overlap_standing, CheckId::locking};
    maker.quote.alternatives = alternatives();
    return maker.finished(QuoteVerdict::refused);
}

// A list of one customer's orders.
inline Quote long_quote()
{
    QuoteMaker maker("autumn-quote-Demo customer (invented)");
    maker.rate(cents(6'200)).deposit({25'000}, cents(30'000));
    maker.quote.work.clear();
    for (int order = 1; order <= 8; ++order) {
        QuotedWork work = QuoteMaker::existing();
        work.order = "B-" + std::to_string(order);
        work.made_to_order = true;
        work.verdict.reset();
        work.count = order;
        maker.quote.work.push_back(work);
        maker.labour(PricedWork::pieces, 6'000 * order).labour(PricedWork::crosses, 14'000 * order).tube("lemon tube 43 x 3.4", 705 * order, cents(3'150));
        maker.part("cross 22 x 54", 2 * order, cents(1'840)).part("tube yoke of order " + work.order + " (invented)", order, cents(2'215));
    }
    maker.quote.lead_days = 12;
    return maker.finished(QuoteVerdict::complete);
}

inline Quote incomplete_quote()
{
    QuoteMaker maker("K-1043");
    maker.labour(PricedWork::cut_tube, 12'000).part("cross 22 x 54", 2, std::nullopt).service("collection", cents(2'500));
    maker.quote.firm = {};
    maker.quote.dates = {};
    maker.quote.valid_days.reset();
    return maker.finished(QuoteVerdict::incomplete);
}

inline Quote estimate_before_measuring()
{
    QuoteMaker maker("K-1044");
    maker.quote.binding = Binding::estimate;
    maker.quote.work.front().verdict.reset();
    maker.quote.work.front().tube_cut = maker.quote.work.front().guard_cut = {};
    maker.range("cut, standard", cents(7'500), cents(9'500)).service("measuring", cents(3'000));
    return maker.finished(QuoteVerdict::estimate);
}

inline Quote charged_quote()
{
    QuoteMaker maker("K-1045");
    maker.rate(cents(6'200)).minimum(cents(3'500)).labour(PricedWork::closing_test, 6'000);
    maker.charge(MinimumCharge{}, cents(3'500 - 620)).charge(Discount{Percent{5'000}}, -percent_of({5'000}, cents(3'500)));
    maker.quote.discount = Discount{Percent{5'000}};
    maker.quote.binding = Binding::estimate;
    maker.quote.work.front().verdict = Verdict::fits;
    maker.quote.work.front().tube_cut = maker.quote.work.front().guard_cut = {};
    return maker.finished(QuoteVerdict::complete);
}

inline Quote to_choose_from()
{
    Quote quote = complete_quote();
    // This shaft comes first where it may be cut: nothing is to be changed at the machine.
    quote.alternatives = alternatives();
    Alternative& own = quote.alternatives.front();
    own.kind = AlternativeKind::this_shaft;
    own.change.reset();
    std::erase_if(own.lines, [](const QuoteLine& line) { return std::holds_alternative<Service>(line.what); });
    own.totals = quote.totals;
    quote.alternatives.pop_back();
    Alternative open = quote.alternatives.back();
    open.series = "Rowan 5";
    open.soonest = false;
    open.lines.front().amount.reset();
    open.lines.front().missing = NotPriced::shaft;
    open.totals.reset();
    open.lead_days.reset();
    quote.alternatives.push_back(open);
    return quote;
}

// More than stand in a row, some without a price.
inline Quote many_to_choose_from()
{
    Quote quote = to_choose_from();
    const Alternative open = quote.alternatives.back();
    for (const char* series : {"Hazel 3", "Elm 4"}) {
        quote.alternatives.push_back(open);
        quote.alternatives.back().series = series;
    }
    return quote;
}

inline Quote with_long_names()
{
    Quote quote = to_choose_from();
    quote.number = "A-VERY_LONG.ORDER-number-of-forty-letters";
    quote.customer = std::string(200, 'W');
    quote.firm.name = quote.firm.address = "";
    while (quote.firm.name.size() < 180) quote.firm.name += "Landwirtschaftlicher Lohnbetrieb ";
    while (quote.firm.address.size() < 180) quote.firm.address += "Łąka Żółć Ελλάδα Ферма ";
    quote.work.front().machine = std::string(150, 'M');
    for (QuoteLine& line : quote.lines)
        if (auto* part = std::get_if<PartSold>(&line.what)) part->part.known = std::string(120, 'P') + " of a very long name that does not end soon";
    quote.lines.back().amount = quote.lines.back().each = cents(900'000'000'000'00);
    return quote;
}

inline std::vector<QuoteCase> quote_cases()
{
    Quote estimate = complete_quote();
    estimate.binding = Binding::estimate;
    estimate.number = "K-1046";
    estimate.lead_days.reset();
    Quote nothing_serves = refused_quote();
    nothing_serves.alternatives.clear();
    nothing_serves.lines.clear();
    nothing_serves.totals.reset();
    nothing_serves.work.front().made_to_order = true;
    return {
        {"complete", complete_quote()},
        {"complete, with tax", complete_quote({}, PricesStated::with_tax)},
        {"estimate", estimate},
        {"yen", complete_quote({"JPY", 0})},
        {"dinar", complete_quote({"KWD", 3}, PricesStated::with_tax)},
        {"charged", charged_quote()},
        {"incomplete", incomplete_quote()},
        {"refused", refused_quote()},
        {"refused, nothing serves", nothing_serves},
        {"before measuring", estimate_before_measuring()},
        {"to choose from", to_choose_from()},
        {"many to choose from", many_to_choose_from()},
        {"list", long_quote()},
        {"long names", with_long_names()},
    };
}

}  // namespace shaftcut::test
