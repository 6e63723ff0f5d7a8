// A document as it is handed out, and the kinds that there are.
#pragma once

#include <array>
#include <string>

#include "shaftcut/trade/data/terms.hpp"

namespace shaftcut {

// The last is for a person to read at once, the others are files.
enum class Format { pdf, xlsx, json, png, svg, terminal };
template <> struct Words<Format> { static constexpr std::array all{"pdf", "xlsx", "json", "png", "svg", "terminal"}; };

// A file to be written: its name without a folder, and its bytes.
struct Document {
    std::string name;
    std::string bytes;
};

}  // namespace shaftcut
