// What must be known before a shaft made to order is built: questions, whom to ask, and nothing that could be guessed.
//
// A shaft that passes every check is built only when each of its parts has a name in the catalogue, and what its end is made for is stated.
// Checked in tests/trade/build/open_points_test.cpp and against a second implementation (tests/support/plain/plain_build.cpp).
#pragma once

#include <variant>
#include <vector>

#include "shaftcut/trade/build/parts.hpp"

namespace shaftcut {

// The order does not say what the end fits, or how it is locked where the catalogue's yokes differ by it.
struct ConnectionNotStated {
    End end;
};
struct YokeLockNotStated {
    End end;
};
struct PartWithoutName {
    PartName part;
    std::int64_t count = 0;  // for all shafts of the order
};
// The instruction book that goes with every new shaft.
struct BookMissing {
    std::string series;
    std::int64_t count = 0;  // for all shafts of the order
};
// Neither a pin nor its hole is in the catalogue.
struct HoldNotKnown {
    Tube tube;
};
// Whether the connection yoke is part of it.
struct YokeOfDevice {
    End end;
    Device device;
};
using OpenPoint = std::variant<ConnectionNotStated, YokeLockNotStated, PartWithoutName, BookMissing, HoldNotKnown, YokeOfDevice>;

enum class Asked { customer, supplier };
template <> struct Words<Asked> { static constexpr std::array all{"customer", "supplier"}; };
// Of whoever ordered: what the order does not say. Of whoever supplies the series' parts: the rest.
Asked whom_to_ask(const OpenPoint& point);

// Of `count` shafts of these parts, in the order of the parts; what the order does not say stands first. Empty: it can be built.
std::vector<OpenPoint> open_points(const Series& series, const BuildOrder& order, const std::vector<ShaftPart>& parts);

}  // namespace shaftcut
