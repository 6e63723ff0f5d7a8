// The finished files read back by other programs: pdftotext, pdfinfo, pdftoppm (poppler-utils) and zbarimg (zbar-tools).
#include "documents/cut_sheet/sheet_cases.hpp"
#include "documents/page/print_checks.hpp"
#include "page/cairo_pages.hpp"
#include "page/qr.hpp"
#include "support/catch.hpp"
#include "support/fonts.hpp"
#include "support/papers.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

std::string sheet_pdf(const WorkOrder& order, Paper paper = Paper::a4)
{
    return pdf_of(cut_sheet_of(order, paper), cut_sheet_info_of(order), font_files());
}

}  // namespace

TEST_CASE("pdftotext finds the figures of the cut")
{
    const Folder folder;
    for (const SheetCase& one : sheet_cases()) {
        INFO(one.name);
        write(folder.file("sheet.pdf"), sheet_pdf(one.order));
        const std::string text = output_of("pdftotext -layout " + folder.file("sheet.pdf") + " -");
        CHECK(text.find(one.order.order.substr(0, 15)) != std::string::npos);
        if (one.order.verdict != Verdict::cut) continue;
        for (const Tube tube : both_tubes) {
            const CutPlan& plan = one.order.cut->plan;
            for (const Length cut : {plan.cut[tube], plan.guard_cut[tube].value()})
                CHECK(text.find(figure_with_unit(cut, one.order.units, Toward::up)) != std::string::npos);
            CHECK(text.find(figure(plan.half[tube], one.order.units, Toward::down) + ")") != std::string::npos);
        }
    }
}

TEST_CASE("other alphabets come back from the PDF as they went in")
{
    const Folder folder;
    Job job_ = demo_job();
    job_.customer = "Żółć Ελλάδα Ферма Žluťoučký Größe";
    write(folder.file("sheet.pdf"), sheet_pdf(worked_in(job_, Units::mm)));
    CHECK(output_of("pdftotext " + folder.file("sheet.pdf") + " -").find(job_.customer) != std::string::npos);
}

TEST_CASE("the code reads back from 150 dots an inch, and from a bad photocopy of 100")
{
    const Folder folder;
    for (const Job& job_ : {demo_job(), long_names_job(), bare_job()}) {
        INFO(job_.order);
        write(folder.file("sheet.pdf"), sheet_pdf(worked_in(job_, Units::mm)));
        output_of("pdftoppm -r 150 -gray -f 1 -l 1 -singlefile " + folder.file("sheet.pdf") + " " + folder.file("fine"));
        CHECK(output_of("zbarimg -q --raw --nodbus " + folder.file("fine.pgm")) == job_.order + "\n");
        output_of("pdftoppm -r 100 -gray -f 1 -l 1 -singlefile " + folder.file("sheet.pdf") + " " + folder.file("coarse"));
        write(folder.file("copy.pgm"), photocopied(read_picture(folder.file("coarse.pgm"))));
        CHECK(output_of("zbarimg -q --raw --nodbus " + folder.file("copy.pgm")) == job_.order + "\n");
    }
}

TEST_CASE("the same order gives the same bytes")
{
    const WorkOrder order = worked_in(demo_job(), Units::mm);
    CHECK(sheet_pdf(order) == sheet_pdf(order));
    CHECK(sheet_pdf(order) != sheet_pdf(worked_in(fits_job(), Units::mm)));
    const Page first = cut_sheet_of(order, Paper::a4).front();
    CHECK(png_of(first, 80, font_files()) == png_of(first, 80, font_files()));
    CHECK(svg_of(first, font_files()) == svg_of(first, font_files()));
}

TEST_CASE("the PDF is sound, tagged, in English, and dated by its job")
{
    const Folder folder;
    write(folder.file("sheet.pdf"), sheet_pdf(worked_in(demo_job(), Units::mm)));
    const std::string info = output_of("TZ=UTC pdfinfo -isodates " + folder.file("sheet.pdf"));
    INFO(info);
    for (const char* line : {"Cut sheet K-1042", "Demo workshop (invented)", "Alder 2, lemon tubes", "2026-11-24T12:00:00Z", "Tagged:          yes", "595.276 x 841.89"})
        CHECK(info.find(line) != std::string::npos);
    CHECK(info.find("Error") == std::string::npos);
    const std::string tags = output_of("pdfinfo -struct " + folder.file("sheet.pdf"));
    for (const char* tag : {"Document", "H1", "P (block)", "Table", "Figure"}) CHECK(tags.find(tag) != std::string::npos);
    CHECK(sheet_pdf(worked_in(demo_job(), Units::mm)).find("/Lang (en)") != std::string::npos);
    write(folder.file("letter.pdf"), sheet_pdf(worked_in(bare_job(), Units::mm), Paper::letter));
    const std::string letter = output_of("TZ=UTC pdfinfo -isodates " + folder.file("letter.pdf"));
    CHECK(letter.find("612 x 792") != std::string::npos);
    CHECK(letter.find("2000-01-01T12:00:00Z") != std::string::npos);
}

TEST_CASE("a picture has the size and the resolution asked for")
{
    const Page first = cut_sheet_of(worked_in(demo_job(), Units::mm), Paper::a4).front();
    const std::string png = png_of(first, 100, font_files());
    CHECK(png.substr(1, 3) == "PNG");
    const auto byte = [&](std::size_t at) { return static_cast<int>(static_cast<unsigned char>(png[at])); };
    CHECK(byte(18) * 256 + byte(19) == 827);   // 210 mm at 100 dots an inch
    CHECK(byte(22) * 256 + byte(23) == 1169);  // 297 mm
    CHECK(svg_of(first, font_files()).find("<svg") != std::string::npos);
}

TEST_CASE("a text that no code can hold is refused")
{
    CHECK(qr_code("K-1042").modules == 21);
    CHECK_THROWS_AS(qr_code(std::string(5000, 'x')), std::invalid_argument);
}

TEST_CASE("a fault of the drawing library is reported, not a page with half its text")
{
    Page page{210, 297, {}};
    page.marks.push_back({Part::paragraph, Text{"94 \xFF mm", {10, 10}, 5, Weight::bold, 1, Ink::black, {}}});
    CHECK_THROWS_AS(pdf_of({page}, {"", "", "", "en", "2000-01-01"}, font_files()), DrawingFault);
    CHECK_THROWS_AS(png_of(page, 80, font_files()), DrawingFault);
    CHECK_THROWS_AS(svg_of(page, font_files()), DrawingFault);
}
