#include "files/load.hpp"

#include <cstdlib>
#include <fstream>

#include <sys/stat.h>
#include <unistd.h>

#include "support/catch.hpp"
#include "support/folder.hpp"

using namespace shaftcut;
using shaftcut::test::Folder;

namespace {

std::string why_not(const std::string& path)
{
    const auto loaded = load(path);
    REQUIRE(std::holds_alternative<Unreadable>(loaded));
    return say(std::get<Unreadable>(loaded), Wording(Units::mm));
}

}  // namespace

TEST_CASE("a file is read byte for byte")
{
    const Folder folder;
    const std::string bytes("a\0\r\n\xFF", 5);
    std::ofstream(folder.file("file"), std::ios::binary) << bytes;
    const auto loaded = load(folder.file("file"));
    REQUIRE(std::holds_alternative<Source>(loaded));
    CHECK(std::get<Source>(loaded).bytes == bytes);
    CHECK(std::get<Source>(loaded).name == folder.file("file"));
    std::ofstream(folder.file("empty"));
    CHECK(std::get<Source>(load(folder.file("empty"))).bytes.empty());
}

TEST_CASE("what is not a file is refused, and a pipe is not waited for")
{
    const Folder folder;
    CHECK(why_not(folder.path()) == folder.path() + " cannot be read: it is a folder, not a file");
    CHECK(why_not(folder.file("none")) == folder.file("none") + " cannot be read: there is no such file");
    std::ofstream(folder.file("file")) << "x";
    CHECK(why_not(folder.file("file/x")) == folder.file("file/x") + " cannot be read: a part of its path is not a folder");
    REQUIRE(::mkfifo(folder.file("pipe").c_str(), 0600) == 0);
    CHECK(why_not(folder.file("pipe")) == folder.file("pipe") + " cannot be read: it is a device, a pipe or a socket, not a file");
    CHECK(why_not("/dev/zero") == "/dev/zero cannot be read: it is a device, a pipe or a socket, not a file");
    if (::geteuid() != 0) {  // root may read everything
        REQUIRE(::chmod(folder.file("file").c_str(), 0) == 0);
        CHECK(why_not(folder.file("file")) == folder.file("file") + " cannot be read: its permissions do not allow it");
    }
}

TEST_CASE("16 MB are read, a byte more is not")
{
    const Folder folder;
    std::ofstream(folder.file("large"), std::ios::binary) << std::string(most_source_bytes, 'x');
    CHECK(std::get<Source>(load(folder.file("large"))).bytes.size() == most_source_bytes);
    std::ofstream(folder.file("large"), std::ios::binary | std::ios::app) << 'x';
    CHECK(why_not(folder.file("large")) == folder.file("large") + " cannot be read: it is larger than 16 MB");
}
