// Standard streams, folders and disks that fail: exit 3, a sentence, and nothing half-written under a final name.
#include <sys/prctl.h>
#include <sys/stat.h>

#include <linux/capability.h>

#include <csignal>

#include "commands/process.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

using Files = std::map<std::string, std::string>;

// What a sample's order is when nothing fails.
Files sound_files(const std::vector<std::string>& more = {})
{
    const Folder folder;
    CHECK(run_process({cut_into(folder, sample("plain-cut"), more)}).exit == 0);
    return contents(folder);
}

// One sentence on one line.
void check_sentence(const std::string& err)
{
    CHECK(err.size() > 20);
    CHECK(std::count(err.begin(), err.end(), '\n') == 1);
    CHECK(err.ends_with('\n'));
}

// libxlsxwriter says its own words to standard error before it returns a fault.
std::string without_library_lines(const std::string& err)
{
    std::istringstream lines(err);
    std::string rest;
    for (std::string line; std::getline(lines, line);)
        if (!line.starts_with("[ERROR]")) rest += line + "\n";
    return rest;
}

// Root may write anywhere; without these capabilities it obeys permissions as other users do. For others there is nothing to drop.
void obey_permissions()
{
    ::prctl(PR_CAPBSET_DROP, CAP_DAC_OVERRIDE, 0, 0, 0);
    ::prctl(PR_CAPBSET_DROP, CAP_DAC_READ_SEARCH, 0, 0, 0);
}

void limit_files_to(rlim_t bytes)
{
    const rlimit limit{bytes, bytes};
    ::setrlimit(RLIMIT_FSIZE, &limit);
}

const std::vector<std::string> two_documents{"--formats", "json,svg"};

}  // namespace

TEST_CASE("a full standard output ends with 3, whatever was to be said")
{
    const std::vector<std::string> to_output{"cut", "--config", config_folder, "--formats", "json", "--output", "-", sample("plain-cut")};
    for (const auto& arguments : {std::vector<std::string>{"--version"}, {"--help"}, {"cut", "--help"}, {"catalogue", "--config", config_folder}, to_output}) {
        INFO(arguments.front());
        const Ended full = run_process({arguments, "count 0", "/dev/full"});
        CHECK(full.exit == 3);
        // With documents on standard output the words about them stand before it.
        const std::size_t sentence = full.err.find("shaftcut: standard output could not be written");
        REQUIRE(sentence != std::string::npos);
        CHECK((sentence == 0) == (arguments != to_output));
        check_sentence(full.err.substr(sentence));
    }
    const Folder folder;
    CHECK(run_process({cut_into(folder, sample("plain-cut")), "count 0", "/dev/full"}).exit == 3);
    CHECK(contents(folder) == sound_files());
}

TEST_CASE("closed standard streams get no document's bytes, and no document their words")
{
    const Files sound = sound_files();
    for (const int closed : {STDIN_FILENO, STDOUT_FILENO, STDERR_FILENO}) {
        INFO(closed);
        const Folder folder;
        const Ended ended = run_process({cut_into(folder, sample("plain-cut")), "count 0", "", [closed] { ::close(closed); }});
        CHECK(ended.exit == (closed == STDOUT_FILENO ? 3 : 0));
        CHECK(contents(folder) == sound);
    }
    const Folder folder;
    const Ended refused = run_process({cut_into(folder, folder.file("missing.xml")), "count 0", "", [] { ::close(STDERR_FILENO); }});
    CHECK(refused.exit == 3);
    CHECK(contents(folder).empty());
}

