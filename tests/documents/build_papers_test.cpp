// The papers of shafts made to order as finished files, read back by other programs.
#include <set>

#include "documents/build_cases.hpp"
#include "documents/page/page_checks.hpp"
#include "documents/page/print_checks.hpp"
#include "labels/labels_sheet.hpp"
#include "page/cairo_pages.hpp"
#include "page/font.hpp"
#include "shaftcut/engine/answer.hpp"
#include "shaftcut/trade/saw/saw_order.hpp"
#include "support/catch.hpp"
#include "support/fonts.hpp"
#include "text.hpp"

using namespace shaftcut;
using namespace shaftcut::test;
using namespace shaftcut::test::papers;

namespace {

std::set<std::string> lines_of(const std::string& text)
{
    std::set<std::string> lines;
    for (std::size_t at = 0, end = 0; (end = text.find('\n', at)) != std::string::npos; at = end + 1) lines.insert(text.substr(at, end - at));
    return lines;
}

// What the codes of a file's page say, from 150 dots an inch, or from a bad photocopy of 100.
std::set<std::string> codes_of(const Folder& folder, const std::string& pdf, std::size_t page, bool copied)
{
    const std::string pages = " -f " + std::to_string(page + 1) + " -l " + std::to_string(page + 1) + " -singlefile ";
    output_of("pdftoppm -r " + std::string(copied ? "100" : "150") + " -gray" + pages + folder.file(pdf) + " " + folder.file("page"));
    if (copied) write(folder.file("page.pgm"), photocopied(read_picture(folder.file("page.pgm"))));
    return lines_of(output_of("zbarimg -q --raw --nodbus " + folder.file("page.pgm")));
}

std::vector<Page> label_pages(const Batch& batch, Paper paper)
{
    const LabelSheets sheets = label_sheets(batch, paper, font_files());
    std::vector<Page> pages;
    for (std::size_t i = 0; i < sheets.count; ++i) pages.push_back(sheets.draw(i));
    return pages;
}

std::set<std::string> expected_codes(const Batch& batch)
{
    std::set<std::string> codes;
    for (const BatchPiece& piece : batch.pieces) codes.insert(piece_label(piece, wording_of(batch)));
    for (const BatchOrder& order : batch.orders)
        if (order.built) codes.insert(order.order + " shaft");
    return codes;
}

// The same of labels, parted: each is held before the reader by itself.
std::set<std::string> label_codes(const Folder& folder, const std::string& pdf, std::size_t page, bool copied)
{
    const std::string number = std::to_string(page + 1);
    output_of("pdftoppm -r " + std::string(copied ? "100" : "150") + " -gray -f " + number + " -l " + number + " -singlefile " + folder.file(pdf) + " " + folder.file("page"));
    const Picture sheet = read_picture(folder.file("page.pgm"));
    const int width = sheet.width / 2, height = sheet.height / 6;
    std::set<std::string> codes;
    for (int place = 0; place < 12; ++place) {
        const Picture label = cropped(sheet, place % 2 * width, place / 2 * height, width, height);
        write(folder.file("label.pgm"), copied ? photocopied(label) : pgm_of(label));
        codes.merge(lines_of(output_of("zbarimg -q --raw --nodbus " + folder.file("label.pgm"))));
    }
    return codes;
}

Wishes on(Paper paper)
{
    Wishes wishes;
    wishes.paper = paper;
    wishes.fonts = font_files();
    return wishes;
}

// Orders whose numbers make the least and the greatest codes.
Batch batch_of_long_numbers(Units units) { return batch_of({build_order("7"), build_order(std::string(40, 'W')), closed_order("K-1042/ab.7_x", 830)}, units); }

}  // namespace

TEST_CASE("an assembly work order's code and blanks read back from its file, and the same order gives the same bytes")
{
    const Folder folder;
    for (const char* number : {"B-101", "K-1042-very-long-order-number-of-forty-ch"}) {
        const BuildPlan plan = planned(build_order(number));
        const Document document = documents(plan, {Format::pdf}, on(Paper::a4)).at(0);
        CHECK(document.name == std::string(number) + "-assembly.pdf");
        CHECK(document.bytes == documents(plan, {Format::pdf}, on(Paper::a4)).at(0).bytes);
        write(folder.file("sheet.pdf"), document.bytes);
        CHECK(codes_of(folder, "sheet.pdf", 0, false) == std::set<std::string>{number});
        CHECK(codes_of(folder, "sheet.pdf", 0, true) == std::set<std::string>{number});
        const std::string text = output_of("pdftotext -layout " + folder.file("sheet.pdf") + " -");
        for (const Tube tube : both_tubes) {
            CHECK(text.find(figure_with_unit(plan.built->lengths.blank[tube], Units::mm)) != std::string::npos);
            CHECK(text.find(figure_with_unit(*plan.built->lengths.guard_blank[tube], Units::mm)) != std::string::npos);
        }
    }
}

