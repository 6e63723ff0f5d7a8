// A file's bytes, read whole before anybody interprets them.
#pragma once

#include <cstddef>
#include <string>

namespace shaftcut {

// The greatest file that is read.
inline constexpr std::size_t most_source_bytes = std::size_t{16} * 1024 * 1024;

// `name` is what messages call the file, `bytes` all that it holds.
struct Source {
    std::string name;
    std::string bytes;
};

}  // namespace shaftcut
