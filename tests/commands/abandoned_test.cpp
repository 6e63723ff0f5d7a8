// Temporary files whose process is gone are removed by the next call into their folder, and nobody else's; a process that is told to end
// removes its own.
#include <sys/file.h>
#include <sys/stat.h>

#include <csignal>
#include <set>

#include "commands/process.hpp"
#include "commands/saw_lists.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

std::vector<std::string> hidden_in(const Folder& folder)
{
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(folder.path()))
        if (entry.path().filename().string().starts_with('.')) names.push_back(entry.path().filename().string());
    return names;
}

const std::vector<std::string> json{"--formats", "json", "--replace"};

struct Call {
    const char* command;
    std::vector<std::string> arguments;  // without the folder
};

// Each command that writes, at little cost.
std::vector<Call> calls(const Folder& lists)
{
    write_all(lists.file("pieces.csv"), "length,count,label\n400,3,rail\n");
    write_all(lists.file("bars.csv"), "length,count,cost\n6000,,\n");
    write_all(lists.file("list.csv"), "order,series,role,inner_tube,tractor_joint,tractor_connection,tractor_lock,implement_joint,implement_connection,implement_lock,closed\nA-1,Alder 2,primary,implement,standard,1-3/8-6,clamp-bolt,standard,1-3/8-6,clamp-bolt,830\n");
    return {{"cut", {"--formats", "json", sample("plain-cut")}},
            {"lengths", {"--formats", "json", sample("mounted-lift")}},
            {"form", {}},
            {"saw", {"--formats", "json", "--stock", lists.file("bars.csv"), lists.file("pieces.csv")}},
            {"build", {"--formats", "json", lists.file("list.csv")}}};
}

Start into(const Folder& folder, const Call& call, const std::string& fault = "count 0")
{
    Start start{{call.command, "--config", config_folder, "--output", folder.path(), "--replace"}, fault};
    start.arguments.insert(start.arguments.end(), call.arguments.begin(), call.arguments.end());
    return start;
}

// "WHAT N" for the n-th call after the one that makes the first temporary file.
std::string after_first_file(const std::string& what, const Start& start, int n)
{
    const Ended counted = run_process(start);
    REQUIRE(counted.first_file > 0);
    return what + " " + std::to_string(counted.first_file + n);
}

// How this machine's temporary files begin, as one left by a killed process shows.
std::string own_beginning()
{
    const Folder folder, counted;
    run_process({cut_into(folder, sample("plain-cut"), json), after_first_file("kill", {cut_into(counted, sample("plain-cut"), json)}, 2)});
    const std::vector<std::string> left = hidden_in(folder);
    REQUIRE(left.size() == 1);
    REQUIRE(left.front().starts_with(".shaftcut-"));
    return left.front().substr(0, left.front().size() - 6);
}

void call_into(const Folder& folder) { CHECK(run_process({cut_into(folder, sample("plain-cut"), json)}).exit == 0); }

}  // namespace

TEST_CASE("what a command that is killed leaves, the next call into the folder removes")
{
    const Folder lists, counted;
    for (const Call& call : calls(lists))
        for (const int n : {1, 2, 4}) {
            INFO(call.command << " " << n);
            const Folder folder;
            CHECK(run_process(into(folder, call, after_first_file("kill", into(counted, call), n))).signal == SIGKILL);
            CHECK(hidden_in(folder).size() == 1);
            CHECK(run_process(into(folder, calls(lists).at(static_cast<std::size_t>(n)))).exit == 0);
            CHECK(hidden_in(folder).empty());
        }
}

TEST_CASE("a call of all formats killed at any write leaves nothing that the next does not remove")
{
    const Folder counted;
    std::size_t left = 0;
    for (const std::string& fault : each_call("kill", {cut_into(counted, sample("plain-cut"), {"--formats", "json,svg", "--replace"})})) {
        INFO(fault);
        const Folder folder;
        run_process({cut_into(folder, sample("plain-cut"), {"--formats", "json,svg", "--replace"}), fault});
        left += hidden_in(folder).size();
        call_into(folder);
        CHECK(hidden_in(folder).empty());
    }
    CHECK(left > 10);
}

TEST_CASE("of two calls at once neither takes the other's temporary files, and both come to their end")
{
    const Folder counted;
    for (const int n : {2, 3, 4, 5}) {
        INFO(n);
        const Folder folder;
        Process stopped({cut_into(folder, sample("inches"), json), after_first_file("stop", {cut_into(counted, sample("inches"), json)}, n)});
        stopped.wait_until_stopped();
        const std::vector<std::string> its = hidden_in(folder);
        CHECK(its.size() == 1);
        call_into(folder);
        CHECK(hidden_in(folder) == its);
        stopped.go_on();
        CHECK(stopped.wait().exit == 0);
        CHECK(hidden_in(folder).empty());
        CHECK(std::filesystem::exists(folder.file("P-105.json")));
    }
}

TEST_CASE("a call whose file is taken in the instant before it is locked makes another")
{
    const Folder counted, folder;
    Process stopped({cut_into(folder, sample("inches"), json), after_first_file("stop", {cut_into(counted, sample("inches"), json)}, 1)});
    stopped.wait_until_stopped();
    CHECK(hidden_in(folder).size() == 1);
    call_into(folder);
    CHECK(hidden_in(folder).empty());
    stopped.go_on();
    CHECK(stopped.wait().exit == 0);
    CHECK(std::filesystem::exists(folder.file("P-105.json")));
    CHECK(hidden_in(folder).empty());
}

