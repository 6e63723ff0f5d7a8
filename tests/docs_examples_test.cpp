// The documentation's examples: its commands are run as shown, its files read, its messages provoked, its links followed.
#include <map>
#include <regex>
#include <set>

#include "commands/program.hpp"
#include "reading/support.hpp"
#include "support/catch.hpp"
#include "support/markdown.hpp"
#include "support/shell.hpp"

using namespace shaftcut::test;

namespace {

namespace fs = std::filesystem;

// The source folder as links, with the build that is being tested, in a folder where examples may write.
class Tree {
public:
    Tree()
    {
        for (const auto& entry : fs::directory_iterator(source_folder))
            if (entry.path().filename().string().rfind("build", 0) != 0 && entry.path().filename() != "out")
                fs::create_symlink(entry.path(), folder_.file(entry.path().filename().string()));
        fs::create_symlink(fs::path(SHAFTCUT_PROGRAM).parent_path(), folder_.file("build"));
    }
    std::string path() const { return folder_.path(); }

private:
    Folder folder_;
};

struct Example {
    std::string page, line;
    int exit = 0;       // stated as "# exit 1"
    std::string shown;  // the output shown below it
};

bool is_ours(const std::string& line) { return line.rfind("build/shaftcut ", 0) == 0 || line.rfind("samples/run", 0) == 0; }

std::vector<Example> examples()
{
    static const std::regex exit_form("# exit ([0-9])");
    std::vector<Example> found;
    for (const Markdown& markdown : all_markdown())
        for (std::size_t i = 0; i < markdown.blocks.size(); ++i) {
            if (markdown.blocks[i].language != "sh") continue;
            const bool shown = i + 1 < markdown.blocks.size() && markdown.blocks[i + 1].language == "text";
            for (const std::string& line : markdown.blocks[i].lines) {
                if (!is_ours(line)) continue;
                std::smatch match;
                const int exit = std::regex_search(line, match, exit_form) ? std::stoi(match[1]) : 0;
                found.push_back({markdown.path.string(), line, exit, shown ? markdown.blocks[i + 1].text() : ""});
            }
        }
    return found;
}

std::string replaced_once(std::string text, const std::string& what, const std::string& by)
{
    const std::size_t at = text.find(what);
    REQUIRE(at != std::string::npos);
    return text.replace(at, what.size(), by);
}

std::vector<std::string> messages_of(const std::string& job)
{
    std::vector<std::string> messages;
    for (const shaftcut::Fault& fault : reading_test::faults_of(shaftcut::Source{"job.xml", job})) {
        const shaftcut::Problem problem = problem_of(fault);
        messages.push_back(problem.wrong + "; " + problem.right);
    }
    return messages;
}

bool is_whole_file(const CodeBlock& block)
{
    for (const char* root : {"job", "catalogue", "workshop", "measured", "lists"})
        if (block.text().find("</" + std::string(root) + ">") != std::string::npos) return true;
    return false;
}

bool has_anchor(const Markdown& markdown, const std::string& anchor)
{
    for (const std::string& heading : markdown.headings)
        if (anchor_of(heading) == anchor) return true;
    return false;
}

}  // namespace

TEST_CASE("the documentation's commands run as shown and give what is shown")
{
    const Tree tree;
    const auto all = examples();
    REQUIRE(all.size() >= 6);
    for (const Example& example : all) {
        INFO(example.page << ": " << example.line);
        const ShellRun run = run_shell(tree.path(), example.line);
        INFO(run.out);
        CHECK(run.exit == example.exit);
        CHECK(run.out.find(example.shown) != std::string::npos);
    }
    CHECK(fs::exists(tree.path() + "/out/K-1042-cut-sheet.pdf"));
}

TEST_CASE("the files named beside a run of the README exist after it")
{
    const Tree tree;
    for (const Example& example : examples())
        if (example.page == "README.md") run_shell(tree.path(), example.line);
    int named = 0;
    for (const std::string& span : code_spans(read_markdown("README.md").prose)) {
        if (span.rfind("out/", 0) != 0) continue;
        INFO(span);
        CHECK(fs::exists(tree.path() + "/" + span));
        ++named;
    }
    CHECK(named == 3);
}

TEST_CASE("every whole file shown is read without a fault, and every job shown is answered without a refusal")
{
    const Folder folder;
    int files = 0, jobs = 0;
    for (const Markdown& markdown : all_markdown())
        for (const CodeBlock& block : markdown.blocks) {
            if (block.language != "xml" || !is_whole_file(block)) continue;
            INFO(markdown.path.string() << "\n" << block.text());
            CHECK(reading_test::lines_of(reading_test::faults_of(shaftcut::Source{"example.xml", block.text()})) == "");
            ++files;
            if (reading_test::kind_of(block.text()) != "job") continue;
            write_all(folder.file("job.xml"), block.text());
            CHECK(run({"cut", "--config", config_folder, "--formats", "json", "--output", "-", folder.file("job.xml")}).exit == 0);
            ++jobs;
        }
    CHECK(files >= 4);
    CHECK(jobs >= 2);
}

TEST_CASE("each typical mistake in the job of the manual gives the message that the manual shows")
{
    const Markdown markdown = read_markdown("docs/job-format.md");
    const std::string job = markdown.blocks.at(0).text();
    CHECK(messages_of(job).empty());
    const auto rows = markdown.rows_under("Typical mistakes");
    REQUIRE(rows.size() >= 15);
    for (const TableRow& row : rows) {
        const std::string right = code_spans(row.cells.at(0)).at(0), wrong = code_spans(row.cells.at(1)).at(0);
        INFO(wrong);
        CHECK(messages_of(replaced_once(job, right, wrong)) == code_spans(row.cells.at(2)));
    }
}

TEST_CASE("links between the Markdown files lead somewhere")
{
    static const std::regex form(R"(\]\(([^)#]*)(#([^)]*))?\))");
    std::map<std::string, Markdown> pages;
    for (const Markdown& markdown : all_markdown()) pages[markdown.path.string()] = markdown;
    int links = 0;
    for (const auto& [name, markdown] : pages)
        for (std::sregex_iterator at(markdown.prose.begin(), markdown.prose.end(), form), end; at != end; ++at, ++links) {
            const std::string target = (*at)[1], anchor = (*at)[3];
            INFO(name << " links to " << target << "#" << anchor);
            const fs::path path = target.empty() ? fs::path(name) : (fs::path(name).parent_path() / target).lexically_normal();
            REQUIRE(fs::exists(source_folder / path));
            if (!anchor.empty()) CHECK(has_anchor(pages.at(path.string()), anchor));
        }
    CHECK(links > 20);
}

TEST_CASE("every path that the documentation names is there")
{
    static const std::set<std::string> folders{"src", "include", "config", "tests", "samples", "docs", ".ci"};
    int paths = 0;
    for (const Markdown& markdown : all_markdown())
        for (const std::string& span : code_spans(markdown.prose)) {
            const std::string path = span.substr(0, span.find(' '));
            if (path.find('/') == std::string::npos || !folders.count(path.substr(0, path.find('/'))) || path.find('*') != std::string::npos) continue;
            INFO(markdown.path.string() << " names " << path);
            CHECK(fs::exists(fs::path(source_folder) / path));
            ++paths;
        }
    CHECK(paths > 20);
}
