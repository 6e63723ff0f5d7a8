// From an answered job or orders to a quote: what is counted, and what else is offered.
//
// Counted: of a cut, the tubes and guard tubes that are really cut, deburring a tube, greasing, refitting and the closing test; of a shaft made to
// order, the operations of its assembly sheet, the pieces that are sawn, its parts list, and its tubes by the metre of blank and one kerf a piece,
// in whole millimetres rounded up. Sources: common practice. Checked in tests/trade/quote/quoting_test.cpp.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "shaftcut/trade/quote/quote.hpp"

namespace shaftcut {

// Of a job's quote: what stands in the place of a line's own quantity. `line` from 1, as they are printed.
struct QuantityAsked {
    std::size_t line = 1;
    BilledQuantity quantity;
};

// What the service writer adds. A percent of the whole or an amount; `services` by the names that the configuration has for them.
struct QuoteRequest {
    std::string date;  // YYYY-MM-DD; empty: the job's own
    std::optional<std::variant<Percent, Money>> discount = {};
    std::vector<std::string> services = {};
    std::vector<QuantityAsked> quantities = {};
    bool alternatives = false;  // those of a cut that is refused are offered in any case
};

// What every quote of a workshop has in common.
struct QuoteMeans {
    const Catalogue& catalogue;
    const Workshop& workshop;
    const Firm& firm;
    const Prices& prices;
    const QuoteRequest& request;
};

// `order` must be the answer to `job`.
Quote quote_job(const Job& job, const WorkOrder& order, const QuoteMeans& means);

// One customer's orders, added one by one: those that can be built, equal lines of them as one. The others are named and have no price; the quote is
// then incomplete.
class OrdersToQuote {
public:
    explicit OrdersToQuote(const Prices& prices) : prices_(prices) {}
    void add(const BuildPlan& plan, const Catalogue& catalogue, const Workshop& workshop);
    const std::string& customer() const { return customer_; }
    Quote quote(const std::string& number, const QuoteMeans& means) const;

private:
    const Prices& prices_;
    std::string customer_;
    Units units_ = Units::mm;
    std::vector<QuotedWork> work_;
    std::vector<QuoteLine> lines_;
    bool all_built_ = true;
};

// Of a job that holds no more than whose it is: the workshop's usual lines, from one amount to another, and its measuring.
Quote quote_before_measuring(const Job& job, const QuoteMeans& means);

// Whether a quantity is asked of a line that there is not, or that is a charge on the others and has none.
bool asks_of_no_line(const Quote& quote, const QuoteRequest& request);

// Whether the discount is more than what it is taken off, of the quote or of an offer in it.
bool discount_is_too_great(const Quote& quote);

}  // namespace shaftcut
