// What was measured and seen of a shaft whose series is not known, as its file states it. All may be left out.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "shaftcut/trade/data/catalogue.hpp"
#include "shaftcut/trade/data/terms.hpp"
#include "shaftcut/words/length.hpp"
#include "shaftcut/words/problem.hpp"

namespace shaftcut {

inline constexpr std::size_t most_readings = 3;  // of one figure

// One reading of a length. A span may be read over two spacers that stand on its caps.
struct SizeReading {
    Length length;                       // as read, above 0
    std::optional<Length> plus_minus{};  // above 0; left out: what is usual for such a figure (usual_plus_minus of identify.hpp)
    Length spacers{};                    // both pieces together, below `length`; 0: none
    Place place{};                       // of its length's attribute
};

// What was measured.
constexpr Length without_spacers(const SizeReading& reading) { return reading.length - reading.spacers; }

// One figure, read once to most_readings times; empty: not measured.
using SizeReadings = std::vector<SizeReading>;

// Which cross of a wide-angle joint: the inner one carries the tube yoke, the outer one the connection yoke.
enum class CrossPlace { inner, outer };
template <> struct Words<CrossPlace> { static constexpr std::array all{"inner", "outer"}; };

// A cross has two pairs of opposite caps. Which is called first does not matter.
enum class CapPair { first, second };
template <> struct Words<CapPair> { static constexpr std::array all{"first", "second"}; };

// How a cap's diameter was read: on the cap itself, or in the yoke's bore where the cap sits.
enum class CapRead { cap, bore };
template <> struct Words<CapRead> { static constexpr std::array all{"cap", "bore"}; };

struct MeasuredPair {
    SizeReadings cap{};             // diameter
    CapRead cap_read = CapRead::cap;  // all of its readings
    SizeReadings span{};            // over the two caps' ends
};

struct MeasuredCross {
    std::optional<CrossPlace> at{};  // nothing: not known, or the only cross of a standard joint
    PerEach<CapPair, MeasuredPair> pairs{};
    std::optional<Circlip> circlip{};  // nothing: not looked at
    std::optional<Nipple> nipple{};
};

// A standard joint has one cross at most, without `at`, and no spacing; a wide-angle joint two crosses at most.
struct MeasuredEnd {
    std::optional<JointKind> joint{};      // nothing: not looked at
    std::vector<MeasuredCross> crosses{};  // two at most, of which not both are stated to be the same
    SizeReadings spacing{};              // centre to centre of a wide-angle joint's two crosses
};

// A tube's width: of a lemon tube across its width, of a triangular or square one across its flats, of a star between opposite points, of a
// splined one over its outside.
struct MeasuredTube {
    std::optional<Tube> tube{};  // nothing: not known which
    SizeReadings width{}, wall{};
};

struct MeasuredClosed {
    SizeReading reading{};
    std::optional<Reference> reference{};  // nothing: at the series' own
};

struct Measures {
    std::string shaft;       // what the owner calls it
    std::string date;        // YYYY-MM-DD, or empty
    Units units = Units::mm; // in which the file is written
    PerEach<End, MeasuredEnd> ends{};
    std::optional<Shape> shape{};       // of the tubes; nothing: cannot be made out
    std::vector<MeasuredTube> tubes{};  // two at most, of which not both are stated to be the same
    std::optional<std::string> writing{};  // on the guard
    std::optional<MeasuredClosed> closed{};
};

}  // namespace shaftcut
