// What the order's sheet says of confirmations, of guards that are not used again, and of what the job tells around its lengths. That its
// formulas follow is for recalculate.py.
#include <algorithm>

#include "documents/spreadsheet/workbook_parts.hpp"
#include "oracle/base_jobs.hpp"
#include "support/catch.hpp"
#include "support/workbooks.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

const BaseJob& base_named(const std::vector<BaseJob>& all, const std::string& name)
{
    const auto found = std::find_if(all.begin(), all.end(), [&](const BaseJob& base) { return base.name == name; });
    REQUIRE(found != all.end());
    return *found;
}

WorkbookParts parts_of_base(const std::string& name)
{
    static const std::vector<BaseJob> all = base_jobs();
    return parts_of(workbook_bytes(base_named(all, name).issued));
}

const SheetCell& named(const WorkbookParts& parts, const std::string& name)
{
    INFO(name);
    REQUIRE(parts.cell_named(name));
    return *parts.cell_named(name);
}

// The text in the column beside the heading's label; empty where there is no such line.
std::string beside(const WorkbookParts& parts, const std::string& label)
{
    for (const auto& [reference, cell] : parts.sheets[0].cells)
        if (cell.value == label && reference[0] == 'A') return parts.sheets[0].cells.at("B" + reference.substr(1)).value;
    return "";
}

}  // namespace

TEST_CASE("the workbook's verdict stays one word and the words beside it count what is confirmed first")
{
    const WorkbookParts parts = parts_of_base("uncut-listed");
    CHECK(named(parts, "verdict").value == "cut");
    CHECK(named(parts, "verdict_words").value == "CUT: CONFIRM 4 FIRST. See block 2 before anything is sawn.");
    CHECK(named(parts, "confirm_count").value == "4");
    CHECK(named(parts, "confirm_inner_half").value == "660");
    CHECK(named(parts, "confirm_inner_half_plus_minus").value == "6");
    CHECK(named(parts, "confirm_inner_guard").value == "look");
    CHECK(named(parts, "confirm_closed").value == "—");
    CHECK(named(parts_of_base("standard"), "verdict_words").value.find("CONFIRM") == std::string::npos);
}

TEST_CASE("a refused order's workbook confirms nothing")
{
    const WorkbookParts parts = parts_of_base("exchanged");
    CHECK(named(parts, "verdict").value == "refused");
    CHECK(named(parts, "confirm_count").value == "0");
    for (const char* name : {"confirm_closed", "confirm_inner_half", "confirm_outer_half"}) CHECK(named(parts, name).value == "—");
}

TEST_CASE("each confirmation has an unlocked box before the cut")
{
    const WorkbookParts parts = parts_of_base("uncut-listed");
    const int first_cut = std::stoi(named(parts, "cut_inner_guard").reference.substr(1));
    for (const char* name : {"confirm_closed", "confirm_inner_half", "confirm_outer_guard"}) {
        const std::string row = named(parts, name).reference.substr(1);
        CHECK_FALSE(parts.sheets[0].cells.at("E" + row).locked);
        CHECK(std::stoi(row) < first_cut);
    }
}

TEST_CASE("a guard that is not used again has no cut, no kept length and nothing to type in")
{
    const WorkbookParts parts = parts_of_base("guard-none");
    CHECK(named(parts, "cut_inner_guard").value.empty());
    CHECK(named(parts, "keep_inner_guard_half").value.empty());
    CHECK(named(parts, "inner_guard_half").locked);
    CHECK_FALSE(named(parts, "outer_guard_half").locked);
    CHECK(named(parts, "check_guard_cover_result").value == "NOT-CHECKED");
    CHECK_FALSE(parts.cell_named("confirm_inner_guard"));
}

TEST_CASE("a longest that some tractors leave out is empty, and its check has the figure that it is at least")
{
    const WorkbookParts parts = parts_of_base("several-fits-with-missing-ranges");
    CHECK(named(parts, "longest_standing").value.empty());
    CHECK(named(parts, "overlap_standing").value.empty());
    CHECK(named(parts, "check_overlap_standing_result").value == "NOT-CHECKED");
    CHECK(named(parts, "check_overlap_standing_value").value == "240");
}

TEST_CASE("what the job tells around its lengths stands in the heading, one line each")
{
    const WorkbookParts parts = parts_of_base("told");
    CHECK(beside(parts, "Hitch") == "drawbar, second hole");
    CHECK(beside(parts, "Power") == "30 kW taken at the PTO");
    CHECK(beside(parts, "As it came in") == "tubes straight, slides by hand");
    CHECK(beside(parts, "Measured by") == "A. Demo, 2026-11-23, with steel tape");
    CHECK(beside(parts, "Other tractors").starts_with("old tractor: not measured"));
    CHECK(beside(parts_of_base("standard"), "Hitch").empty());
}

TEST_CASE("contradictions come before doubts, and the first that is found is said")
{
    const WorkbookParts exchanged = parts_of_base("exchanged");
    const std::string row = named(exchanged, "check_consistency_result").reference.substr(1);
    CHECK(exchanged.sheets[1].cells.at("F" + row).value.starts_with("Contradiction: the two half lengths seem to be exchanged"));
    const WorkbookParts inches = parts_of_base("inches-for-millimetres");
    const std::string words = inches.sheets[1].cells.at("F" + named(inches, "check_consistency_result").reference.substr(1)).value;
    CHECK(words.find("Is its unit right? Measured in inches") != std::string::npos);
}
