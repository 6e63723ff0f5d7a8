// What planning a shaft made to order finds, in figures and names: why it is refused, what could be built instead, and what whoever
// builds or gets it should know. Positions and lengths are telescoping unless `from` says from where they are measured.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "shaftcut/trade/advice/findings.hpp"
#include "shaftcut/trade/build/build.hpp"
#include "shaftcut/trade/checks/checks.hpp"

namespace shaftcut {

// From where a closed length is measured; without a wide-angle joint the crosses are one.
enum class MeasuredFrom { crosses, outer_cross, inner_cross };
constexpr MeasuredFrom measured_from(bool has_wide_angle, Reference reference)
{
    if (!has_wide_angle) return MeasuredFrom::crosses;
    return reference == Reference::outer_cross ? MeasuredFrom::outer_cross : MeasuredFrom::inner_cross;
}

// Why no shaft of the series can be built.
struct SeriesDoesNotState {
    std::string series;
    std::vector<HalfFigure> figures;
};
// There is no length to saw it to.
struct NothingBeyondSeat {
    ShaftTube tube;
};
struct PinHoleBeyondTube {
    Tube tube;
};
struct LongerThanBars {
    ShaftTube tube;
    std::string profile;
    Length longest_bar;
};
// Where it would be made of the bars if the list's figure, `stated`, were millimetres.
struct MillimetresReadAsInches {
    bool of_closed;  // else of the shortest
    Length stated;
};
// A failed check is a reason as it is.
using BuildReason = std::variant<SeriesDoesNotState, Check, NothingBeyondSeat, PinHoleBeyondTube, LongerThanBars, MillimetresReadAsInches>;

enum class BuildAdvice { state_again, no_other_series, locks_that_do_not_stand_out, device_at_implement };
struct FiguresToState {
    std::vector<HalfFigure> figures;
};
// With the longest lengths as they are. Nothing: no shortest serves.
struct ShortestThatServes {
    std::string series;
    std::optional<Length> least;
    Length now;
    bool of_every_tractor, has_wide_angle;
};
// With the shortest as it is. Nothing: no longest of this range serves.
struct LongestThatServes {
    std::string series;
    Range range;
    std::optional<Length> greatest;
    bool has_wide_angle;
};
// Nothing: no closed length serves.
struct ClosedThatServes {
    std::string series;
    std::optional<Length> least;
    MeasuredFrom from;
};
struct SeriesThatServe {
    std::vector<std::string> names;
};
// Up to where the guard tubes cover the shaft.
struct GuardReach {
    Length greatest;
    bool has_wide_angle;
};
struct ShortestThatBarsAllow {
    Length greatest;
    bool has_wide_angle;
};
struct ClosedThatBarsAllow {
    Length greatest;
    MeasuredFrom from;
};
// A closing clearance must be more than the lengths may be wrong by.
struct ClearanceToAsk {
    Length doubt;
};
// The last: advice to whoever has a shaft already.
using BuildWay = std::variant<BuildAdvice, FiguresToState, ShortestThatServes, LongestThatServes, ClosedThatServes, SeriesThatServe, GuardReach, ShortestThatBarsAllow,
                              ClosedThatBarsAllow, ClearanceToAsk, WayOut>;

enum class BuildRemark { no_guard, serves_all_tractors };
// Where only a closed length is ordered: how far it may be pushed together and pulled apart; nothing where it may not be so used at all.
struct UsableRange {
    MeasuredFrom from;
    Length shortest;
    PerEach<Range, std::optional<Length>> longest;
};
struct ClosesBelowOrdered {
    Length below;
};
// The saw's tolerance and that of ISO 2768-1 class c for the shorter tube.
struct SawAgainstClassC {
    Length saw, class_c;
};
struct TubeMadeToLength {
    Tube tube;
};
using BuildNote = std::variant<BuildRemark, UsableRange, ClosesBelowOrdered, SawAgainstClassC, TubeMadeToLength>;

enum class BuildCaution { do_not_build, held, turning_kills, bottoming_breaks, manuals_first };

}  // namespace shaftcut
