// A job as its file states it: nothing is converted or computed here.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "shaftcut/trade/data/limits.hpp"
#include "shaftcut/trade/data/machine.hpp"
#include "shaftcut/trade/data/measures.hpp"
#include "shaftcut/trade/data/terms.hpp"
#include "shaftcut/words/angle.hpp"
#include "shaftcut/words/length.hpp"
#include "shaftcut/words/problem.hpp"

namespace shaftcut {

inline constexpr int most_speed = 10'000;  // min^-1, that a file may state

// A length as measured; its tolerance is the workshop's where the job states none. `place` is that of its attribute.
struct Measurement {
    Length length;
    std::optional<Length> plus_minus;
    Place place;
};

struct JobEnd {
    JointKind joint = JointKind::standard;
    std::optional<std::string> connection;  // a connection of the catalogue
    std::optional<std::string> onto;        // the connection of the stub it is coupled to
    std::optional<Lock> lock;
    std::optional<Device> device;
    Place place{};
    std::optional<Length> spacing{};          // of a wide-angle joint whose half is of another series or none, or of a shaft of none
    std::optional<Length> cross_to_groove{};  // likewise: from its cross (a wide-angle joint's outer one) to its locking groove
};

// The series of a half's joint where it is not the shaft's: one of the catalogue, or no name for one that is not known.
struct OtherSeries {
    std::optional<std::string> name;
};

struct JobHalf {
    std::optional<Measurement> length;            // inner cross to the tube's free end
    std::optional<Measurement> guard;             // inner cross to the guard tube's free end
    std::optional<Measurement> shoulder;          // inner cross to the face that stops the other tube
    std::optional<Measurement> lubrication_hole;  // inner cross to the far edge of the hole
    std::vector<Feature> features{};
    std::optional<Measurement> stop_depth{};      // in the shoulder's place: from the tube's free end inwards to that face
    GuardUse guard_use = GuardUse::kept;
    std::optional<OtherSeries> series{};          // nothing: the shaft's
    Place place{};                                // of its element; of a half that is left out, nowhere
    std::optional<Length> cut_to{};               // its length that an earlier sheet kept
};

// How the shaft came in. What is left out was not looked at.
struct Condition {
    std::optional<Completeness> guard, chains;
    std::optional<CrossWear> crosses;
    std::optional<TubeState> tubes;
    std::optional<LockState> locks;
    std::optional<Weld> weld;
    std::optional<DeviceState> device;
    std::optional<Phase> phase;
    std::optional<Slides> slides;
    Place place;
};

struct JobShaft {
    std::string number;  // the shaft's own, beside the order's; may be empty
    std::optional<std::string> series;  // a series of the catalogue; nothing for a shaft of no known series
    Role role = Role::primary;
    std::optional<int> speed;  // min^-1
    End inner_tube = End::implement;
    std::optional<int> built;  // year
    std::optional<Shape> shape;      // of a shaft of no known series
    std::optional<Length> spacing;   // of a wide-angle joint of a shaft of no known series
    Measurement closed;
    std::optional<Reference> closed_reference;
    PerEach<End, JobEnd> ends;
    PerEach<Tube, JobHalf> halves;
    std::optional<Condition> condition;
    std::optional<Measures> measures{};  // what its series was identified by
    Place place;
};

// The end that carries this tube, and the tube that this end carries.
inline End end_of(const JobShaft& shaft, Tube tube) { return tube == Tube::inner ? shaft.inner_tube : other(shaft.inner_tube); }
inline Tube tube_on(const JobShaft& shaft, End end) { return shaft.inner_tube == end ? Tube::inner : Tube::outer; }

// Whether this half's guard goes back on.
inline bool guard_is_used(const JobShaft& shaft, Tube tube) { return shaft.halves[tube].guard_use == GuardUse::kept; }

// A joint's angle in one range, seen from the side and from above: tan β = √(tan² side view + tan² plan).
struct AngleViews {
    Range range = Range::working;
    Angle side_view, plan;
};

// What was measured, and the machine's geometry for what was not. The shortest and the longest with the PTO turning are
// always there, or the machine is and gives them.
struct JobFit {
    std::string tractor;  // may be empty
    Between between = Between::crosses;     // of the measured lengths
    std::optional<Reference> reference;
    std::optional<Measurement> shortest;
    PerEach<Range, std::optional<Measurement>> longest;
    std::string shortest_at;                  // the position in which it was measured, in the fitter's words; may be empty
    PerEach<Range, std::string> longest_at;   // likewise
    PerEach<End, PerEach<Range, std::optional<Angle>>> angles;  // those from two views among them
    PerEach<End, std::optional<AngleViews>> views;              // what such an angle was computed from
    PerEach<End, Place> angle_places;
    std::optional<Machine> machine;
    Place place;
};

// Who measured, when (YYYY-MM-DD) and with what; each may be empty.
struct MeasuredBy {
    std::string name, date, with;
};

// What a job says around its lengths; texts may be empty.
struct Circumstances {
    std::string phone;
    std::string hitch;                        // the hole of the drawbar, the coupling: "drawbar, second hole"
    std::optional<std::int64_t> power;        // taken at the PTO, in watts
    std::vector<std::string> other_tractors;  // those that drive the machine and were not measured
    bool no_other_tractors = false;           // the job says that there are none
    bool machine_here = true;                 // the machine stands where the shaft is cut
    MeasuredBy measured_by;
    std::string limits_why, limits_by;        // why and by whom a limit was loosened
};

// What a job and an order of a list have in common.
struct OrderHead {
    std::string order;
    std::string customer, machine;  // may be empty
    Units units = Units::mm;
    JobShaft shaft;
    std::vector<JobFit> fits;
    Limits limits;
    Place place;
};

// A shaft that exists. It has one fit at least.
struct Job : OrderHead {
    std::string date;  // YYYY-MM-DD, or empty
    std::string tractor;
    Circumstances circumstances;
};

}  // namespace shaftcut
