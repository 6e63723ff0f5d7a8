#include "csv/csv.hpp"

#include "reading/said.hpp"
#include "support/catch.hpp"

using namespace shaftcut;

namespace {

const std::vector<TableColumn> columns{{"length", true}, {"count", true}, {"label", false}};

constexpr std::size_t most_lines = 1500;

struct Reading {
    std::vector<TableRow> rows;
    Faults faults;
};

Reading reading_of(std::string_view text)
{
    std::vector<TableRow> rows;
    Faults faults = read_csv(text, "p.csv", columns, {most_lines, ManyOf::lines}, [&](const TableRow& row, Faults&) { rows.push_back(row); });
    return {std::move(rows), std::move(faults)};
}

std::vector<TableRow> rows(std::string_view text)
{
    const Reading reading = reading_of(text);
    if (!reading.faults.none()) FAIL(to_string(problem_of(reading.faults.listed().front())));
    return reading.rows;
}

std::vector<std::string> faults(std::string_view text)
{
    std::vector<std::string> lines;
    for (const Fault& fault : reading_of(text).faults.listed()) lines.push_back(to_string(problem_of(fault)));
    return lines;
}

}  // namespace

TEST_CASE("fields, quotes, spaces, line ends, order of columns")
{
    const std::vector<TableRow> read = rows("\xEF\xBB\xBF" "label,length,count\r\n\r\n\"a \"\"b\"\", c\" , 742.5 mm ,3\n,10,1");
    REQUIRE(read.size() == 2);
    CHECK(read[0][0].text == "742.5 mm");
    CHECK(read[0][1].text == "3");
    CHECK(read[0][2].text == "a \"b\", c");
    CHECK(read[0][0].spot == Spot{3, 16});
    CHECK(read[1][2].text.empty());
    CHECK(read[1][0].spot == Spot{4, 2});
}

TEST_CASE("columns count characters, and an absent column is empty")
{
    const std::vector<TableRow> read = rows("length,count\n\"\xC3\xA9\xC3\xA9\",7\n");
    CHECK(read[0][1].spot == Spot{2, 6});
    CHECK(read[0][2].text.empty());
}

TEST_CASE("every fault with its place, in one go")
{
    CHECK(faults("length,count\n1\n2,3\n\"4,5\n6,7,8\n9,a\"b\n\"1\"x,2\n1,\x01\n")
          == std::vector<std::string>{
              "p.csv:2:1: the line has 1 fields; write 2, as the first line names",
              "p.csv:4:1: a quote is not closed on its line; end the field with a quote",
              "p.csv:5:1: the line has 3 fields; write 2, as the first line names",
              "p.csv:6:4: a quote inside a field; put the whole field in quotes and write \"\" for a quote in it",
              "p.csv:7:4: text follows a closing quote; write what separates the fields, or end the line there",
              "p.csv:8:3: the line holds the control character U+0001; take it out: what is read would not be what you see"});
    CHECK(faults("lenght,count,count\n1,2,3\n")
          == std::vector<std::string>{
              "p.csv:1:1: the column length is missing; the first line names the columns length, count and label",
              "p.csv:1:1: unknown column \"lenght\"; did you mean length? the columns are length, count and label",
              "p.csv:1:8: the column count stands there twice; name each column once"});
}

TEST_CASE("files that hold nothing to read")
{
    CHECK(faults("") == std::vector<std::string>{"p.csv:1:1: the file is empty; the first line names the columns length, count and label"});
    CHECK(faults("\n \n").size() == 1);
    CHECK(rows("length,count\n").empty());
    CHECK(faults("length,count\n1,2\n\xFF,2\n") == std::vector<std::string>{"p.csv:3:1: the line is not UTF-8 text; save the file as UTF-8"});
    CHECK(faults(std::string(most_csv_bytes + 1, 'a')) == std::vector<std::string>{"p.csv:1:1: the file is larger than 16 MB; split it"});
}

