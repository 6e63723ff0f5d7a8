// The work order's workbook by its own XML: names, locks, rules, texts, and what a refused one must not hold.
#include "work_order_book/work_order_workbook.hpp"

#include <algorithm>
#include <cmath>
#include <regex>

#include "documents/spreadsheet/workbook_parts.hpp"
#include "oracle/base_jobs.hpp"
#include "spreadsheet/spreadsheet.hpp"
#include "support/catch.hpp"
#include "support/jobs.hpp"
#include "support/workbooks.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

const std::vector<std::string> inputs{"closed",          "shortest",        "longest_working", "longest_turning",  "longest_standing",
                                      "inner_half",      "outer_half",      "inner_guard_half", "outer_guard_half"};
const std::vector<std::string> results{"cut_inner_tube",   "cut_outer_tube",   "cut_inner_guard", "cut_outer_guard",
                                       "overlap_turning",  "overlap_standing", "clearance",       "verdict"};
const std::vector<std::string> after{"after_inner_half", "after_outer_half", "after_inner_guard_half", "after_outer_guard_half"};

// Every formula and every named expression.
std::vector<std::string> all_formulas(const WorkbookParts& parts)
{
    std::vector<std::string> formulas;
    for (const auto& [name, meaning] : parts.names) formulas.push_back(meaning);
    for (const SheetPart& sheet : parts.sheets)
        for (const auto& [reference, cell] : sheet.cells)
            if (!cell.formula.empty()) formulas.push_back(cell.formula);
    return formulas;
}

std::vector<double> numbers_in(const WorkbookParts& parts)
{
    std::vector<double> numbers;
    for (const SheetPart& sheet : parts.sheets)
        for (const auto& [reference, cell] : sheet.cells)
            if (cell.number) numbers.push_back(std::stod(cell.value));
    return numbers;
}

std::vector<std::string> texts_in(const WorkbookParts& parts)
{
    std::vector<std::string> texts;
    for (const SheetPart& sheet : parts.sheets)
        for (const auto& [reference, cell] : sheet.cells) {
            if (!cell.number) texts.push_back(cell.value);
            texts.push_back(cell.formula);
        }
    return texts;
}

}  // namespace

TEST_CASE("a workbook has the published names, each a cell of its own, what is typed in on the sheet Order")
{
    for (const BaseJob& base : base_jobs()) {
        const WorkOrder& order = base.issued;
        INFO(order.order);
        const WorkbookParts parts = parts_of(workbook_bytes(order));
        REQUIRE(parts.sheets.size() == 4 + order.machines.size());
        CHECK(parts.sheets[0].name == "Order");
        CHECK(parts.sheets[1].name == "Checks");
        CHECK(parts.sheets[2].name == "Parts and operations");
        CHECK(parts.sheets[3].name == "Basis");
        for (const auto* names : {&inputs, &after})
            for (const std::string& name : *names) CHECK(parts.order_cell(name));
        std::set<const SheetCell*> cells;
        for (const auto* names : {&inputs, &results, &after})
            for (const std::string& name : *names) {
                INFO(name);
                REQUIRE(parts.cell_named(name));
                CHECK(cells.insert(parts.cell_named(name)).second);
            }
    }
}

TEST_CASE("inputs are written as issued, unlocked and held to numbers; results are locked formulas")
{
    const WorkbookParts parts = parts_of(workbook_bytes(worked(job())));
    const SheetPart& order = parts.sheets[0];
    for (const auto* names : {&inputs, &after})
        for (const std::string& name : *names) {
            INFO(name);
            const SheetCell& cell = order.cells.at(*parts.order_cell(name));
            CHECK_FALSE(cell.locked);
            CHECK(cell.formula.empty());
            CHECK(order.validated.count(cell.reference) == 1);
        }
    for (const std::string& name : results) {
        INFO(name);
        const SheetCell& cell = *parts.cell_named(name);
        CHECK(cell.locked);
        CHECK_FALSE(cell.formula.empty());
    }
    CHECK(order.cells.at(*parts.order_cell("closed")).value == "860");
    CHECK(order.cells.at(*parts.order_cell("shortest")).value == "742");
    CHECK(order.cells.at(*parts.order_cell("cut_inner_tube")).value == "94");
    CHECK(order.cells.at(*parts.order_cell("verdict")).value == "cut");
}

TEST_CASE("every sheet is protected without a password, and no formula is unlocked")
{
    for (const SheetPart& sheet : parts_of(workbook_bytes(worked(job()))).sheets) {
        INFO(sheet.name);
        CHECK(sheet.is_protected);
        CHECK_FALSE(sheet.has_password);
        for (const auto& [reference, cell] : sheet.cells) {
            INFO(reference);
            CHECK((cell.locked || cell.formula.empty()));
        }
    }
    const auto basis = parts_of(workbook_bytes(worked(job()))).sheets[3];
    CHECK(std::all_of(basis.cells.begin(), basis.cells.end(), [](const auto& cell) { return cell.second.locked; }));
}