TEST_CASE("there is one label for each piece and each shaft")
{
    const Batch batch = case_batch(Units::mm);
    const std::vector<Page> pages = label_pages(batch, Paper::a4);
    std::int64_t codes = 0;
    for (const Page& page : pages)
        for (const Mark& mark : page.marks) codes += std::holds_alternative<Code>(mark.what) ? 1 : 0;
    CHECK(codes == count_labels(batch));
    CHECK(pages.size() == static_cast<std::size_t>((codes + 11) / 12));
    std::int64_t shafts = 0, guarded = 0;
    for (const BatchOrder& order : batch.orders) {
        shafts += order.built ? order.count : 0;
        guarded += order.built && order.built->lengths.guard_blank[Tube::inner] ? order.count : 0;
    }
    CHECK(shafts > 8);
    CHECK(guarded < shafts);
    CHECK(count_of(pages, "INNER TUBE") == shafts);
    CHECK(count_of(pages, "OUTER GUARD TUBE") == guarded);
}

// The saw is fed bar after bar: whoever sticks takes the next label for the next piece.
TEST_CASE("labels lie in the order in which the saw yields the pieces, numbered in one direction")
{
    const Batch batch = case_batch(Units::mm);
    std::vector<std::string> wanted;
    std::size_t position = 0;
    for (const ProfilePlan& plan : batch.plans) {
        std::int64_t bar = 0;
        for (const BarLayout& alike : plan.order->bars)
            for (std::int64_t i = 0; i < alike.count; ++i) {
                ++bar;
                for (std::size_t piece = 0; piece < alike.pieces.size(); ++piece) wanted.push_back("label " + std::to_string(++position) + ": " + plan.profile + ", bar " + std::to_string(bar));
            }
    }
    REQUIRE(wanted.size() >= 20);
    std::vector<std::string> printed;
    for (const Page& page : label_pages(batch, Paper::a4))
        for (const Text& text : texts_of(page))
            if (text.text.starts_with("label ") && text.text.find(", bar ") != std::string::npos) printed.push_back(text.text);
    CHECK(printed == wanted);
}

TEST_CASE("a piece's label has its length and an arrow to the end of its yoke, and each piece its own number")
{
    const Batch batch = case_batch(Units::mm);
    const std::vector<Page> pages = label_pages(batch, Paper::a4);
    for (const BatchPiece& piece : batch.pieces) {
        CHECK(contains(pages, std::string("◄ yoke at the ") + to_word(piece.end) + " end; no. " + std::to_string(piece.count) + " of " + std::to_string(piece.count)));
        CHECK(contains(pages, saw_figure(piece.length, Units::mm) + " mm"));
    }
}

TEST_CASE("on labels no text overlaps another or leaves its label, and no code loses its white edge")
{
    for (const Units units : {Units::mm, Units::in})
        for (const Paper paper : {Paper::a4, Paper::letter})
            for (const Batch& batch : {case_batch(units), batch_of_long_numbers(units)})
                for (const Page& page : label_pages(batch, paper)) {
                    const double width = page.width / 2, height = page.height / 6;
                    std::vector<Rect> codes;
                    for (const Mark& mark : page.marks)
                        if (const auto* code = std::get_if<Code>(&mark.what)) codes.push_back({code->box.x - 4, code->box.y - 4, code->box.width + 8, code->box.height + 8});
                    CHECK(overlapping_texts(page).empty());
                    CHECK(struck_texts(page).empty());
                    for (const Text& text : texts_of(page)) {
                        INFO(text.text);
                        const double x = text.box.x - width * static_cast<int>(text.box.x / width), y = text.box.y - height * static_cast<int>(text.box.y / height);
                        CHECK(x >= 4.9);
                        CHECK(x + text.box.width <= width - 4.9);
                        CHECK(y >= 3.9);
                        CHECK(y + text.box.height <= height - 3.9);
                        CHECK(text.cap_height >= 2.5);
                        for (const Rect& code : codes) CHECK_FALSE(overlap(text.box, code));
                    }
                }
}

