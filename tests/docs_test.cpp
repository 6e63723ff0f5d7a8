// The documentation says what the program does: its tables are compared with the program's own, both ways.
#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>
#include <regex>
#include <set>

#include "commands/program.hpp"
#include "documents/spreadsheet/workbook_parts.hpp"
#include "call/options.hpp"
#include "shaftcut/trade/checks/checks.hpp"
#include "shaftcut/trade/choose/choose.hpp"
#include "shaftcut/trade/order/after_cut.hpp"
#include "shaftcut/trade/quote/quote.hpp"
#include "support/catch.hpp"
#include "support/markdown.hpp"
#include "support/shell.hpp"
#include "support/sentences.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

using Names = std::set<std::string>;

template <class E>
Names word_set()
{
    return {Words<E>::all.begin(), Words<E>::all.end()};
}

Names matches(const std::string& text, const std::regex& form)
{
    return {std::sregex_token_iterator(text.begin(), text.end(), form, 1), {}};
}

// The options that a command's own help lists.
Names options_of(const CommandRow& row) { return matches(run({row.name, "--help"}).out, std::regex("\n +(--[a-z-]+)")); }

Names command_names()
{
    Names names;
    for (const CommandRow& row : commands()) names.insert(row.name);
    return names;
}

Names with(Names names, const Names& more)
{
    names.insert(more.begin(), more.end());
    return names;
}

std::string man_page() { return std::regex_replace(read_all(source_folder + "/docs/shaftcut.1"), std::regex(R"(\\-)"), "-"); }

// What the completion offers once these words are typed, the last one being completed.
Names completed(const std::vector<std::string>& words)
{
    std::string typed;
    for (const std::string& word : words) typed += " '" + word + "'";
    const ShellRun offered = run_shell(source_folder, "bash -c 'source docs/shaftcut.bash-completion; COMP_WORDS=(\"$@\"); COMP_CWORD=$(($#-1)); "
                                                      "_shaftcut; printf \"%s\\n\" \"${COMPREPLY[@]}\"' _ shaftcut" + typed);
    CHECK(offered.exit == 0);
    return matches(offered.out, std::regex("([^\n]+)"));
}

Names first_spans(const std::vector<TableRow>& rows)
{
    Names names;
    for (const TableRow& row : rows)
        for (const std::string& span : code_spans(row.cells[0])) names.insert(span);
    return names;
}

std::string kind_word(LimitKind kind)
{
    static const std::map<LimitKind, std::string> words{
        {LimitKind::length, "length"}, {LimitKind::fraction, "fraction"}, {LimitKind::angle, "angle"}, {LimitKind::percent, "percent"}};
    return words.at(kind);
}

// The names of an object's fields and of those inside it.
void find_fields(const nlohmann::ordered_json& json, Names& fields)
{
    if (json.is_array() && !json.empty() && json.front().is_object()) return find_fields(json.front(), fields);
    if (!json.is_object()) return;
    for (const auto& [name, inner] : json.items()) {
        fields.insert(name);
        find_fields(inner, fields);
    }
}

Names file_words()
{
    Names words;
    for (const Format format : file_formats()) words.insert(to_word(format));
    return words;
}

// A row for each member of `json`, in its order: every field below it, and no code but these fields and `words`.
void check_fields(const nlohmann::ordered_json& json, const std::vector<TableRow>& rows, const Names& words)
{
    REQUIRE(rows.size() == json.size());
    std::size_t i = 0;
    for (const auto& [name, value] : json.items()) {
        const TableRow& row = rows[i++];
        INFO(name);
        CHECK(row.cells[0] == "`" + name + "`");
        Names fields;
        find_fields(value, fields);
        const std::vector<std::string> spans = code_spans(row.cells[1]);
        for (const std::string& field : fields) CHECK(std::count(spans.begin(), spans.end(), field) > 0);
        for (const std::string& span : spans) CHECK(fields.count(span) + words.count(span) > 0);
    }
}

}  // namespace

