// CSV as spreadsheet programs write it in Europe: separators, decimal commas, encodings, empty rows and columns.
#include "csv/csv.hpp"
#include "csv/utf16.hpp"
#include "lists/pieces.hpp"
#include "reading/support.hpp"
#include "text.hpp"

using namespace shaftcut;

namespace {

const std::vector<TableColumn> columns{{"length", true, Holds::length}, {"count", true, Holds::whole}, {"label", false}};

// Every row as "length|count|label"; then every fault.
std::vector<std::string> read(std::string_view text)
{
    std::vector<std::string> lines;
    const Faults faults = read_csv(text, "p.csv", columns, {1500, ManyOf::lines}, [&](const TableRow& row, Faults&) { lines.push_back(row[0].text + "|" + row[1].text + "|" + row[2].text); });
    for (const Fault& fault : faults.listed()) lines.push_back(reading_test::line_of(fault));
    return lines;
}

std::string utf16(std::string_view text, Utf16 order, bool mark)
{
    std::string bytes;
    const auto add = [&](char32_t unit) {
        const char high = static_cast<char>(static_cast<unsigned char>(unit >> 8)), low = static_cast<char>(static_cast<unsigned char>(unit & 0xFF));
        bytes += order == Utf16::little_endian ? std::string{low, high} : std::string{high, low};
    };
    if (mark) add(0xFEFF);
    for (const char32_t point : code_points(text)) {
        if (point < 0x10000) add(point);
        else add(0xD800 + ((point - 0x10000) >> 10)), add(0xDC00 + ((point - 0x10000) & 0x3FF));
    }
    return bytes;
}

}  // namespace

TEST_CASE("commas, semicolons or tabs, whichever the heading line has")
{
    const std::vector<std::string> expected{"742.5|2|a b", "10|1|"};
    CHECK(read("length,count,label\n742.5,2,a b\n10,1,\n") == expected);
    CHECK(read("length;count;label\n742,5;2,00;a b\n10;1;\n") == expected);
    CHECK(read("length\tcount\tlabel\n742,5\t2\ta b\n10\t1\t\n") == expected);
    CHECK(read("sep=;\r\nlength;count;label\r\n\"742,5\";2;a b\r\n10;1;\r\n") == expected);
    CHECK(read("\"length\";count;\"label\"\n742,5;2;a b\n10;1;\n") == expected);
    CHECK(read("length;count;label\n1;1;a, b\n") == std::vector<std::string>{"1|1|a, b"});
}

TEST_CASE("UTF-8 with a mark and UTF-16 with and without one")
{
    const std::string text = "length;count;label\n742,5;2;T\xC3\xBCr \xF0\x9F\x94\xA7\n";
    const std::vector<std::string> expected{"742.5|2|T\xC3\xBCr \xF0\x9F\x94\xA7"};
    CHECK(read(text) == expected);
    CHECK(read("\xEF\xBB\xBF" + text) == expected);
    for (const Utf16 order : {Utf16::little_endian, Utf16::big_endian})
        for (const bool mark : {true, false}) CHECK(read(utf16(text, order, mark)) == expected);
    const std::string broken = utf16(text, Utf16::little_endian, true);
    CHECK(read(broken.substr(0, broken.size() - 1)) == std::vector<std::string>{"p.csv:1:1: the file breaks off, or is no text in UTF-16; save it as UTF-8"});
    CHECK(read(broken + std::string("\x3D\xD8", 2)).size() == 1);
    CHECK(read(broken + std::string("\x3D\xDC", 2)).size() == 1);
}

TEST_CASE("empty rows and columns are none, but nothing that stands in them is left out unseen")
{
    CHECK(read(";;;;\n;length;;count;;\n;742;;2;;\n;;;;;\n\"\";;;;;\n;10;;1;;;;\n") == std::vector<std::string>{"742|2|", "10|1|"});
    CHECK(read("length;count;\n742;2;x\n10;1;\n") == std::vector<std::string>{"10|1|", "p.csv:2:7: \"x\" stands in a column without a name; name the column in the first line, or empty it"});
}

TEST_CASE("a fault that a column has in many rows is said once")
{
    CHECK(read("length;count\n1.250;1\n1.250;1\n742;1\n1.250;1\n1.300;1\n").back() == "p.csv:6:1: length \"1.300\" can be read in two ways; write 1300 or 1,3, whichever it is");
    const auto lines = read("length;count\n1.250;1\n1.250;1\n742;1\n1.250;1\n");
    CHECK(lines.at(lines.size() - 1) == "p.csv:2:1: length \"1.250\" can be read in two ways; write 1250 or 1,25, whichever it is (in 2 more lines too)");
    CHECK(read("length;count\n1.250;1\n1.250;1\n").back().ends_with("whichever it is (in one more line too)"));
    CHECK(read("length;count\n1\n2\n3\n") == std::vector<std::string>{"p.csv:2:1: the line has 1 fields; write 2, as the first line names (in 2 more lines too)"});
}

TEST_CASE("all columns that are missing in one message")
{
    CHECK(read("label\nx\n") == std::vector<std::string>{"p.csv:1:1: the columns length and count are missing; the first line names the columns length, count and label"});
}

TEST_CASE("a value in doubt has one fault, not a second one for what it is not")
{
    const auto result = read_pieces("length;count\n1.250;2.000\n", "p.csv", Units::mm);
    REQUIRE(std::holds_alternative<FaultList>(result));
    CHECK(std::get<FaultList>(result).size() == 2);
}