TEST_CASE("a reader that goes away does not stop the jobs")
{
    int pipe[2];
    REQUIRE(::pipe2(pipe, O_CLOEXEC) == 0);
    ::close(pipe[0]);
    const Folder folder;
    const int writing = pipe[1];
    auto arguments = cut_into(folder, sample("plain-cut"), {"--formats", "json"});
    for (const char* more : {"inches", "two-tractors", "uneven-halves"}) arguments.push_back(sample(more));
    const Ended ended = run_process({arguments, "count 0", "", [writing] { ::dup2(writing, STDOUT_FILENO); }});
    ::close(writing);
    CHECK(ended.signal == 0);
    CHECK(ended.exit == 3);
    check_sentence(ended.err);
    CHECK(folder.count() == 4);
}

TEST_CASE("a folder that may not be written stays as it is")
{
    const Folder folder;
    REQUIRE(::chmod(folder.path().c_str(), 0555) == 0);
    for (const char* deeper : {"", "/deeper"}) {
        const Folder elsewhere;
        auto arguments = cut_into(elsewhere, sample("plain-cut"));
        arguments[4] = folder.path() + deeper;
        const Ended ended = run_process({arguments, "count 0", "", obey_permissions});
        CHECK(ended.exit == 3);
        CHECK(has(ended.err, "Permission denied"));
        check_sentence(ended.err);
    }
    CHECK(folder.count() == 0);
}

TEST_CASE("an output that is no folder is refused")
{
    const Folder folder;
    write_all(folder.file("file"), "mine");
    for (const std::string& output : {folder.file("file"), folder.file("file/deeper"), std::string("/dev/full"), std::string("/proc/nowhere")}) {
        auto arguments = cut_into(folder, sample("plain-cut"));
        arguments[4] = output;
        const Ended ended = run_process({arguments});
        INFO(output);
        CHECK(ended.exit == 3);
        check_sentence(ended.err);
    }
    CHECK(contents(folder) == Files{{"file", "mine"}});
}

TEST_CASE("a target that is a folder, a link, a pipe or a device is never touched")
{
    for (const char* kind : {"folder", "link", "dangling link", "pipe"}) {
        for (const char* replace : {"", "--replace"}) {
            INFO(kind << " " << replace);
            const Folder folder;
            const std::string target = folder.file("P-101-work-order.xlsx"), linked = folder.file("linked");
            const std::string what = kind;
            if (what == "link") write_all(linked, "mine");
            if (what == "folder") REQUIRE(::mkdir(target.c_str(), 0777) == 0);
            else if (what == "pipe") REQUIRE(::mkfifo(target.c_str(), 0666) == 0);
            else REQUIRE(::symlink("linked", target.c_str()) == 0);
            const std::size_t before = static_cast<std::size_t>(std::distance(std::filesystem::directory_iterator(folder.path()), {}));
            auto arguments = cut_into(folder, sample("plain-cut"));
            if (*replace) arguments.emplace_back(replace);
            const Ended ended = run_process({arguments});
            CHECK(ended.exit == 3);
            CHECK(has(ended.err, target + " could not be written: it is not a plain file"));
            check_sentence(ended.err);
            CHECK(static_cast<std::size_t>(std::distance(std::filesystem::directory_iterator(folder.path()), {})) == before);
            if (what == "link") CHECK(read_all(linked) == "mine");
        }
    }
}

TEST_CASE("whichever call fails, the documents are all there or none is")
{
    const Files sound = sound_files(two_documents);
    const Folder counted;
    for (const int error : {ENOSPC, EIO}) {
        for (const std::string& fault : each_call(std::to_string(error), {cut_into(counted, sample("plain-cut"), {"--formats", "json,svg", "--replace"})},
                                                  error == ENOSPC ? From::first_call : From::first_file)) {
            INFO(fault);
            const Folder folder;
            const Ended ended = run_process({cut_into(folder, sample("plain-cut"), two_documents), fault});
            CHECK((ended.exit == 0 || ended.exit == 3));
            if (ended.exit == 3) check_sentence(ended.err);
            // The last calls sync the folder and close it: the names are given by then.
            const Files now = contents(folder);
            CHECK((now == sound || (now.empty() && ended.exit == 3)));
        }
    }
}

