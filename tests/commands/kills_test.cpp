// The program killed at every call by which it writes: under each final name is the whole old file or the whole new one.
#include <csignal>

#include "commands/process.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

using Files = std::map<std::string, std::string>;

// The documents that have their final names; whatever else lies about must be hidden.
Files named(const Folder& folder)
{
    Files files = contents(folder);
    std::erase_if(files, [](const auto& file) { return file.first.starts_with('.'); });
    return files;
}

Files sound_files(const std::vector<std::string>& more)
{
    const Folder folder;
    CHECK(run_process({cut_into(folder, sample("plain-cut"), more)}).exit == 0);
    return contents(folder);
}

}  // namespace

TEST_CASE("killed at any write, names are the whole old or the whole new files")
{
    const Files sound = sound_files({});
    REQUIRE(sound.size() == 3);
    const Folder counted;
    std::size_t left_old = 0, left_new = 0;
    for (const std::string& fault : each_call("kill", {cut_into(counted, sample("plain-cut"), {"--replace"})})) {
        INFO(fault);
        const Folder folder;
        Files old;
        for (const auto& [name, bytes] : sound) old[name] = "old " + name;
        for (const auto& [name, bytes] : old) write_all(folder.file(name), bytes);
        const Ended ended = run_process({cut_into(folder, sample("plain-cut"), {"--replace"}), fault});
        CHECK(ended.signal == SIGKILL);
        const Files now = named(folder);
        REQUIRE(now.size() == 3);
        for (const auto& [name, bytes] : now) CHECK((bytes == sound.at(name) || bytes == old.at(name)));
        left_old += now == old ? 1 : 0;
        left_new += now == sound ? 1 : 0;
        CHECK(run_process({cut_into(folder, sample("plain-cut"), {"--replace", "--formats", "json"})}).exit == 0);
    }
    CHECK(left_old >= 10);
    CHECK(left_new >= 2);
}

TEST_CASE("killed at any write, a new order's names are missing or whole")
{
    const std::vector<std::string> formats{"--formats", "json,svg"};
    const Files sound = sound_files(formats);
    const Folder counted;
    std::size_t hidden = 0;
    for (const std::string& fault : each_call("kill", {cut_into(counted, sample("plain-cut"), {"--formats", "json,svg", "--replace"})})) {
        INFO(fault);
        const Folder folder;
        CHECK(run_process({cut_into(folder, sample("plain-cut"), formats), fault}).signal == SIGKILL);
        const Files now = named(folder);
        for (const auto& [name, bytes] : now) CHECK(bytes == sound.at(name));
        hidden += contents(folder).size() - now.size();
    }
    CHECK(hidden > 0);
}