TEST_CASE("each sheet prints one page wide on the paper asked for, with the order's number on every page")
{
    const WorkOrder order = worked(job());
    for (const auto& [paper, number] : {std::pair{Paper::a4, "9"}, std::pair{Paper::letter, "1"}}) {
        const WorkbookParts parts = parts_of(workbook_bytes(order, paper));
        for (std::size_t i = 0; i < parts.sheets.size(); ++i) {
            const SheetPart& sheet = parts.sheets[i];
            INFO(sheet.name);
            CHECK(sheet.paper == number);
            CHECK((sheet.one_page_wide || sheet.one_page));
            CHECK(sheet.header.find("K-1042") != std::string::npos);
            CHECK(parts.titles.count(std::to_string(i)) == (sheet.one_page ? 0 : 1));
        }
    }
}

TEST_CASE("the same order gives the same bytes, another date others")
{
    Job changed = job();
    const std::string first = workbook_bytes(worked(changed));
    CHECK(workbook_bytes(worked(changed)) == first);
    changed.date = "2026-11-25";
    CHECK(workbook_bytes(worked(changed)) != first);
    changed.date.clear();
    const std::string undated = workbook_bytes(worked(changed));
    CHECK(workbook_bytes(worked(changed)) == undated);
}

TEST_CASE("a text of the job that looks like a formula stays text, and odd texts stay whole")
{
    Job changed = job();
    changed.customer = "=HYPERLINK(\"http://example.invalid\",\"x\")";
    changed.machine = "+1+1";
    changed.tractor = "<&>\"' Żółw Größe ⌀";
    const WorkbookParts parts = parts_of(workbook_bytes(worked(changed)));
    CHECK(says(texts_in(parts), changed.customer));
    CHECK(says(texts_in(parts), changed.tractor));
    for (const std::string& formula : all_formulas(parts)) CHECK(formula.find("HYPERLINK") == std::string::npos);
    for (const auto& [reference, cell] : parts.sheets[0].cells)
        if (cell.value == "+1+1") CHECK(cell.formula.empty());
    changed.customer = std::string(40'000, 'x') + "end";
    changed.machine = "bell\a and\x1f separator";
    const auto texts = texts_in(parts_of(workbook_bytes(worked(changed))));
    CHECK(says(texts, std::string(32'767, 'x')));
    CHECK_FALSE(says(texts, "xend"));
    CHECK(says(texts, "bell  and  separator"));
}

TEST_CASE("only functions that every spreadsheet program knows are used, and no name looks like a cell")
{
    const std::set<std::string> plain{"IF", "MAX", "MIN", "ROUND", "ROUNDUP", "AND", "OR", "NOT", "COUNT", "ABS", "SQRT", "SIN", "COS", "RADIANS", "ISNUMBER", "ISBLANK"};
    const std::regex call("([A-Z][A-Z0-9.]*)\\(");
    const std::regex like_a_cell("[A-Za-z]{1,3}[0-9]+|[Rr][0-9]*[Cc]?[0-9]*|[Cc][0-9]*|TRUE|FALSE", std::regex::ECMAScript);
    for (const BaseJob& base : base_jobs()) {
        const WorkOrder& order = base.issued;
        const WorkbookParts parts = parts_of(workbook_bytes(order));
        for (std::string formula : all_formulas(parts)) {
            formula = std::regex_replace(formula, std::regex("\"[^\"]*\""), "\"\"");
            INFO(formula);
            CHECK(formula.size() < 8192);
            for (std::sregex_iterator found(formula.begin(), formula.end(), call), none; found != none; ++found) CHECK(plain.count((*found)[1]) == 1);
        }
        for (const auto& [name, meaning] : parts.names) {
            INFO(name);
            CHECK_FALSE(std::regex_match(name, like_a_cell));
        }
    }
}

TEST_CASE("no text written into a formula is longer than a spreadsheet program takes")
{
    const std::regex literal("\"([^\"]*)\"");
    for (const BaseJob& base : base_jobs())
        for (const std::string& formula : all_formulas(parts_of(workbook_bytes(base.issued))))
            for (std::sregex_iterator found(formula.begin(), formula.end(), literal), none; found != none; ++found) CHECK((*found)[1].length() <= 255);
}

TEST_CASE("a refused order's workbook holds no cut, kept or new closed length")
{
    Job refused = job();
    refused.shaft.ends[End::tractor].lock = Lock::exposed_collar;
    refused.shaft.built = 2022;
    refused.shaft.closed = measured(861.137);
    refused.shaft.halves[Tube::inner] = {measured(691.219), measured(673.431), std::nullopt, std::nullopt, {}};
    refused.shaft.halves[Tube::outer] = {measured(669.353), measured(651.727), std::nullopt, std::nullopt, {}};
    const WorkOrder order = worked(refused);
    REQUIRE(order.verdict == Verdict::refused);
    const auto plan = plan_cut(order.reading.shaft, order.stops, order.fit.shortest, order.limits.length(Limit::closing_clearance), order.saw);
    REQUIRE(plan);
    REQUIRE(plan->cut[Tube::inner] > Length());
    const WorkbookParts parts = parts_of(workbook_bytes(order));
    const auto numbers = numbers_in(parts);
    const auto texts = texts_in(parts);
    const Length at_reference = plan->closed + order.reading.shaft.spacing[End::tractor];
    std::vector<Length> hidden{plan->closed, at_reference};
    for (const Tube tube : both_tubes) hidden.insert(hidden.end(), {plan->cut[tube], plan->half[tube], *plan->guard_cut[tube], *plan->guard_half[tube]});
    for (const Length length : hidden) {
        INFO(figure(length, Units::mm, Toward::nearest, 3));
        CHECK(std::none_of(numbers.begin(), numbers.end(), [&](double number) { return std::abs(number - length.mm()) < 1e-9; }));
        CHECK_FALSE(says(texts, figure_with_unit(length, Units::mm, Toward::nearest, 3)));
    }
    for (const std::string name : {"cut_inner_tube", "cut_outer_tube", "cut_inner_guard", "cut_outer_guard", "keep_inner_half", "keep_outer_half", "closed_after"}) {
        INFO(name);
        CHECK(parts.cell_named(name)->value.empty());
    }
}

TEST_CASE("lengths in inches stand as they were measured, with what is kept rounded down and millimetres beside")
{
    Job changed = job();
    changed.units = Units::in;
    changed.shaft.closed = measured(860.425);  // 33-7/8 in
    changed.fits[0].shortest = measured(741.363);  // 29-3/16 in, as the reader rounds it
    const WorkOrder order = worked(changed);
    REQUIRE(order.cut);
    const WorkbookParts parts = parts_of(workbook_bytes(order));
    const auto value = [&](const std::string& name) { return std::stod(parts.cell_named(name)->value); };
    CHECK(value("closed") == 33.875);
    CHECK(value("shortest") == 29.1875);
    CHECK(value("cut_inner_tube") * 16 == std::round(value("cut_inner_tube") * 16));
    CHECK(std::abs(value("cut_inner_tube") * 25.4 - order.cut->plan.cut[Tube::inner].mm()) < 0.001);
    const double kept = order.cut->plan.half[Tube::inner].mm() / 25.4;
    CHECK(value("keep_inner_half") * 16 == std::floor(kept * 16));
    const auto numbers = numbers_in(parts);
    CHECK(std::count(numbers.begin(), numbers.end(), order.cut->plan.half[Tube::inner].mm()) == 1);
}

TEST_CASE("a machine's table and chart are the last sheet, and the chart's axes say what is turned or lifted")
{
    for (const BaseJob& base : base_jobs()) {
        const WorkOrder order = worked(base, base.job);
        const WorkbookParts parts = parts_of(workbook_bytes(order));
        INFO(base.name);
        REQUIRE(parts.charts.size() == order.machines.size());
        if (order.machines.empty()) continue;
        CHECK(parts.sheets.back().name == "Machine");
        const auto& titles = parts.charts[0];
        REQUIRE(titles.size() == 2);
        CHECK(titles[0].find(order.machines[0].mounted ? "lifted" : "turned") != std::string::npos);
        CHECK(titles[0].ends_with(order.machines[0].mounted ? unit_word(order.units) : "positive"));
        CHECK(titles[1].find("length between the inner crosses") == 0);
    }
}

TEST_CASE("a spreadsheet refuses a name that other programs would not take")
{
    Spreadsheet book;
    book.sheets.push_back({});
    book.sheets[0].name = "Order";
    book.names.emplace_back("too_long", std::string(200, '1'));
    CHECK_THROWS_AS(xlsx_of(book), std::runtime_error);
    for (const char* name : {"two words", "A1", "R1C1", "c", "1st", "a-b", ""}) {
        INFO(name);
        book.names = {{name, "1"}};
        CHECK_THROWS_AS(xlsx_of(book), std::runtime_error);
    }
    book.names = {{"good", "1+1"}};
    CHECK_FALSE(xlsx_of(book).empty());
}
