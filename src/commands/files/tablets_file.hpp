// Where the paired tablets are kept: a private file of whoever serves the bench page, with the hashes of their tokens and no token.
//
// shaftcut/bench-tablets in XDG_STATE_HOME, else in .local/state of HOME; the folder 0700, the file 0600, written whole or not at all, one
// process at a time. Checked in tests/commands/tablets_file_test.cpp.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "tablets.hpp"

namespace shaftcut {

class TabletsFile {
public:
    // The file's path; nothing where the environment names no folder.
    static std::optional<TabletsFile> found();
    explicit TabletsFile(std::string path) : path_(std::move(path)) {}

    // None where there is no file, or none that can be read.
    std::vector<Tablet> all() const;
    // False where it could not be written.
    bool add(const std::string& token_hash, std::int64_t now, const std::string& client) const;
    enum class Removed { yes, unknown, unwritable };
    Removed remove(int number) const;
    const std::string& path() const { return path_; }

private:
    std::string path_;
};

}  // namespace shaftcut
