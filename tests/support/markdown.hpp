// The project's Markdown, cut into what tests compare with the program: code blocks, tables, code spans, links.
#pragma once

#include <filesystem>
#include <set>
#include <string>
#include <vector>

namespace shaftcut::test {

// A fenced block, without the indentation of its fence.
struct CodeBlock {
    std::string language;
    std::vector<std::string> lines;
    std::string text() const;
};

// A row of a table, its cells without the blanks around them; `heading` is the nearest heading above, without its marks.
struct TableRow {
    std::string heading;
    std::vector<std::string> cells;
};

struct Markdown {
    std::filesystem::path path;
    std::vector<std::string> headings;
    std::vector<TableRow> rows;  // without the tables' heads
    std::vector<CodeBlock> blocks;
    std::string prose;           // all but the blocks

    std::vector<TableRow> rows_under(const std::string& heading) const;
};

// `path` is below the source folder: "docs/checks.md".
Markdown read_markdown(const std::filesystem::path& path);

// Every Markdown file of the project, and each of them read.
std::vector<Markdown> all_markdown();

// What stands between backticks, in order.
std::vector<std::string> code_spans(const std::string& text);

// The anchor by which a heading is linked: small letters, digits, "-" for blanks, nothing for other marks.
std::string anchor_of(const std::string& heading);

}  // namespace shaftcut::test
