// docs/saw-plans.md against the program: options, columns, files, JSON fields, names of the workbook.
#include <nlohmann/json.hpp>
#include <regex>
#include <set>

#include "commands/program.hpp"
#include "documents/spreadsheet/workbook_parts.hpp"
#include "shaftcut/engine/answer.hpp"
#include "support/catch.hpp"
#include "support/markdown.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

using Names = std::set<std::string>;

Names matches(const std::string& text, const std::regex& form)
{
    return {std::sregex_token_iterator(text.begin(), text.end(), form, 1), {}};
}

Names first_words(const std::vector<TableRow>& rows)
{
    Names names;
    for (const TableRow& row : rows)
        for (const std::string& span : code_spans(row.cells[0])) names.insert(span.substr(0, span.find(' ')));
    return names;
}

Names options_of(const char* command) { return matches(run({command, "--help"}).out, std::regex("\n +(--[a-z-]+)")); }

// All formats of the sample's plan, in a folder of their own.
struct SamplePlan {
    Folder folder;
    Run ended = run({"saw", "--config", config_folder, "--output", folder.path(), "--formats", "pdf,xlsx,json,png,svg", "--stock",
                     source_folder + "/samples/saw-stock.csv", source_folder + "/samples/saw-pieces.csv"});
    std::string file(const std::string& name) const { return folder.file("saw-pieces" + name); }
};

const Markdown& page()
{
    static const Markdown read = read_markdown("docs/saw-plans.md");
    return read;
}

}  // namespace

TEST_CASE("saw plans: every option of its own is described, and no other")
{
    Names own = options_of("saw");
    for (const std::string& common : options_of("cut")) own.erase(common);
    CHECK(first_words(page().rows_under("Options")) == own);
}

TEST_CASE("saw plans: each file of the table is written under its name, and no other")
{
    const SamplePlan plan;
    REQUIRE(plan.ended.exit == 0);
    std::size_t files = 0;
    for (const TableRow& row : page().rows_under("What it gives"))
        for (const std::string& name : code_spans(row.cells[1])) {
            INFO(name);
            REQUIRE(name.rfind("NAME", 0) == 0);
            CHECK(std::filesystem::exists(plan.file(name.substr(4))));
            ++files;
        }
    CHECK(files == plan.folder.count());
}

TEST_CASE("saw plans: every JSON field is described, and no other")
{
    const SamplePlan plan;
    const auto json = nlohmann::ordered_json::parse(read_all(plan.file("-saw-plan.json")));
    Names fields, inner, described;
    for (const auto& [name, value] : json.items()) fields.insert(name);
    for (const auto& [name, value] : json["bars"][0].items()) inner.insert(name);
    const auto rows = page().rows_under("JSON");
    CHECK(first_words(rows) == fields);
    for (const std::string& span : code_spans(rows.at(0).cells[1])) described.insert(span);
    CHECK(described == inner);
}

TEST_CASE("saw plans: the names that the workbook's header promises are in the workbook and described")
{
    const SamplePlan plan;
    const auto names = parts_of(read_all(plan.file("-saw-plan.xlsx"))).names;
    const std::vector<std::string> spans = code_spans(page().prose);
    const Names promised = matches(read_all(source_folder + "/src/documents/saw_book/saw_workbook.hpp"), std::regex("`([a-z_]+)`"));
    CHECK(promised.size() == 10);
    for (const std::string& name : promised) {
        INFO(name);
        CHECK(names.count(name) == 1);
        CHECK(std::count(spans.begin(), spans.end(), name) > 0);
    }
}

TEST_CASE("saw plans: each column of both lists is described as the reader takes it")
{
    const Folder folder;
    for (const TableRow& row : page().rows_under("The two lists")) {
        const bool pieces = row.cells[0] == "pieces", required = row.cells[2] == "yes";
        const std::string column = code_spans(row.cells[1]).at(0);
        INFO(row.cells[0] << " " << column);
        std::string header, line;
        for (const auto& [name, value] : pieces ? std::vector<std::pair<std::string, std::string>>{{"length", "100"}, {"count", "1"}, {"label", "x"}}
                                                : std::vector<std::pair<std::string, std::string>>{{"length", "6000"}, {"count", "1"}, {"cost", "1"}}) {
            if (name == column) continue;
            header += (header.empty() ? "" : ",") + name;
            line += (line.empty() ? "" : ",") + value;
        }
        write_all(folder.file("without.csv"), header + "\n" + line + "\n");
        write_all(folder.file("pieces.csv"), "length,count\n100,1\n");
        write_all(folder.file("stock.csv"), "length\n6000\n");
        const Run one = run({"saw", "--config", config_folder, "--output", "-", "--formats", "json", "--stock", folder.file(pieces ? "stock.csv" : "without.csv"),
                             folder.file(pieces ? "without.csv" : "pieces.csv")});
        CHECK(one.exit == (required ? 2 : 0));
    }
}
