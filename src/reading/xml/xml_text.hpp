// The characters of XML text: what may stand in a file at all, where it stands, and what references in it mean.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "source/faults.hpp"

namespace shaftcut {

// Turns offsets in bytes into lines and columns. Offsets asked for in ascending order cost one pass over the text.
// A line ends with a line feed, a carriage return, or both together.
class SpotFinder {
public:
    // `text` is UTF-8 and outlives the finder.
    explicit SpotFinder(std::string_view text) : text_(text) {}
    Spot at(std::size_t offset);

private:
    void step();

    std::string_view text_;
    std::size_t offset_ = 0;
    Spot spot_;
};

// What is wrong with the bytes of a file, and the offset at which it is.
struct BadBytes {
    std::size_t offset;
    FaultFinding what;
};

// The first thing in `text` that no XML file in UTF-8 may hold; nothing where all may stand there.
std::optional<BadBytes> bad_bytes(std::string_view text);

// Text with XML's five entities and its numbered characters replaced. WrongValue for a "&" that begins neither, for the
// number of a character that XML forbids, and for a "<".
std::variant<std::string, WrongValue> decoded(std::string_view text);

}  // namespace shaftcut
