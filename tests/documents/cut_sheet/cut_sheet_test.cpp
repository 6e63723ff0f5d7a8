#include "cut_sheet/refusal_words.hpp"
#include "documents/cut_sheet/sheet_cases.hpp"
#include "documents/page/page_checks.hpp"
#include "page/font.hpp"
#include "shaft_title_words.hpp"
#include "parse.hpp"
#include "support/catch.hpp"
#include "support/fonts.hpp"
#include "support/sentences.hpp"
#include "support/papers.hpp"
#include "text.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

// One page after another of every case on both papers.
template <class Look>
void on_every_page(const Look& look)
{
    for (const SheetCase& one : sheet_cases())
        for (const Paper paper : {Paper::a4, Paper::letter}) {
            const std::vector<Page> pages = cut_sheet_of(one.order, paper);
            for (std::size_t i = 0; i < pages.size(); ++i) {
                INFO(one.name << (paper == Paper::a4 ? ", A4" : ", Letter") << ", sheet " << i + 1);
                look(pages[i]);
            }
        }
}

// Why it is refused and what would serve, as the paper says it.
std::vector<std::string> refusal_of(const WorkOrder& order, const Wording& w)
{
    std::vector<std::string> all = cut_sheet::refusal_reasons(order, w);
    for (const WayOut& way : order.ways_out) all.push_back(cut_sheet::way_in_short(way, w));
    return all;
}

// But those that the table of what is stated says.
std::vector<std::string> notes_of(const WorkOrder& order, const Wording& w)
{
    std::vector<std::string> all;
    for (const Note& note : order.notes)
        if (!std::holds_alternative<UnmeasuredTractors>(note) && !std::holds_alternative<LooserLimit>(note)) all.push_back(say(note, w));
    return all;
}

// "574 mm", "22-1/2 in" read again.
Length printed_length(const std::string& text) { return std::get<Length>(parse_length(text, Units::mm)); }

}  // namespace

TEST_CASE("the cases are what their names say")
{
    for (const SheetCase& one : sheet_cases()) {
        INFO(one.name);
        const bool refused = one.name.starts_with("refused") || one.name == "short tubes" || one.name == "contradiction";
        CHECK(one.order.verdict == (refused ? Verdict::refused : one.name == "fits" ? Verdict::fits : Verdict::cut));
    }
}

TEST_CASE("every text of a cut sheet can be read, and no line leaves the sheet")
{
    on_every_page([](const Page& page) {
        check_texts(page);
        check_lines(page, 9);
    });
}

TEST_CASE("the lengths to cut are bold, over 5 mm high and in a box; other figures are 3.5 mm")
{
    for (const SheetCase& one : sheet_cases()) {
        if (one.order.verdict != Verdict::cut) continue;
        INFO(one.name);
        const Page first = cut_sheet_of(one.order, Paper::a4).front();
        for (const Tube tube : both_tubes) {
            const Text* cut = find(first, figure_with_unit(one.order.cut->plan.cut[tube], one.order.units, Toward::up));
            REQUIRE(cut);
            CHECK(cut->cap_height >= 5);
            CHECK(cut->weight == Weight::bold);
            const Text* kept = find(first, "(keep " + figure(one.order.cut->plan.half[tube], one.order.units, Toward::down) + ")");
            REQUIRE(kept);
            CHECK(kept->cap_height >= 3.5);
        }
    }
}

TEST_CASE("nothing is dropped: every sentence of the work order is on its sheets")
{
    for (const SheetCase& one : sheet_cases()) {
        const WorkOrder& order = one.order;
        const Wording w = wording_of(order);
        INFO(one.name);
        for (const Paper paper : {Paper::a4, Paper::letter}) {
            const std::vector<Page> pages = cut_sheet_of(order, paper);
            std::vector<std::string> sentences{order.order, say(order.shaft_title, w), order.owner, order.customer, order.machine, order.tractor};
            for (const Check& check : order.checks) {
                sentences.push_back(to_word(check.id));
                if (check.result == CheckResult::warn) sentences.push_back(cut_sheet::says_without_places(check, w));
                for (const std::string& clause : basis_clauses(check, w)) sentences.push_back(clause);
            }
            for (const auto& list : {refusal_of(order, w), notes_of(order, w), say_all(order.cautions, w)})
                sentences.insert(sentences.end(), list.begin(), list.end());
            for (const std::string& sentence : sentences) {
                INFO(sentence);
                CHECK(contains(pages, sentence));
            }
        }
    }
}

TEST_CASE("a refused sheet says so and shows no figure of a cut")
{
    for (const SheetCase& one : sheet_cases()) {
        if (one.order.verdict != Verdict::refused) continue;
        INFO(one.name);
        const std::vector<Page> pages = cut_sheet_of(one.order, Paper::a4);
        const Text* verdict = find(pages.front(), "DO NOT CUT");
        REQUIRE(verdict);
        CHECK(verdict->cap_height >= 10);
        for (const char* words : {"cut off", "(keep", "After the cut", "Measured after the cut", "Closed, after", "Overlap of the tubes"}) {
            INFO(words);
            for (const Text& text : texts_of(pages.front())) CHECK(text.text.find(words) == std::string::npos);
        }
        for (const Mark& mark : pages.front().marks)
            if (const auto* path = std::get_if<Path>(&mark.what)) CHECK(path->fill != Fill::hatched);
    }
}

