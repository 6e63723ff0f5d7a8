// Why no workbook could be written, in words.
#include "workbook_faults.hpp"

#include "spreadsheet/spreadsheet.hpp"
#include "support/catch.hpp"

using namespace shaftcut;

TEST_CASE("a workbook that cannot be written says what could not be")
{
    Spreadsheet book;
    book.sheets.push_back({});
    book.sheets.back().name = "Sheet";
    book.names.emplace_back("A1", "Sheet!$A$1");
    std::string said;
    try {
        xlsx_of(book);
    } catch (const WorkbookFault& fault) {
        said = say(fault, Wording(Units::mm));
    }
    CHECK(said == "the workbook cannot have the name \"A1\"");
    CHECK(say(WorkbookFault(WorkbookFault::At::writing, "no space"), Wording(Units::mm)) == "the workbook could not be written: no space");
}
