// The bench page's texts: each key once, and every key that its HTML and scripts name is there.
#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <sstream>
#include <string>

#include "bench/bench_words.hpp"
#include "support/catch.hpp"

using namespace shaftcut;

namespace {

namespace fs = std::filesystem;

std::set<std::string> keys_of(const Wording& w)
{
    std::set<std::string> keys;
    for (const auto& [key, text] : bench_words(w)) keys.insert(key);
    return keys;
}

// Keys named whole: in the HTML, and by scripts where they are not put together.
std::set<std::string> keys_named_in(const fs::path& file)
{
    static const std::regex named(R"rx(data-(?:word|label)="([\w-]+)"|\bt\('([\w-]+)')rx");
    std::ifstream stream(file);
    std::stringstream text;
    text << stream.rdbuf();
    const std::string all = text.str();
    std::set<std::string> keys;
    for (auto at = std::sregex_iterator(all.begin(), all.end(), named); at != std::sregex_iterator(); ++at) keys.insert((*at)[1].matched ? (*at)[1] : (*at)[2]);
    return keys;
}

}  // namespace

TEST_CASE("bench page: each key has one text that is not empty")
{
    const Wording w(Units::mm);
    std::set<std::string> seen;
    for (const auto& [key, text] : bench_words(w)) {
        INFO(key);
        CHECK(seen.insert(key).second);
        CHECK_FALSE(text.empty());
    }
}

TEST_CASE("bench page: every key that its files name has a text")
{
    const std::set<std::string> keys = keys_of(Wording(Units::mm));
    std::size_t named = 0;
    for (const auto& entry : fs::directory_iterator(fs::path(SHAFTCUT_SOURCE_DIR) / "src/bench/page"))
        for (const std::string& key : keys_named_in(entry.path())) {
            INFO(entry.path().filename().string() << ": " << key);
            CHECK(keys.count(key) == 1);
            ++named;
        }
    CHECK(named > 80);
}

TEST_CASE("bench page: no sentence stands in its files")
{
    static const std::regex text_in_html(R"rx(>\s*[A-Za-z]{2,}[^<]*\s[a-z]{2,})rx");
    std::ifstream stream(fs::path(SHAFTCUT_SOURCE_DIR) / "src/bench/page/bench.html");
    std::stringstream html;
    html << stream.rdbuf();
    CHECK_FALSE(std::regex_search(html.str(), text_in_html));
    CHECK(html.str().find("style=") == std::string::npos);
    CHECK(html.str().find("onclick") == std::string::npos);
}
