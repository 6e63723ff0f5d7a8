// The lines of a quote, each with its price where the workshop states one. Private to the trade layer's quote.
#pragma once

#include <vector>

#include "shaftcut/trade/quote/quoting.hpp"

namespace shaftcut {

class LineMaker {
public:
    explicit LineMaker(const Prices& prices) : prices_(prices) {}

    QuoteLine labour(PricedWork work, std::int64_t times) const;
    QuoteLine part(const PartName& name, std::int64_t count) const;
    QuoteLine tube(const std::string& profile, Length length) const;
    QuoteLine new_shaft(const std::string& series, Length closed) const;
    QuoteLine service(const std::string& name) const;

private:
    QuoteLine flat(LineFor what) const;
    template <class Name>
    QuoteLine priced(QuoteLine line, const std::map<Name, Price>& prices, const Name& name, NotPriced missing) const;

    const Prices& prices_;
};

// What is done to a shaft that exists, by its answer; nothing of one that is refused.
std::vector<QuoteLine> lines_of(const WorkOrder& order, const Prices& prices);
// What `plan.count` shafts are made of and by; nothing of one that cannot be built.
std::vector<QuoteLine> lines_of(const BuildPlan& plan, const Catalogue& catalogue, const Workshop& workshop, const Prices& prices);

// Lines for the same thing at the same price as one, in the order in which each first stands.
std::vector<QuoteLine> merged(const std::vector<QuoteLine>& lines);

// With the quantities that are asked; minutes that the configuration does not state are stated by one.
std::vector<QuoteLine> with_quantities(std::vector<QuoteLine> lines, const QuoteRequest& request);

bool all_priced(const std::vector<QuoteLine>& lines);
// Whether any is for what must be ordered or made.
bool any_ordered(const std::vector<QuoteLine>& lines);
// Working days until all that must be ordered is there: 0 where nothing must; nothing where it is not stated.
std::optional<int> lead_days_of(const std::vector<QuoteLine>& lines);

// With what lacks to the minimum charge, and the discount, a line a rate; only where all are priced.
std::vector<QuoteLine> with_charges(std::vector<QuoteLine> lines, const QuoteMeans& means);

}  // namespace shaftcut
