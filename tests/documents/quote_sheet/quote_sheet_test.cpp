#include "quote_sheet/quote_sheet.hpp"

#include <regex>

#include "documents/page/page_checks.hpp"
#include "documents/page/print_checks.hpp"
#include "documents/quote_sheet/quote_cases.hpp"
#include "money_words.hpp"
#include "page/cairo_pages.hpp"
#include "quote_sheet/quote_sheet_words.hpp"
#include "support/catch.hpp"
#include "support/fonts.hpp"
#include "support/lengthened.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

std::vector<Page> sheet_of(const Quote& quote, Paper paper = Paper::a4) { return draw_quote_sheet(quote, paper, font_files(), Wording(quote.units)); }

// With plain spaces, as other programs read it.
std::string pdf_text(const Quote& quote)
{
    const Folder folder;
    const Wording w(quote.units);
    write(folder.file("quote.pdf"), pdf_of(sheet_of(quote), quote_sheet_info(quote, w), font_files()));
    std::string text = output_of("pdftotext -layout " + folder.file("quote.pdf") + " -");
    for (std::size_t at; (at = text.find("\u00a0")) != std::string::npos;) text.replace(at, 2, " ");
    return text;
}

// What must not stand on the paper, whatever the kind of quote. "540 min⁻¹" is a speed.
const std::vector<std::string>& forbidden()
{
    static const std::vector<std::string> patterns{R"(\d ?mm\b)", R"(\d ?(in|inch|inches)\b)", R"(\d ?m\b)", R"(\d ?°)", R"(\bsafe)", R"(\btested)", R"(\bconform)", R"(\bguarante)", R"(\binvoice)",
                                                   R"(\bminutes?\b)", R"(\bmin\b(?!⁻))", R"(\bhours?\b)", R"(\bcosts?\b)", R"(\brack\b)", R"(\bcut off\b)", R"(62\.00)"};
    return patterns;
}

bool is_long(const std::string& name) { return name == "list" || name == "long names"; }

}  // namespace

TEST_CASE("quote sheet: every text can be read, and nothing leaves the sheet, on every paper and in a longer language")
{
    for (const QuoteCase& one : quote_cases())
        for (const Paper paper : {Paper::a4, Paper::letter})
            for (const bool longer : {false, true}) {
                INFO(one.name << (paper == Paper::a4 ? ", A4" : ", Letter") << (longer ? ", lengthened" : ""));
                const std::vector<Page> pages = draw_quote_sheet(one.quote, paper, font_files(), longer ? lengthened_wording(Units::mm) : Wording(Units::mm));
                if (!is_long(one.name) && !longer) CHECK(pages.size() == 1);
                CHECK(pages.size() <= (is_long(one.name) ? 4 : 2));
                for (const Page& page : pages) {
                    check_texts(page);
                    check_lines(page, 9.4);
                }
            }
}

TEST_CASE("quote sheet: no length, no promise, no time of work and no figure of a check stands on it")
{
    for (const QuoteCase& one : quote_cases()) {
        const std::string text = pdf_text(one.quote);
        for (const std::string& pattern : forbidden()) {
            INFO(one.name << ": " << pattern << "\n" << text);
            CHECK_FALSE(std::regex_search(text, std::regex(pattern, std::regex::icase)));
        }
    }
}

TEST_CASE("quote sheet: what must not stand on it would be seen")
{
    const auto seen = [](const std::string& text) {
        return std::any_of(forbidden().begin(), forbidden().end(), [&](const std::string& pattern) { return std::regex_search(text, std::regex(pattern, std::regex::icase)); });
    };
    for (const char* text : {"saw off 94 mm", "705mm closed", "29-3/16 in", "0.705 m", "12.5°", "Safe to use", "was tested", "6 min at", "62.00 an hour", "guaranteed to fit", "INVOICE"}) CHECK(seen(text));
    for (const char* text : {"540 min⁻¹", "cross 22 x 54", "4 more parts", "within 14 days"}) CHECK_FALSE(seen(text));
}

TEST_CASE("quote sheet: each kind says what it is, loudly")
{
    CHECK(find(sheet_of(complete_quote()).front(), "OFFER"));
    CHECK(contains(sheet_of(complete_quote()), "At a fixed price"));
    CHECK(find(sheet_of(charged_quote()).front(), "ESTIMATE"));
    CHECK(contains(sheet_of(charged_quote()), "± 15 %. Before it comes to more, we ask you."));
    CHECK(find(sheet_of(incomplete_quote()).front(), "INCOMPLETE"));
    CHECK(contains(sheet_of(estimate_before_measuring()), "ESTIMATE BEFORE MEASURING: holds if the lengths allow a cut"));
    CHECK(find(sheet_of(refused_quote()).front(), "THIS SHAFT CANNOT BE CUT"));
}

