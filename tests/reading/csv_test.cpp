#include "shaftcut/reading/csv.hpp"

#include "support/catch.hpp"

using namespace shaftcut;

namespace {

const std::vector<CsvColumn> columns{{"length", true}, {"count", true}, {"label", false}};

CsvRows rows(std::string_view text)
{
    const auto result = read_csv(text, "p.csv", columns);
    if (const auto* problems = std::get_if<Problems>(&result)) FAIL(to_string(problems->front()));
    return std::get<CsvRows>(result);
}

std::vector<std::string> faults(std::string_view text)
{
    const auto result = read_csv(text, "p.csv", columns);
    REQUIRE(std::holds_alternative<Problems>(result));
    std::vector<std::string> lines;
    for (const Problem& problem : std::get<Problems>(result)) lines.push_back(to_string(problem));
    return lines;
}

}  // namespace

TEST_CASE("fields, quotes, spaces, line ends, order of columns")
{
    const CsvRows read = rows("\xEF\xBB\xBF" "label,length,count\r\n\r\n\"a \"\"b\"\", c\" , 742.5 mm ,3\n,10,1");
    REQUIRE(read.size() == 2);
    CHECK(read[0][0].text == "742.5 mm");
    CHECK(read[0][1].text == "3");
    CHECK(read[0][2].text == "a \"b\", c");
    CHECK(to_string(read[0][0].place) == "p.csv:3:16");
    CHECK(read[1][2].text.empty());
    CHECK(to_string(read[1][0].place) == "p.csv:4:2");
}

TEST_CASE("columns count characters, and an absent column is empty")
{
    const CsvRows read = rows("length,count\n\"\xC3\xA9\xC3\xA9\",7\n");
    CHECK(to_string(read[0][1].place) == "p.csv:2:6");
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
              "p.csv:7:4: text follows a closing quote; write a comma or end the line there",
              "p.csv:8:1: the line holds a control character; write plain text, fields separated by commas"});
    CHECK(faults("lenght,count,count\n1,2,3\n")
          == std::vector<std::string>{
              "p.csv:1:1: the column length is missing; the first line names the columns length, count and label",
              "p.csv:1:1: unknown column \"lenght\"; did you mean length? the columns are length, count and label",
              "p.csv:1:8: the column count stands there twice; name each column once"});
    CHECK(faults("length;count\n1;2\n").back() == "p.csv:1:1: \"length;count\" is one field; separate the fields by commas");
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
    for (int i = 0; i < 1000; ++i) text += "1\n";
    const auto listed = faults(text);
    CHECK(listed.size() == most_problems + 1);
    CHECK(listed.back() == "p.csv:201:1: 800 more faults are not listed; mend those above first");
}

TEST_CASE("the sound lines of a list with faults")
{
    const CsvReading reading = read_sound_lines("length,count\n1,2\n3\n4,5\n", "p.csv", {{"length", true}, {"count", true}});
    REQUIRE(reading.rows.size() == 2);
    CHECK(reading.rows[1][0].text == "4");
    CHECK(reading.faults.count() == 1);
    CHECK(read_sound_lines("lenght\n1\n", "p.csv", {{"length", true}}).rows.empty());
}
