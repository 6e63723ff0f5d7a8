#include "support/markdown.hpp"

#include <algorithm>
#include <cctype>
#include <fstream>
#include <regex>

#include "support/catch.hpp"

namespace shaftcut::test {
namespace {

namespace fs = std::filesystem;

std::string trimmed(const std::string& text)
{
    const std::size_t first = text.find_first_not_of(' ');
    return first == std::string::npos ? "" : text.substr(first, text.find_last_not_of(' ') - first + 1);
}

// The cells of "| a | b |".
std::vector<std::string> cells_of(const std::string& line)
{
    std::vector<std::string> cells;
    for (std::size_t at = line.find('|') + 1, end; (end = line.find('|', at)) != std::string::npos; at = end + 1)
        cells.push_back(trimmed(line.substr(at, end - at)));
    return cells;
}

bool is_rule(const std::string& line) { return line.find_first_not_of("|- ") == std::string::npos; }

class Reader {
public:
    explicit Reader(Markdown& into) : into_(into) {}

    void take(const std::string& line)
    {
        const std::string bare = trimmed(line);
        if (bare.rfind("```", 0) == 0) return fence(line, bare);
        if (inside_) return into_.blocks.back().lines.push_back(line.size() > indent_ ? line.substr(indent_) : "");
        into_.prose += line + "\n";
        if (bare.rfind('#', 0) == 0) into_.headings.push_back(trimmed(bare.substr(bare.find_first_not_of('#'))));
        else if (bare.rfind('|', 0) == 0) row(bare);
    }

private:
    void fence(const std::string& line, const std::string& bare)
    {
        if (!inside_) into_.blocks.push_back({bare.substr(3), {}});
        indent_ = line.find('`');
        inside_ = !inside_;
    }

    // A rule tells that the row above it was a head.
    void row(const std::string& line)
    {
        if (is_rule(line)) return into_.rows.pop_back();
        into_.rows.push_back({into_.headings.empty() ? "" : into_.headings.back(), cells_of(line)});
    }

    Markdown& into_;
    bool inside_ = false;
    std::size_t indent_ = 0;
};

}  // namespace

std::string CodeBlock::text() const
{
    std::string all;
    for (const std::string& line : lines) all += line + "\n";
    return all;
}

std::vector<TableRow> Markdown::rows_under(const std::string& heading) const
{
    std::vector<TableRow> found;
    std::copy_if(rows.begin(), rows.end(), std::back_inserter(found), [&](const TableRow& row) { return row.heading == heading; });
    return found;
}

Markdown read_markdown(const fs::path& path)
{
    Markdown markdown;
    markdown.path = path;
    std::ifstream stream(fs::path(SHAFTCUT_SOURCE_DIR) / path);
    REQUIRE(stream);
    Reader reader(markdown);
    for (std::string line; std::getline(stream, line);) reader.take(line);
    return markdown;
}

std::vector<Markdown> all_markdown()
{
    std::vector<Markdown> all{read_markdown("README.md"), read_markdown("DEVELOPERS.md")};
    for (const auto& entry : fs::directory_iterator(fs::path(SHAFTCUT_SOURCE_DIR) / "docs"))
        if (entry.path().extension() == ".md") all.push_back(read_markdown(fs::path("docs") / entry.path().filename()));
    return all;
}

std::vector<std::string> code_spans(const std::string& text)
{
    static const std::regex form("`([^`]+)`");
    std::vector<std::string> spans;
    for (std::sregex_iterator at(text.begin(), text.end(), form), end; at != end; ++at) spans.push_back((*at)[1]);
    return spans;
}

std::string anchor_of(const std::string& heading)
{
    std::string anchor;
    for (const char c : heading) {
        if (std::isalnum(static_cast<unsigned char>(c)) || c == '-' || c == '_') anchor += static_cast<char>(std::tolower(c));
        else if (c == ' ') anchor += '-';
    }
    return anchor;
}

}  // namespace shaftcut::test
