// What is confirmed before the saw, and what a job says around its lengths, on the papers.
#include "commands/program.hpp"
#include "documents/cut_sheet/confirm_cases.hpp"
#include "documents/page/page_checks.hpp"
#include "documents/page/print_checks.hpp"
#include "documents/sample_orders.hpp"
#include "order/instructions.hpp"
#include "page/cairo_pages.hpp"
#include "shaftcut/documents/json/json.hpp"
#include "support/fonts.hpp"
#include "support/sentences.hpp"
#include "support/papers.hpp"

#include <nlohmann/json.hpp>

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

std::string band_of(const WorkOrder& order)
{
    const std::string verdict = order.verdict == Verdict::cut ? "CUT" : "FITS AS IT IS";
    return order.confirm.empty() ? verdict : verdict + ": CONFIRM " + std::to_string(order.confirm.size()) + " FIRST";
}

// Where on the page the text with these words begins; off the page where there is none.
double top_of(const Page& page, const std::string& words)
{
    for (const Text& text : texts_of(page))
        if (text.text.find(words) != std::string::npos) return text.box.y;
    return page.height;
}

// The sides that go to the bench, before the leaf that stays in the office.
std::vector<Page> bench_sides(const std::vector<Page>& pages)
{
    const auto office = std::find_if(pages.begin(), pages.end(), [](const Page& page) { return find(page, "All checks") != nullptr; });
    return {pages.begin(), office};
}

int count_in(const std::vector<Page>& pages, const std::string& words)
{
    const std::string all = all_text(pages);
    int count = 0;
    for (std::size_t at = all.find(words); at != std::string::npos; at = all.find(words, at + 1)) ++count;
    return count;
}

// A box that is wide enough to write in and holds no text, right behind these words.
bool has_box_behind(const Page& page, const std::string& words)
{
    const std::vector<Text> texts = texts_of(page);
    const std::vector<Rect> boxes = boxes_of(page);
    const auto is_free = [&](const Rect& box) { return std::none_of(texts.begin(), texts.end(), [&](const Text& text) { return overlap(box, text.box); }); };
    return std::any_of(texts.begin(), texts.end(), [&](const Text& text) {
        return text.cap_height >= 3.5 && text.text.find(words) != std::string::npos && std::any_of(boxes.begin(), boxes.end(), [&](const Rect& box) {
                   return box.width >= 14 && box.height >= 6 && box.x >= text.box.right() - 0.5 && box.x < text.box.right() + 4 && box.y < text.baseline.y && box.bottom() > text.baseline.y && is_free(box);
               });
    });
}

// The band, each expected length with its box, and what is done outside them.
void check_confirmed(const WorkOrder& order, const std::vector<Page>& pages)
{
    const std::vector<Page> sides = bench_sides(pages);
    CHECK(find(pages.front(), band_of(order)));
    const std::string outside = order.verdict == Verdict::cut ? "nothing is sawn" : "it is not fitted";
    CHECK(contains(sides, "Outside its ±, or a no: " + outside + ". The figures go back for a new sheet."));
    for (const Confirmation& one : order.confirm) {
        if (one.is_look()) continue;
        const std::string expected = figure_with_millimetres(*one.expected, order.units) + " ± " + figure_with_unit(*one.plus_minus, order.units, Toward::down);
        INFO(expected);
        CHECK(std::any_of(sides.begin(), sides.end(), [&](const Page& page) { return has_box_behind(page, expected); }));
    }
    CHECK(count_in(sides, "CONFIRM") == std::ssize(order.confirm) + 1);  // and in the band
}

}  // namespace

TEST_CASE("what is confirmed stands in the steps with its box, however many and however long the names")
{
    for (const SheetCase& one : confirm_cases())
        for (const Paper paper : {Paper::a4, Paper::letter}) {
            INFO(one.name << (paper == Paper::a4 ? ", A4" : ", Letter"));
            const std::vector<Page> pages = cut_sheet_of(one.order, paper);
            CHECK(find(pages.front(), band_of(one.order)));
            if (one.order.confirm.empty()) continue;
            check_confirmed(one.order, pages);
            for (const Confirmation& confirmation : one.order.confirm) CHECK(contains(pages, say(confirmation, wording_of(one.order))));
        }
}