TEST_CASE("labels' codes read back from 150 dots an inch, and from a bad photocopy of 100")
{
    const Folder folder;
    for (const Paper paper : {Paper::a4, Paper::letter}) {
        const Batch batch = batch_of_long_numbers(Units::mm);
        const std::vector<Document> made = documents(batch, {Format::pdf}, on(paper));
        const auto labels = std::find_if(made.begin(), made.end(), [](const Document& document) { return document.name == "demo-batch-labels.pdf"; });
        REQUIRE(labels != made.end());
        write(folder.file("labels.pdf"), labels->bytes);
        for (const bool copied : {false, true}) {
            std::set<std::string> read;
            for (std::size_t page = 0; page < label_sheets(batch, paper, font_files()).count; ++page) read.merge(label_codes(folder, "labels.pdf", page, copied));
            INFO((copied ? "copied" : "clean") << (paper == Paper::a4 ? ", A4" : ", Letter"));
            CHECK(read == expected_codes(batch));
        }
    }
}

// 2,700 bytes a label where each has its code's two hundred rectangles.
TEST_CASE("equal labels hold their code once, and each sheet of them is told")
{
    const auto sheets_of = [](int shafts) {
        BuildOrder order = build_order("B-101");
        order.count = shafts;
        const Batch batch = batch_of({order}, Units::mm);
        std::vector<std::pair<std::size_t, std::size_t>> told, expected;  // told from another thread, so compared afterwards
        Wishes wishes = on(Paper::a4);
        wishes.labels_drawn = [&](std::size_t drawn, std::size_t of) { told.emplace_back(drawn, of); };
        const std::vector<Document> made = documents(batch, {Format::pdf}, wishes);
        const std::size_t sheets = label_sheets(batch, Paper::a4, font_files()).count;
        for (std::size_t drawn = 1; drawn <= sheets; ++drawn) expected.emplace_back(drawn, sheets);
        CHECK(told == expected);
        return std::pair(count_labels(batch), made.back().bytes.size());
    };
    const auto [few, bytes_of_few] = sheets_of(20);
    const auto [many, bytes_of_many] = sheets_of(140);
    CHECK(many == 7 * few);
    CHECK(bytes_of_many - bytes_of_few < static_cast<std::size_t>(many - few) * 700);
}

TEST_CASE("a label shows its piece's length, and a shaft's label how far it may be pulled")
{
    const Batch batch = batch_of({build_order("B-101")}, Units::mm);
    const std::string text = all_text(label_pages(batch, Paper::a4));
    for (const BatchPiece& piece : batch.pieces) CHECK(text.find(squeezed(figure_with_unit(piece.length, Units::mm))) != std::string::npos);
    const UseRange& use = batch.orders.front().built->use;
    for (const Range range : all_ranges)
        CHECK(text.find(squeezed(std::string(to_word(range)) + " " + figure_with_unit((*use.longest[range])[Reference::outer_cross], Units::mm, Toward::down))) != std::string::npos);
    CHECK(text.find(squeezed("from the OUTER cross; shaft 1 of 1")) != std::string::npos);
}

TEST_CASE("where a label's pin hole is stays in millimetres first")
{
    const Batch batch = batch_of({build_order("B-101")}, Units::in);
    const std::string text = all_text(label_pages(batch, Paper::a4));
    CHECK(batch.pieces.front().pin_hole == mm(18));
    CHECK(text.find(squeezed("pin hole 18 mm (0.709 in) from its yoke end")) != std::string::npos);
}

TEST_CASE("an order that is refused has no label")
{
    BuildOrder refused = build_order("B-109");
    refused.shaft.ends[End::tractor].lock = Lock::exposed_push_pin;
    const Batch batch = batch_of({refused}, Units::mm);
    CHECK(count_labels(batch) == 0);
    CHECK(label_sheets(batch, Paper::a4, font_files()).count == 0);
    const auto papers = documents(batch, {Format::pdf}, on(Paper::a4));
    REQUIRE(papers.size() == 1);
    CHECK(papers.front().name.ends_with("-summary.pdf"));
}

TEST_CASE("the same batch gives the same bytes, under the names that are said before")
{
    const Batch batch = case_batch(Units::mm);
    for (const Format format : {Format::pdf, Format::xlsx}) {
        const std::vector<Document> once = documents(batch, {format}, on(Paper::letter)), again = documents(batch, {format}, on(Paper::letter));
        const std::vector<std::string> names = batch_document_names(batch.name, {format});
        REQUIRE(once.size() == names.size());
        for (std::size_t i = 0; i < once.size(); ++i) {
            CHECK(once[i].name == names[i]);
            CHECK(once[i].bytes == again[i].bytes);
        }
    }
}
