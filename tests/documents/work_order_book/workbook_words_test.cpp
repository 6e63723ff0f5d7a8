// The words that the workbook's formulas compare.
#include "work_order_book/cell_words.hpp"

#include <regex>
#include <set>

#include "documents/spreadsheet/workbook_parts.hpp"
#include "oracle/base_jobs.hpp"
#include "support/catch.hpp"
#include "support/workbooks.hpp"

using namespace shaftcut;
using namespace shaftcut::test;
using workbook::CellWord;

namespace {

std::set<std::string> cell_words()
{
    std::set<std::string> words{""};
    for (int i = 0; i <= static_cast<int>(CellWord::not_asked); ++i) words.insert(workbook::cell_word(static_cast<CellWord>(i), Wording(Units::mm)));
    return words;
}

void add_compared(std::set<std::string>& texts, const std::string& formula)
{
    static const std::regex compared(R"re([=<>]"([^"]*)")re");
    for (auto at = std::sregex_iterator(formula.begin(), formula.end(), compared); at != std::sregex_iterator(); ++at) texts.insert(at->str(1));
}

}  // namespace

TEST_CASE("the workbook's formulas compare a cell with no text but the words that cells hold")
{
    const std::set<std::string> words = cell_words();
    for (const BaseJob& base : base_jobs()) {
        std::set<std::string> texts;
        const WorkbookParts parts = parts_of(workbook_bytes(base.issued));
        for (const auto& [name, meaning] : parts.names) add_compared(texts, meaning);
        for (const SheetPart& sheet : parts.sheets)
            for (const auto& [reference, cell] : sheet.cells) add_compared(texts, cell.formula);
        CHECK(texts.count("yes") == 1);
        CHECK(texts.count("refused") == 1);
        for (const std::string& text : texts) {
            INFO(base.name << ": " << text);
            CHECK(words.count(text) == 1);
        }
    }
}
