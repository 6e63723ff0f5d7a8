// Headings and words of six languages.
#include "table/terms.hpp"

#include <map>
#include <set>

#include "reading/support.hpp"

using namespace shaftcut;

namespace {

std::vector<std::string> split(const std::string& text, const std::string& by)
{
    std::vector<std::string> parts;
    std::size_t at = 0;
    for (std::size_t end = text.find(by); end != std::string::npos; end = text.find(by, at)) parts.push_back(text.substr(at, end - at)), at = end + by.size();
    parts.push_back(text.substr(at));
    return parts;
}

// Of a section of terms.md: the file's word with all that stands in its row.
std::map<std::string, std::set<std::string>> section(const std::string& title)
{
    const std::string page = reading_test::bytes_of(reading_test::project / "config/languages/terms.md");
    const std::size_t start = page.find("## " + title);
    REQUIRE(start != std::string::npos);
    std::map<std::string, std::set<std::string>> rows;
    for (const std::string& line : split(page.substr(start, page.find("\n## ", start + 1) - start), "\n")) {
        if (!line.starts_with("| `")) continue;
        const auto cells = split(line, " | ");
        REQUIRE(cells.size() == 8);
        for (std::size_t i = 1; i < 7; ++i)
            for (const std::string& word : split(cells[i], " / ")) rows[cells[0].substr(3, cells[0].size() - 4)].insert(word);
    }
    REQUIRE(!rows.empty());
    return rows;
}

}  // namespace

TEST_CASE("the page of terms and the program hold the same headings, and none is two columns' of one list")
{
    const auto rows = section("Headings");
    const std::set<std::string> of_saw_lists{"length", "label", "cost", "profile", "count"};
    for (const auto& [column, words] : rows) {
        INFO(column);
        const auto held = headings_of(column);
        CHECK(std::set<std::string>(held.begin(), held.end()) == words);
        for (const std::string& word : words)
            for (const auto& [other, its] : rows) {
                const bool in_one_list = (of_saw_lists.count(column) > 0) == (of_saw_lists.count(other) > 0) || column == "count" || other == "count";
                INFO(word << " of " << other);
                if (in_one_list) CHECK(is_heading_of(word, other) == (other == column));
            }
    }
}

TEST_CASE("the page of terms and the program hold the same values")
{
    for (const auto& [file_word, words] : section("Values"))
        for (const std::string& word : words) {
            INFO(word);
            CHECK(file_word_of(word) == file_word);
        }
}

TEST_CASE("capitals, blanks and signs between words do not matter, units and other words do")
{
    CHECK(is_heading_of("AUFTRAGS-NR.", "order"));
    CHECK(is_heading_of("LÄNGE", "length"));
    CHECK(is_heading_of("ILOŚĆ", "count"));
    CHECK(is_heading_of("Liczba  Sztuk:", "count"));
    CHECK_FALSE(is_heading_of("Länge (in)", "length"));
    CHECK_FALSE(is_heading_of("", "length"));
    CHECK(file_word_of("WIDE-ANGLE") == "wide-angle");
    CHECK(file_word_of("double") == "double");
}
