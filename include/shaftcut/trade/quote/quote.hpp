// What a job costs: lines, totals and what else could be done instead. Only what the checks let be done has a price, and without every line's there
// are no totals.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "shaftcut/trade/advice/findings.hpp"
#include "shaftcut/trade/build/build_plan.hpp"
#include "shaftcut/trade/data/firm.hpp"
#include "shaftcut/trade/data/prices.hpp"
#include "shaftcut/trade/order/work_order.hpp"

namespace shaftcut {

// Complete: every line has its price. Estimate: before anything was measured.
enum class QuoteVerdict { complete, incomplete, refused, estimate };
template <> struct Words<QuoteVerdict> { static constexpr std::array all{"complete", "incomplete", "refused", "estimate"}; };

// What a line is for.
struct Labour { PricedWork work = PricedWork::cut_tube; };
struct PartSold { PartName part; };
struct TubeSold { std::string profile; };                    // by the metre of blank, with one kerf a piece
struct ShaftSold { std::string series; Length closed; };     // a new one
struct Service { std::string name; };                        // as the configuration calls it
struct MinimumCharge {};                                     // what lacks to it
struct Discount { std::optional<Percent> percent; Money amount{}; };  // no percent: this amount
using LineFor = std::variant<Labour, PartSold, TubeSold, ShaftSold, Service, MinimumCharge, Discount>;

enum class QuoteUnit { piece, minute, metre, flat };
template <> struct Words<QuoteUnit> { static constexpr std::array all{"piece", "min", "m", "flat"}; };

// What is not stated, so that a line has no amount.
enum class NotPriced { minutes, hourly_rate, part, profile, shaft, service };

// `each` is the price of `per` units: labour is counted in minutes at the price of an hour, 60. A line of an estimate may have two amounts.
struct QuoteLine {
    LineFor what;
    BilledQuantity quantity;
    QuoteUnit unit = QuoteUnit::piece;
    std::optional<Money> each;
    std::int64_t per = 1;
    std::optional<Money> amount;    // nothing: not priced
    std::optional<Money> up_to;     // of an estimate's line: the most; `amount` is the least
    OwnTax tax;                     // its rate, and why where it is not the usual one
    std::optional<NotPriced> missing{};
    std::optional<int> lead_days{};
};

struct TaxSum {
    OwnTax rate;
    Money base, amount;  // without the tax; the tax
};

struct QuoteTotals {
    Money net;                    // without tax
    std::vector<TaxSum> tax;      // a rate each, the usual one first
    Money total;                  // with tax: what is paid
    std::optional<Money> deposit; // due on order
    std::optional<Money> in_cash; // the total to the smallest coin
};

// What could be done instead, in the order in which it is offered.
enum class AlternativeKind { change_at_machine, this_shaft, new_shaft, made_to_order };
template <> struct Words<AlternativeKind> { static constexpr std::array all{"change-at-machine", "this-shaft", "new-shaft", "made-to-order"}; };

struct Alternative {
    AlternativeKind kind = AlternativeKind::this_shaft;
    std::optional<WayOut> change{};            // at the machine
    std::string series{};                      // of a new shaft, or one made to order
    std::optional<Length> closed{};            // of that, at its series' own reference
    bool is_cut = false;                       // after a cut; else it fits as it is, or is made to fit
    std::vector<QuoteLine> lines{};
    std::optional<QuoteTotals> totals{};       // nothing: incomplete
    std::optional<int> lead_days{};            // until all its parts are there; nothing: not known
    bool cheapest = false, soonest = false;    // of those that are complete
};

// A piece of work that is quoted: one shaft that exists, or alike ones made to order.
struct QuotedWork {
    std::string order, machine, shaft_number;
    std::vector<std::string> tractors;
    ShaftTitle shaft;
    int count = 1;
    bool made_to_order = false;
    bool held = false;                         // to be made, and something is still to be asked: not offered
    std::optional<Verdict> verdict;            // of a shaft that exists; nothing before it was measured
    PerEach<Tube, bool> tube_cut{}, guard_cut{};
    std::optional<Condition> condition;        // what was found and is not included
    std::vector<CheckId> failing;              // why it is refused
};

struct QuoteDates {
    std::string date;         // YYYY-MM-DD, or empty
    std::string valid_until;  // the same
};

struct Quote {
    std::string number;       // the order's; of a list LIST-quote-CUSTOMER
    std::string customer, phone;
    Units units = Units::mm;
    Firm firm;
    QuoteDates dates;
    QuoteVerdict verdict = QuoteVerdict::incomplete;
    Currency currency;
    std::string tax_name, terms;
    PricesStated stated = PricesStated::without_tax;
    Binding binding = Binding::estimate;
    std::optional<int> valid_days;
    std::optional<Percent> deposit;
    Money deposit_from;                     // no deposit of a smaller total
    std::optional<Money> hourly_rate, minimum;
    Percent usual_tax;
    std::optional<Discount> discount;
    std::vector<QuotedWork> work;
    std::vector<QuoteLine> lines;           // of a refused cut: what was done all the same
    std::optional<QuoteTotals> totals;      // nothing: a line is not priced, or there is none
    std::optional<Money> total_up_to;       // of an estimate: the most, with tax
    std::vector<Alternative> alternatives;
    std::optional<int> lead_days;           // working days from the order, where known
};

}  // namespace shaftcut
