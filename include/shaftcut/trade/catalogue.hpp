// What the configuration holds: the series a workshop knows, the connection types, and the workshop's own settings.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "shaftcut/trade/limits.hpp"
#include "shaftcut/trade/stock.hpp"
#include "shaftcut/trade/terms.hpp"
#include "shaftcut/words/length.hpp"
#include "shaftcut/words/problem.hpp"

namespace shaftcut {

// A cross journal by its two sizes: diameter of a bearing cap, span over opposite caps.
struct Cross {
    Length cap;
    Length span;
};

// A type of spline or flange, with the rated speeds (min^-1) that it may run at, and the standard that says so.
struct Connection {
    std::string name;
    std::vector<int> speeds;
    std::string source;
};

// What a series says of the half that carries one of its tubes. All lengths run from the half's inner cross.
struct SeriesHalf {
    std::optional<Length> shoulder;               // to the face that stops the other tube's free end
    std::optional<Length> seat;                   // to the tube's end inside its yoke
    std::optional<Length> least_tube;             // least length of tube to be left beyond the seat
    std::optional<Length> width, wall;            // of the tube
    std::optional<Length> guard_shoulder;         // to the face that stops the other half's guard
    std::optional<Length> guard_seat;             // to the guard tube's inner end
    std::optional<Length> guard_seat_wide_angle;  // the same on a wide-angle joint
    bool shortening_forbidden = false;
};

struct WideAngleJoint {
    Length spacing;  // centre to centre of its two crosses
    std::vector<Cross> crosses;
};

struct Yoke {
    std::string connection;
    std::optional<JointKind> joint;          // left out: the same on both kinds
    std::optional<Length> cross_to_groove;   // from its cross (a wide-angle joint's outer one) to its locking groove
};

struct Series {
    std::string name;
    Shape shape = Shape::other;
    std::optional<Reference> wide_angle_reference;  // what its closed lengths start from at a wide-angle joint
    std::vector<Cross> crosses;
    std::optional<WideAngleJoint> wide_angle;
    PerEach<Tube, SeriesHalf> halves;
    std::vector<Yoke> yokes;
    Limits limits;
    std::vector<Length> closed_lengths;  // at wide_angle_reference, ascending
    bool shortening_forbidden = false;
    Place place;
};

struct Catalogue {
    std::vector<Connection> connections;
    std::vector<Series> series;
};

// The cut's step and least cut, the blade's kerf, the saw's tolerance, and from what length on a leftover goes back to the rack.
struct Saw {
    Length step;
    Length kerf;
    Length plus_minus;
    Length least_cut;
    std::optional<Length> reusable_leftover{};  // nothing: every leftover is scrap
};

struct Workshop {
    std::string name;  // the owner on documents; may be empty
    Limits limits;
    Saw saw;
    Length measuring_plus_minus;  // of every measured length that states none
    std::vector<SawStock> stock{};  // bars for saw plans; may be empty
};

const Series* find_series(const Catalogue& catalogue, std::string_view name);
const Connection* find_connection(const Catalogue& catalogue, std::string_view name);

// What a shape's closed lengths start from where neither series nor job says: lemon and star tubes the outer cross,
// triangular tubes the inner cross (common practice); nothing for any other shape.
std::optional<Reference> usual_reference(Shape shape);

// The yoke's distance from its cross to its locking groove; nothing where the series does not say.
std::optional<Length> cross_to_groove(const Series& series, std::string_view connection, JointKind joint);

}  // namespace shaftcut
