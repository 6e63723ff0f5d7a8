#include "lists/orders_reader.hpp"

#include "fit_reader.hpp"
#include "limits_reader.hpp"
#include "order_number.hpp"
#include "shaft_reader.hpp"
#include "source/bounds_of.hpp"
#include "xml/element.hpp"

namespace shaftcut {
namespace {

// A length at which no shaft closes or reaches is the list's fault; in a job it is a contradiction, which refuses.
void check_bounds(const Element& element, Bounded kind, const std::optional<Measurement>& stated, std::optional<Range> range = {})
{
    if (!stated || stated->place == Place{}) return;  // one that could not be read has its fault
    if (!bounds_of(kind).hold(stated->length)) element.fault_at(stated->place, OutsideBounds{kind, {}, stated->length, range});
}

void check_bounds(const Element& element, const JobFit& fit)
{
    check_bounds(element, Bounded::shortest, fit.shortest);
    for (const Range range : all_ranges) check_bounds(element, Bounded::longest, fit.longest[range], range);
}

void read_fits(Element& element, BuildOrder& order, const OrderedShaft& ordered, const Catalogue& catalogue, bool sound)
{
    const FitShaft fit_shaft{ordered.shaft, series_of(ordered.shaft, catalogue), sound};
    element.each("fit", [&](Element& fit) {
        const JobFit read = read_fit(fit, fit_shaft, order.fits.size());
        if (ordered.lacks_reference && !ordered.closed && read.between == Between::crosses && !read.reference)
            fit.fault(NoReference{ReferenceOf::fit, *ordered.shaft.series});
        check_bounds(fit, read);
        order.fits.push_back(read);
    });
    if (ordered.closed && !order.fits.empty()) element.fault(Contradiction::closed_and_fit);
    if (!ordered.closed && order.fits.empty()) element.fault(Contradiction::neither_closed_nor_fit);
    if (ordered.closed && ordered.lacks_reference) element.fault(NoReference{ReferenceOf::closed_ordered, *ordered.shaft.series});
}

BuildOrder read_order_element(Element& element, const Catalogue& catalogue, OrderNumbers& met)
{
    BuildOrder order;
    order.place = element.place();
    order.units = element.units();
    const Attribute number = element.required("order");
    order.order = read_order(number);
    if (number.given())
        if (const auto second = met.add(order.order, order.place.line)) number.fault(*second);
    order.count = element.optional("count").whole(1, most_shafts_of_an_order).value_or(1);
    order.due = read_date(element.optional("due"));
    element.at_most_one("for", [&](Element& child) {
        order.customer = child.optional("customer").text().value_or("");
        order.machine = child.optional("machine").text().value_or("");
    });
    const std::size_t faults_before = element.faults_so_far();
    OrderedShaft ordered;
    element.one("shaft", [&](Element& shaft) { ordered = read_ordered_shaft(shaft, catalogue); });
    read_fits(element, order, ordered, catalogue, element.faults_so_far() == faults_before);
    order.shaft = std::move(ordered.shaft);
    order.guard = ordered.guard;
    order.closed = ordered.closed;
    check_bounds(element, Bounded::closed, order.closed);
    element.at_most_one("limits", [&](Element& limits) { order.limits = read_limits(limits); });
    return order;
}

// The orders in which no fault was found. What is unknown in an order is reported only once it has been left, so that an order
// is known to be sound when the next one begins.
class SoundOrders {
public:
    void begin(std::size_t faults) { settle(faults), faults_ = faults; }
    void add(BuildOrder order) { pending_ = std::move(order); }
    std::deque<BuildOrder> take(std::size_t faults)
    {
        settle(faults);
        return std::move(orders_);
    }

private:
    void settle(std::size_t faults)
    {
        if (pending_ && faults == faults_) orders_.push_back(std::move(*pending_));
        pending_.reset();
    }

    std::deque<BuildOrder> orders_;
    std::optional<BuildOrder> pending_;
    std::size_t faults_ = 0;
};

std::deque<BuildOrder> read_root(Element& element, const Catalogue& catalogue)
{
    const bool sound_file = element.faults_so_far() == 0;
    SoundOrders orders;
    OrderNumbers met;
    std::size_t count = 0;
    element.each("order", [&](Element& child) {
        orders.begin(child.faults_so_far());
        orders.add(read_order_element(child, catalogue, met));
        if (++count == most_orders + 1) child.fault(TooMany{ManyOf::orders, most_orders});
    });
    if (count == 0) element.fault(MissingElement{"orders", "order"});
    std::deque<BuildOrder> sound = orders.take(element.faults_so_far());
    std::erase_if(sound, [&](const BuildOrder& order) { return met.met_twice(order.order); });
    return sound_file && count <= most_orders ? std::move(sound) : std::deque<BuildOrder>();
}

}  // namespace

OrderList read_orders_xml(const Source& source, const Catalogue& catalogue)
{
    OrderList list;
    list.faults = read_document(source, "orders", [&](Element& element) {
        list.units = element.units();
        list.orders = read_root(element, catalogue);
    });
    return list;
}

}  // namespace shaftcut
