// A change of a file: what is to stand in an attribute instead.
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace shaftcut {

// `path`: as of a Problem, "fit/longest[2]@length". No value: the attribute is taken away. What the path names and is not there is made.
struct Change {
    std::string path;
    std::optional<std::string> value;
    bool operator==(const Change&) const = default;
};
using Changes = std::vector<Change>;

}  // namespace shaftcut
