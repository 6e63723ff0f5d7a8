// The private file of paired tablets.
#include "files/tablets_file.hpp"

#include <sys/stat.h>

#include <thread>

#include "commands/program.hpp"
#include "secrets.hpp"
#include "support/catch.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

unsigned mode_of(const std::string& path)
{
    struct stat status{};
    REQUIRE(::lstat(path.c_str(), &status) == 0);
    return status.st_mode & 07777;
}

}  // namespace

TEST_CASE("tablets file: private whatever the mask, whole, and without a token")
{
    const Folder folder;
    const mode_t before = ::umask(0);
    const TabletsFile file(folder.file("deep/er/shaftcut/bench-tablets"));
    CHECK(file.all().empty());
    CHECK(file.add(sha256("token"), 1'795'000'000, "192.168.1.31"));
    ::umask(before);
    CHECK(mode_of(file.path()) == 0600);
    CHECK(mode_of(folder.file("deep/er/shaftcut")) == 0700);
    CHECK(mode_of(file.path() + ".lock") == 0600);
    CHECK(read_all(file.path()).find("token ") == std::string::npos);
    CHECK_FALSE(std::filesystem::exists(file.path() + ".new"));
    REQUIRE(file.all().size() == 1);
    CHECK(file.all().front() == Tablet{1, sha256("token"), 1'795'000'000, "192.168.1.31"});
    CHECK(file.remove(2) == TabletsFile::Removed::unknown);
    CHECK(file.remove(1) == TabletsFile::Removed::yes);
    CHECK(file.all().empty());
}

TEST_CASE("tablets file: of many that are paired at once none is lost")
{
    const Folder folder;
    const TabletsFile file(folder.file("shaftcut/bench-tablets"));
    std::vector<std::thread> others;
    for (int i = 0; i < 8; ++i)
        others.emplace_back([&, i] {
            for (int k = 0; k < 5; ++k) file.add(sha256(std::to_string(i * 5 + k)), 1'795'000'000, "a");
        });
    for (std::thread& other : others) other.join();
    const auto tablets = file.all();
    CHECK(tablets.size() == 40);
    for (std::size_t i = 0; i < tablets.size(); ++i) CHECK(tablets[i].number == static_cast<int>(i) + 1);
}

TEST_CASE("tablets file: where nothing can be written, that is said, and nobody is let in")
{
    const Folder folder;
    write_all(folder.file("shaftcut"), "no folder");
    const TabletsFile file(folder.file("shaftcut/bench-tablets"));
    CHECK_FALSE(file.add(sha256("token"), 1'795'000'000, "a"));
    CHECK(file.all().empty());
}

TEST_CASE("tablets file: it lies where the environment says")
{
    const char* const home = std::getenv("HOME");
    const std::string home_before = home ? home : "";
    ::setenv("HOME", "/home/fitter", 1);
    ::unsetenv("XDG_STATE_HOME");
    CHECK(TabletsFile::found()->path() == "/home/fitter/.local/state/shaftcut/bench-tablets");
    ::setenv("XDG_STATE_HOME", "not/whole", 1);
    CHECK(TabletsFile::found()->path() == "/home/fitter/.local/state/shaftcut/bench-tablets");
    ::setenv("XDG_STATE_HOME", "/state", 1);
    CHECK(TabletsFile::found()->path() == "/state/shaftcut/bench-tablets");
    ::unsetenv("XDG_STATE_HOME");
    ::unsetenv("HOME");
    CHECK_FALSE(TabletsFile::found());
    if (home) ::setenv("HOME", home_before.c_str(), 1);
}
