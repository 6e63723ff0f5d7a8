// What the configuration holds: the series a workshop knows, the connection types, and the workshop's own settings.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "shaftcut/trade/data/limits.hpp"
#include "shaftcut/trade/data/stock.hpp"
#include "shaftcut/trade/data/terms.hpp"
#include "shaftcut/words/length.hpp"
#include "shaftcut/words/problem.hpp"

namespace shaftcut {

// Where a cross's caps are held: by rings inside the yoke's bores, against the caps' outer ends, or outside, in grooves of the caps.
enum class Circlip { inside, outside };
template <> struct Words<Circlip> { static constexpr std::array all{"inside", "outside"}; };

// Where a cross is greased: in its body, or in the bottom of a cap.
enum class Nipple { cross, cap };
template <> struct Words<Nipple> { static constexpr std::array all{"cross", "cap"}; };

// A cross journal by its two sizes: diameter of a bearing cap, span over opposite caps.
struct Cross {
    Length cap;
    Length span;
    std::string part{};  // what the catalogue calls it; may be empty
    // Of a wide-angle joint's cross whose two pairs of caps differ: the pair that the double yoke holds or the other, nobody knows which. A size
    // that is left out while the other is stated is as in the first pair.
    std::optional<Length> other_cap{}, other_span{};
    std::optional<Circlip> circlip{};
    std::optional<Nipple> nipple{};
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
    std::optional<Length> pin_hole;               // to the centre of the hole for the pin that holds the tube in its yoke
    std::optional<std::int64_t> mass_per_metre;   // of the tube, in grams
    bool shortening_forbidden = false;
};

// One cross of its own stands for both; of two the first is the inner one.
struct WideAngleJoint {
    Length spacing;  // centre to centre of its two crosses
    std::vector<Cross> crosses;
};

struct Yoke {
    std::string connection;
    std::optional<JointKind> joint;          // left out: the same on both kinds
    std::optional<Length> cross_to_groove;   // from its cross (a wide-angle joint's outer one) to its locking groove
};

// What a shaft is put together from, besides its crosses, and its instruction book. A double yoke joins the two crosses of a wide-angle joint.
enum class PartKind { double_yoke, connection_yoke, tube_yoke, tube, pin, guard_tube, guard_bearing, chain, device, label, book };
template <> struct Words<PartKind> {
    static constexpr std::array all{"double-yoke", "connection-yoke", "tube-yoke", "tube",  "pin",
                                    "guard-tube",  "guard-bearing",   "chain",     "device", "label", "book"};
};

// Whether a device sits where the connection yoke would and has that yoke's bore.
enum class Replaces { nothing, connection_yoke };
template <> struct Words<Replaces> { static constexpr std::array all{"nothing", "connection-yoke"}; };

// What the catalogue calls a part, and for which shafts: what is left out does not matter. Of several that are for one
// place the first counts.
struct CataloguePart {
    PartKind kind = PartKind::label;
    std::string name;
    int count = 1;  // in one place: pins in one yoke
    std::optional<Tube> tube{};
    std::optional<JointKind> joint{};
    std::optional<std::string> connection{};
    std::optional<Lock> lock{};
    std::optional<Device> device{};
    std::optional<Replaces> replaces{};  // of a device; nothing where it is not stated
};

// The power that a whole shaft of the series carries at one speed, at its working angle.
struct Rating {
    int speed = 0;           // min^-1
    std::int64_t power = 0;  // watts
};

struct Series {
    std::string name;
    Shape shape = Shape::other;
    std::optional<Reference> wide_angle_reference;  // what its closed lengths start from at a wide-angle joint
    std::vector<Cross> crosses;
    std::optional<WideAngleJoint> wide_angle;
    PerEach<Tube, SeriesHalf> halves;
    std::vector<Yoke> yokes;
    std::vector<Rating> ratings;  // one a speed at most, in any order; may be empty
    Limits limits;
    std::vector<Length> closed_lengths;  // at wide_angle_reference, ascending
    std::vector<CataloguePart> parts;
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

// Bars of one profile: a tube's, by its part name or else by its series' (profile_of in parts.hpp).
struct ProfileStock {
    std::string profile;
    SawStock stock;
};

struct Workshop {
    std::string name;  // the owner on documents; may be empty
    Limits limits;
    Saw saw;
    Length measuring_plus_minus;  // of every measured length that states none
    std::vector<SawStock> stock{};  // bars for saw plans; may be empty
    std::vector<ProfileStock> profile_stock{};  // bars of one profile, for shafts made to order
};

const Series* find_series(const Catalogue& catalogue, std::string_view name);
const Connection* find_connection(const Catalogue& catalogue, std::string_view name);

// What a shape's closed lengths start from where neither series nor job says: lemon and star tubes the outer cross,
// triangular tubes the inner cross (common practice); nothing for any other shape.
std::optional<Reference> usual_reference(Shape shape);

// The yoke's distance from its cross to its locking groove; nothing where the series does not say.
std::optional<Length> cross_to_groove(const Series& series, std::string_view connection, JointKind joint);

}  // namespace shaftcut
