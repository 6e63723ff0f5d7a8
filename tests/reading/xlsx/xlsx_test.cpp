// Lists as workbooks: hostile ones here, those of real programs in tests/reading/lists_test.cpp.
#include "xlsx/xlsx.hpp"

#include "lists/list_reader.hpp"
#include "reading/support.hpp"
#include "support/zipped.hpp"
#include "xlsx/zip.hpp"

using namespace shaftcut;

namespace {

using test::ZipPart;
using test::zipped;

const ZipPart relations{"xl/_rels/workbook.xml.rels", "<Relationships><Relationship Id=\"a\" Target=\"worksheets/s.xml\"/><Relationship Id=\"h\" Target=\"h.xml\"/></Relationships>"};
const ZipPart book{"xl/workbook.xml", "<workbook><workbookPr/><sheets><sheet name=\"hidden\" state=\"hidden\" r:id=\"h\"/><sheet name=\"list\" r:id=\"a\"/></sheets></workbook>"};
const ZipPart styles{"xl/styles.xml", "<styleSheet><numFmts><numFmt numFmtId=\"164\" formatCode=\"00000\"/></numFmts><cellXfs><xf numFmtId=\"0\"/><xf numFmtId=\"14\"/><xf numFmtId=\"164\"/></cellXfs></styleSheet>"};
const ZipPart strings{"xl/sharedStrings.xml", "<sst><si><t>length</t></si><si><r><t>cou</t></r><r><t>nt</t></r><rPh><t>x</t></rPh></si></sst>"};

std::string workbook(const std::string& rows) { return zipped({book, relations, styles, strings, {"xl/worksheets/s.xml", "<worksheet><sheetData>" + rows + "</sheetData></worksheet>"}}); }

const std::string heading = "<row r=\"2\"><c r=\"B2\" t=\"s\"><v>0</v></c><c r=\"C2\" t=\"s\"><v>1</v></c><c r=\"E2\" t=\"inlineStr\"><is><t>label</t></is></c></row>";

const std::vector<TableColumn> columns{{"length", true, Holds::length}, {"count", true, Holds::whole}, {"label", false}};

// Every row as "length|count|label"; then every fault.
std::vector<std::string> read(std::string_view bytes)
{
    std::vector<std::string> lines;
    const Faults faults = read_list(bytes, "p.xlsx", columns, {1500, ManyOf::lines}, [&](const TableRow& row, Faults&) { lines.push_back(row[0].text + "|" + row[1].text + "|" + row[2].text); });
    for (const Fault& fault : faults.listed()) lines.push_back(reading_test::line_of(fault));
    return lines;
}

const std::vector<std::string> no_workbook{"p.xlsx:1:1: the file is no sound .xlsx workbook; save it as .xlsx again, or as CSV"};

}  // namespace

TEST_CASE("numbers, days, texts and logical values of the first sheet that is shown")
{
    CHECK(read(workbook(heading + "<row r=\"4\"><c r=\"B4\"><v>742.50000000000011</v></c><c r=\"C4\"><f>1+1</f><v>2</v></c><c r=\"E4\" s=\"1\"><v>46360</v></c></row>"
                                  "<row r=\"5\"/><row r=\"6\"><c r=\"B6\" t=\"str\"><v>742,5</v></c><c r=\"C6\"><v>3</v></c><c r=\"E6\" s=\"2\"><v>123</v></c></row>"
                                  "<row r=\"7\"><c r=\"B7\"><v>1.125</v></c><c r=\"C7\"><v>1</v></c><c r=\"E7\" t=\"b\"><v>1</v></c></row>")) ==
          std::vector<std::string>{"742.5|2|2026-12-04", "742.5|3|00123", "1.125|1|yes"});
}

