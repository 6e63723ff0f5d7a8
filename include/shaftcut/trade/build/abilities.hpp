// What the catalogue's figures of a series are enough for, and what is missing for the rest.
//
// A shaft is cut by its series' shoulders, or by its halves measured; it is built when shoulders, seats, guard seats and the name of
// every part are stated. Checked in tests/trade/build/abilities_test.cpp by cutting and building.
#pragma once

#include <vector>

#include "shaftcut/trade/build/open_points.hpp"

namespace shaftcut {

// The inner tube is wider than the outer one's bore.
struct TubeDoesNotGoIn {
    Length width, bore;
};
// At a closed length that is stocked less of a tube would be left than the series asks for.
struct ClosedTooShort {
    Length closed;
    Tube tube;
    Length left, least;
};
using Impossible = std::variant<TubeDoesNotGoIn, ClosedTooShort>;

struct SeriesAbilities {
    bool shortened = true;                  // false: no shaft of it may be cut
    std::vector<HalfFigure> lacks_to_cut;   // without which its halves must be measured
    std::vector<HalfFigure> lacks_to_build;
    std::vector<OpenPoint> open;            // of parts; what no order could be built without, and devices whose place is not stated
    std::vector<Impossible> impossible;

    bool cuts() const { return shortened && lacks_to_cut.empty(); }
    bool builds() const { return lacks_to_build.empty() && open.empty(); }
};

SeriesAbilities abilities_of(const Series& series);

}  // namespace shaftcut
