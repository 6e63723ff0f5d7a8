#include "fuzz/targets.hpp"
#include "support/engine.hpp"
#include "support/zipped.hpp"
#include "text.hpp"

namespace shaftcut::fuzz {
namespace {

std::string workbook_of(std::string_view sheet)
{
    return test::zipped({{"xl/workbook.xml", "<workbook><sheets><sheet r:id=\"a\"/></sheets></workbook>"},
                         {"xl/_rels/workbook.xml.rels", "<Relationships><Relationship Id=\"a\" Target=\"s.xml\"/></Relationships>"},
                         {"xl/styles.xml", "<styleSheet><cellXfs><xf numFmtId=\"0\"/><xf numFmtId=\"14\"/><xf numFmtId=\"2\"/></cellXfs></styleSheet>"},
                         {"xl/sharedStrings.xml", "<sst><si><t>Alder 2</t></si></sst>"},
                         {"xl/s.xml", std::string(sheet)}});
}

bool shows_as_it_is(const std::string& text) { return !text.empty() && is_utf8(text) && !first_hidden(text); }

}  // namespace

std::string try_workbook(std::string_view bytes)
{
    const std::string workbook = bytes.starts_with("PK") ? std::string(bytes) : workbook_of(bytes);
    const BuildStart start = test::demo_engine().build({"f.xlsx", workbook}, {}, {});
    if (!start.run && start.problems.empty()) return "a workbook gives neither an order nor a problem";
    for (const Problem& problem : start.problems) {
        if (problem.place.line < 1 || problem.place.column < 1) return "a problem stands outside the sheet: " + to_string(problem);
        if (!shows_as_it_is(problem.wrong) || !shows_as_it_is(problem.right)) return "a problem is not fit for a terminal: " + to_string(problem);
    }
    return {};
}

}  // namespace shaftcut::fuzz
