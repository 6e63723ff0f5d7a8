// A language that no one speaks: every word of a pattern outside its places two fifths longer, with accents. What a translation does to a
// sheet's room, without a translation.
#pragma once

#include <string>
#include <string_view>

#include "wording.hpp"

namespace shaftcut::test {

// "Mark {tubes} square" -> "Markéö {tubes} squareéöé".
inline std::string lengthened(std::string_view pattern)
{
    static constexpr std::string_view accents[]{"é", "ö", "å"};
    std::string out;
    int letters = 0, depth = 0;
    const auto end_word = [&] {
        for (int more = 0; more < (letters * 2 + 4) / 5; ++more) out += accents[more % 3];
        letters = 0;
    };
    for (const char one : pattern) {
        const bool letter = depth == 0 && ((one >= 'a' && one <= 'z') || (one >= 'A' && one <= 'Z'));
        if (!letter) end_word();
        if (one == '{') ++depth;
        if (one == '}') --depth;
        letters += letter ? 1 : 0;
        out += one;
    }
    end_word();
    return out;
}

inline Wording lengthened_wording(Units units) { return Wording(units, About::shaft, lengthened); }

}  // namespace shaftcut::test
