// What a document needs to draw a machine and its shaft to scale, and the curve of lengths over its movement.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "shaftcut/trade/cut/datum.hpp"
#include "shaftcut/trade/data/rounding.hpp"
#include "shaftcut/trade/hitch/hitch_curve.hpp"

namespace shaftcut {

// What is drawn of it: the lowest and the highest of a mounted machine's lift, and the extremes of its length.
enum class SceneOf { lowest, highest, shortest, longest };

// One position. Points are mm in the frame of machine.hpp.
struct MachineScene {
    SceneOf of = SceneOf::shortest;
    std::optional<Range> range;      // of the longest
    Posture at;
    Vector pto_groove;
    PerEach<End, Vector> outer;      // the cross that carries the connection yoke
    PerEach<End, Vector> inner;      // the cross that carries the tube yoke; the same on a standard joint
    InputShaft input;
    Vector pin;                      // of a trailed machine
    std::optional<Linkage> linkage;  // of a mounted one
    Length length;                   // telescoping; an extreme's own where one occurs here, so that no paper has two figures for it
    Rounded printed_as = Rounded::measured;  // that length
    PerEach<End, Angle> angles;
};

// The curve's positions: degrees of turn, or heights of the lower hitch point in mm.
struct CurvePoint {
    Angle turn;
    Length height;
    Length length;                   // level, for a trailed machine
    Length shortest, longest;        // over pitch and roll at this turn; both the length for a mounted one
    PerEach<End, Angle> angles;      // level
};

struct MachineView {
    std::string tractor;             // whose it is; may be empty
    bool mounted = false;
    std::vector<MachineScene> scenes;
    // Over the range that turns furthest, or from the lowest to the highest of all ranges.
    std::vector<CurvePoint> curve;
    std::optional<Range> curve_range;  // whose pitch and roll the curve has; empty for a mounted machine
};

// Scenes: shortest and longest of a trailed machine; lowest, shortest and highest of a mounted one.
// `fit` must hold geometry. Checked by distances between the points, and by the extremes lying on the curve.
MachineView machine_view(const FitReading& fit);

}  // namespace shaftcut
