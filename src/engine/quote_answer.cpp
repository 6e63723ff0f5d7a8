// What a job or a list of orders costs.
#include <algorithm>
#include <map>
#include <set>

#include "build_state.hpp"
#include "job_reader.hpp"
#include "known.hpp"
#include "order_number.hpp"
#include "parse.hpp"
#include "quote/quote_words.hpp"
#include "reading/said.hpp"
#include "shaftcut/engine/engine.hpp"
#include "shaftcut/trade/quote/quoting.hpp"
#include "text.hpp"
#include "xml/xml.hpp"

namespace shaftcut {
namespace {

using DiscountAsked = std::optional<std::variant<Percent, Money>>;

// "5%" or "12.50"; nothing where it is neither, or takes nothing off.
DiscountAsked discount_of(const std::string& text, const Currency& currency)
{
    if (!text.empty() && text.back() == '%') {
        const auto thousandths = parse_percent(std::string_view(text).substr(0, text.size() - 1));
        const auto* read = std::get_if<std::int64_t>(&thousandths);
        return read && *read > 0 ? DiscountAsked(Percent{*read}) : std::nullopt;
    }
    const auto amount = parse_money(text, currency);
    const auto* read = std::get_if<Money>(&amount);
    return read && *read > Money() ? DiscountAsked(*read) : std::nullopt;
}

// "2:12.5": of the second line; nothing where it is not that.
std::optional<QuantityAsked> quantity_of(const std::string& text)
{
    constexpr std::int64_t most_lines = 100'000, most_of_a_line = 1'000'000;
    const std::size_t colon = text.find(':');
    if (colon == std::string::npos) return std::nullopt;
    const auto line = parse_whole(std::string_view(text).substr(0, colon), 1, most_lines);
    const auto quantity = parse_thousandths(std::string_view(text).substr(colon + 1), most_of_a_line);
    const auto* number = std::get_if<std::int64_t>(&line);
    const auto* thousandths = std::get_if<std::int64_t>(&quantity);
    if (!number || !thousandths) return std::nullopt;
    return QuantityAsked{static_cast<std::size_t>(*number), {*thousandths}};
}

std::vector<std::string> services_of(const Prices& prices)
{
    std::vector<std::string> names;
    for (const auto& [name, price] : prices.services) names.push_back(name);
    return names;
}

// The names of a list's quotes, each once: customers are told apart by what can stand in a file's name.
class CustomerNames {
public:
    explicit CustomerNames(std::string list) : list_(std::move(list)) {}

    std::string add(const std::string& customer)
    {
        const std::string name = customer.empty() ? list_ + "-quote" : list_ + "-quote-" + file_name_of(customer);
        std::string own = name;
        for (int number = 2; !met_.insert(order_key(own)).second; ++number) own = name + "-" + std::to_string(number);
        return own;
    }

private:
    std::string list_;
    std::set<std::string> met_;
};

class Quoting {
public:
    Quoting(std::shared_ptr<const Known> known, const Source& file, const Wishes& wishes, const QuoteWishes& asked) : known_(std::move(known)), file_(file), wishes_(wishes), asked_(asked) {}

    QuoteAnswer answer()
    {
        if (!known_->prices) return refused(no_prices(w_));
        if (std::string why = unfit_request(); !why.empty()) return refused(std::move(why));
        try {
            fill();
        } catch (const MoneyOverflow&) {
            return refused(too_great(w_));
        }
        for (const QuotePaper& paper : answer_.papers)
            if (asks_of_no_line(paper.quote, request_)) return refused(no_such_line(w_));
        for (const QuotePaper& paper : answer_.papers)
            if (discount_is_too_great(paper.quote)) return refused(discount_too_great(asked_.discount, w_));
        return std::move(answer_);
    }

private:
    static QuoteAnswer refused(std::string why)
    {
        QuoteAnswer answer;
        answer.why_not = std::move(why);
        return answer;
    }

