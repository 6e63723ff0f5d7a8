// The bench page's texts: each key once, and every key that its HTML and scripts name is there.
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <sstream>
#include <string>

#include "bench/bench_words.hpp"
#include "bench/reply_words.hpp"
#include "shaftcut/trade/checks/checks.hpp"
#include "shaftcut/trade/data/terms.hpp"
#include "shaftcut/trade/order/after_cut.hpp"
#include "support/catch.hpp"

using namespace shaftcut;

namespace {

namespace fs = std::filesystem;

std::set<std::string> keys_of(const Wording& w)
{
    std::set<std::string> keys;
    for (const auto& words : {bench_words(w), pairing_words(w)})
        for (const auto& [key, text] : words) keys.insert(key);
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

// What stands before and after the part that is put in, of keys that scripts put together; not of paths and addresses.
std::set<std::pair<std::string, std::string>> put_together_in(const fs::path& file)
{
    static const std::regex named(R"rx([^.\w]t\(`([\w-]*)\$\{[^`}]*\}([\w-]*)`)rx");
    std::ifstream stream(file);
    std::stringstream text;
    text << stream.rdbuf();
    const std::string all = text.str();
    std::set<std::pair<std::string, std::string>> found;
    for (auto at = std::sregex_iterator(all.begin(), all.end(), named); at != std::sregex_iterator(); ++at) found.insert({(*at)[1], (*at)[2]});
    return found;
}

bool fits(const std::string& key, const std::string& before, const std::string& after)
{
    return key.size() > before.size() + after.size() && key.compare(0, before.size(), before) == 0 && key.compare(key.size() - after.size(), after.size(), after) == 0;
}

template <class Kind>
void all_have_words(const std::string& before, bool lined)
{
    const std::set<std::string> keys = keys_of(Wording(Units::mm));
    for (std::string word : Words<Kind>::all) {
        if (lined) std::replace(word.begin(), word.end(), '-', '_');
        INFO(before + word);
        CHECK(keys.count(before + word) == 1);
    }
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

TEST_CASE("bench page: keys that are put together have their texts")
{
    all_have_words<AfterCutVerdict>("verdict_", true);
    all_have_words<AfterCutVerdict>("after_", true);
    all_have_words<CheckId>("unchecked_", false);
    all_have_words<Lock>("lock_", true);
    all_have_words<Range>("range_", true);
    const std::set<std::string> keys = keys_of(Wording(Units::mm));
    std::size_t seen = 0;
    for (const auto& entry : fs::directory_iterator(fs::path(SHAFTCUT_SOURCE_DIR) / "src/bench/page"))
        for (const auto& [before, after] : put_together_in(entry.path())) {
            if (before.empty() && after.empty()) continue;
            INFO(entry.path().filename().string() << ": " << before << "…" << after);
            CHECK(std::any_of(keys.begin(), keys.end(), [&, b = before, a = after](const std::string& key) { return fits(key, b, a); }));
            ++seen;
        }
    CHECK(seen > 15);
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