TEST_CASE("every text of a sheet with confirmations can be read, and no line leaves it")
{
    for (const SheetCase& one : confirm_cases())
        for (const Paper paper : {Paper::a4, Paper::letter}) {
            const std::vector<Page> pages = cut_sheet_of(one.order, paper);
            for (std::size_t i = 0; i < pages.size(); ++i) {
                INFO(one.name << (paper == Paper::a4 ? ", A4" : ", Letter") << ", sheet " << i + 1);
                check_texts(pages[i]);
                check_lines(pages[i], 9);
            }
            CHECK(contains(pages, "Signature"));
            CHECK(count_of(pages, "Signature") == 1);
        }
}

TEST_CASE("every sample has room for what may have to be confirmed of it")
{
    const Folder folder;
    for (SheetCase& one : sample_orders(source_folder)) {
        if (one.order.verdict == Verdict::refused) continue;
        one.order.confirm = confirmations(5);
        one.order.steps = steps_for(one.order);
        for (const Paper paper : {Paper::a4, Paper::letter}) {
            INFO(one.name << (paper == Paper::a4 ? ", A4" : ", Letter"));
            const std::vector<Page> pages = cut_sheet_of(one.order, paper);
            check_confirmed(one.order, pages);
            check_texts(pages.front());
            write(folder.file("sheet.pdf"), pdf_of(pages, cut_sheet_info_of(one.order), font_files()));
            CHECK(output_of("pdftotext -l 1 -layout " + folder.file("sheet.pdf") + " -").find(band_of(one.order)) != std::string::npos);
        }
    }
}

TEST_CASE("the terminal's first line says how many are confirmed first")
{
    WorkOrder order = worked_in(demo_job(), Units::mm);
    CHECK(terminal_text_of(order).starts_with("K-1042: CUT\n"));
    order.confirm = confirmations(2);
    CHECK(terminal_text_of(order).starts_with("K-1042: CUT: CONFIRM 2 FIRST\n"));
    order = worked_in(fits_job(), Units::mm);
    order.confirm = confirmations(1);
    CHECK(terminal_text_of(order).starts_with("K-1042: FITS AS IT IS: CONFIRM 1 FIRST\n"));
}

TEST_CASE("JSON lists what is confirmed, and has the fields that a register fills")
{
    WorkOrder order = worked_in(demo_job(), Units::mm);
    CHECK(nlohmann::json::parse(json_of(order, JsonLayout::one_line)).at("confirm") == nlohmann::json::array());
    order.confirm = confirmations(2);
    const auto json = nlohmann::json::parse(json_of(order, JsonLayout::one_line));
    const auto& list = json.at("confirm");
    REQUIRE(list.size() == 2);
    CHECK(list[0] == nlohmann::json({{"what", "inner_half"}, {"expected_mm", 690.0}, {"plus_minus_mm", 6.0}, {"says", say(order.confirm[0], wording_of(order))}}));
    CHECK(list[1] == nlohmann::json({{"what", "inner_guard"}, {"expected_mm", nullptr}, {"plus_minus_mm", nullptr}, {"says", say(order.confirm[1], wording_of(order))}}));
    for (const char* field : {"issue", "copy", "issued", "fingerprint"}) CHECK(json.at(field).is_null());
    CHECK(json.at("language") == "en");
}

