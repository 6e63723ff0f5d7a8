// The one place where a measurement becomes a telescoping length.
//
//     telescoping = length at its reference − Σ over the wide-angle ends measured at their outer cross of w     (in line)
//     |eT·u + wT·m(u,t) + L·t + wI·m(v,t) + eI·v| = D                                                            (bent)
//
// w: spacing of a wide-angle joint; e: a connection yoke's distance from its cross to its locking groove; t along the
// tubes, u and v the axes of the two stubs; m(u,t) = (u+t)/|u+t|; D the measured straight distance; L the answer.
// What a machine's geometry gives needs no conversion: it is computed between the inner crosses.
// Checked by: drawing the bent chain of links point by point (datum_test), and the two references of one shaft agreeing.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "shaftcut/trade/data/catalogue.hpp"
#include "shaftcut/trade/data/job.hpp"
#include "shaftcut/trade/data/shaft.hpp"
#include "shaftcut/trade/data/shaft_series.hpp"
#include "shaftcut/trade/hitch/hitch.hpp"

namespace shaftcut {

// What a measured length holds at one end beyond the telescoping length.
struct Reach {
    Length yoke;     // e: 0 unless the length runs between grooves
    Length spacing;  // w: 0 unless the length starts from a wide-angle joint's outer cross or beyond it
    bool bends() const { return yoke != Length() || spacing != Length(); }
};
using Reaches = PerEach<End, Reach>;

// The telescoping length of a straight distance read in line: the least that it allows.
Length in_line(Length distance, const Reaches& reaches);

// The telescoping length of a straight distance over joints bent by these angles, both the same way in one plane: the
// greatest that it allows. Where the bent ends alone are longer than the distance the root is taken as 0.
Length bent(Length distance, const Reaches& reaches, const PerEach<End, Angle>& angles);

// The same with its tolerance: u of the distance times ∂L/∂D, which bent joints make more than 1.
Toleranced bent(const Toleranced& distance, const Reaches& reaches, const PerEach<End, Angle>& angles);

struct ShaftReading {
    Shaft shaft;
    Toleranced closed;                                    // as stated
    Reference reference = Reference::inner_cross;         // of the closed length as stated
    PerEach<Reference, Length> closed_at;                 // the same length at either cross
    bool has_wide_angle = false;
    Length beyond() const { return closed.value - shaft.closed.value; }  // what the closed length as stated holds beyond the telescoping
};

// A longest that was read in line although a joint bends it, for want of an angle.
struct UnbentReading {
    Range range;
    std::vector<End> ends;      // those with no angle
    Length at_limit_angles;     // the telescoping length if those joints stood at their limit angles
};

// A measured extreme that lies from the machine's own by more than the measurement's tolerance. Either no position of the
// geometry reaches it, or a position that was not measured goes past it, which is what ruins shafts.
struct DisputedLength {
    std::optional<Range> range;  // whose longest; nothing: the shortest
    Toleranced measured;         // telescoping
    ExtremeLength reached;       // the machine's shortest of all ranges, or its longest of that range
    // Past the measurement: shorter than a measured shortest, longer than a measured longest.
    bool goes_past() const { return range ? reached.length > measured.value : reached.length < measured.value; }
};

// A machine's geometry and what it gives for this shaft.
struct GeometryReading {
    Machine machine;
    HitchShaft shaft;
    OperatingLengths lengths;
};

// Why lengths of a fit cannot be known.
struct YokeNotKnown { End end; bool of_geometry; };  // a yoke's distance from cross to groove: for a machine's geometry, or for lengths between grooves
struct GeometryImpossible { HitchProblem problem; };  // what geometry_problems() or no_answer_problem() finds first
using WhyUnreadable = std::variant<YokeNotKnown, GeometryImpossible>;

struct FitReading {
    std::string tractor;  // whose it is; may be empty
    std::string shortest_at;                                  // as stated: the position of the measured shortest; may be empty
    PerEach<Range, std::string> longest_at;                   // likewise
    PerEach<End, std::optional<AngleViews>> views;            // as stated: what an angle was computed from
    Between between = Between::crosses;
    Reference reference = Reference::inner_cross;
    Reaches reaches;
    std::optional<Toleranced> shortest;                       // as stated
    PerEach<Range, std::optional<Toleranced>> longest;        // as stated
    PerEach<Range, PerEach<End, Angle>> read_at;              // the joint angles at which each longest was read (0: in line)
    PerEach<End, PerEach<Range, std::optional<Angle>>> angles;  // as stated
    std::optional<GeometryReading> geometry;
    Fit fit;                                                  // telescoping; a measurement wins over the geometry
    std::vector<UnbentReading> unbent;
    std::vector<DisputedLength> disputed;
    std::optional<WhyUnreadable> unreadable;                  // nothing where they can be known

    // What `fit` has from the geometry, with its posture; null where it was measured or is not known.
    const ExtremeLength* computed_shortest() const;
    const ExtremeLength* computed_longest(Range range) const;
    const ExtremeAngle* computed_angle(End end, Range range) const;
};

// Every wide-angle end's spacing and reference must be known: the job reader refuses a job where they are not.
// `measuring_plus_minus`: of every measured length, and of a series' shoulder, for which nothing else is stated.
ShaftReading read_shaft(const JobShaft& shaft, const ShaftSeries& series, Length measuring_plus_minus);
FitReading read_fit(const JobFit& fit, const JobShaft& shaft, const ShaftSeries& series, const ShaftReading& reading,
                    const LimitsInForce& limits, Length measuring_plus_minus);

// The least shortest, the greatest longest of each range and the greatest angle of each end and range. A range that one fit leaves
// out is known only as at least what the others state, and what that fit states of the lesser ranges. An unreadable fit leaves the
// shortest unknown.
Fit deciding_fit(const std::vector<FitReading>& fits);

}  // namespace shaftcut
