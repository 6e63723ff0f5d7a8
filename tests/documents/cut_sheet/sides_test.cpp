// The sides of the cut sheet: what stands on which, in every unit, on every paper, and in a language that takes more room.
#include "cut_sheet/refusal_words.hpp"
#include "documents/cut_sheet/sheet_cases.hpp"
#include "documents/page/page_checks.hpp"
#include "documents/sample_orders.hpp"
#include "order/step_words.hpp"
#include "shaftcut/trade/order/expected_after_cut.hpp"
#include "support/lengthened.hpp"
#include "support/papers.hpp"
#include "support/sentences.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

// A step's number, as it stands before the step.
const Text* numbered(const Page& page, int number)
{
    for (const Mark& mark : page.marks)
        if (const auto* text = std::get_if<Text>(&mark.what); text && text->text == std::to_string(number) && text->weight == Weight::bold && text->box.x < 20) return text;
    return nullptr;
}

bool has(const WorkOrder& order, int number)
{
    return std::any_of(order.steps.begin(), order.steps.end(), [&](const Step& step) { return step.number == number; });
}

void check_side(const Page& page)
{
    check_texts(page);
    check_lines(page, 9);
}

// The side on which a step stands; behind the last where it stands on none.
std::size_t side_of(const std::vector<Page>& pages, int number)
{
    const auto found = std::find_if(pages.begin(), pages.end(), [&](const Page& page) { return numbered(page, number) != nullptr; });
    return static_cast<std::size_t>(found - pages.begin());
}

// Front and back hold all steps, each on its side; where there is too much, they follow one another over one side more. Of a shaft that fits the
// front takes what it has room for. Leaf 2 begins behind them.
void check_sides(const WorkOrder& order, const std::vector<Page>& pages, bool too_much)
{
    const bool fits = order.verdict == Verdict::fits;
    const std::size_t sides = too_much ? 3 : 2;
    REQUIRE(pages.size() > (fits ? 1u : 2u));
    std::size_t before = 0;
    for (const Step& step : order.steps) {
        INFO("step " << step.number);
        const std::size_t side = side_of(pages, step.number);
        CHECK(side >= before);
        CHECK(side < sides);
        if (!too_much && !fits) CHECK(side == (step.number <= last_saw_step ? 0u : 1u));
        before = side;
    }
    for (const Page& page : pages) check_side(page);
}

// Three lengths to confirm are more than the front of every paper has room for, and so are two stops with what their series was told by.
bool is_crowded(const WorkOrder& order)
{
    const bool by_measures = std::any_of(order.confirm.begin(), order.confirm.end(), [](const Confirmation& one) { return one.why == ConfirmedFor::stop_by_measures; });
    return order.confirm.size() >= (by_measures ? 2U : 3U);
}

Wording wording_as(bool longer, Units units) { return longer ? lengthened_wording(units) : Wording(units); }

}  // namespace

TEST_CASE("a lengthened pattern keeps its places, and is two fifths longer")
{
    CHECK(lengthened("Mark {tubes:C|C and D} square") == "Markéö {tubes:C|C and D} squareéöå");
    CHECK(lengthened_wording(Units::mm)("Keep {length}", {{"length", "574 mm"}}) == "Keepéö 574 mm");
}

TEST_CASE("front and back of every sample hold its steps, on every paper, in every unit, and in a longer language")
{
    for (const SheetCase& one : sample_orders(SHAFTCUT_SOURCE_DIR)) {
        if (one.order.verdict == Verdict::refused) continue;
        for (const Paper paper : {Paper::a4, Paper::letter})
            for (const bool longer : {false, true}) {
                INFO(one.name << (paper == Paper::a4 ? ", A4" : ", Letter") << (longer ? ", lengthened" : ""));
                check_sides(one.order, draw_cut_sheet(one.order, paper, font_files(), wording_as(longer, one.order.units)), longer || is_crowded(one.order));
            }
    }
}

TEST_CASE("a plain job is three printed sides")
{
    for (const Units units : {Units::mm, Units::in})
        for (const Paper paper : {Paper::a4, Paper::letter}) CHECK(cut_sheet_of(worked_in(demo_job(), units), paper).size() == 3);
}

TEST_CASE("a shaft that fits has its steps on its front and the office's leaf behind it")
{
    for (const Units units : {Units::mm, Units::in}) CHECK(cut_sheet_of(worked_in(fits_job(), units), Paper::a4).size() <= 3);
    for (const SheetCase& one : sample_orders(SHAFTCUT_SOURCE_DIR)) {
        if (one.order.verdict != Verdict::fits) continue;
        INFO(one.name);
        // A warning and a position for standing push the last readings behind it.
        const bool warned = std::any_of(one.order.checks.begin(), one.order.checks.end(), [](const Check& check) { return check.result == CheckResult::warn; });
        for (const Paper paper : {Paper::a4, Paper::letter})
            CHECK(draw_cut_sheet(one.order, paper, font_files(), Wording(one.order.units)).size() == (warned && one.order.fit.longest[Range::standing] ? 3U : 2U));
    }
}

TEST_CASE("the office's leaf of every sample without a machine's dimensions is one side")
{
    for (const SheetCase& one : sample_orders(SHAFTCUT_SOURCE_DIR)) {
        if (std::any_of(one.order.fits.begin(), one.order.fits.end(), [](const FitReading& fit) { return fit.geometry.has_value(); })) continue;
        for (const Paper paper : {Paper::a4, Paper::letter})
            for (const Units units : {Units::mm, Units::in}) {
                INFO(one.name << (paper == Paper::a4 ? ", A4, " : ", Letter, ") << unit_word(units));
                const std::vector<Page> pages = draw_cut_sheet(one.order, paper, font_files(), Wording(units));
                CHECK(find(pages.back(), "All checks"));
            }
    }
}

