// What must be known before a shaft is built, and that nothing of it is sawn before.
#include "shaftcut/trade/build/open_points.hpp"

#include "shaftcut/trade/build/batch.hpp"
#include "support/catch.hpp"
#include "support/orders.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

struct Held {
    Catalogue catalogue = build_catalogue();
    BuildOrder order = build_order();

    Series& series() { return catalogue.series[0]; }
    void forget(PartKind kind)
    {
        std::erase_if(series().parts, [&](const CataloguePart& part) { return part.kind == kind; });
    }
    BuildPlan plan() const { return plan_build(order, catalogue, workshop(), Units::mm); }
    std::vector<std::string> open() const
    {
        std::vector<std::string> said;
        const BuildPlan found = plan();
        for (const OpenPoint& point : found.open) said.push_back(say(point, wording_of(found)));
        return said;
    }
};

}  // namespace

TEST_CASE("a shaft whose parts are all named is built, and one of which a part has no name is held")
{
    Held held;
    CHECK(held.plan().verdict == BuildVerdict::build);
    held.order.count = 3;
    held.forget(PartKind::double_yoke);
    const BuildPlan plan = held.plan();
    CHECK(plan.verdict == BuildVerdict::held);
    CHECK_FALSE(plan.built);
    CHECK(plan.reasons.empty());
    CHECK(held.open() == std::vector<std::string>{"3 × Alder 2 double yoke: the catalogue has no name for it."});
    CHECK(whom_to_ask(plan.open[0]) == Asked::supplier);
}

TEST_CASE("a refused order is refused, whatever is open")
{
    Held held;
    held.forget(PartKind::chain);
    held.order.shaft.ends[End::tractor].lock = Lock::exposed_collar;
    CHECK(held.plan().verdict == BuildVerdict::refused);
    CHECK(held.plan().open.empty());
}

TEST_CASE("parts of one name are asked for once, with their sum")
{
    Held held;
    held.forget(PartKind::chain);
    CHECK(held.open() == std::vector<std::string>{"2 × Alder 2 guard chain: the catalogue has no name for it."});
    held.order.guard = false;
    CHECK(held.open().empty());
}

TEST_CASE("a series with neither pin nor pin hole is asked how its tubes are held; either of them is enough to know how")
{
    Held held;
    held.forget(PartKind::pin);
    CHECK(held.open() == std::vector<std::string>{"How is the inner tube held in its yoke? The catalogue states neither a pin hole nor a pin.",
                                                  "How is the outer tube held in its yoke? The catalogue states neither a pin hole nor a pin."});
    for (const Tube tube : both_tubes) held.series().halves[tube].pin_hole = mm(80);
    CHECK(held.open() == std::vector<std::string>{"1 × Alder 2 pin, inner tube: the catalogue has no name for it.", "1 × Alder 2 pin, outer tube: the catalogue has no name for it."});
    CHECK(Held().open().empty());
}

TEST_CASE("what the order does not say is asked of whoever ordered, and no name is asked for what it would be")
{
    Held held;
    held.order.shaft.ends[End::implement].connection.reset();
    CHECK(held.open() == std::vector<std::string>{"What the implement end fits is not stated."});
    CHECK(whom_to_ask(held.plan().open[0]) == Asked::customer);
    held.forget(PartKind::connection_yoke);
    held.series().parts.push_back({PartKind::connection_yoke, "yoke with push pin", 1, {}, {}, {}, Lock::shrouded_push_pin});
    held.order.shaft.ends[End::implement].connection = "1-3/8-6";
    held.order.shaft.ends[End::implement].lock.reset();
    CHECK(held.open() == std::vector<std::string>{"How the implement end is locked is not stated, and the yokes differ by it."});
}

TEST_CASE("whether a device is the yoke must be stated")
{
    Held held;
    held.order.shaft.ends[End::implement].device = Device::slip_clutch;
    CHECK(held.open().empty());
    held.series().parts.back().replaces.reset();
    CHECK(held.open() == std::vector<std::string>{"Is the yoke part of the slip-clutch at the implement end? The catalogue does not say what the device replaces."});
}

TEST_CASE("the text that is ready to send asks everything of one addressee, and names the order")
{
    Held held;
    held.order.due = "2026-12-04";
    held.order.shaft.ends[End::implement].connection.reset();
    held.forget(PartKind::chain);
    held.forget(PartKind::label);
    const BuildPlan plan = held.plan();
    const auto texts = texts_to_send(plan, wording_of(plan));
    REQUIRE(texts.size() == 2);
    CHECK(texts[0].to == Asked::customer);
    CHECK(texts[0].text.find("Which spline or flange") != std::string::npos);
    CHECK(texts[0].text.find("chain") == std::string::npos);
    for (const char* words : {"B-2001", "due 2026-12-04", "guard chain? We need 2.", "safety label? We need 1."}) CHECK(texts[1].text.find(words) != std::string::npos);
}

TEST_CASE("without an instruction book in the catalogue an order is held, and the text asks for it")
{
    Held held;
    held.forget(PartKind::book);
    const BuildPlan plan = held.plan();
    CHECK(plan.verdict == BuildVerdict::held);
    CHECK(held.open() == std::vector<std::string>{"1 × instruction book of Alder 2: the catalogue has none, and no new shaft goes out without it."});
    const auto texts = texts_to_send(plan, wording_of(plan));
    REQUIRE(texts.size() == 1);
    CHECK(texts[0].to == Asked::supplier);
    CHECK(texts[0].text.find("Please send 1 × the instruction book of Alder 2") != std::string::npos);
}

TEST_CASE("of a held order nothing is picked and nothing sawn")
{
    Held held;
    held.forget(PartKind::label);
    BatchBuilder builder("list", "", Units::mm);
    builder.add(held.plan(), held.series());
    const Batch batch = builder.take();
    CHECK(batch.orders[0].verdict == BuildVerdict::held);
    CHECK(batch.orders[0].open.size() == 1);
    CHECK(batch.orders[0].parts.empty());
    CHECK(batch.parts.empty());
    CHECK(batch.pieces.empty());
}
