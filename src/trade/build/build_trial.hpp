// Building a shaft and checking what comes of it, for the plan and for what could be built instead. Private to the trade layer.
#pragma once

#include "shaftcut/trade/build/build_plan.hpp"

namespace shaftcut {

// An order and all that its shaft is built and held by.
struct BuildSetting {
    const BuildOrder& order;
    const Catalogue& catalogue;
    const Workshop& workshop;
    Units units;
    const Series& series;
    LimitsInForce limits;
    SawSettings saw;
    ShaftReading ordered;           // spacing and reference; its closed length where one is ordered
    std::vector<JobFit> job_fits;   // one without lengths where only a closed length is ordered
    std::vector<FitReading> fits;   // of those
    Fit fit;                        // the deciding one
    std::vector<HalfFigure> unstated;
};

// `series` may be another than the order's: what if that one were built?
BuildSetting build_setting(const BuildOrder& order, const Catalogue& catalogue, const Workshop& workshop, Units units, const Series& series);
// The same with the order's fits as read_fit() has read them for such a shaft of that series; none: they are read.
BuildSetting build_setting(const BuildOrder& order, const Catalogue& catalogue, const Workshop& workshop, Units units, const Series& series, std::vector<FitReading> fits);

// The closed length to build to, telescoping; nothing where the shortest cannot be read.
std::optional<Length> room_of(const BuildSetting& setting, const Fit& fit);

// What is built, and each check on it. Without lengths there is nothing to build.
struct BuildTrial {
    std::optional<BuiltLengths> lengths;
    JobShaft shaft;        // finished
    ShaftReading reading;  // of that
    std::optional<CutPlan> as_built;
    std::vector<Check> checks;
};

// Built to `room`, held to `fit`.
BuildTrial try_building(const BuildSetting& setting, const Fit& fit, std::optional<Length> room);

// What keeps the shaft of a trial from being built; empty, with lengths, where nothing does.
std::vector<BuildReason> reasons_of(const BuildSetting& setting, const BuildTrial& trial);

// What could be built instead, for each failed check of `trial`.
std::vector<BuildWay> build_ways_out(const BuildSetting& setting, const BuildTrial& trial);

// Whether each tube of these lengths can be sawn from a bar that the workshop knows, a tube that must not be shortened be had so long.
bool has_long_enough_bars(const BuildSetting& setting, const BuiltLengths& lengths);
// Each tube that cannot, and whether millimetres were read as inches; empty where all can.
std::vector<BuildReason> too_long_reasons(const BuildSetting& setting, const BuiltLengths& lengths);
// How much shorter, in the saw's steps, the shaft must be for the bars to be long enough; 0 where they are.
Length excess_over_bars(const BuildSetting& setting, const BuiltLengths& lengths);
// Of lengths for which a bar is too short: how long the shaft could be.
BuildWay long_enough_way(const BuildSetting& setting, const BuiltLengths& lengths);

OrderedUse ordered_use(const BuildSetting& setting);
UseRange use_range(const BuildSetting& setting, const BuiltLengths& lengths);

std::vector<BuildNote> build_notes(const BuildPlan& plan, const BuildSetting& setting);
std::vector<BuildCaution> build_cautions(const BuildPlan& plan);

}  // namespace shaftcut
