#include "shaftcut/trade/saw/saw_order.hpp"

#include "support/catch.hpp"
#include "support/saw/linear_programme.hpp"

using namespace shaftcut;

namespace {

constexpr Length mm(std::int64_t count) { return Length::millimetres(count); }

SawOrder planned(SawTask task, std::optional<Length> reusable = mm(500))
{
    SawOutcome outcome = plan_saw(task, {[] { return 10.0; }, {}, test::linear_programme()});
    REQUIRE(std::holds_alternative<SawPlan>(outcome));
    return lay_out({"list", "owner", Units::mm, reusable}, std::move(task), std::get<SawPlan>(std::move(outcome)), SawEnd::finished, 0.5);
}

}  // namespace

TEST_CASE("stops run from the bar's starting end, trim and kerfs counted")
{
    const SawOrder order = planned({{{mm(1000), 2, "a"}, {mm(500), 1, "b"}}, {{mm(3000), std::nullopt, 3000 * cost_unit}}, mm(3), mm(10), mm(20), mm(400)}, mm(400));
    REQUIRE(order.bars.size() == 1);
    const BarLayout& bar = order.bars[0];
    REQUIRE(bar.pieces.size() == 3);
    CHECK(bar.pieces[0] == PlacedPiece{mm(1000), "a", mm(10), mm(1010)});
    CHECK(bar.pieces[1] == PlacedPiece{mm(1000), "a", mm(1013), mm(2013)});
    CHECK(bar.pieces[2] == PlacedPiece{mm(500), "b", mm(2016), mm(2516)});
    CHECK(bar.leftover == mm(3000 - 20 - 2516 - 3));
    CHECK(bar.use == LeftoverUse::rack);
    CHECK(order.totals.bars == 1);
    CHECK(order.totals.pieces == 3);
    CHECK(order.totals.pieces_length == mm(2500));
    CHECK(order.totals.rack_length == bar.leftover);
    CHECK(order.totals.waste == 1300);  // 39 of 3000 mm
}