TEST_CASE("a refused sheet holds none of the figures that the cut would have had")
{
    Job job_ = demo_job();
    const CutFigures cut = *worked_in(job_, Units::mm).cut;
    job_.shaft.ends[End::tractor].lock = Lock::exposed_push_pin;
    job_.shaft.built = 2022;
    const std::vector<Page> pages = cut_sheet_of(worked_in(job_, Units::mm), Paper::a4);
    std::vector<Length> figures{cut.plan.closed, cut.closed_at[Reference::outer_cross]};
    for (const Tube tube : both_tubes) figures.insert(figures.end(), {cut.plan.cut[tube], cut.plan.half[tube], *cut.plan.guard_half[tube]});
    for (const Length length : figures)
        for (const Page& page : pages)
            for (const Text& text : texts_of(page)) {
                INFO(text.text);
                CHECK(text.text.find(figure_with_unit(length, Units::mm)) == std::string::npos);
            }
}

TEST_CASE("the first sheet has the positions that the steps refer to")
{
    for (const SheetCase& one : sheet_cases()) {
        INFO(one.name);
        for (const Paper paper : {Paper::a4, Paper::letter}) {
            const std::vector<Page> first{cut_sheet_of(one.order, paper).front()};
            if (one.order.verdict == Verdict::refused) continue;
            CHECK(contains(first, "Shortest " + figure_with_unit(one.order.fit.shortest->value, one.order.units, Toward::down) + ", longest "));
        }
    }
    const Page first = cut_sheet_of(worked_in(demo_job(), Units::mm), Paper::a4).front();
    CHECK(contains({first}, "Shortest 742 mm, longest working 800 mm, turning 850 mm, standing 905 mm"));
}

TEST_CASE("what a tube was, less what comes off, is what is kept, to the least that is printed")
{
    int compared = 0;
    for (const SheetCase& one : sheet_cases()) {
        if (one.order.verdict != Verdict::cut) continue;
        const CutPlan& plan = one.order.cut->plan;
        for (const Text& text : texts_of(cut_sheet_of(one.order, Paper::a4).front())) {
            // "tube 22-1/2 in (was 26-5/16)"
            const std::size_t was = text.text.find(" (was ");
            if (was == std::string::npos) continue;
            INFO(one.name << ": " << text.text);
            const bool guard = text.text.starts_with("guard ");
            const Length kept = printed_length(text.text.substr(guard ? 6 : 5, was - (guard ? 6 : 5)));
            const Length before = printed_length(text.text.substr(was + 6, text.text.size() - was - 7) + " " + unit_word(one.order.units));
            // What was measured stays as it was written, and what is kept is never printed longer: in inches they may lie a sixteenth apart.
            const Length least = Length::micrometres(one.order.units == Units::in ? 1590 : 2);
            const auto cut_of = [&](Tube tube) { return guard ? plan.guard_cut[tube].value_or(Length()) : plan.cut[tube]; };
            const auto is_cut = [&](Tube tube) { return before - kept - cut_of(tube) >= -Length::micrometres(2) && before - kept - cut_of(tube) <= least; };
            CHECK((is_cut(Tube::inner) || is_cut(Tube::outer)));
            ++compared;
        }
    }
    CHECK(compared > 40);
}

TEST_CASE("a tube that is not cut says so and has no waste")
{
    const std::vector<Page> pages = cut_sheet_of(worked_in(fits_job(), Units::mm), Paper::a4);
    CHECK(find(pages.front(), "FITS AS IT IS"));
    for (const char* letter : {"A", "B", "C", "D"}) CHECK(count_of({pages.front()}, letter) == 1);
    CHECK(count_of(cut_sheet_of(worked_in(guards_alone_job(), Units::mm), Paper::a4), "do not cut") == 2);
    for (const Mark& mark : pages.front().marks)
        if (const auto* path = std::get_if<Path>(&mark.what)) CHECK(path->fill != Fill::hatched);
}

TEST_CASE("what is continued says where, and sheets are numbered")
{
    on_every_page([](const Page& page) {
        CHECK(page.marks.size() > 1);
        CHECK_FALSE(contains({page}, "continued, continued"));
    });
    const std::vector<Page> pages = cut_sheet_of(worked_in(long_names_job(), Units::in), Paper::letter);
    REQUIRE(pages.size() > 2);
    CHECK(find(pages[0], "1 of " + std::to_string(pages.size())));
    CHECK(find(pages[1], "Sheet 2 of " + std::to_string(pages.size())));
}

TEST_CASE("a sign without a glyph is replaced where it stands, and the sheet says what that means")
{
    const std::vector<Page> pages = cut_sheet_of(worked_in(no_glyphs_job(), Units::mm), Paper::a4);
    CHECK(find(pages[0], "Customer: ���� with �� (�: sign missing in the font)"));
    CHECK(find(pages[0], "Machine: ���� (�: sign missing in the font)"));
}

TEST_CASE("a wide-angle joint names both crosses, a standard joint its one")
{
    const Page wide = cut_sheet_of(worked_in(both_wide_job(), Units::mm), Paper::a4).front();
    const std::vector<Text> texts = texts_of(wide);
    for (const char* name : {"outer cross", "INNER cross"})
        CHECK(std::count_if(texts.begin(), texts.end(), [&](const Text& text) { return text.text == name; }) == 2);
    CHECK(find(wide, "Closed now: 924 mm between outer crosses = 796 mm between inner crosses"));
    CHECK(find(cut_sheet_of(worked_in(demo_job(), Units::mm), Paper::a4).front(), "centre of cross"));
}
