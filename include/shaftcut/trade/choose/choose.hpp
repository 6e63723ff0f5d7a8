// Which shafts of the catalogue would serve a tractor and machine: every series at every closed length that it lists, as it is or after a cut.
//
// Each is answered by the rules of a shaft that exists, on the very job that job_of() gives back: closed length as listed, at the series'
// own reference; halves that follow from it, as of any shaft whose halves were not measured; guards that end as they do on a new shaft,
//
//     guard half = min(half − guard-setback-new, closed − the other half's guard shoulder)        telescoping
//
// so that working that job up (work_order.hpp) gives the same verdict, cut and checks. What can be made to order is planned as build does.
// Checked in tests/trade/choose/choose_test.cpp against jobs written independently, worked up by the engine's own door.
#pragma once

#include <array>
#include <functional>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "shaftcut/trade/build/build_plan.hpp"
#include "shaftcut/trade/checks/checks.hpp"
#include "shaftcut/trade/data/catalogue.hpp"
#include "shaftcut/trade/data/job.hpp"
#include "shaftcut/trade/data/prices.hpp"

namespace shaftcut {

// What is to be served, and what is known of the shaft's ends.
struct JobToChooseFor {
    Job job;  // its shaft has role, speed, inner tube and ends, each with its connection; no series, closed length or halves
    PerEach<End, std::optional<JointKind>> joint;  // nothing: either kind will do
    std::optional<std::string> only_series;        // of a fit between crosses: whose crosses they are; nothing: every series is tried
};

// The same of a job whose shaft is gone or must not be cut: joints and connections stay as they were. Lengths between crosses are of that
// shaft's series, and so no other can be chosen by them. Nothing where an end names no connection, or lengths between crosses no series.
std::optional<JobToChooseFor> to_choose_for(const Job& job);

// In the order in which they are ranked.
enum class ChoiceResult { as_is, cut, no };
template <> struct Words<ChoiceResult> { static constexpr std::array all{"as-is", "cut", "no"}; };

// One check's figures, without what is said of them: thousandths of its unit, as in Check.
struct CheckFigures {
    CheckResult result = CheckResult::not_checked;
    CheckUnit unit = CheckUnit::none;
    std::optional<std::int64_t> value, worst, limit;
};
using AllFigures = PerEach<CheckId, CheckFigures>;

// What a check's worst case leaves beyond what it is held to (the closing clearance to its floor, an overlap to its limit, the guards to 0),
// as a fraction of the check's limit; below 0 where it warns or fails.
struct Margin {
    CheckId check = CheckId::closing_clearance;
    Length left, limit;  // limit above 0
    std::int64_t thousandths() const;  // rounded down
};
bool operator<(const Margin& one, const Margin& other);

// Why a series has no such shaft at all: without a wide-angle joint for this end, or without a word from which cross its closed lengths run.
struct SeriesWithoutJoint { End end; };
struct SeriesWithoutReference {};
// Else the first check that fails, in the order of CheckId.
using WhyNotServed = std::variant<SeriesWithoutJoint, SeriesWithoutReference, Check>;

struct Choice {
    std::string series;
    Length closed;                        // as listed
    std::optional<Reference> reference;   // of that; nothing without a wide-angle joint
    PerEach<End, JointKind> joint;        // as asked; where either will do: what leaves less to cut, then fewer warnings, then fewer wide-angle joints
    ChoiceResult result = ChoiceResult::no;
    std::optional<CutPlan> plan;          // nothing where the result is no: nothing may print what must not be cut
    std::optional<WhyNotServed> why_not;  // where the result is no
    std::optional<Margin> least_margin;   // of all checks that have a worst case; nothing where none could be made
    AllFigures checks;                    // empty ones of a series without the joint or its reference
    std::optional<Money> price{};         // of such a new shaft, where the workshop states it

    Length cut() const;                   // the greatest off a drive tube; 0 where nothing is cut. `plan` must be there
};

// A shaft of a series that would serve if it were made to order.
struct ChoiceToOrder {
    std::string series;
    Length closed;
    std::optional<Reference> reference;
    PerEach<End, JointKind> joint;
    std::vector<OpenPoint> open;          // what must be known before it is made; empty: it can be built
    std::optional<Margin> least_margin;
    AllFigures checks;
};

struct Choices {
    std::string order, machine;               // the latter may be empty
    Units units = Units::mm;                  // of the documents
    // Those that serve first: as they are, then the least cut, then the greatest least margin, then as the catalogue lists them. Then
    // the others as the catalogue lists them.
    std::vector<Choice> choices;
    std::size_t serving = 0;                  // how many of them serve
    std::optional<std::size_t> nearest;       // where none serves: the one whose least margin is the greatest; nothing where none has any
    std::vector<std::string> without_lengths; // series that list no closed length
    std::vector<ChoiceToOrder> to_order;      // those that can be built first, then the greatest least margin; one a series at most
    std::optional<Currency> currency{};       // of prices; nothing where the workshop states none
    PricesStated stated = PricesStated::without_tax;
};

// How many of the series are done; from any thread, one call at a time.
using ChooseProgress = std::function<void(std::size_t done, std::size_t of)>;

// `units`: of the documents; in inches the saw has its own step. Works in as many threads as there are processors.
// What a machine's geometry gives is computed once for all shafts of the same yokes and spacings.
Choices choose(const JobToChooseFor& wanted, const Catalogue& catalogue, const Workshop& workshop, Units units, const ChooseProgress& progress = {});

// The job that a choice was answered by: that shaft as the catalogue describes it, before anybody has measured it.
Job job_of(const JobToChooseFor& wanted, const Choice& choice, const Catalogue& catalogue, const Workshop& workshop);

// The order by which it would be made.
BuildOrder order_of(const JobToChooseFor& wanted, const ChoiceToOrder& choice);

}  // namespace shaftcut
