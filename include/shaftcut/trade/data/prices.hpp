// What a workshop charges, as its configuration states it: nothing is computed here. What it does not state is not known, never nothing.
#pragma once

#include <compare>
#include <map>
#include <optional>
#include <string>

#include "shaftcut/trade/data/terms.hpp"
#include "shaftcut/words/length.hpp"
#include "shaftcut/words/money.hpp"

namespace shaftcut {

// What is done at the bench: to a shaft that is cut, each cut-… and deburr once a piece and the others once a shaft; and to one that is made to
// order, once a shaft.
enum class PricedWork { cut_tube, cut_guard, deburr, grease, refit, closing_test, pieces, outer_yoke, inner_yoke, crosses, closed, guards, join, fittings, chains, papers };
template <> struct Words<PricedWork> {
    static constexpr std::array all{"cut-tube", "cut-guard", "deburr", "grease", "refit", "closing-test", "pieces", "outer-yoke", "inner-yoke",
                                    "crosses",  "closed",    "guards", "join",   "fittings", "chains",     "papers"};
};

// Whether prices are stated without their tax or with it; whether an offer binds.
enum class PricesStated { without_tax, with_tax };
template <> struct Words<PricesStated> { static constexpr std::array all{"without-tax", "with-tax"}; };
enum class Binding { fixed, estimate };
template <> struct Words<Binding> { static constexpr std::array all{"fixed", "estimate"}; };

// A tax rate that is not the usual one, and why.
struct OwnTax {
    Percent percent;
    std::string note;  // may be empty
    auto operator<=>(const OwnTax&) const = default;
};

// `each`: of one, or of one metre. 0 is a price: free of charge.
struct Price {
    Money each;
    std::optional<int> lead_days;  // working days until it is there
    std::optional<OwnTax> tax;
};

// From one amount to another: a usual line of an estimate.
struct PriceRange {
    Money from, to;
    std::optional<OwnTax> tax;
};

// A new shaft as it is sold, by its closed length at its series' own reference.
struct ShaftAsSold {
    std::string series;
    Length closed;
    auto operator<=>(const ShaftAsSold&) const = default;
};

// A service that makes a shaft serve by changing the machine, as `services` name it.
enum class MachineChange { lift_stop, drawbar_stop, pin_hole, position_stop };
template <> struct Words<MachineChange> { static constexpr std::array all{"lift-stop", "drawbar-stop", "pin-hole", "position-stop"}; };

struct Prices {
    Currency currency;
    Percent tax;
    std::string tax_name;                  // "VAT"
    PricesStated stated = PricesStated::without_tax;
    std::optional<Money> hourly_rate;
    std::optional<Money> minimum;          // of the whole bill, stated as prices are
    std::optional<int> valid_days;
    std::optional<Percent> deposit;        // of the total, where parts are ordered or made
    Money deposit_from;                    // no deposit of a smaller total
    Binding binding = Binding::estimate;
    std::optional<Money> cash_rounding;    // the smallest coin

    std::map<PricedWork, BilledQuantity> minutes;
    std::map<std::string, Price> parts;    // by the catalogue's names
    std::map<std::string, Price> profiles; // of a metre, by profile_of()
    std::map<ShaftAsSold, Price> shafts;
    std::map<std::string, Price> services;
    std::map<std::string, PriceRange> ranges;  // of services
    std::string terms;                     // may be empty
};

}  // namespace shaftcut
