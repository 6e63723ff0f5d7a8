// The work order's workbook as it is read from a printed sheet.
#include <algorithm>

#include "documents/spreadsheet/workbook_parts.hpp"
#include "oracle/base_jobs.hpp"
#include "support/catch.hpp"
#include "support/workbooks.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

std::vector<std::string> texts_in(const WorkbookParts& parts)
{
    std::vector<std::string> texts;
    for (const SheetPart& sheet : parts.sheets)
        for (const auto& [reference, cell] : sheet.cells)
            if (!cell.number) texts.push_back(cell.value);
    return texts;
}

bool holds(const std::vector<std::string>& texts, const std::string& text)
{
    return std::any_of(texts.begin(), texts.end(), [&](const std::string& one) { return one.find(text) != std::string::npos; });
}

}  // namespace

// A column is as many digits of the usual font wide, 11 points; LibreOffice without that font takes DejaVu Sans, whose digits are 0.636
// of the size wide and its capitals 0.729 high. The page is A4 less the sheets' margins; Letter is wider.
TEST_CASE("the order prints on one page, cuts with capitals of 3.5 mm at least and other lengths of 2.5 mm")
{
    for (const BaseJob& base : base_jobs()) {
        const WorkOrder& order = base.issued;
        INFO(order.order << ", " << unit_word(order.units));
        const WorkbookParts parts = parts_of(workbook_bytes(order));
        const SheetPart& sheet = parts.sheets[0];
        constexpr double point = 25.4 / 72;
        double high = 0;
        for (const auto& [row, points] : sheet.row_heights) high += points * point;
        const double scale = std::min({1.0, (210 - 2 * 0.55 * 25.4) / (sheet.width * 11 * 0.636 * point), (297 - 2 * 0.75 * 25.4) / high});
        const auto capitals = [&](const std::string& name) { return sheet.cells.at(*parts.order_cell(name)).points * point * 0.729 * scale; };
        CHECK(sheet.one_page);
        for (const char* name : {"cut_inner_tube", "cut_outer_tube", "cut_inner_guard", "cut_outer_guard"}) CHECK(capitals(name) >= 3.5);
        for (const char* name : {"closed", "shortest", "inner_half", "keep_inner_half", "keep_outer_guard_half"}) CHECK(capitals(name) >= 2.5);
    }
}

TEST_CASE("a legend of results stands apart from them, and a tube's unit in brackets")
{
    for (const BaseJob& base : base_jobs()) {
        const WorkOrder& order = base.issued;
        const std::vector<std::string> texts = texts_in(parts_of(workbook_bytes(order)));
        CHECK_FALSE(std::any_of(texts.begin(), texts.end(), [](const std::string& text) { return text.starts_with("WARN:"); }));
        CHECK(holds(texts, "RIGHT: as the sheet allows. SAW MORE: "));
        CHECK(holds(texts, std::string(": guard tube (") + unit_word(order.units) + ")"));
        CHECK_FALSE(holds(texts, ", in in"));
    }
}
