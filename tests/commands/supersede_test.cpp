// A refused run with --replace leaves no paper of an earlier run under a name that says it still holds.
#include "files/supersede.hpp"

#include "commands/program.hpp"
#include "support/catch.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

// The job in this file, with its order's number changed to P-101, which is what plain-cut cuts.
void write_as_p101(const Folder& folder, const std::string& name)
{
    std::string bytes = read_all(sample(name));
    const std::string start = "order=\"";
    const std::size_t at = bytes.find(start) + start.size();
    write_all(folder.file("job.xml"), bytes.replace(at, bytes.find('"', at) - at, "P-101"));
}

Run cut(const Folder& folder, const std::vector<std::string>& more)
{
    std::vector<std::string> call{"cut", "--config", config_folder, "--output", folder.path(), folder.file("job.xml")};
    call.insert(call.end(), more.begin(), more.end());
    return run(call);
}

}  // namespace

TEST_CASE("a refusal with --replace renames the papers that it does not write, and says so")
{
    const Folder folder;
    write_as_p101(folder, "plain-cut");
    REQUIRE(cut(folder, {}).exit == 0);
    const std::string sheet = read_all(folder.file("P-101-cut-sheet.pdf")), book = read_all(folder.file("P-101-work-order.xlsx"));
    write_as_p101(folder, "refused-overlap");

    // Without --replace nothing is touched.
    CHECK(cut(folder, {"--formats", "json"}).exit == 3);
    CHECK(folder.count() == 4);

    const Run refused = cut(folder, {"--formats", "json", "--replace"});
    CHECK(refused.exit == 1);
    CHECK(has(refused.out, "  superseded  " + folder.file("P-101-cut-sheet.pdf") + ": now P-101-cut-sheet.superseded.pdf\n"));
    CHECK(has(refused.out, "  superseded  " + folder.file("P-101-work-order.xlsx") + ": now P-101-work-order.superseded.xlsx\n"));
    CHECK_FALSE(std::filesystem::exists(folder.file("P-101-cut-sheet.pdf")));
    CHECK_FALSE(std::filesystem::exists(folder.file("P-101-work-order.xlsx")));
    CHECK(read_all(folder.file("P-101-cut-sheet.superseded.pdf")) == sheet);
    CHECK(read_all(folder.file("P-101-work-order.superseded.xlsx")) == book);
    CHECK(has(read_all(folder.file("P-101.json")), "\"refused\""));
    CHECK(folder.count() == 4);
}

TEST_CASE("what is superseded a second time overwrites nothing")
{
    const Folder folder;
    for (const char* bytes : {"first", "second", "third"}) {
        write_all(folder.file("A-1-cut-sheet.pdf"), bytes);
        CHECK_FALSE(supersede(folder.path(), "A-1-cut-sheet.pdf").fault);
    }
    CHECK(read_all(folder.file("A-1-cut-sheet.superseded.pdf")) == "first");
    CHECK(read_all(folder.file("A-1-cut-sheet.superseded-2.pdf")) == "second");
    CHECK(read_all(folder.file("A-1-cut-sheet.superseded-3.pdf")) == "third");
    CHECK(folder.count() == 3);
}

TEST_CASE("what is not there or no plain file is not renamed")
{
    const Folder folder;
    std::filesystem::create_directory(folder.file("A-1-cut-sheet.pdf"));
    std::filesystem::create_symlink("nowhere", folder.file("A-1.json"));
    for (const char* name : {"A-1-cut-sheet.pdf", "A-1.json", "A-1-work-order.xlsx"}) {
        const Superseded nothing = supersede(folder.path(), name);
        CHECK(nothing.as.empty());
        CHECK_FALSE(nothing.fault);
    }
    CHECK(std::filesystem::is_directory(folder.file("A-1-cut-sheet.pdf")));
    CHECK(std::filesystem::is_symlink(folder.file("A-1.json")));
}

TEST_CASE("an answer that cuts, a refusal that writes every paper, and a job with faults rename nothing")
{
    const Folder folder;
    const std::vector<std::string> all{"--formats", "pdf,xlsx,json,png,svg", "--replace"};
    write_as_p101(folder, "plain-cut");
    CHECK(cut(folder, all).exit == 0);
    CHECK(cut(folder, {"--formats", "json", "--replace"}).exit == 0);
    CHECK(folder.count() == 6);
    write_all(folder.file("job.xml"), "<job order=\"P-101\"/>");
    CHECK(cut(folder, {"--formats", "json", "--replace"}).exit == 2);
    CHECK(folder.count() == 6);
    write_as_p101(folder, "refused-overlap");
    const Run refused = cut(folder, all);
    CHECK(refused.exit == 1);
    CHECK_FALSE(has(refused.out, "superseded"));
    CHECK(folder.count() == 6);
}

TEST_CASE("a saw plan that is refused is no longer there under its name")
{
    const Folder folder;
    const auto saw = [&](const std::string& piece) {
        write_all(folder.file("list.csv"), "length,count\n" + piece + "\n");
        write_all(folder.file("rack.csv"), "length,count,cost\n3000,,\n");
        return run({"saw", "--config", config_folder, "--stock", folder.file("rack.csv"), "--output", folder.path(), "--replace", "--formats", "pdf,json", folder.file("list.csv")});
    };
    REQUIRE(saw("700,4").exit == 0);
    const Run refused = saw("3700,4");
    CHECK(refused.exit == 1);
    CHECK(has(refused.out, "  superseded  " + folder.file("list-saw-plan.json") + ": now list-saw-plan.superseded.json\n"));
    CHECK(std::filesystem::exists(folder.file("list-saw-plan.superseded.pdf")));
    CHECK_FALSE(std::filesystem::exists(folder.file("list-saw-plan.pdf")));
}