TEST_CASE("faults beyond the limit are not listed")
{
    std::string text = "length,count\n";
    for (int i = 0; i < 1000; ++i) text += "a\"b,1\n";
    const auto listed = faults(text);
    CHECK(listed.size() == Faults::most_listed + 1);
    CHECK(listed.back() == "p.csv:201:2: 800 more faults are not listed; mend those above first");
}

TEST_CASE("the sound lines of a list with faults")
{
    const Reading reading = reading_of("length,count\n1,2\n3\n4,5\n");
    REQUIRE(reading.rows.size() == 2);
    CHECK(reading.rows[1][0].text == "4");
    CHECK(reading.faults.count() == 1);
    CHECK(reading_of("lenght,count\n1,2\n").rows.empty());
}

TEST_CASE("what its reader finds wrong with a line stands among the faults of form, each in its place")
{
    const Faults faults = read_csv("length,count\n1,2\n3\n4,5\n", "p.csv", columns, {most_lines, ManyOf::lines},
                                   [](const TableRow& row, Faults& found) { found.add(where(row[1]), WrongValue{Unfit::cost, {"", row[1].text}}); });
    const FaultList listed = faults.listed();
    REQUIRE(listed.size() == 3);
    CHECK(to_string(listed[0].place) == "p.csv:2:3");
    CHECK(std::get<WrongValue>(listed[0].what).stated.value == "2");
    CHECK(std::holds_alternative<FieldCount>(listed[1].what));
    CHECK(to_string(listed[2].place) == "p.csv:4:3");
    CHECK(listed[2].path == "row[3]@count");
}

TEST_CASE("a list with more lines than are let in, or a line with more fields, is not taken")
{
    std::string text = "length,count\n";
    for (std::size_t i = 0; i < most_lines; ++i) text += "1,2\n\n";
    CHECK(rows(text).size() == most_lines);
    text += "3\n";
    CHECK(faults(text) == std::vector<std::string>{"p.csv:1:1: the list holds more than 1500 lines; split it"});
    CHECK(reading_of(text).rows.empty());
    CHECK(faults("length,count\n1" + std::string(500, ',') + "\n1\n")
          == std::vector<std::string>{"p.csv:2:1: the line has more than 100 fields; write one for each column",
                                      "p.csv:3:1: the line has 1 fields; write 2, as the first line names"});
    CHECK(faults("1" + std::string(500, ',') + "\n1\n").size() == 1);
}

TEST_CASE("what a terminal obeys, nobody sees or a workbook cannot hold is named by its code and place, each once in a line")
{
    const std::string out_with_it = "; take it out: what is read would not be what you see";
    const std::vector<std::pair<std::string, std::string>> bad{
        {"\x1B[2J", "control character U+001B"}, {"\x7F", "control character U+007F"}, {"\xC2\x80", "control character U+0080"},
        {"\xC2\x9B" "31m", "control character U+009B"}, {"\xEF\xBF\xBE", "invisible character U+FFFE"}, {"\u202E", "invisible character U+202E"},
        {"\u200B\u200B", "invisible character U+200B"}, {"\uFEFF", "invisible character U+FEFF"}};
    for (const auto& [text, named] : bad) CHECK(faults("length,count,label\n1,2,a" + text + "\n") == std::vector<std::string>{"p.csv:2:6: the line holds the " + named + out_with_it});
    CHECK(faults("length,count,label\n1,2,\u202Ea\u202C\u202E\n").size() == 2);
    CHECK(faults("length,count,label\n1,2,a\tb\n") == std::vector<std::string>{"p.csv:2:6: the line holds the control character U+0009; write it on one line, without tabs"});
    for (const char* good : {"\xC2\xA0", "\xC2\xAD", "\xEF\xBF\xBD", "\xC3\x9B", "\xEF\xBE\xBF"}) CHECK(rows("length,count,label\n1,2,a" + std::string(good) + "\n").size() == 1);
}