TEST_CASE("a shaft that fits has no step of the saw")
{
    const WorkOrder order = worked_in(fits_job(), Units::mm);
    for (const int number : {3, 5, 6, 7, 8, 9, 10, 11}) CHECK_FALSE(has(order, number));
    for (const int number : {1, 12, 13, 14, 15, 16}) CHECK(has(order, number));
}

TEST_CASE("a shaft that fits is parted only where a look needs it")
{
    const WorkOrder whole = worked_in(fits_job(), Units::mm);
    CHECK_FALSE(has(whole, 4));
    CHECK(says(whole.steps, "Push it fully together."));
    CHECK_FALSE(says(whole.steps, "strokes in line"));
    Job job_ = fits_job();
    job_.shaft.halves[Tube::inner].guard_use = GuardUse::damaged;
    const WorkOrder parted = worked_in(job_, Units::mm);
    CHECK(has(parted, 4));
    CHECK(says(parted.steps, "Push it together, strokes in line."));
}

TEST_CASE("a shaft whose guards alone are cut says so, and is not held side by side")
{
    const WorkOrder order = worked_in(guards_alone_job(), Units::mm);
    REQUIRE(order.verdict == Verdict::cut);
    REQUIRE_FALSE((order.cut->plan.cuts_tube(Tube::inner) || order.cut->plan.cuts_tube(Tube::outer)));
    CHECK(find(cut_sheet_of(order, Paper::a4).front(), "CUT THE GUARDS ONLY"));
    CHECK(terminal_text_of(order).find("CUT THE GUARDS ONLY") != std::string::npos);
    CHECK_FALSE(has(order, 6));
    CHECK(says(order.steps, "saw A and B. NOT C and D."));
}

TEST_CASE("a refused shaft has no step, and its ways out are numbered")
{
    const WorkOrder order = worked_in(refused_job(), Units::mm);
    CHECK(order.steps.empty());
    const Page first = cut_sheet_of(order, Paper::a4).front();
    for (int number = 1; number <= last_saw_step; ++number) CHECK_FALSE(numbered(first, number));
    REQUIRE_FALSE(order.ways_out.empty());
    for (const WayOut& way : order.ways_out) CHECK(contains({first}, cut_sheet::way_in_short(way, Wording(Units::mm))));
    CHECK(contains({first}, "1. "));
}

TEST_CASE("a lock that refuses is drawn under its end")
{
    // The pin is black, and nothing else on such a front.
    const auto pins = [](const Page& page) {
        return std::count_if(page.marks.begin(), page.marks.end(), [](const Mark& mark) {
            const auto* path = std::get_if<Path>(&mark.what);
            return path && path->fill == Fill::black;
        });
    };
    const Page lock = cut_sheet_of(worked_in(refused_job(), Units::mm), Paper::a4).front();
    CHECK(find(lock, "TRACTOR HALF"));
    CHECK(pins(lock) == 1);
    const WorkOrder short_tubes = worked_in(cut_job(420, 430, 440), Units::mm);
    REQUIRE(short_tubes.verdict == Verdict::refused);
    const Page other = cut_sheet_of(short_tubes, Paper::a4).front();
    CHECK_FALSE(find(other, "TRACTOR HALF"));
    CHECK(pins(other) == 0);
}

TEST_CASE("a warning is one line on the front, and one that is confirmed stands there alone")
{
    Job job_ = demo_job();
    job_.shaft.condition = Condition{Completeness::complete, Completeness::missing, CrossWear::worn, std::nullopt, std::nullopt, std::nullopt, std::nullopt, std::nullopt, std::nullopt, {}};
    const Page front = cut_sheet_of(worked_in(job_, Units::mm), Paper::a4).front();
    std::int64_t lines = 0;
    for (const Text& text : texts_of(front))
        if (text.text.starts_with("WARNING: ")) {
            ++lines;
            CHECK(text.cap_height >= 3.5);
        }
    CHECK(lines == 2);
    job_ = demo_job();
    job_.shaft.ends[End::tractor].lock = Lock::exposed_collar;
    job_.shaft.built.reset();
    const std::vector<Page> pages = cut_sheet_of(worked_in(job_, Units::mm), Paper::a4);
    CHECK(contains({pages.front()}, "CONFIRM: built before 2021"));
    CHECK_FALSE(contains({pages.front()}, "WARNING"));
    CHECK(contains(pages, "WARNING, locking"));
}

TEST_CASE("the figures of the steps are those that the shaft is expected to show")
{
    const WorkOrder order = worked_in(demo_job(), Units::mm);
    const ExpectedAfterCut after = expected_after_cut(order);
    const auto mm_of = [](Length length) { return figure(length, Units::mm, Toward::nearest, 0); };
    CHECK(says(order.steps, "C\u00a0596\u00a0mm\u00a0±\u00a0" + mm_of(after.half[Tube::inner].most - after.half[Tube::inner].value) + "\u00a0mm\u00a0▭"));
    CHECK(says(order.steps, "the rings read P + " + mm_of(after.shortest.good_from) + " mm to P + " + mm_of(after.shortest.good_to) + " mm."));
    // S − b′ − s_A and a′ + b′ − S: the halves lie side by side as far apart as the shortest says.
    const Length from_face = mm(742) - mm(574) - order.stops->shoulder[Tube::inner];
    CHECK(says(order.steps, "mark D: " + mm_of(from_face) + "\u00a0mm\u00a0±\u00a010\u00a0mm\u00a0▭"));
    CHECK(says(order.steps, "mark C lies past mark D by 428\u00a0mm\u00a0±\u00a010\u00a0mm\u00a0▭"));
}