    // Reads what the call asks for; a sentence where it cannot be.
    std::string unfit_request()
    {
        const Prices& prices = *known_->prices;
        request_.date = asked_.issued;
        request_.services = asked_.services;
        request_.alternatives = asked_.alternatives;
        if (!asked_.discount.empty()) request_.discount = discount_of(asked_.discount, prices.currency);
        if (!asked_.discount.empty() && !request_.discount) return no_discount(asked_.discount, prices.currency.digits, w_);
        for (const std::string& text : asked_.quantities) {
            const auto quantity = quantity_of(text);
            if (!quantity) return no_quantity(text, w_);
            request_.quantities.push_back(*quantity);
        }
        const std::vector<std::string> known = services_of(prices);
        for (const std::string& service : asked_.services)
            if (!prices.services.contains(service)) return no_such_service(service, nearest_name(service, known), known, w_);
        return {};
    }

    void fill()
    {
        if (asked_.before_measuring) estimate();
        else if (is_list()) quote_list();
        else quote_one();
    }

    // A list in XML is told from a job by its root.
    bool is_list() const
    {
        if (has_headings(file_.name)) return true;
        const XmlDocument document = parse_xml(file_);
        return document.root && document.root->name == "orders";
    }

    void quote_one()
    {
        const Read<Job> read = read_job(file_, known_->catalogue);
        answer_.problems = problems_of(read.faults);
        if (!read.value) return;
        const WorkOrder order = work_up(*read.value, known_->catalogue, known_->workshop, wishes_.units.value_or(read.value->units));
        add_job(*read.value, quote_job(*read.value, order, means()));
    }

    void estimate()
    {
        const Read<Job> read = read_unmeasured_job(file_);
        answer_.problems = problems_of(read.faults);
        if (!read.value) return;
        add_job(*read.value, quote_before_measuring(*read.value, means()));
        answer_.papers.back().form = form_for(nullptr, OnMachine::lengths, *known_, wishes_.units.value_or(read.value->units));
    }

    void add_job(const Job& job, Quote quote)
    {
        answer_.order = job.order;
        answer_.key = order_key(job.order);
        answer_.place = job.place;
        answer_.papers.push_back({std::move(quote), file_name_of(job.order) + "-quote", std::nullopt});
    }

    void quote_list()
    {
        BuildStart start = start_build(known_, file_, wishes_, {});
        answer_.problems = std::move(start.problems);
        answer_.why_not = std::move(start.why_not);
        // An offer that lacks an order that could not be read would pass for the whole.
        if (!start.run || !answer_.problems.empty()) return;
        std::vector<OrdersToQuote> customers;
        std::map<std::string, std::size_t> found;
        const std::size_t count = start.run->left();
        while (start.run->left() > 0) {
            const BuildPlan plan = start.run->next();
            const auto [customer, is_new] = found.emplace(plan.customer, customers.size());
            if (is_new) customers.emplace_back(*known_->prices);
            customers[customer->second].add(plan, known_->catalogue, known_->workshop);
            if (asked_.quoted) asked_.quoted(count - start.run->left(), count);
        }
        CustomerNames names(start.run->name());
        for (const OrdersToQuote& customer : customers) {
            const std::string name = names.add(customer.customer());
            answer_.papers.push_back({customer.quote(name, means()), name, std::nullopt});
        }
    }

    QuoteMeans means() const { return {known_->catalogue, known_->workshop, known_->firm, *known_->prices, request_}; }

    std::shared_ptr<const Known> known_;
    const Source& file_;
    const Wishes& wishes_;
    const QuoteWishes& asked_;
    Wording w_{Units::mm};
    QuoteRequest request_;
    QuoteAnswer answer_;
};

}  // namespace

QuoteAnswer Engine::quote(const Source& file, const Wishes& wishes, const QuoteWishes& quote) const { return Quoting(known_, file, wishes, quote).answer(); }

bool is_open(const Quote& quote) { return quote.verdict == QuoteVerdict::incomplete || quote.verdict == QuoteVerdict::refused; }

}  // namespace shaftcut