TEST_CASE("the man page names every command, option and format, and nothing else")
{
    const std::string page = man_page();
    Names options;
    for (const CommandRow& row : commands()) options = with(options, options_of(row));
    CHECK(matches(page, std::regex("(--[a-z][a-z-]*)")) == options);
    const std::size_t start = page.find(".SH COMMANDS"), end = page.find(".SH OPTIONS");
    REQUIRE(end != std::string::npos);
    CHECK(matches(page.substr(start, end - start), std::regex("\n\\.TP\n\\.B ([a-z-]+)")) == command_names());
    CHECK(matches(page, std::regex("shaftcut ([a-z-]+)\n")) == command_names());
    const std::size_t formats = page.find("--formats \" LIST"), units = page.find("--units mm");
    REQUIRE(units != std::string::npos);
    CHECK(matches(page.substr(formats, units - formats), std::regex("\n\\.B ([a-z]+)")) == file_words());
    CHECK(page.find("\"" + run({"--version"}).out.substr(0, run({"--version"}).out.find('\n')) + "\"") != std::string::npos);
}

TEST_CASE("the man page is set without a warning")
{
    const ShellRun set = run_shell(source_folder, "groff -man -Tutf8 -ww -z docs/shaftcut.1");
    CHECK(set.exit == 0);
    CHECK(set.out.empty());
}

TEST_CASE("the completion offers every command, option and format, and nothing else")
{
    CHECK(completed({""}) == with(command_names(), {"--help", "--version"}));
    for (const CommandRow& row : commands()) {
        INFO(row.name);
        CHECK(completed({row.name, "-"}) == options_of(row));
    }
    CHECK(completed({"cut", "--formats", ""}) == file_words());
    CHECK(completed({"cut", "--formats", "pdf,js"}) == Names{"pdf,json"});
    CHECK(completed({"cut", "--units", ""}) == Names{"mm", "in"});
    CHECK(completed({"cut", "--paper", ""}) == Names{"a4", "letter"});
    CHECK(completed({"cut", "--config", "conf"}) == Names{"config"});
    CHECK(completed({"cut", "samples/plain"}) == Names{"samples/plain-cut.xml"});
    CHECK(completed({"cut", "READ"}).empty());
}

TEST_CASE("the table of limits is the program's")
{
    const auto rows = read_markdown("docs/configuration.md").rows_under("Limits");
    REQUIRE(rows.size() == limit_rows().size());
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const LimitRow& limit = limit_rows()[i];
        INFO(limit.name);
        CHECK(rows[i].cells[0] == "`" + std::string(limit.name) + "`");
        CHECK(rows[i].cells[1] == kind_word(limit.kind));
        CHECK(rows[i].cells[2] == limit_text(limit.limit, limit.standard, Wording(Units::mm)));
        CHECK(rows[i].cells[3] == say(LimitBasis{limit.limit, LimitOrigin::standard}, Wording(Units::mm)));
    }
}

TEST_CASE("every limit and every check that cites a source is among the sources")
{
    const Names named = [] {
        Names spans;
        for (const TableRow& row : read_markdown("docs/sources.md").rows_under("Used by the program"))
            for (const std::string& span : code_spans(row.cells[1])) spans.insert(span);
        return spans;
    }();
    for (const LimitRow& limit : limit_rows()) {
        INFO(limit.name);
        CHECK(named.count(limit.name) == 1);
    }
    for (const CheckId id : {CheckId::locking, CheckId::connection, CheckId::overload_device, CheckId::shortening_allowed, CheckId::irregularity})
        CHECK(named.count(to_word(id)) == 1);
}

TEST_CASE("the table of checks has the program's checks in their order")
{
    std::vector<std::string> named;
    for (const TableRow& row : read_markdown("docs/checks.md").rows) {
        CHECK(row.cells.size() == 6);
        named.push_back(code_spans(row.cells[0]).at(0));
    }
    CHECK(named == std::vector<std::string>(Words<CheckId>::all.begin(), Words<CheckId>::all.end()));
}

