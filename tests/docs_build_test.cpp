// docs/build-orders.md against the program: options, columns, files, JSON fields.
#include <nlohmann/json.hpp>
#include <regex>
#include <set>

#include "commands/program.hpp"
#include "support/catch.hpp"
#include "support/markdown.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

using Names = std::set<std::string>;

Names first_words(const std::vector<TableRow>& rows)
{
    Names names;
    for (const TableRow& row : rows)
        for (const std::string& span : code_spans(row.cells[0])) names.insert(span.substr(0, span.find(' ')));
    return names;
}

Names options_of(const char* command)
{
    const std::string help = run({command, "--help"}).out;
    static const std::regex form("\n +(--[a-z-]+)");
    return {std::sregex_token_iterator(help.begin(), help.end(), form, 1), {}};
}

const Markdown& page()
{
    static const Markdown read = read_markdown("docs/build-orders.md");
    return read;
}

std::vector<TableRow> option_rows(bool options)
{
    std::vector<TableRow> rows;
    for (const TableRow& row : page().rows_under("Options"))
        if ((code_spans(row.cells[0]).at(0).rfind("--", 0) == 0) == options) rows.push_back(row);
    return rows;
}

// All formats of the sample's batch, in a folder of their own.
struct SampleBatch {
    Folder folder;
    Run ended = run({"build", "--config", config_folder, "--plate", "--output", folder.path(), "--stock", source_folder + "/samples/rack.csv", source_folder + "/samples/orders.csv"});
    nlohmann::ordered_json json() const { return nlohmann::ordered_json::parse(read_all(folder.file("orders.json"))); }
};

Names fields_of(const nlohmann::ordered_json& object)
{
    Names names;
    for (const auto& [name, value] : object.items()) names.insert(name);
    return names;
}

Names spans_of(const TableRow& row)
{
    const auto spans = code_spans(row.cells[1]);
    return {spans.begin(), spans.end()};
}

const TableRow& row_of(const std::vector<TableRow>& rows, const std::string& field)
{
    return *std::find_if(rows.begin(), rows.end(), [&](const TableRow& row) { return code_spans(row.cells[0]).at(0) == field; });
}

}  // namespace

TEST_CASE("build: every option of its own is described, and no other")
{
    Names own = options_of("build");
    for (const std::string& common : options_of("cut")) own.erase(common);
    CHECK(first_words(option_rows(true)) == own);
}

TEST_CASE("build: each file of the table is written under its name, and no other")
{
    const SampleBatch batch;
    INFO(batch.ended.err);
    REQUIRE(batch.ended.exit == 1);
    const auto json = batch.json();
    std::size_t files = 0;
    for (const TableRow& row : page().rows_under("Files"))
        for (const std::string& name : code_spans(row.cells[1])) {
            INFO(name);
            const bool of_list = name.rfind("LIST", 0) == 0;
            REQUIRE((of_list || name.rfind("ORDER", 0) == 0));
            if (of_list) {
                CHECK(std::filesystem::exists(batch.folder.file("orders" + name.substr(4))));
                ++files;
                continue;
            }
            for (const auto& order : json["orders"]) {
                if (name == "ORDER-plate.pdf" && order["verdict"] != "build") continue;
                CHECK(std::filesystem::exists(batch.folder.file(order["order"].get<std::string>() + name.substr(5))));
                ++files;
            }
        }
    CHECK(files == batch.folder.count());
}

TEST_CASE("build: every JSON field is described, and no other")
{
    const SampleBatch batch;
    const auto json = batch.json();
    const auto& order = json["orders"][0];
    CHECK(fields_of(json) == Names{"orders", "saw"});
    auto rows = page().rows_under("JSON");
    Names described = first_words(rows), wanted = fields_of(order);
    wanted.insert({"stock", "refusal"});
    CHECK(described == wanted);
    Names of_saw = fields_of(json["saw"][0]), of_plan;
    for (const TableRow& row : read_markdown("docs/saw-plans.md").rows_under("JSON")) of_plan.merge(first_words({row}));
    of_plan.insert({"stock", "refusal"});
    CHECK(of_saw == of_plan);
    for (const char* field : {"blanks_mm", "half_mm", "use_mm"}) {
        INFO(field);
        CHECK(spans_of(row_of(rows, field)) == fields_of(order[field]));
    }
    CHECK(spans_of(row_of(rows, "parts")) == fields_of(order["parts"][0]));
    CHECK(spans_of(row_of(rows, "operations")) == fields_of(order["operations"][0]));
}

TEST_CASE("build: each column of the list is described as the reader takes it")
{
    // An order by its fit, which may leave out nothing but what the table says.
    const std::vector<std::pair<std::string, std::string>> all{
        {"order", "A-1"}, {"count", "1"}, {"series", "Alder 2"}, {"role", "primary"}, {"speed", "540"}, {"inner_tube", "implement"}, {"tractor_joint", "standard"},
        {"tractor_connection", "1-3/8-6"}, {"tractor_lock", "clamp-bolt"}, {"tractor_device", "none"}, {"implement_joint", "standard"}, {"implement_connection", "1-3/8-6"},
        {"implement_lock", "clamp-bolt"}, {"implement_device", "none"}, {"guard", "yes"}, {"closed", "830"}, {"closed_reference", ""}, {"shortest", ""},
        {"longest_working", ""}, {"longest_turning", ""}, {"longest_standing", ""}, {"fit_between", ""}, {"fit_reference", ""}, {"customer", "x"}, {"machine", "y"}, {"due", "2026-12-01"}};
    const Folder folder;
    Names columns;
    for (const auto& [name, value] : all) columns.insert(name);
    CHECK(first_words(page().rows_under("The list as CSV")) == columns);
    for (const TableRow& row : page().rows_under("The list as CSV")) {
        const std::string column = code_spans(row.cells[0]).at(0);
        INFO(column);
        std::string header, line;
        for (const auto& [name, value] : all) {
            if (name == column) continue;
            header += (header.empty() ? "" : ",") + name;
            line += (line.empty() ? "" : ",") + value;
        }
        write_all(folder.file("without.csv"), header + "\n" + line + "\n");
        const Run one = run({"build", "--config", config_folder, "--output", "-", "--formats", "json", folder.file("without.csv")});
        const bool needed = row.cells[1] == "yes" || column == "closed";  // here the closed length is what is ordered
        const bool held = column.ends_with("connection") || column.ends_with("lock");
        CHECK(one.exit == (needed ? 2 : held ? 1 : 0));
    }
}

TEST_CASE("build: each column of the stock is described as the reader takes it")
{
    const std::vector<std::pair<std::string, std::string>> all{{"profile", "x"}, {"length", "6000"}, {"count", "1"}, {"cost", "1"}};
    const Folder folder;
    for (const TableRow& row : option_rows(false)) {
        const std::string column = code_spans(row.cells[0]).at(0);
        INFO(column);
        std::string header, line;
        for (const auto& [name, value] : all) {
            if (name == column) continue;
            header += (header.empty() ? "" : ",") + name;
            line += (line.empty() ? "" : ",") + value;
        }
        write_all(folder.file("stock.csv"), header + "\n" + line + "\n");
        const Run one = run({"build", "--config", config_folder, "--output", "-", "--formats", "json", "--stock", folder.file("stock.csv"), source_folder + "/samples/orders.csv"});
        CHECK(one.exit == (row.cells[1] == "yes" ? 2 : 1));
    }
    CHECK(option_rows(false).size() == 4);
}
