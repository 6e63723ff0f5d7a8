// The one table of what the bench page's server answers.
#pragma once

#include <span>
#include <string_view>
#include <variant>

#include "bench.hpp"

namespace shaftcut {

// Who may ask: whoever reaches the server; whoever sits at its machine or has a paired tablet; the machine alone.
enum class Entry { anyone, paired, here };

using AtOnce = Reply (*)(const Desk&, House&, const Request&);
using Worked = Reply (*)(const Desk&, const Request&, const Target&);

// `fields`: what its query may hold, with commas between. `waits`: for another program.
struct Route {
    Method method;
    std::string_view path;
    Entry entry;
    std::string_view fields;
    std::variant<AtOnce, Worked> reply;
    bool waits = false;
};
std::span<const Route> routes();

}  // namespace shaftcut
