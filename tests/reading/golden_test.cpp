// Every file in tests/reading/bad must be refused with exactly the messages in the .out file beside it; every file in
// tests/reading/good must be read. update_goldens rewrites the .out files after showing what changes.
#include <cstdlib>
#include <regex>

#include "reading/support.hpp"

using namespace reading_test;

TEST_CASE("every wrong file gets exactly its messages")
{
    for (const auto& path : xml_files(folder / "bad")) {
        INFO(path.filename().string());
        auto golden = path;
        CHECK(lines_of(faults_of(path)) == bytes_of(golden.replace_extension(".out")));
    }
}

TEST_CASE("every wrong file says in its first line how many faults it has")
{
    const std::regex first_line(R"(<!-- Expected: (\d+) faults?: .*)");
    for (const auto& path : xml_files(folder / "bad")) {
        INFO(path.filename().string());
        const std::string bytes = bytes_of(path);
        const std::string line = bytes.substr(0, bytes.find('\n'));
        std::smatch match;
        REQUIRE(std::regex_match(line, match, first_line));
        CHECK(faults_of(path).size() == std::stoul(match[1]));
    }
}

TEST_CASE("every good file is read")
{
    for (const auto& path : xml_files(folder / "good")) {
        INFO(path.filename().string());
        CHECK(lines_of(faults_of(path)) == "");
        CHECK(bytes_of(path).find("<!-- Expected: reads.") != std::string::npos);
    }
    for (const char* name : {"series.xml", "workshop.xml", "lists.xml"}) CHECK(lines_of(faults_of(project / "config" / name)) == "");
}

// Hidden: run by update_goldens, which names the folder to write into.
TEST_CASE("write the messages of every wrong file", "[.write-goldens]")
{
    const char* to = std::getenv("SHAFTCUT_GOLDENS");
    REQUIRE(to != nullptr);
    for (const auto& path : xml_files(folder / "bad")) {
        auto golden = std::filesystem::path(to) / std::filesystem::relative(path, folder / "bad");
        std::filesystem::create_directories(golden.parent_path());
        std::ofstream(golden.replace_extension(".out")) << lines_of(faults_of(path));
    }
}
