// How a shaft made to order is put together: the work in order, each operation with the figures that it needs. Common practice of
// published manuals, in our own words.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "shaftcut/trade/build/findings.hpp"

namespace shaftcut {

enum class Work { saw, deburr, drill, yoke, cross, grease, device, phase, guard, bearing, chain, label, check };
template <> struct Words<Work> {
    static constexpr std::array all{"saw", "deburr", "drill", "yoke", "cross", "grease", "device", "phase", "guard", "bearing", "chain", "label", "check"};
};

enum class PlainOperation { deburr, grease, set_bearings, join_guard_in_guard, hook_chains };
struct TubeToLength {
    ShaftTube tube;
    Length length;
};
struct SawTubes {
    std::vector<TubeToLength> sawn;
    Length plus_minus;
    std::vector<TubeToLength> fetched;  // made to their lengths, not sawn
};
// From each tube's yoke end to the hole's centre; nothing where the catalogue does not say.
struct DrillPinHoles {
    PerEach<Tube, std::optional<Length>> pin_hole;
};
struct DriveTubeYokes {
    PerEach<Tube, End> end;
};
struct FitCross {
    End end;
    JointKind joint;
    std::optional<std::string> connection;
};
struct FitDevice {
    End end;
    Device device;
};
// The forks are seen best without the guard, and a guard half goes on from the free end: then the halves are parted once more.
struct JoinInPhase {
    Shape shape;
    bool part_again;
};
// How far each ends short of its drive tube.
struct PushGuards {
    PerEach<Tube, Length> short_by;
};
struct StickLabel {
    bool on_guard;
    std::string order;
    Length closed;
    MeasuredFrom from;
    std::optional<Length> pull_to_turning;  // at most, measured as the closed length
};
struct MeasureClosed {
    MeasuredFrom from;
    Length closed, plus_minus;
};
struct PullOut {
    Length to, overlap_left;
};
struct TurnByHand {
    bool guard;
};
using OperationDoes = std::variant<PlainOperation, SawTubes, DrillPinHoles, DriveTubeYokes, FitCross, FitDevice, JoinInPhase, PushGuards, StickLabel, MeasureClosed, PullOut, TurnByHand>;

struct Operation {
    Work work = Work::check;
    OperationDoes does;
};

struct BuildPlan;

// The length that the finished shaft is pulled to on the bench, at the reference of its closed length: the fit's greatest known, else
// the greatest that it may be pulled to. Nothing where neither is known.
std::optional<Length> longest_to_try(const BuildPlan& plan);

// Of a plan whose shaft is built but for its operations.
std::vector<Operation> operations_of(const BuildPlan& plan);

}  // namespace shaftcut
