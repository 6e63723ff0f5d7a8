// A file's bytes, read whole before anybody interprets them.
#pragma once

#include <cstddef>
#include <string>
#include <variant>

namespace shaftcut {

// The greatest file that is read.
inline constexpr std::size_t most_source_bytes = std::size_t{16} * 1024 * 1024;

// `name` is what messages call the file, `bytes` all that it holds.
struct Source {
    std::string name;
    std::string bytes;
};

// Why a file could not be read: a sentence without a full stop that names the file.
struct Unreadable {
    std::string why;
};

// Reads a regular file of at most most_source_bytes. Unreadable where there is none at `path`, where it may not be
// opened, where it is a folder, a device, a pipe or a socket (a pipe is never waited for), and where it is larger.
// Checked in tests/reading/source_test.cpp.
std::variant<Source, Unreadable> load(const std::string& path);

}  // namespace shaftcut