TEST_CASE("what is not this user's abandoned file on this machine stays")
{
    const std::string own = own_beginning();
    const Folder folder;
    std::set<std::string> kept{".shaftcut-elsewhere-abcdef", own + "abcde", own + "abcdefg", own + "abc-ef", own + "abcde.", "x" + own + "abcdef", ".K-1042.json.abcdef"};
    for (const std::string& name : kept) write_all(folder.file(name), "mine");
    write_all(folder.file("linked"), "mine");
    REQUIRE(::symlink("linked", folder.file(own + "aaaaaa").c_str()) == 0);
    REQUIRE(::symlink("nowhere", folder.file(own + "bbbbbb").c_str()) == 0);
    REQUIRE(::mkdir(folder.file(own + "cccccc").c_str(), 0777) == 0);
    REQUIRE(::mkfifo(folder.file(own + "dddddd").c_str(), 0666) == 0);
    write_all(folder.file(own + "eeeeee"), "held by this test");
    const int held = ::open(folder.file(own + "eeeeee").c_str(), O_RDONLY | O_CLOEXEC);
    REQUIRE(::flock(held, LOCK_EX) == 0);
    for (const char* six : {"aaaaaa", "bbbbbb", "cccccc", "dddddd", "eeeeee"}) kept.insert(own + six);
    write_all(folder.file(own + "ffffff"), "another user's");
    if (::chown(folder.file(own + "ffffff").c_str(), 12345, 12345) == 0) kept.insert(own + "ffffff");  // root may
    write_all(folder.file(own + "gggggg"), "abandoned");
    call_into(folder);
    for (const std::string& name : kept) CHECK_FALSE(std::filesystem::symlink_status(folder.file(name)).type() == std::filesystem::file_type::not_found);
    CHECK_FALSE(std::filesystem::exists(folder.file(own + "gggggg")));
    CHECK(read_all(folder.file("linked")) == "mine");
    ::close(held);
    call_into(folder);
    CHECK_FALSE(std::filesystem::exists(folder.file(own + "eeeeee")));
}

TEST_CASE("on a file system without locks nothing is taken for abandoned")
{
    const std::string own = own_beginning();
    const Folder folder;
    write_all(folder.file(own + "abcdef"), "somebody's");
    CHECK(run_process({cut_into(folder, sample("plain-cut"), json), "plain 0"}).exit == 0);
    CHECK(read_all(folder.file(own + "abcdef")) == "somebody's");
}

TEST_CASE("told to end at any write, the process ends by that signal, its temporary files gone")
{
    const Folder counted;
    const std::vector<std::string> two{"--formats", "json,svg", "--replace"};
    int number = 0;
    for (const std::string& fault : each_call("stop", {cut_into(counted, sample("plain-cut"), two)})) {
        const int signal = std::vector{SIGTERM, SIGINT, SIGHUP}.at(static_cast<std::size_t>(number++ % 3));
        INFO(fault << ", signal " << signal);
        const Folder folder;
        Process process({cut_into(folder, sample("plain-cut"), two), fault});
        process.wait_until_stopped();
        process.send(signal);
        process.go_on();
        CHECK(process.wait().signal == signal);
        CHECK(hidden_in(folder).empty());
        CHECK((folder.count() == 0 || folder.count() == 2));
    }
    CHECK(number > 15);
}

TEST_CASE("a signal that a process was started to ignore does not stop its writing")
{
    const Folder counted, folder;
    const Start start{cut_into(counted, sample("plain-cut"), json)};
    Process process({cut_into(folder, sample("plain-cut"), json), after_first_file("stop", start, 1), "", [] { ::signal(SIGHUP, SIG_IGN); }});
    process.wait_until_stopped();
    process.send(SIGHUP);
    process.go_on();
    CHECK(process.wait().exit == 0);
    CHECK(folder.count() == 1);
}

TEST_CASE("build told to end among its orders takes its unfinished list away and ends by the signal")
{
    const Folder lists, folder;
    std::string list = "order,series,role,inner_tube,tractor_joint,tractor_connection,tractor_lock,implement_joint,implement_connection,implement_lock,closed\n";
    for (int i = 0; i < 20'000; ++i) list += "A-" + std::to_string(i) + ",Alder 2,primary,implement,standard,1-3/8-6,clamp-bolt,standard,1-3/8-6,clamp-bolt,830\n";
    write_all(lists.file("list.csv"), list);
    Process process(Start{{"build", "--config", config_folder, "--output", folder.path(), lists.file("list.csv")}});
    for (int waited = 0; waited < 2000 && !std::filesystem::exists(folder.file("A-1-assembly.pdf")); ++waited) REQUIRE_FALSE(process.has_ended_within(5));
    CHECK(hidden_in(folder).size() >= 1);
    process.send(SIGTERM);
    REQUIRE(process.has_ended_within(10'000));
    const Ended end = process.wait();
    CHECK(end.signal == SIGTERM);
    INFO(end.err);
    CHECK(end.err.find(lists.file("list.csv") + ": told to end after ") != std::string::npos);
    for (const auto& entry : std::filesystem::directory_iterator(folder.path())) CHECK(entry.path().string().ends_with("-assembly.pdf"));
}

TEST_CASE("saw told to end while it searches ends by the signal, without a plan")
{
    const Folder folder;
    std::vector<std::string> options = write_long_lists(folder);
    options.insert(options.end(), {"--seconds", "60"});
    Process process(Start{saw_in(folder, "long.csv", options)});
    REQUIRE_FALSE(process.has_ended_within(1500));
    process.send(SIGTERM);
    REQUIRE(process.has_ended_within(10'000));
    CHECK(process.wait().signal == SIGTERM);
    CHECK(hidden_in(folder).empty());
    CHECK_FALSE(std::filesystem::exists(folder.file("long-saw-plan.json")));
}
