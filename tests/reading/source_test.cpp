#include "shaftcut/reading/source.hpp"

#include <cstdlib>
#include <filesystem>
#include <fstream>

#include <sys/stat.h>
#include <unistd.h>

#include "support/catch.hpp"

using namespace shaftcut;

namespace {

struct Folder {
    Folder() : path((std::filesystem::temp_directory_path() / "shaftcut-source-XXXXXX").string()) { REQUIRE(::mkdtemp(path.data()) != nullptr); }
    ~Folder() { std::filesystem::remove_all(path); }
    std::string path;
};

std::string why_not(const std::string& path)
{
    const auto loaded = load(path);
    REQUIRE(std::holds_alternative<Unreadable>(loaded));
    return std::get<Unreadable>(loaded).why;
}

}  // namespace

TEST_CASE("a file is read byte for byte")
{
    const Folder folder;
    const std::string bytes("a\0\r\n\xFF", 5);
    std::ofstream(folder.path + "/file", std::ios::binary) << bytes;
    const auto loaded = load(folder.path + "/file");
    REQUIRE(std::holds_alternative<Source>(loaded));
    CHECK(std::get<Source>(loaded).bytes == bytes);
    CHECK(std::get<Source>(loaded).name == folder.path + "/file");
    std::ofstream(folder.path + "/empty");
    CHECK(std::get<Source>(load(folder.path + "/empty")).bytes.empty());
}

TEST_CASE("what is not a file is refused, and a pipe is not waited for")
{
    const Folder folder;
    CHECK(why_not(folder.path) == folder.path + " cannot be read: it is a folder, not a file");
    CHECK(why_not(folder.path + "/none") == folder.path + "/none cannot be read: there is no such file");
    std::ofstream(folder.path + "/file") << "x";
    CHECK(why_not(folder.path + "/file/x") == folder.path + "/file/x cannot be read: a part of its path is not a folder");
    REQUIRE(::mkfifo((folder.path + "/pipe").c_str(), 0600) == 0);
    CHECK(why_not(folder.path + "/pipe") == folder.path + "/pipe cannot be read: it is a device, a pipe or a socket, not a file");
    CHECK(why_not("/dev/zero") == "/dev/zero cannot be read: it is a device, a pipe or a socket, not a file");
    if (::geteuid() != 0) {  // root may read everything
        REQUIRE(::chmod((folder.path + "/file").c_str(), 0) == 0);
        CHECK(why_not(folder.path + "/file") == folder.path + "/file cannot be read: its permissions do not allow it");
    }
}

TEST_CASE("16 MB are read, a byte more is not")
{
    const Folder folder;
    std::ofstream(folder.path + "/large", std::ios::binary) << std::string(most_source_bytes, 'x');
    CHECK(std::get<Source>(load(folder.path + "/large")).bytes.size() == most_source_bytes);
    std::ofstream(folder.path + "/large", std::ios::binary | std::ios::app) << 'x';
    CHECK(why_not(folder.path + "/large") == folder.path + "/large cannot be read: it is larger than 16 MB");
}
