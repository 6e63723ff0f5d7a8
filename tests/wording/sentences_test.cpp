// Everything that a person reads stands in the wording.
#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <string>
#include <vector>

#include "support/catch.hpp"

namespace {

namespace fs = std::filesystem;

// Without comments, includes, and what the program says of its own faults.
std::string code_of(std::string line)
{
    static const std::regex not_for_people(R"(^\s*(#include|//)|(logic_error|invalid_argument)\()");
    if (std::regex_search(line, not_for_people)) return "";
    return line;
}

// The string literals of a line that hold two words, each with a blank between or beside them.
std::vector<std::string> sentences_in(const std::string& line)
{
    static const std::regex literal(R"rx('(?:[^'\\]|\\.)'|"((?:[^"\\]|\\.)*)"|//.*)rx");
    static const std::regex words(R"([A-Za-z]{2,}[,;:.]? +[A-Za-z]{2,}| [a-z]{3,}|[a-z]{3,} )");
    std::vector<std::string> found;
    for (auto at = std::sregex_iterator(line.begin(), line.end(), literal); at != std::sregex_iterator(); ++at)
        if ((*at)[1].matched && std::regex_search((*at)[1].str(), words)) found.push_back((*at)[1]);
    return found;
}

}  // namespace

TEST_CASE("what a literal of words is")
{
    CHECK(sentences_in(R"(say("Nothing is cut."); // "a comment of words")") == std::vector<std::string>{"Nothing is cut."});
    CHECK(sentences_in(R"(text + " longer")").size() == 1);
    CHECK(sentences_in(R"(to_word("overlap-working") + ": " + "±")").empty());
    CHECK(sentences_in(R"(if (c == '"') until = '"';)").empty());
    CHECK(code_of("#include \"a b c.hpp\"").empty());
}

TEST_CASE("no sentence stands outside the wording")
{
    // What libraries of the paper and of the font report, what the tongue of PDF is made of, the names of profiles, which lists of stock write, what stands over the columns of lists, the codes of currencies, the policy that a browser holds the bench page to, and a request in HTTP.
    static const std::set<std::string> technical{"src/documents/page/cairo_pages.cpp", "src/documents/page/font.cpp", "src/documents/page/pdf_language.cpp", "src/documents/page/qr.cpp", "src/trade/build/parts.cpp",
                                                 "src/reading/table/terms.cpp", "src/words/money.cpp", "src/bench/reply.cpp", "src/commands/files/other_programs.cpp"};
    const fs::path root = SHAFTCUT_SOURCE_DIR;
    int read = 0;
    for (const auto& entry : fs::recursive_directory_iterator(root / "src")) {
        const fs::path file = fs::relative(entry.path(), root);
        const std::string name = file.generic_string();
        if ((file.extension() != ".cpp" && file.extension() != ".hpp") || name.starts_with("src/wording/") || technical.count(name)) continue;
        std::ifstream stream(entry.path());
        for (std::string line; std::getline(stream, line);)
            for (const std::string& sentence : sentences_in(code_of(line))) {
                INFO(name << ": " << line);
                CHECK(sentence == "");
            }
        ++read;
    }
    CHECK(read > 200);
}
