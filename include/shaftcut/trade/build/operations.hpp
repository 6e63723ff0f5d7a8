// How a shaft made to order is put together: the work in the order of the bench, each operation with the figures that it needs. Common
// practice of published manuals, in our own words. O is the length over both outer ends, which is read and never computed: it tells later,
// with the guards on, whether the tubes go home as they did without.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "shaftcut/trade/build/findings.hpp"

namespace shaftcut {

enum class Work { pieces, outer_yoke, inner_yoke, crosses, closed, grease, guards, join, fittings, chains, papers };
template <> struct Words<Work> {
    static constexpr std::array all{"pieces", "outer-yoke", "inner-yoke", "crosses", "closed", "grease", "guards", "join", "fittings", "chains", "papers"};
};

struct TubeToLength {
    ShaftTube tube;
    Length length;
};
// Each piece against its label, measured and deburred.
struct CheckPieces {
    std::vector<TubeToLength> sawn;
    Length plus_minus;
    std::vector<TubeToLength> fetched;  // made to their lengths, not sawn
};
// From its tube's yoke end to the hole's centre; nothing where the catalogue does not say: then through the yoke's own hole.
struct FixOuterYoke {
    End end;
    std::optional<Length> pin_hole;
};
// Fixed only once the forks of both tube yokes lie in one plane.
struct FixInnerYoke {
    End end;
    std::optional<Length> pin_hole;
    Shape shape;
};
struct FitCross {
    End end;
    JointKind joint;
    std::optional<std::string> connection;
    std::optional<Device> instead;  // of the connection yoke
};
struct StrokesAndCrosses {
    PerEach<End, FitCross> cross;
};
// Outside `plus_minus`, the saw's tolerance and the tape's, it is put aside.
struct MeasureClosed {
    MeasuredFrom from;
    Length closed, plus_minus;
};
struct PartAndGrease {
    bool guard;
};
// How far each tube stands out of its guard.
struct FitGuards {
    PerEach<Tube, Length> stands_out;
};
struct JoinAgain {
    bool guard;
};
// Nothing where an end has no device; and the ends whose locks have a spring.
struct FitFittings {
    PerEach<End, std::optional<Device>> device;
    std::vector<End> springing;
};
struct HookChains {};
struct StickLabel {
    bool on_guard;
    std::string order;
    Length closed;
    MeasuredFrom from;
    std::optional<Length> pull_to_turning;  // at most, measured as the closed length
};
using OperationDoes = std::variant<CheckPieces, FixOuterYoke, FixInnerYoke, StrokesAndCrosses, MeasureClosed, PartAndGrease, FitGuards, JoinAgain, FitFittings, HookChains, StickLabel>;

struct Operation {
    Work work = Work::pieces;
    OperationDoes does;
};

struct BuildPlan;

// What the closed length of a finished shaft may be off by: the saw's tolerance and the tape's.
Length closed_plus_minus(const BuildPlan& plan);

// Of a plan whose shaft is built but for its operations.
std::vector<Operation> operations_of(const BuildPlan& plan);

}  // namespace shaftcut
