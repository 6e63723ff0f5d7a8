// What writing a workbook needs besides its library. Private to the documents.
#pragma once

#include <cstddef>
#include <ctime>
#include <filesystem>
#include <string>

namespace shaftcut {

// Letters, digits and "_", starting with a letter, and nothing that a program could take for a cell (A1, R1C1, c): the
// library writes such names and other programs then cannot open the file.
bool is_plain_name(const std::string& name);

// The day's noon, as seconds since 1970; a fixed day where the text is no date.
time_t moment_of(const std::string& date);

// The first `most` code points, without the control characters that XML cannot hold.
std::string fit_for_xml(const std::string& text, std::size_t most);

// A folder of our own for one file; both go away again.
class TemporaryFolder {
public:
    TemporaryFolder();
    ~TemporaryFolder();
    TemporaryFolder(const TemporaryFolder&) = delete;
    TemporaryFolder& operator=(const TemporaryFolder&) = delete;
    std::string file() const { return (path_ / "workbook.xlsx").string(); }

private:
    std::filesystem::path path_;
};

}  // namespace shaftcut
