// What the desk's sheet shows before anyone changes it, line by line as its formulas count.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "shaftcut/trade/quote/quote.hpp"

namespace shaftcut::quote_book {

// Of a quote's lines those that are counted by a quantity and a price, and the tax rates of all, the usual one first.
struct Figures {
    enum class State { counted, not_priced, too_great };
    struct Line {
        const QuoteLine* line = nullptr;
        std::size_t rate = 0;
        State state = State::counted;
        Money amount, most;  // counted: the amount, and of an estimate the most
    };
    std::vector<Line> lines;
    std::vector<OwnTax> rates;
    std::vector<std::optional<Money>> discounts;  // of each rate, not above 0; nothing: too great to be counted
    std::optional<Money> minimum;  // what lacks to it; nothing where there is none
    bool has_charges = false;      // a minimum and a discount may come to the lines
    bool is_estimate = false;
    bool ordered = false;          // a deposit may be due
    std::size_t open = 0;          // lines without a price
    bool counted = false;          // all lines are
    bool ready = false;            // and so are the charges, and it comes to something

    struct Sums {
        std::vector<Money> bases, taxes;  // of each rate, the bases as lines state them
        Money net, total;
    };
    Sums sums, most;  // where it is ready
    std::optional<Money> deposit;
};

Figures figures_of(const Quote& quote);

// Tax is numerator ÷ denominator of what the lines of its rate come to.
struct Share {
    std::int64_t numerator = 0, denominator = 1;
};
Share tax_share(Percent percent, PricesStated stated);

inline constexpr std::int64_t greatest_product = 100'000'000'000'000;

}  // namespace shaftcut::quote_book