TEST_CASE("a guard that is missing or damaged has no box and no figure, and is the first warning of the front")
{
    for (const GuardUse use : {GuardUse::none, GuardUse::damaged})
        for (const Units units : {Units::mm, Units::in}) {
            Job job_ = demo_job();
            job_.shaft.halves[Tube::inner].guard_use = use;
            job_.shaft.halves[Tube::inner].guard.reset();
            const WorkOrder order = worked_in(job_, units);
            REQUIRE(order.verdict == Verdict::cut);
            const auto json = nlohmann::json::parse(json_of(order, JsonLayout::one_line));
            CHECK(json.at("cut_mm").at("inner_guard").is_null());
            CHECK(json.at("keep_mm").at("inner_guard_half").is_null());
            CHECK(json.at("cut_mm").at("outer_guard").is_number());
            const Page first = cut_sheet_of(order, Paper::a4).front();
            CHECK(contains({first}, "WARNING: The shaft must not run as it is: the implement half "));
            CHECK(top_of(first, "WARNING") < top_of(first, "TRACTOR HALF"));
            CHECK(contains({first}, use == GuardUse::none ? "there is none" : "damaged: not used again"));
            CHECK(says(order.steps, "saw B, then C and D."));
            CHECK(says(order.steps, "GUARD MISSING OR DAMAGED: fit a new one first."));
            CHECK(terminal_text_of(order).find("WARNING     The shaft must not run") != std::string::npos);
        }
}

TEST_CASE("each fact around a job's lengths has its line on the sheet")
{
    Job job_ = demo_job();
    job_.circumstances = {"0123 456", "drawbar, second hole", 30'500, {"Demo tractor 60", "the neighbour's"}, false, false, {"A. Fitter", "2026-11-20", "steel tape"}, "trial field only", "B. Foreman"};
    JobShaft& shaft = job_.shaft;
    shaft.number = "S-0412";
    shaft.condition = Condition{Completeness::complete, Completeness::missing, CrossWear::worn, std::nullopt, LockState::stiff, Weld::none, std::nullopt, Phase::in_plane, std::nullopt, {}};
    shaft.halves[Tube::inner].series = OtherSeries{"Rowan 5"};
    shaft.halves[Tube::outer].series = OtherSeries{};
    shaft.halves[Tube::outer].stop_depth = measured(562);
    shaft.ends[End::tractor].spacing = mm(64);
    JobFit& fit = job_.fits[0];
    fit.shortest_at = "turned left to the stop";
    fit.longest_at[Range::standing] = "lifted for the road";
    fit.views[End::tractor] = AngleViews{Range::turning, Angle::degrees(38), Angle::degrees(14)};
    const WorkOrder order = worked_in(job_, Units::mm);
    const std::vector<Page> pages = cut_sheet_of(order, Paper::a4);
    for (const char* words :
         {"Drive shaft S-0412: fitting its length", "Customer: Demo customer (invented), telephone 0123 456", "Tractor: Demo tractor 90, 30.5 kW at the PTO, drawbar, second hole", "Machine: Demo tedder, NOT HERE",
          "Other tractors: NOT MEASURED: Demo tractor 60; the neighbour's", "Shortest 742 mm (turned left to the stop)", "standing 905 mm (lifted for the road)"}) {
        INFO(words);
        CHECK(contains({pages.front()}, words));
    }
    for (const char* words : {"shaft number S-0412", "hitch drawbar, second hole", "measured A. Fitter, 2026-11-20, with steel tape", "a limit made looser trial field only; by B. Foreman",
                              "as it came in guard complete, chains missing, crosses worn, locks stiff, no weld, forks in plane", "implement half of series Rowan 5",
                              "tractor half of no known series", "tractor half's stop 562 mm from its tube's free end inwards", "tractor joint crosses 64 mm apart",
                              "tractor joint, turning 40°: from 38° seen from the side and 14° seen from above", "742 mm ± 2 mm at the inner cross, turned left to the stop"}) {
        INFO(words);
        CHECK(contains(pages, words));
    }
    CHECK(says(order.notes, "Not measured, but drives the machine too: Demo tractor 60 and the neighbour's."));
    CHECK(says(order.notes, "The machine is not here"));
    CHECK(says(order.notes, "A limit was made looser by B. Foreman: trial field only."));
    CHECK(says(order.steps, "have its shortest read again without this sheet in sight"));
}

TEST_CASE("that no other tractor drives the machine is said too")
{
    Job job_ = demo_job();
    job_.circumstances.no_other_tractors = true;
    CHECK(contains({cut_sheet_of(worked_in(job_, Units::mm), Paper::a4).front()}, "Other tractors: none"));
}