TEST_CASE("the table of files has every format under the name that its file gets")
{
    const Folder folder;
    std::string formats;
    for (const Format format : file_formats()) formats += (formats.empty() ? "" : ",") + std::string(to_word(format));
    CHECK(run({"cut", "--config", config_folder, "--formats", formats, "--output", folder.path(), sample("plain-cut")}).exit == 0);
    const auto rows = read_markdown("docs/results.md").rows_under("Files");
    CHECK(first_spans(rows) == file_words());
    for (const TableRow& row : rows) {
        const std::string name = code_spans(row.cells[1]).at(0);
        INFO(name);
        REQUIRE(name.rfind("ORDER", 0) == 0);
        CHECK(std::filesystem::exists(folder.file("P-101" + name.substr(5))));
    }
    CHECK(folder.count() == rows.size());
}

TEST_CASE("the table of JSON fields has every field, and no other")
{
    const auto json = nlohmann::ordered_json::parse(run({"cut", "--config", config_folder, "--formats", "json", "--output", "-", sample("plain-cut")}).out);
    check_fields(json, read_markdown("docs/results.md").rows_under("JSON"),
                 with(with(word_set<CheckResult>(), word_set<CheckUnit>()), with(with(word_set<Verdict>(), word_set<Confirmed>()), {"null", "what", "expected_mm", "plus_minus_mm", "says"})));
}

TEST_CASE("the table of fields after the cut has every field, and no other")
{
    const Run ended = run({"after-cut", "--config", config_folder, "--formats", "json", "--output", "-", sample("plain-cut"), sample("after-cut/plain-cut")});
    check_fields(nlohmann::ordered_json::parse(ended.out), read_markdown("docs/after-cut.md").rows_under("Its figures"), with(with(word_set<AfterCutVerdict>(), word_set<SawnPart>()), {"null"}));
}

TEST_CASE("the table of fields of choices has every field, and no other")
{
    const Run ended = run({"choose", "--config", config_folder, "--formats", "json", "--output", "-", sample("choose/measured-grooves")});
    check_fields(nlohmann::ordered_json::parse(ended.out), read_markdown("docs/choose.md").rows_under("Its figures"), with(with(word_set<ChoiceResult>(), word_set<Reference>()), {"null", "without-tax", "with-tax", "workshop.xml"}));
}

TEST_CASE("the table of fields of an identification has every field, and no other")
{
    const Run ended = run({"identify", "--config", config_folder, "--formats", "json", "--output", "-", sample("identify/mixed")});
    const Names words = with(with(word_set<IdentifyVerdict>(), word_set<IdentifiedPart>()), word_set<WhyTogether>());
    check_fields(nlohmann::ordered_json::parse(ended.out), read_markdown("docs/identify.md").rows_under("Its figures"), with(words, {"null", "fits", "series", "why", "by"}));
}

TEST_CASE("the table of fields of a quote has every field, and no other")
{
    const Run ended = run({"quote", "--config", config_folder, "--formats", "json", "--output", "-", sample("refused-transport-height")});
    Names words = with(with(word_set<QuoteVerdict>(), word_set<QuoteUnit>()), with(word_set<AlternativeKind>(), word_set<PricesStated>()));
    check_fields(nlohmann::ordered_json::parse(ended.out), read_markdown("docs/quote.md").rows_under("Its figures"), with(words, {"null", "cut", "as-is", "cash-rounding", "fits", "build", "held", "refused"}));
}

TEST_CASE("every name of the workbook that is described is there, and every one that its header promises is described")
{
    const Folder folder;
    CHECK(run({"cut", "--config", config_folder, "--formats", "xlsx", "--output", folder.path(), sample("plain-cut")}).exit == 0);
    const auto names = parts_of(read_all(folder.file("P-101-work-order.xlsx"))).names;
    const Names described = first_spans(read_markdown("docs/results.md").rows_under("The work order (XLSX)"));
    REQUIRE(described.size() > 30);
    for (const std::string& name : described) {
        INFO(name);
        CHECK(names.count(name) == 1);
    }
    const std::string header = read_all(source_folder + "/src/documents/work_order_book/work_order_workbook.hpp");
    for (const std::string& name : matches(header, std::regex("`([a-z_]+)`"))) {
        INFO(name);
        CHECK(described.count(name) == 1);
    }
}
