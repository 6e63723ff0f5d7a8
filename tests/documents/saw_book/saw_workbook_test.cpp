// The saw plan's workbook where it is read by people; its formulas are recalculated by tests/oracle/recalculate_saw.py.
#include "saw_book/saw_workbook.hpp"

#include "documents/saw_cases.hpp"
#include "documents/spreadsheet/workbook_parts.hpp"
#include "support/catch.hpp"

using namespace shaftcut;

TEST_CASE("saw workbook: a label of one long word gets the height of the lines that it breaks into")
{
    const auto height_with = [](const std::string& label) {
        const SawOrder order = test::saw_order("label", test::saw_task({{Length::millimetres(742), 1, label}}));
        const test::WorkbookParts parts = test::parts_of(saw_workbook_of(order, Paper::a4));
        REQUIRE(parts.sheets.size() == 2);
        return parts.sheets[1].row_heights.at(2);
    };
    const double one_line = height_with("b");
    CHECK(one_line >= 10);
    CHECK(height_with("Cedar 7 inner") == one_line);
    // 23 capitals of the widest letter fill a line of the column in LibreOffice: 100 of them are 5 lines.
    CHECK(height_with(std::string(100, 'W')) >= 4 * one_line);
    CHECK(height_with("left " + std::string(95, 'W')) >= 4 * one_line);
}