TEST_CASE("quote sheet: the total is the lines' with their tax, and prices with tax say it first")
{
    for (const PricesStated stated : {PricesStated::without_tax, PricesStated::with_tax}) {
        const Quote quote = complete_quote({}, stated);
        const std::vector<Page> pages = sheet_of(quote);
        const std::string text = all_text(pages);
        const auto at = [&](const std::string& words) { return text.rfind(squeezed(fonts().printable(words))); };
        const std::size_t total = at(say(quote.totals->total, quote.currency, Wording(Units::mm))), net = at(bare_amount(quote.totals->net, quote.currency));
        REQUIRE((total != std::string::npos && net != std::string::npos));
        CHECK((total < net) == (stated == PricesStated::with_tax));
        for (const TaxSum& sum : quote.totals->tax) CHECK(contains(pages, bare_amount(sum.amount, quote.currency)));
    }
}

TEST_CASE("quote sheet: what has no price is said, has no total and cannot be signed")
{
    const std::vector<Page> pages = sheet_of(incomplete_quote());
    CHECK(count_of(pages, "not priced") == 2);
    CHECK(contains(pages, "2 prices are still open"));
    for (const char* never : {"Signature", "Total with", "I order"}) CHECK_FALSE(contains(pages, never));
    CHECK(contains(sheet_of(complete_quote()), "free of charge"));
}

TEST_CASE("quote sheet: it holds until a day with its month as a word, and says when, the deposit, and what was found")
{
    const std::vector<Page> pages = sheet_of(complete_quote());
    for (const char* words : {"28 December 2026", "Ready about 2 working days after your order", "(25\u00a0% of the total) is due on order", "crosses worn", "guard damaged", "paid within 14 days",
                              "Sawing cannot be undone", "or by telephone, 555 0100", "trailed mower (invented) on Demo tractor 90 and Demo tractor 110"})
        CHECK(contains(pages, words));
    CHECK_FALSE(contains(pages, "straight"));
    CHECK_FALSE(contains(pages, "2026-12-28"));
}

TEST_CASE("quote sheet: what the firm does not state is not printed")
{
    const std::vector<Page> pages = sheet_of(incomplete_quote());
    for (const char* never : {"Tax number", "Register", "555 0100"}) CHECK_FALSE(contains(pages, never));
}

TEST_CASE("quote sheet: a refused cut says why, what would serve and for how much, and what was done is billed")
{
    const Quote quote = refused_quote();
    const std::vector<Page> pages = sheet_of(quote);
    for (const char* words : {"In turns, or lifted while it runs", "A lock of it stands out", "A stop limits how far the machine is lifted or lowered", "New shaft Larch 6", "Shaft Alder 2 made to measure",
                              "What was done is billed", "measuring", "CHEAPEST", "SOONEST", "the ONE offer that I ticked"})
        CHECK(contains(pages, words));
    for (const Alternative& one : quote.alternatives) CHECK(contains(pages, say(one.totals->total, quote.currency, Wording(Units::mm))));
}

TEST_CASE("quote sheet: each offer that is priced has a square to tick, and only those")
{
    const auto ticks = [](const Quote& quote) {
        std::size_t count = 0;
        for (const Page& page : sheet_of(quote))
            for (const Rect& box : boxes_of(page)) count += std::abs(box.width - 5) < 1e-9 && std::abs(box.height - 5) < 1e-9;
        return count;
    };
    CHECK(ticks(refused_quote()) == 3);
    CHECK(ticks(to_choose_from()) == 2);  // itself and one; the third has no price
    CHECK(ticks(complete_quote()) == 0);
    CHECK(ticks(many_to_choose_from()) == 2);
    CHECK(contains(sheet_of(many_to_choose_from()), "D New shaft Hazel 3: its price is still open."));
    Quote open = refused_quote();
    for (Alternative& one : open.alternatives) one.totals.reset();
    CHECK(ticks(open) == 0);
    CHECK_FALSE(contains(sheet_of(open), "Signature"));
}

TEST_CASE("quote sheet: every reason and every change at the machine has a sentence of its own kind, without a figure")
{
    const Wording w(Units::mm);
    for (std::size_t i = 0; i < Words<CheckId>::all.size(); ++i) {
        QuotedWork work;
        work.failing = {static_cast<CheckId>(i)};
        const std::vector<std::string> said = quote_sheet::why_not(work, w);
        REQUIRE(said.size() == 1);
        CHECK(said.front().find_first_of("0123456789") == std::string::npos);
    }
    QuotedWork twice;
    twice.failing = {CheckId::locking, CheckId::locking};
    CHECK(quote_sheet::why_not(twice, w).size() == 1);
    CHECK(quote_sheet::change_at_machine(LimitMovement{LimitMovement::Of::lift, End::tractor, {}, {}, false}, w) == "A stop limits how far the machine is lifted.");
}
