// The tagged PDF as a reader program goes through it: by pdfinfo's structure text (poppler-utils). And that nothing on it is said by colour.
#include "cut_sheet/warning_words.hpp"
#include "documents/cut_sheet/sheet_cases.hpp"
#include "documents/page/page_checks.hpp"
#include "documents/page/print_checks.hpp"
#include "documents/sample_orders.hpp"
#include "order/instruction_words.hpp"
#include "order/verdict_words.hpp"
#include "page/cairo_pages.hpp"
#include "support/papers.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

// Letters and figures alone: how lines were broken, boxes and quotes are no matter.
std::string bare(std::string text)
{
    for (const std::string& sign : {std::string(" "), std::string("\n"), std::string("\""), std::string("\u00a0"), std::string("☐"), std::string("▭")})
        for (std::size_t at; (at = text.find(sign)) != std::string::npos;) text.erase(at, sign.size());
    return text;
}

std::string structure_of(const Folder& folder, const WorkOrder& order)
{
    write(folder.file("sheet.pdf"), pdf_of(cut_sheet_of(order, Paper::a4), cut_sheet_info_of(order), font_files()));
    return bare(output_of("pdfinfo -struct-text " + folder.file("sheet.pdf")));
}

// What a step begins with, behind its number.
std::string beginning(const Step& step, const Wording& w)
{
    const auto* position = std::get_if<ReadRings>(&step.tasks.front());
    return bare(position ? position_of(*position, w) : say(step.tasks.front(), w));
}

// Where the words stand behind `from`; fails the test where they do not.
std::size_t behind(const std::string& text, const std::string& words, std::size_t from)
{
    INFO("looked for behind " << text.substr(from, 60) << "\n" << words);
    const std::size_t at = text.find(bare(words), from);
    REQUIRE(at != std::string::npos);
    return at;
}

}  // namespace

TEST_CASE("a reader program goes through the cut sheet in the order of the work")
{
    const Folder folder;
    int steps = 0;
    for (const SheetCase& one : sample_orders(SHAFTCUT_SOURCE_DIR)) {
        const WorkOrder& order = one.order;
        if (order.verdict == Verdict::refused) continue;
        INFO(one.name);
        const Wording w = wording_of(order);
        const std::string text = structure_of(folder, order);
        std::size_t at = behind(text, order.order, 0);
        at = behind(text, verdict_words(order, w), at);
        // Warnings before the drawing, its cuts as they lie, and over the steps what is never forgotten.
        if (const std::size_t warning = text.find("WARNING:"); warning < text.find("TRACTORHALF")) at = warning;
        at = behind(text, "TRACTOR HALF", at);
        at = behind(text, "IMPLEMENT HALF", at);
        const std::size_t off = behind(text, "PTO off, engine off, key in your pocket", at);
        at = off;
        for (const Step& step : order.steps) {
            INFO("step " << step.number);
            const std::size_t next = behind(text, beginning(step, w), at);
            CHECK(text.rfind(std::to_string(step.number), next) != std::string::npos);
            at = next;
            ++steps;
        }
        // What kills is said before the shaft is tried on its machine.
        const std::size_t danger = behind(text, say(Caution::turning_shaft_kills, w), off);
        const auto tried = std::find_if(order.steps.begin(), order.steps.end(), [](const Step& step) { return step.number == 12; });
        REQUIRE(tried != order.steps.end());
        CHECK(danger < behind(text, beginning(*tried, w), danger));
    }
    CHECK(steps > 250);
}

TEST_CASE("each confirmation of a sheet is read before anything is sawn")
{
    const Folder folder;
    for (const SheetCase& one : sample_orders(SHAFTCUT_SOURCE_DIR)) {
        if (one.order.verdict != Verdict::cut || one.order.confirm.empty()) continue;
        INFO(one.name);
        const std::string text = structure_of(folder, one.order);
        const std::size_t saw = behind(text, "blade on the waste side", 0);
        std::size_t count = 0;
        for (std::size_t at = text.find("CONFIRM"); at != std::string::npos && at < saw; at = text.find("CONFIRM", at + 1)) ++count;
        CHECK(count == one.order.confirm.size() + 1);  // and the verdict's own
    }
}

TEST_CASE("nothing on the cut sheet is said by a colour: black on white, white on black, and no dot of another")
{
    const Folder folder;
    for (const Job& job_ : {demo_job(), fits_job(), refused_job()}) {
        const WorkOrder order = worked_in(job_, Units::mm);
        for (const Page& page : cut_sheet_of(order, Paper::a4))
            for (const Mark& mark : page.marks) {
                const auto* text = std::get_if<Text>(&mark.what);
                if (!text || text->ink == Ink::black) continue;
                const bool on_black = std::any_of(page.marks.begin(), page.marks.end(), [&](const Mark& other) {
                    const auto* disc = std::get_if<Disc>(&other.what);
                    return disc && disc->fill == Fill::black && overlap({disc->centre.x, disc->centre.y, 0.01, 0.01}, text->box);
                });
                INFO(text->text);
                CHECK(on_black);
            }
        write(folder.file("sheet.pdf"), pdf_of(cut_sheet_of(order, Paper::a4), cut_sheet_info_of(order), font_files()));
        output_of("pdftoppm -r 40 -f 1 -l 1 -singlefile " + folder.file("sheet.pdf") + " " + folder.file("colour"));
        std::ifstream file(folder.file("colour.ppm"), std::ios::binary);
        const std::string bytes((std::istreambuf_iterator<char>(file)), std::istreambuf_iterator<char>());
        REQUIRE(bytes.starts_with("P6"));
        // Behind the heading's three lines.
        std::size_t at = 0;
        for (int line = 0; line < 3; ++line) at = bytes.find('\n', at) + 1;
        REQUIRE((bytes.size() - at) % 3 == 0);
        bool grey = true;
        for (; at + 2 < bytes.size(); at += 3) grey = grey && bytes[at] == bytes[at + 1] && bytes[at + 1] == bytes[at + 2];
        CHECK(grey);
    }
}
