// The changes of a job for each kind of way out. Private to its room.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "data/machine_words.hpp"
#include "job_changes.hpp"

namespace shaftcut {

class ChangesOf {
public:
    ChangesOf(const WorkOrder& order, Units units) : order_(order), units_(units) {}

    std::vector<JobChoice> of(Remedy way) const { return way == Remedy::measure_contradictions ? slips() : std::vector<JobChoice>(); }
    std::vector<JobChoice> of_longest(const std::vector<LongestServed>& ways) const;
    std::vector<JobChoice> of(const LongestServed& way) const { return of_longest({way}); }
    std::vector<JobChoice> of(const ShortestServed& way) const;
    std::vector<JobChoice> of(const SeriesLengths& way) const;
    std::vector<JobChoice> of(const NewShaft& way) const;
    std::vector<JobChoice> of(const TurnServed& way) const;
    std::vector<JobChoice> of(const PitchServed& way) const;
    std::vector<JobChoice> of(const LiftRangeServed& way) const;
    std::vector<JobChoice> of(const PinMoveServed& way) const;
    // What is to be measured, chosen or fitted first.
    std::vector<JobChoice> of(const MatchConnection&) const { return {}; }
    std::vector<JobChoice> of(const GuardsReach&) const { return {}; }
    std::vector<JobChoice> of(const NoNewShaft&) const { return {}; }
    std::vector<JobChoice> of(const LimitMovement&) const { return {}; }
    std::vector<JobChoice> of(const SeriesThatCarries&) const { return {}; }

private:
    // As the way says it, so that the box shows what was read; to the safe side.
    std::string at_most(Length length) const { return written(length, Toward::down, 1); }
    std::string at_least(Length length) const { return written(length, Toward::up, 1); }
    std::string written(Length length, Toward toward = Toward::nearest, int decimals = 3) const { return figure(length, Units::mm, toward, decimals) + (units_ == Units::mm ? "" : " mm"); }
    std::string fit_path(std::size_t fit) const;
    std::string distance_written(const FitReading& fit, Range range, Length telescoping) const;
    std::string longest_path(std::size_t fit, Range range) const;
    std::string half_path(Tube tube) const;
    // The machine of this kind, whose tractor is called so and of which `holds` is true.
    template <class Kind, class Holds>
    std::optional<std::size_t> fit_of(const std::string& tractor, const Holds& holds) const;
    std::vector<JobChoice> of_movement(const std::string& tractor, Range range, TrailedMovement movement, Angle served, Angle now) const;
    std::optional<Changes> new_shaft(Length closed, const std::optional<Reference>& reference) const;
    void add_half_of_new(Changes& changes, Tube tube) const;
    std::vector<JobChoice> slips() const;
    std::optional<JobChoice> slip(const CheckFinding& finding) const;
    std::optional<JobChoice> read_from_other_cross(const std::vector<Length>& expected, Length within) const;
    JobChoice exchanged() const;
    std::optional<std::string> path_of(const StatedFigure& figure) const;
    std::optional<JobChoice> unit_slip(const std::vector<CheckFinding>& findings) const;

    const WorkOrder& order_;
    Units units_;
};

}  // namespace shaftcut
