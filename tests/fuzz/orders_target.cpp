#include <nlohmann/json.hpp>

#include "build/build_words.hpp"
#include "fuzz/targets.hpp"
#include "support/engine.hpp"

namespace shaftcut::fuzz {
namespace {

std::string wrong_with(const BuildPlan& plan)
{
    if (plan.built.has_value() != (say(plan.reasons, wording_of(plan)).empty() && plan.open.empty())) return "order " + plan.order + " is neither built, nor held, nor refused with a reason";
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
    BuildStart start = test::demo_engine().build({bytes.starts_with("<") ? "f.xml" : "f.csv", std::string(bytes)}, {}, {});
    if (!start.run) return start.problems.empty() ? "a list gives neither an order nor a problem" : "";
    const std::size_t orders = start.run->left();
    BatchJson json(JsonLayout::one_line);
    std::string text = json.begin();
    while (start.run->left() > 0) {
        const BuildPlan plan = start.run->next();
        if (std::string wrong = wrong_with(plan); !wrong.empty()) return wrong;
        if (documents(plan, {Format::terminal}, {}).at(0).bytes.find(plan.order + ": ") != 0) return "an order's words do not begin with it";
        text += json.next(plan);
    }
    const auto read_back = nlohmann::json::parse(text + json.end({}), nullptr, false);
    return read_back.is_discarded() || read_back["orders"].size() != orders ? "the JSON does not hold every order" : "";
}

}  // namespace shaftcut::fuzz