TEST_CASE("a leftover shorter than the reusable length is scrap, and without such a length all are")
{
    const SawTask task{{{mm(900), 1, ""}}, {{mm(1000), std::nullopt, 1}}, mm(3), Length(), Length(), Length()};
    CHECK(planned(task, mm(97)).bars[0].use == LeftoverUse::rack);
    CHECK(planned(task, Length::micrometres(97'001)).bars[0].use == LeftoverUse::scrap);
    CHECK(planned(task, std::nullopt).bars[0].use == LeftoverUse::scrap);
    const SawTask full{{{mm(1000), 1, ""}}, {{mm(1000), std::nullopt, 1}}, mm(3), Length(), Length(), Length()};
    CHECK(planned(full).bars[0].use == LeftoverUse::none);
}

TEST_CASE("a piece as long as its bar is used whole, and a last piece that ends with its bar needs no last cut")
{
    const SawOrder whole = planned({{{mm(1000), 2, ""}}, {{mm(1000), std::nullopt, 1}}, mm(3), Length(), Length(), Length()});
    CHECK(whole.bars[0].whole);
    CHECK(whole.bars[0].ends_with_piece);
    const SawOrder two = planned({{{mm(497), 1, ""}, {mm(500), 1, ""}}, {{mm(1000), std::nullopt, 1}}, mm(3), Length(), Length(), Length()});
    CHECK_FALSE(two.bars[0].whole);
    CHECK(two.bars[0].ends_with_piece);
    CHECK_FALSE(planned({{{mm(990), 1, ""}}, {{mm(1000), std::nullopt, 1}}, mm(3), Length(), Length(), Length()}).bars[0].ends_with_piece);
}

// Kerf 3 and least cut 5: an end of 4 or of 2 is thin, of 5 it is not; with a trim there is material behind it.
TEST_CASE("an end that is less than the kerf or the saw's least cut is said, with a caution")
{
    const auto order_of = [](std::int64_t piece, Length trim_end) {
        SawTask task{{{mm(piece), 1, ""}}, {{mm(1000), std::nullopt, 1}}, mm(3), Length(), trim_end, Length()};
        SawOutcome outcome = plan_saw(task, {[] { return 10.0; }, {}, test::linear_programme()});
        return lay_out({"list", "", Units::mm, std::nullopt, mm(5), mm(1)}, task, std::get<SawPlan>(std::move(outcome)), SawEnd::finished, 0);
    };
    CHECK(order_of(996, Length()).bars[0].thin_end == mm(4));
    CHECK(order_of(998, Length()).bars[0].thin_end == mm(2));
    CHECK_FALSE(order_of(995, Length()).bars[0].thin_end);
    CHECK_FALSE(order_of(1000, Length()).bars[0].thin_end);
    CHECK_FALSE(order_of(990, mm(10)).bars[0].thin_end);
    const auto cautioned = [](const SawOrder& order) { return std::count(order.cautions.begin(), order.cautions.end(), SawCaution::thin_end) == 1; };
    CHECK(cautioned(order_of(996, Length())));
    CHECK_FALSE(cautioned(order_of(995, Length())));
}

TEST_CASE("what a cost counts is known")
{
    const auto basis = [](std::int64_t cost) { return cost_basis(planned({{{mm(900), 1, ""}}, {{mm(1000), std::nullopt, cost}}, mm(3), Length(), Length(), Length()})); };
    CHECK(basis(1000 * cost_unit) == CostBasis::lengths);
    CHECK(basis(48 * cost_unit) == CostBasis::stated);
}

TEST_CASE("costs stated and lengths without a cost are not summed")
{
    SawOrder order;
    order.fetch = {{mm(1000), 48 * cost_unit, 2}, {mm(20), 20 * cost_unit, 3}, {mm(700), 0, 1}};
    CHECK(cost_parts(order).stated == 96 * cost_unit);
    CHECK(cost_parts(order).without == mm(60));
    CHECK(cost_parts(order).mixed());
    order.fetch.erase(order.fetch.begin());
    CHECK_FALSE(cost_parts(order).mixed());
}

TEST_CASE("bars alike in lengths and labels are one layout, others are not; no piece is lost")
{
    const SawOrder order = planned({{{mm(500), 4, "a"}, {mm(500), 4, "b"}, {mm(500), 1, "a"}}, {{mm(1500), std::nullopt, 1}}, Length(), Length(), Length(), Length()});
    REQUIRE(order.plan.bars.size() == 1);
    std::int64_t bars = 0, a = 0, b = 0;
    for (const BarLayout& bar : order.bars) {
        bars += bar.count;
        for (const PlacedPiece& piece : bar.pieces) (piece.label == "a" ? a : b) += bar.count;
    }
    CHECK(bars == 3);
    CHECK(a == 5);
    CHECK(b == 4);
    CHECK(order.bars.size() == 3);
    const SawOrder same = planned({{{mm(500), 4, "a"}, {mm(500), 5, "a"}}, {{mm(1500), std::nullopt, 1}}, Length(), Length(), Length(), Length()});
    REQUIRE(same.bars.size() == 1);
    CHECK(same.bars[0].count == 3);
}

TEST_CASE("what to fetch, by stock as given")
{
    const SawOrder order = planned({{{mm(2000), 5, ""}}, {{mm(3000), 0, 1}, {mm(2000), 2, 2}, {mm(6000), std::nullopt, 60}}, Length(), Length(), Length(), Length()});
    REQUIRE(order.fetch.size() == 2);
    CHECK(order.fetch[0].length == mm(2000));
    CHECK(order.fetch[0].count == 2);
    CHECK(order.fetch[1].count == 1);
    CHECK(order.fetch[1].cost == 60);
}

TEST_CASE("figures on paper are exact, in inches to the thousandth where no sixteenth will do")
{
    CHECK(saw_figure(Length::micrometres(980'250), Units::mm) == "980.25");
    CHECK(saw_figure(Length::micrometres(1), Units::mm) == "0.001");
    CHECK(saw_figure(Length::micrometres(741'363), Units::in) == "29-3/16");
    CHECK(saw_figure(Length::micrometres(254'000), Units::in) == "10");
    CHECK(saw_figure(mm(1000), Units::in) == "39.370");
    CHECK(saw_figure_with_unit(mm(1000), Units::in) == "39.370 in (1000 mm)");
    for (std::int64_t um = 0; um < 30'000; um += 7) {
        const std::string text = saw_figure(Length::micrometres(um), Units::in);
        if (text.find('.') == std::string::npos) continue;
        CHECK(std::abs(std::stod(text) * 25'400 - static_cast<double>(um)) <= 12.71);
    }
}

TEST_CASE("costs without trailing zeros, and how far above its bound a plan may be")
{
    CHECK(cost_figure(72'000 * cost_unit) == "72000");
    CHECK(cost_figure(61'500'000) == "61.5");
    CHECK(cost_figure(1) == "0.000001");
    SawPlan plan;
    plan.cost = 1000 * cost_unit;
    plan.lower_bound = 990 * cost_unit;
    CHECK(gap_of(plan) == 1000);
}
