// The commands, by their names.
#pragma once

#include <array>

#include "shaftcut/trade/data/terms.hpp"

namespace shaftcut {

enum class CommandName { cut, form, lengths, build, saw, after_cut, identify, choose, quote, bench, catalogue, catalogue_add };
template <> struct Words<CommandName> {
    static constexpr std::array all{"cut", "form", "lengths", "build", "saw", "after-cut", "identify", "choose", "quote", "bench", "catalogue", "catalogue add"};
};

}  // namespace shaftcut
