#include "saw_sheet/batch_saw_sheets.hpp"

#include "documents/build_cases.hpp"
#include "documents/page/page_checks.hpp"
#include "support/catch.hpp"
#include "support/fonts.hpp"

using namespace shaftcut;
using namespace shaftcut::test;
using namespace shaftcut::test::papers;

namespace {

std::size_t count_of(const Page& page, const std::string& words)
{
    const std::vector<Text> texts = texts_of(page);
    return static_cast<std::size_t>(std::count_if(texts.begin(), texts.end(), [&](const Text& text) { return text.text == words; }));
}

}  // namespace

TEST_CASE("the sheets of a batch's saw plans are numbered over the whole file")
{
    for (const Paper paper : {Paper::a4, Paper::letter}) {
        const std::vector<Page> pages = draw_batch_saw_sheets(case_batch(Units::mm), paper, font_files());
        REQUIRE(pages.size() > 2);
        for (std::size_t i = 0; i < pages.size(); ++i) CHECK(count_of(pages[i], "Sheet " + std::to_string(i + 1) + " of " + std::to_string(pages.size())) == 1);
    }
}

TEST_CASE("a profile without a plan stands behind the plans with every piece of it, whose they are and why")
{
    for (const Units units : {Units::mm, Units::in}) {
        Batch batch = case_batch(units);
        REQUIRE(batch.plans.size() > 1);
        REQUIRE_FALSE(batch.unplanned.empty());  // guard tubes have no bars
        batch.plans[0].order.reset();
        batch.plans[0].refusal = ProfileRefusal{{SawRefusal::Reason::rack_too_small, SawFault::rack_too_small, {}, {}}, {}};
        const std::vector<Page> pages = draw_batch_saw_sheets(batch, Paper::a4, font_files());
        std::vector<Page> behind(pages.end() - 1, pages.end());
        for (auto page = pages.rbegin() + 1; page != pages.rend() && all_text({*page}).find("NOTPLANNED") != std::string::npos; ++page) behind.insert(behind.begin(), *page);
        const std::string text = all_text(behind);
        const auto says = [&](const std::string& words) { return text.find(squeezed(words)) != std::string::npos; };
        CHECK(says("NOT PLANNED: " + batch.plans[0].profile));
        CHECK(says("the stock is too small for all pieces"));
        for (const std::string& profile : batch.unplanned) CHECK(says("NOT PLANNED: " + profile));
        CHECK(says("No bars are stated for this profile"));
        std::size_t listed = 0;
        for (const BatchPiece& piece : batch.pieces) {
            const bool left_out = piece.profile == batch.plans[0].profile || std::count(batch.unplanned.begin(), batch.unplanned.end(), piece.profile) > 0;
            CHECK(says(std::to_string(piece.count) + " × " + saw_figure_with_unit(piece.length, units) + " — order " + piece.order + ", " + say(piece.part, wording_of(batch))) == left_out);
            listed += left_out ? 1 : 0;
        }
        CHECK(listed > 4);
        for (const Page& page : pages) {
            CHECK(overlapping_texts(page).empty());
            CHECK(struck_texts(page).empty());
            for (const Text& one : texts_of(page)) CHECK(inside(page, one.box, 9.9));
        }
    }
}

TEST_CASE("a batch of which nothing can be planned still says so on paper, and one without pieces has no sheet")
{
    Batch batch = case_batch(Units::mm);
    for (ProfilePlan& plan : batch.plans) {
        plan.order.reset();
        plan.refusal = ProfileRefusal{{SawRefusal::Reason::no_plan_in_time, SawFault::no_plan_in_time, {}, {}}, {}};
    }
    CHECK_FALSE(draw_batch_saw_sheets(batch, Paper::letter, font_files()).empty());
    CHECK(draw_batch_saw_sheets(Batch{}, Paper::a4, font_files()).empty());
}
