// A batch's JSON is written while it is made: what then holds when disks and calls fail, and that it is not held in memory.
#include <sys/resource.h>

#include <nlohmann/json.hpp>
#include <sstream>

#include "commands/process.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

const std::string header = "order,series,role,inner_tube,tractor_joint,tractor_connection,tractor_lock,implement_joint,implement_connection,implement_lock,closed\n";

std::string list_of(int orders)
{
    std::string text = header;
    for (int i = 0; i < orders; ++i) text += "A-" + std::to_string(i) + ",Alder 2,primary,implement,standard,1-3/8-6,clamp-bolt,standard,1-3/8-6,clamp-bolt," + std::to_string(700 + i % 300) + "\n";
    return text;
}

std::vector<std::string> build_into(const Folder& folder, const std::string& list, std::vector<std::string> more = {})
{
    std::vector<std::string> arguments{"build", "--config", config_folder, "--formats", "json", "--seconds", "0", "--output", folder.path(), list};
    arguments.insert(arguments.end(), more.begin(), more.end());
    return arguments;
}

using Files = std::map<std::string, std::string>;


// The configuration's lines but those of bars.
std::string without_stock(const std::string& workshop)
{
    std::istringstream lines(workshop);
    std::string kept;
    for (std::string line; std::getline(lines, line);)
        if (line.find("<stock") == std::string::npos) kept += line + "\n";
    return kept;
}

void limit_files_to(rlim_t bytes)
{
    const rlimit limit{bytes, bytes};
    ::setrlimit(RLIMIT_FSIZE, &limit);
}

}  // namespace

TEST_CASE("build: a limit on the size of files, as a full disk, leaves no JSON and no part of one")
{
    const Folder lists, folder;
    write_all(lists.file("list.csv"), list_of(20));
    const Ended ended = run_process({build_into(folder, lists.file("list.csv")), "count 0", "", [] { limit_files_to(50'000); }});
    CHECK(ended.exit == 3);
    CHECK(ended.err.find("list.json could not be written") != std::string::npos);
    CHECK(contents(folder).empty());
}

TEST_CASE("build: whichever call fails, the JSON is there whole or not at all, and what was to be replaced is the old file or the new one")
{
    const Folder lists, counted;
    write_all(lists.file("list.csv"), list_of(2));
    std::size_t failed = 0;
    for (const std::string& fault : each_call(std::to_string(ENOSPC), {build_into(counted, lists.file("list.csv"), {"--replace"})})) {
        INFO(fault);
        for (const bool old : {false, true}) {
            const Folder folder;
            if (old) write_all(folder.file("list.json"), "old");
            const Ended ended = run_process({build_into(folder, lists.file("list.csv"), {"--replace"}), fault});
            CHECK((ended.exit == 0 || ended.exit == 3));
            failed += ended.exit == 3 ? 1 : 0;
            const Files now = contents(folder);
            if (now.empty()) {
                CHECK((!old && ended.exit == 3));
                continue;
            }
            REQUIRE(now.size() == 1);
            if (now.at("list.json") == "old") CHECK((old && ended.exit == 3));
            else CHECK(nlohmann::json::parse(now.at("list.json"))["orders"].size() == 2);
        }
    }
    CHECK(failed >= 10);
}

TEST_CASE("build: a document that cannot be made leaves the others made")
{
    const Folder lists, folder, nowhere;
    write_all(lists.file("list.csv"), list_of(2));
    const std::string missing = nowhere.file("missing");
    const std::vector<std::string> arguments{"build", "--config", config_folder, "--seconds", "0", "--output", folder.path(), lists.file("list.csv")};
    const Ended ended = run_process({arguments, "count 0", "", [&missing] { ::setenv("TMPDIR", missing.c_str(), 1); }});
    CHECK(ended.exit == 3);
    CHECK(ended.err.starts_with(lists.file("list.csv") + ": "));
    for (const char* name : {"A-0-assembly.pdf", "A-1-assembly.pdf", "list-saw-plan.pdf", "list-labels.pdf", "list-summary.pdf", "list.json"}) CHECK(std::filesystem::exists(folder.file(name)));
    CHECK(folder.count() == 6);
}

TEST_CASE("build: with few files to be open it ends with 3 or does its work, and leaves nothing among the temporary files")
{
    if (sanitized) return;  // a sanitizer opens files of its own before the program starts
    std::size_t failed = 0;
    for (rlim_t most = 4; most <= 12; ++most) {
        INFO(most);
        const Folder lists, folder, temporary;
        write_all(lists.file("list.csv"), list_of(2));
        const std::vector<std::string> arguments{"build", "--config", config_folder, "--seconds", "0", "--output", folder.path(), lists.file("list.csv")};
        const Ended ended = run_process({arguments, "count 0", "", [&, most] {
                                             const rlimit limit{most, most};
                                             ::setenv("TMPDIR", temporary.path().c_str(), 1);
                                             ::setrlimit(RLIMIT_NOFILE, &limit);
                                         }});
        CHECK((ended.exit == 0 || ended.exit == 3));
        failed += ended.exit == 3 ? 1 : 0;
        if (ended.exit == 3) CHECK_FALSE(ended.err.empty());
        CHECK(contents(temporary).empty());
        CHECK(std::filesystem::is_empty(temporary.path()));
    }
    CHECK(failed >= 3);
}

TEST_CASE("build: the JSON of thousands of orders is not held in memory")
{
    const Folder lists, folder;
    write_all(lists.file("few.csv"), list_of(40));
    write_all(lists.file("many.csv"), list_of(4'000));
    // Without bars: saw plans need memory of their own.
    write_all(lists.file("series.xml"), read_all(config_folder + "/series.xml"));
    write_all(lists.file("workshop.xml"), without_stock(read_all(config_folder + "/workshop.xml")));
    const auto ended = [&](const char* list) {
        return run_process({{"build", "--config", lists.path(), "--formats", "json", "--output", folder.path(), lists.file(list)}});
    };
    const Ended few = ended("few.csv"), many = ended("many.csv");
    REQUIRE(few.exit == 0);
    REQUIRE(many.exit == 0);
    const auto kilobytes = static_cast<long>(std::filesystem::file_size(folder.file("many.json")) / 1024);
    CHECK(kilobytes > 20'000);
    // The list itself, its pieces and its table grow with it, by about as much: with the JSON in memory it was more than twice its size.
    // The memory of a sanitizer says nothing.
    if (!sanitized) CHECK(many.kilobytes - few.kilobytes < kilobytes * 3 / 2);
}
