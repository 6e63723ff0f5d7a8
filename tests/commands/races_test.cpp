// Several processes writing one order into one folder: one is stopped before each of its calls while another runs, and
// many run at once.
#include "commands/process.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

using Files = std::map<std::string, std::string>;

const std::vector<std::string> keeping{"--formats", "json,svg"};
const std::vector<std::string> replacing{"--formats", "json,svg", "--replace"};

// Jobs of the same order, each with another shortest length, and the files that each comes to.
class Rivals {
public:
    explicit Rivals(std::size_t count)
    {
        const std::string job = read_all(sample("plain-cut"));
        const std::string shortest = "<shortest length=\"820\"/>";
        REQUIRE(job.find(shortest) != std::string::npos);
        for (std::size_t i = 0; i < count; ++i) {
            std::string own = job;
            write_all(path(i), own.replace(job.find(shortest), shortest.size(), "<shortest length=\"" + std::to_string(820 + i) + "\"/>"));
            const Folder folder;
            REQUIRE(run_process({cut_into(folder, path(i), keeping)}).exit == 0);
            files_.push_back(contents(folder));
        }
        REQUIRE(files_[0].size() == 2);
        for (const auto& [name, bytes] : files_[0]) CHECK(bytes != files_[1].at(name));
    }
    std::string path(std::size_t i) const { return folder_.file("job-" + std::to_string(i) + ".xml"); }
    // Whose files these are, all of them; -1 where they are nobody's or mixed.
    int winner(const Files& files) const
    {
        const auto found = std::find(files_.begin(), files_.end(), files);
        return found == files_.end() ? -1 : static_cast<int>(found - files_.begin());
    }

private:
    Folder folder_;
    std::vector<Files> files_;
};

struct Exits {
    int first, second;
};

// The first stops before its call; the second runs, to its end unless it must wait for the first; the first goes on.
Exits interleave(const Start& first, const Start& second)
{
    Process stopped(first);
    stopped.wait_until_stopped();
    Process running(second);
    running.has_ended_within(150);
    stopped.go_on();
    const int exit = stopped.wait().exit;
    return {exit, running.wait().exit};
}

}  // namespace

TEST_CASE("of two that keep what exists exactly one writes its documents, all of them")
{
    const Rivals rivals(2);
    const Folder counted;
    for (const std::string& fault : each_call("stop", {cut_into(counted, rivals.path(0), replacing)})) {
        INFO(fault);
        const Folder folder;
        const Exits exits = interleave({cut_into(folder, rivals.path(0), keeping), fault}, {cut_into(folder, rivals.path(1), keeping)});
        const int winner = rivals.winner(contents(folder));
        CHECK(winner >= 0);
        CHECK(exits.first == (winner == 0 ? 0 : 3));
        CHECK(exits.second == (winner == 1 ? 0 : 3));
    }
}

TEST_CASE("of two that replace both succeed, and the documents of one stand, all of them")
{
    const Rivals rivals(2);
    const Folder counted;
    bool first = false, second = false;
    for (const std::string& fault : each_call("stop", {cut_into(counted, rivals.path(0), replacing)})) {
        INFO(fault);
        const Folder folder;
        const Exits exits = interleave({cut_into(folder, rivals.path(0), replacing), fault}, {cut_into(folder, rivals.path(1), replacing)});
        CHECK(exits.first == 0);
        CHECK(exits.second == 0);
        const int winner = rivals.winner(contents(folder));
        CHECK(winner >= 0);
        first = first || winner == 0;
        second = second || winner == 1;
    }
    CHECK(first);
    CHECK(second);
}

TEST_CASE("of many at once the same holds")
{
    const Rivals rivals(4);
    for (int round = 0; round < 6; ++round) {
        const bool replace = round % 2 == 1;
        const Folder folder;
        std::vector<std::unique_ptr<Process>> processes;
        for (std::size_t i = 0; i < 4; ++i) processes.push_back(std::make_unique<Process>(Start{cut_into(folder, rivals.path(i), replace ? replacing : keeping)}));
        int succeeded = 0;
        for (const auto& process : processes) succeeded += process->wait().exit == 0 ? 1 : 0;
        CHECK(succeeded == (replace ? 4 : 1));
        CHECK(rivals.winner(contents(folder)) >= 0);
    }
}