TEST_CASE("whichever call fails, what was to be replaced is the old file or the new one")
{
    const Files sound = sound_files(two_documents);
    const Folder folder;
    const std::vector<std::string> arguments = cut_into(folder, sample("plain-cut"), {"--formats", "json,svg", "--replace"});
    std::size_t untouched = 0;
    for (const std::string& fault : each_call(std::to_string(ENOSPC), {arguments})) {
        INFO(fault);
        for (const auto& [name, bytes] : sound) write_all(folder.file(name), "old");
        const Ended ended = run_process({arguments, fault});
        const Files now = contents(folder);
        CHECK(now.size() == sound.size());
        for (const auto& [name, bytes] : sound) CHECK((now.at(name) == bytes || (now.at(name) == "old" && ended.exit == 3)));
        untouched += now == Files{{"P-101-cut-sheet.svg", "old"}, {"P-101.json", "old"}} ? 1 : 0;
    }
    CHECK(untouched >= 8);
}

TEST_CASE("a limit on the size of files, as a full disk, leaves nothing, in the folder or in a workbook")
{
    const Files sound = sound_files();
    std::size_t failed = 0;
    for (rlim_t kilobytes = 1; kilobytes <= 256; kilobytes *= 2) {
        INFO(kilobytes << " kB");
        const Folder folder;
        const Ended ended = run_process({cut_into(folder, sample("plain-cut"), {"--formats", "xlsx"}), "count 0", "", [kilobytes] { limit_files_to(kilobytes * 1024); }});
        failed += ended.exit == 3 ? 1 : 0;
        if (ended.exit == 3) check_sentence(without_library_lines(ended.err));
        else CHECK(ended.exit == 0);
        const Files now = contents(folder);
        CHECK(now.size() == (ended.exit == 0 ? 1 : 0));
        for (const auto& [name, bytes] : now) CHECK((bytes == sound.at(name)));
    }
    CHECK(failed >= 3);
}

TEST_CASE("writes that take a part or are interrupted come to the same bytes")
{
    const Folder folder;
    CHECK(run_process({cut_into(folder, sample("plain-cut")), "short 1000"}).exit == 0);
    CHECK(contents(folder) == sound_files());
}

TEST_CASE("a file system without locks and exclusive renames still keeps what exists")
{
    const Folder folder;
    const Files sound = sound_files();
    CHECK(run_process({cut_into(folder, sample("plain-cut")), "plain 0"}).exit == 0);
    CHECK(contents(folder) == sound);
    const Ended again = run_process({cut_into(folder, sample("refused-overlap")), "plain 0"});
    CHECK(again.exit == 1);
    write_all(folder.file("P-101.json"), "mine");
    CHECK(run_process({cut_into(folder, sample("plain-cut")), "plain 0"}).exit == 3);
    CHECK(read_all(folder.file("P-101.json")) == "mine");
}

TEST_CASE("a folder that another process holds is waited for, but not for ever")
{
    const Folder folder;
    const Ended ended = run_process({cut_into(folder, sample("plain-cut"), two_documents), "locked 0"});
    CHECK(ended.exit == 3);
    CHECK(has(ended.err, "another process is writing into it"));
    check_sentence(ended.err);
    CHECK(contents(folder).empty());
}

TEST_CASE("a document that cannot be made leaves the other jobs done")
{
    const Folder folder, nowhere;
    auto arguments = cut_into(folder, sample("plain-cut"), {"--formats", "xlsx"});
    arguments.push_back(sample("inches"));
    const std::string missing = nowhere.file("missing");
    const Ended ended = run_process({arguments, "count 0", "", [&missing] { ::setenv("TMPDIR", missing.c_str(), 1); }});
    CHECK(ended.exit == 3);
    CHECK(has(ended.err, "order P-101: "));
    CHECK(has(ended.err, "order P-105: "));
    CHECK(contents(folder).empty());
}
