// A second implementation of the method, written from its description alone and sharing nothing with the program but the
// structs of the job, the catalogue and the names of checks: the differential test compares the two on random jobs.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <vector>

#include "shaftcut/trade/catalogue.hpp"
#include "shaftcut/trade/checks.hpp"
#include "shaftcut/trade/job.hpp"
#include "shaftcut/trade/work_order.hpp"

namespace shaftcut::test::plain {

using Um = std::int64_t;          // micrometres
using Maybe = std::optional<Um>;  // micrometres, or not known

struct Figure {
    Um value = 0;
    Um plus_minus = 0;
};
using MaybeFigure = std::optional<Figure>;

// Index 0: the inner half, which carries the inner tube; 1: the outer.
struct PlainHalf {
    std::size_t end = 0;  // 0 tractor, 1 implement
    MaybeFigure length, guard;
    Maybe shoulder, guard_shoulder, seat, least_tube, hole;
    bool forbidden = false;
    bool coated = false, end_stop = false, one_chain = false;
};

// What a machine's geometry gives, taken from where it is computed and proven (hitch_test, hitch_oracle_test).
struct PlainMachine {
    Figure shortest;
    std::array<MaybeFigure, 3> longest;
    std::array<std::array<Maybe, 3>, 2> angle;  // thousandths of a degree
    bool has_working_range = false;
    Maybe ripple;                               // thousandths of a per cent; empty: it cannot turn
};

// What one fit says, telescoping. Ranges: 0 working, 1 turning, 2 standing. Ends: 0 tractor, 1 implement.
struct PlainFit {
    MaybeFigure shortest;
    std::array<MaybeFigure, 3> longest;
    std::array<std::array<Maybe, 3>, 2> angle;  // thousandths of a degree
    bool unbent = false;                        // a longest was read in line for want of an angle
    bool shortest_measured = false;
    std::array<bool, 3> longest_measured{};
    std::array<std::array<bool, 3>, 2> angle_measured{};
    std::optional<PlainMachine> machine;
};

struct PlainCut {
    std::array<Um, 2> cut{}, half{}, guard_cut{};
    std::array<Maybe, 2> guard_half{};
    Um closed = 0;
    std::array<bool, 2> sets_closed{};
};

struct PlainCheck {
    CheckResult result = CheckResult::not_checked;
    Maybe value, worst, limit;
};

// Everything read and computed, before the checks.
struct PlainShaft {
    const Job* job = nullptr;
    const Catalogue* catalogue = nullptr;
    const Series* series = nullptr;
    const Workshop* workshop = nullptr;
    Figure closed;
    std::array<PlainHalf, 2> halves;
    std::vector<PlainFit> fits;
    PlainFit deciding;
    bool shoulders_disagree = false;
    std::optional<std::array<Um, 2>> shoulders;  // s_A, s_B as the cut uses them
    std::optional<PlainCut> cut;
    Um clearance = 0;
};

struct PlainAnswer {
    PlainShaft shaft;
    Verdict verdict = Verdict::refused;
    std::array<PlainCheck, 18> checks;
};

// By 0.01 mm or more.
bool below(Um a, Um b);
Figure figure_of(const Measurement& measured, const Workshop& workshop);
MaybeFigure figure_of(const std::optional<Measurement>& measured, const Workshop& workshop);
bool is_wide(const PlainShaft& shaft, std::size_t end);
Um spacing(const PlainShaft& shaft, std::size_t end);
bool closed_from_outer_cross(const PlainShaft& shaft);

PlainFit read_fit(const JobFit& from, const PlainShaft& shaft, const std::optional<PlainMachine>& machine);
PlainFit decide(const std::vector<PlainFit>& fits);
bool fit_contradicts(const PlainFit& fit);
// Whether a measured length lies from the machine's own extreme by more than its tolerance.
bool disputed(const PlainFit& fit);
// Whether the ripple is the machine's: no working angle of a standard joint was measured.
bool machine_ripples(const PlainFit& fit, const Job& job);

// A limit as the job, else the series, else the workshop, else the default of method 4 has it.
LimitValue limit_of(const PlainShaft& shaft, Limit limit);
// Whether the job sets any limit looser than the workshop does.
bool any_limit_loosened(const PlainShaft& shaft);

std::array<PlainCheck, 18> plain_checks(const PlainShaft& shaft);

// `machines`: for each fit what its geometry gives, where it has one; may be empty.
PlainAnswer answer(const Job& job, const Catalogue& catalogue, const Workshop& workshop, Units units, const std::vector<std::optional<PlainMachine>>& machines = {});

}  // namespace shaftcut::test::plain