TEST_CASE("what is wrong with a cell is said by the sheet's row and column")
{
    CHECK(read(workbook(heading + "<row r=\"4\"><c r=\"B4\" t=\"e\"><v>#REF!</v></c></row><row r=\"5\"><c r=\"B5\"><f>A1*2</f></c></row><row r=\"6\"><c r=\"B6\"><v>-5</v></c></row>"
                                  "<row r=\"7\"><c r=\"B7\" t=\"inlineStr\"><is><t>1.250</t></is></c><c r=\"C7\"><v>1</v></c></row>"
                                  "<row r=\"8\"><c r=\"B8\"><v>5</v></c><c r=\"C8\"><v>1</v></c><c r=\"D8\"><v>7</v></c></row>"
                                  "<row r=\"9\"><c r=\"B9\"><v>5</v></c><c r=\"C9\"><v>1</v></c><c r=\"E9\" t=\"inlineStr\"><is><t>a&#10;b</t></is></c></row>")) ==
          std::vector<std::string>{
              "1.250|1|", "p.xlsx:4:2: the cell shows the error \"#REF!\"; mend its formula, or write the value",
              "p.xlsx:5:2: the cell holds the formula \"A1*2\" without its value; open the workbook in a spreadsheet program and save it again, or write the value",
              "p.xlsx:6:2: the cell holds \"-5\", which is no number or day that can be read; write a number of at most 15 digits that is not below 0, or a day from 1900-03-01",
              "p.xlsx:7:2: length \"1.250\" can be read in two ways; write 1250 or 1,25, whichever it is",
              "p.xlsx:8:4: \"7\" stands in a column without a name; name the column in the first line, or empty it",
              "p.xlsx:9:5: the text holds the control character U+000A; write it on one line, without tabs"});
    CHECK(read(workbook("<row r=\"3\"><c r=\"A3\" t=\"s\"><v>0</v></c></row>")) == std::vector<std::string>{"p.xlsx:3:1: the column count is missing; the first line names the columns length, count and label"});
    CHECK(read(workbook("")) == std::vector<std::string>{"p.xlsx:1:1: the file is empty; the first line names the columns length, count and label"});
    CHECK(read(workbook(heading + "<row r=\"4\"><c r=\"CW4\"><v>1</v></c></row>")) == std::vector<std::string>{"p.xlsx:4:101: the line has more than 100 fields; write one for each column"});
}

TEST_CASE("files that are no workbook, break off or lie are refused whole")
{
    const std::string sound = workbook(heading);
    REQUIRE(read(sound).empty());
    CHECK(read("PK\x03\x04") == no_workbook);
    for (std::size_t length = 4; length < sound.size(); length += 7) CHECK(read(std::string_view(sound).substr(0, length)) == no_workbook);
    CHECK(read(zipped({{"content.xml", "<x/>"}})) == no_workbook);
    CHECK(read(workbook("<row r=\"2\"><c r=\"A2\" t=\"s\"><v>9</v></c></row>")) == no_workbook);
    CHECK(read(workbook("<row r=\"2\"/><row r=\"2\"/>")) == no_workbook);
    CHECK(read(workbook("<row r=\"2\"><c r=\"B2\"/><c r=\"A2\"/></row>")) == no_workbook);
    CHECK(read(workbook("<row>\xFF</row>")) == no_workbook);
    CHECK(read(workbook("<row")) == no_workbook);
    CHECK(read(zipped({book, book, relations})) == no_workbook);
    const auto with_book = [](ZipPart part) { return zipped({part, relations, {"xl/worksheets/s.xml", "<worksheet/>"}}); };
    REQUIRE(read(with_book(book)).front().starts_with("p.xlsx:1:1: the file is empty"));
    CHECK(read(with_book({book.name, book.content, 0, 0, {}, 1u})) == no_workbook);
    CHECK(read(with_book({book.name, book.content, 0, 0, 5u})) == no_workbook);
    CHECK(read(with_book({book.name, book.content, 0, 12})) == no_workbook);
    CHECK(read(with_book({book.name, book.content, 0, 8})) == no_workbook);
    CHECK(read(with_book({book.name, book.content, 1})) == std::vector<std::string>{"p.xlsx:1:1: the workbook needs a password; save it without one"});
    const std::vector<std::string> too_large{"p.xlsx:1:1: the workbook is larger than 16 MB, as it is or unpacked; split it, or save its first sheet alone"};
    CHECK(read(with_book({book.name, book.content, 0, 8, static_cast<std::uint32_t>(most_unpacked + 1)})) == too_large);
    CHECK(read("PK\x03\x04" + std::string(most_unpacked, 'x')) == too_large);
}
