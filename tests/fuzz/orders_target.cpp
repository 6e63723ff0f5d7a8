#include <fstream>
#include <iterator>
#include <nlohmann/json.hpp>

#include "fuzz/targets.hpp"
#include "shaftcut/documents/build_terminal.hpp"
#include "shaftcut/documents/json.hpp"
#include "shaftcut/reading/catalogue_reader.hpp"
#include "shaftcut/reading/orders_reader.hpp"
#include "shaftcut/reading/workshop_reader.hpp"

namespace shaftcut::fuzz {
namespace {

std::string bytes_of(const char* path)
{
    std::ifstream file(std::string(SHAFTCUT_SOURCE_DIR) + path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

const Catalogue& demo_catalogue()
{
    static const auto read = read_catalogue({"series.xml", bytes_of("/config/series.xml")});
    return read.value.value();
}

const Workshop& demo_workshop()
{
    static const auto read = read_workshop({"workshop.xml", bytes_of("/config/workshop.xml")});
    return read.value.value();
}

std::string wrong_with(const BuildPlan& plan)
{
    if (plan.built.has_value() != plan.reasons.empty()) return "order " + plan.order + " is neither built nor refused with a reason";
    if (plan.built.has_value() != (plan.verdict == BuildVerdict::build)) return "order " + plan.order + "'s verdict is not what it is";
    if (!plan.built) return {};
    if (any_failed(plan.checks)) return "order " + plan.order + " is built although a check fails";
    const BuiltLengths& lengths = plan.built->lengths;
    for (const Tube tube : both_tubes) {
        if (lengths.blank[tube] <= Length() || lengths.blank[tube] >= lengths.half[tube]) return "order " + plan.order + " has a blank that cannot be";
        if (lengths.guard_half[tube] && *lengths.guard_half[tube] > lengths.half[tube]) return "order " + plan.order + "'s guard is longer than its tube";
    }
    return {};
}

}  // namespace

std::string try_orders(std::string_view bytes)
{
    const Source source{"f", std::string(bytes)};
    const OrderList list = bytes.starts_with("<") ? read_orders_xml(source, demo_catalogue()) : read_orders_csv(source, demo_catalogue(), Units::mm);
    if (list.orders.empty() && list.problems.empty()) return "a list gives neither an order nor a problem";
    BatchJson json(JsonLayout::one_line);
    std::string text = json.begin();
    for (const BuildOrder& order : list.orders) {
        const BuildPlan plan = plan_build(order, demo_catalogue(), demo_workshop(), list.units);
        if (std::string wrong = wrong_with(plan); !wrong.empty()) return wrong;
        if (terminal_text(plan, Colour::none).find(order.order + ": ") != 0) return "an order's words do not begin with it";
        text += json.next(plan);
    }
    const auto read_back = nlohmann::json::parse(text + json.end({}), nullptr, false);
    return read_back.is_discarded() || read_back["orders"].size() != list.orders.size() ? "the JSON does not hold every order" : "";
}

}  // namespace shaftcut::fuzz
