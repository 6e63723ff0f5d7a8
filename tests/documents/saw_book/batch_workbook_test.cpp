// The batch workbook's own XML; tests/oracle/recalculate_batch.py holds its formulas to the program.
#include "saw_book/batch_workbook.hpp"

#include <algorithm>

#include "documents/build_cases.hpp"
#include "documents/spreadsheet/workbook_parts.hpp"
#include "support/catch.hpp"
#include "support/sentences.hpp"

using namespace shaftcut;
using namespace shaftcut::test;
using namespace shaftcut::test::papers;

namespace {

constexpr int first_order_row = 6;  // counted from 1

std::string cell(char column, std::size_t row) { return std::string(1, column) + std::to_string(row); }

const SheetPart& sheet(const WorkbookParts& parts, const std::string& name)
{
    const auto found = std::find_if(parts.sheets.begin(), parts.sheets.end(), [&](const SheetPart& one) { return one.name == name; });
    REQUIRE(found != parts.sheets.end());
    return *found;
}

// Column letters of the sheet Orders by their titles.
std::string column(const SheetPart& orders, const std::string& title)
{
    for (const auto& [reference, one] : orders.cells)
        if (one.value == title && reference.ends_with("5")) return reference.substr(0, reference.size() - 1);
    FAIL(title);
    return {};
}

}  // namespace

TEST_CASE("a batch workbook has its sheets, protected without a password, each one page wide")
{
    const WorkbookParts parts = parts_of(batch_workbook_of(case_batch(Units::mm), Paper::letter));
    REQUIRE(parts.sheets.size() == 4);
    for (const SheetPart& one : parts.sheets) {
        INFO(one.name);
        CHECK(one.is_protected);
        CHECK_FALSE(one.has_password);
        CHECK(one.one_page_wide);
        CHECK(one.paper == "1");
    }
    for (const char* name : {"Orders", "Parts", "PartsByOrder", "Saw"}) CHECK(sheet(parts, name).name == name);
    for (const char* name : {"step", "kerf", "trim_start", "trim_end", "reusable_leftover"}) CHECK(parts.names.count(name) == 1);
}

TEST_CASE("every order is a row; one that is refused or held has its reasons and no length")
{
    const Batch batch = case_batch(Units::mm);
    const WorkbookParts parts = parts_of(batch_workbook_of(batch, Paper::a4));
    const SheetPart& orders = sheet(parts, "Orders");
    int refused = 0, held = 0;
    for (std::size_t i = 0; i < batch.orders.size(); ++i) {
        const BatchOrder& order = batch.orders[i];
        const std::size_t row = first_order_row + i;
        INFO(order.order);
        CHECK(orders.cells.at(cell('A', row)).value == order.order);
        const auto at = [&](const std::string& title) { return orders.cells.find(column(orders, title) + std::to_string(row)); };
        if (order.built) {
            CHECK(at("Verdict")->second.value == "build");
            CHECK_FALSE(at("Inner tube, mm")->second.formula.empty());
            CHECK(at("Inner tube, mm")->second.locked);
            CHECK(std::stod(at("Inner tube, mm")->second.value) == Approx(order.built->lengths.blank[Tube::inner].mm()));
            CHECK_FALSE(at("Shoulder, inner, mm")->second.locked);
            continue;
        }
        const bool is_held = order.verdict == BuildVerdict::held;
        ++(is_held ? held : refused);
        CHECK(at("Verdict")->second.value == (is_held ? "HELD" : "DO NOT BUILD"));
        const std::string why = is_held ? say(order.open.front(), wording_of(batch)) : say(order.reasons, wording_of(batch)).front();
        CHECK(at("Why not")->second.value.find(why) != std::string::npos);
        for (const auto& [reference, one] : orders.cells)
            if (reference.ends_with(std::to_string(row)) && one.number) CHECK(reference == cell('C', row));
    }
    CHECK(refused == 2);
    CHECK(held == 2);
}

TEST_CASE("parts to pick are the sums of the orders' parts, by formulas")
{
    const Batch batch = case_batch(Units::mm);
    const WorkbookParts parts = parts_of(batch_workbook_of(batch, Paper::a4));
    const SheetPart& pick = sheet(parts, "Parts");
    std::map<std::string, std::int64_t> wanted;
    for (const BatchOrder& order : batch.orders)
        for (const PartCount& part : order.parts) wanted[say(part.name, wording_of(batch))] += part.count;
    REQUIRE(batch.parts.size() == wanted.size());
    for (std::size_t i = 0; i < batch.parts.size(); ++i) {
        const std::string name = pick.cells.at(cell('A', i + 2)).value;
        INFO(name);
        CHECK(std::stod(pick.cells.at(cell('B', i + 2)).value) == Approx(static_cast<double>(wanted.at(name))));
        CHECK(pick.cells.at(cell('B', i + 2)).formula.starts_with("SUM("));
        CHECK_FALSE(pick.cells.at(cell('C', i + 2)).locked);
    }
}

TEST_CASE("every piece of the saw plans stands on the sheet Saw under its label")
{
    const Batch batch = case_batch(Units::mm);
    const WorkbookParts parts = parts_of(batch_workbook_of(batch, Paper::a4));
    std::map<std::string, int> labels;
    for (const auto& [reference, one] : sheet(parts, "Saw").cells) labels[one.value] += 1;
    for (const BatchPiece& piece : batch.pieces) {
        const std::string label = piece_label(piece, wording_of(batch));
        INFO(label);
        const bool planned_for = std::any_of(batch.plans.begin(), batch.plans.end(), [&](const ProfilePlan& plan) { return plan.profile == piece.profile; });
        CHECK((labels.count(label) == 1) == planned_for);
    }
    for (const std::string& profile : batch.unplanned) CHECK(labels.count(profile) == 1);
}

TEST_CASE("a refused order's row is no higher than four lines, and its reasons are not among the printed columns")
{
    const Batch batch = case_batch(Units::mm);
    const WorkbookParts parts = parts_of(batch_workbook_of(batch, Paper::a4));
    const SheetPart& orders = sheet(parts, "Orders");
    constexpr int head_row = 5;
    CHECK(orders.row_heights.rbegin()->first > head_row);
    for (const auto& [row, points] : orders.row_heights) {
        INFO("row " << row);
        if (row > head_row) CHECK(points <= 52);
    }
    CHECK(column(orders, "Pull to, standing, mm") == "P");
    for (const char* title : {"Due", "Drive tubes, kg", "Why not", "Customer"}) {
        const std::string letters = column(orders, title);
        CHECK((letters.size() > 1 || letters > "P"));
    }
}

TEST_CASE("an order's texts are never read as formulas")
{
    BuildOrder order = build_order("B-101");
    order.customer = "=1+1";
    const WorkbookParts parts = parts_of(batch_workbook_of(batch_of({order}, Units::mm), Paper::a4));
    const SheetPart& orders = sheet(parts, "Orders");
    const SheetCell& customer = orders.cells.at(column(orders, "Customer") + std::to_string(first_order_row));
    CHECK(customer.value == "=1+1");
    CHECK(customer.formula.empty());
}

TEST_CASE("a batch of which nothing can be built has its workbook too")
{
    BuildOrder refused = build_order("B-109");
    refused.shaft.ends[End::tractor].lock = Lock::exposed_push_pin;
    const WorkbookParts parts = parts_of(batch_workbook_of(batch_of({refused}, Units::mm), Paper::a4));
    CHECK(sheet(parts, "Orders").cells.at("B6").value == "DO NOT BUILD");
    CHECK(sheet(parts, "Parts").cells.count("A2") == 0);
}
