// What a cut rests on and no second figure confirms: to be measured, or looked at, before anything is sawn.
#pragma once

#include <optional>
#include <string>

#include "shaftcut/trade/terms.hpp"
#include "shaftcut/words/length.hpp"

namespace shaftcut {

// What is to be measured, in the order of the bench: a length, but the last three, which are looks.
enum class Confirmed { closed, closed_inner_cross, inner_half, outer_half, inner_shoulder, outer_shoulder, inner_guard, outer_guard, built };
template <> struct Words<Confirmed> {
    static constexpr std::array all{"closed",         "closed_inner_cross", "inner_half",  "outer_half", "inner_shoulder",
                                    "outer_shoulder", "inner_guard",        "outer_guard", "built"};
};

struct Confirmation {
    Confirmed what = Confirmed::closed;
    std::optional<Length> expected, plus_minus;  // nothing for a look
    std::string says;                            // what to measure or look at, what is expected, and why
    bool is_look() const { return !expected; }
};

}  // namespace shaftcut
