#include "workshop_reader.hpp"

#include "limits_reader.hpp"
#include "prices_reader.hpp"
#include "xml/element.hpp"

namespace shaftcut {
namespace {

Saw read_saw(Element& element)
{
    Saw saw;
    saw.step = element.required("step").positive_length().value_or(Length());
    saw.kerf = element.required("kerf").length_within(Bounded::kerf).value_or(Length());
    saw.plus_minus = element.required("plus-minus").length().value_or(Length());
    saw.least_cut = element.required("least-cut").length().value_or(Length());
    saw.reusable_leftover = element.optional("reusable-leftover").length();
    return saw;
}

SawStock read_stock_bar(Element& element)
{
    SawStock stock;
    stock.length = element.required("length").positive_length().value_or(Length());
    stock.count = element.optional("count").whole(0, static_cast<int>(most_saw_pieces));
    stock.cost = element.optional("cost").millionths(most_saw_cost / cost_unit).value_or(stock.length.um() * cost_of_a_micrometre);
    return stock;
}

Firm read_firm(Element& element)
{
    Firm firm;
    firm.name = element.required("name").name().value_or("");
    firm.address = element.optional("address").name().value_or("");
    firm.phone = element.optional("phone").name().value_or("");
    firm.mail = element.optional("mail").name().value_or("");
    firm.tax_number = element.optional("tax-number").name().value_or("");
    firm.register_number = element.optional("register-number").name().value_or("");
    return firm;
}

StatedWorkshop read_root(Element& element)
{
    StatedWorkshop workshop;
    workshop.name = element.optional("name").name().value_or("");
    element.at_most_one("firm", [&](Element& firm) { workshop.firm = read_firm(firm); });
    element.at_most_one("prices", [&](Element& prices) { workshop.prices = read_prices(prices); });
    element.one("limits", [&](Element& limits) { workshop.limits = read_limits(limits); });
    element.one("saw", [&](Element& saw) { workshop.saw = read_saw(saw); });
    element.one("measuring", [&](Element& measuring) {
        workshop.measuring_plus_minus = measuring.required("plus-minus").plus_minus().value_or(Length());
    });
    element.each("stock", [&](Element& stock) {
        const Attribute profile = stock.optional("profile");
        const SawStock bar = read_stock_bar(stock);
        if (profile.given()) workshop.profile_stock.push_back({profile.name().value_or(""), bar});
        else workshop.stock.push_back(bar);
    });
    return workshop;
}

}  // namespace

Read<StatedWorkshop> read_workshop(const Source& source)
{
    Read<StatedWorkshop> read;
    StatedWorkshop workshop;
    read.faults = read_document(source, "workshop", [&](Element& element) { workshop = read_root(element); });
    if (read.faults.empty()) read.value = std::move(workshop);
    return read;
}

}  // namespace shaftcut
