// A second implementation of the method, written from its description alone and sharing nothing with the program but the
// structs of the job, the catalogue and the names of checks: the differential test compares the two on random jobs.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <vector>

#include "shaftcut/trade/checks/checks.hpp"
#include "shaftcut/trade/checks/confirmation.hpp"
#include "shaftcut/trade/data/catalogue.hpp"
#include "shaftcut/trade/data/job.hpp"
#include "shaftcut/trade/order/work_order.hpp"

namespace shaftcut::test::plain {

using Um = std::int64_t;          // micrometres
using Maybe = std::optional<Um>;  // micrometres, or not known

inline constexpr std::size_t check_count = Words<CheckId>::all.size();

struct Figure {
    Um value = 0;
    Um plus_minus = 0;
};
using MaybeFigure = std::optional<Figure>;

// Index 0: the inner half, which carries the inner tube; 1: the outer.
struct PlainHalf {
    std::size_t end = 0;                 // 0 tractor, 1 implement
    const Series* series = nullptr;      // the half's own, the shaft's, or none
    bool of_another = false;             // it names another series than the shaft's, or none
    MaybeFigure length;                  // measured, or derived from the closed length
    bool measured = false;
    MaybeFigure guard;                   // of a guard that is used
    bool guard_used = true;
    MaybeFigure shoulder;                // as stated by the job or a series
    bool shoulder_of_job = false;
    Maybe series_shoulder;
    Maybe cut_to;                        // what an earlier sheet kept of it
    Maybe guard_shoulder, guard_seat, seat, least_tube, hole;
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

// What all fits together ask of one range: its greatest length, the greatest with its own tolerance added, and whether a fit
// leaves the range out, so that no more is known than that it is at least this.
struct PlainReach {
    Um longest = 0;
    Um at_most = 0;
    bool at_least_only = false;
};

struct PlainDeciding {
    Maybe shortest;                                      // nothing where a fit cannot be read
    Um shortest_at_worst = 0;                            // the least S - u_S
    std::array<std::optional<PlainReach>, 3> longest;
    std::array<std::array<Maybe, 3>, 2> angle;
    std::array<std::array<bool, 3>, 2> angle_left_out{};  // one fit states it and another does not
};

struct PlainCut {
    std::array<Um, 2> cut{}, half{};
    std::array<Maybe, 2> guard_cut{}, guard_half{};
    Um closed = 0;
    std::array<bool, 2> spared{};  // sawn by an earlier sheet as it allowed: not again
};

// A half with the face that stops its tube: the inner half's path ends at the outer half's shoulder.
struct PlainPath {
    Um value = 0;
    Um tolerance = 0;  // of its distance from the closed length
};

struct PlainStops {
    std::array<std::optional<PlainPath>, 2> paths;  // of halves that were measured, with shoulders that are stated
    Maybe model;                                    // M
    std::array<bool, 2> sets_model{};               // whose path it is
    Um tolerance = 0;                               // of C - M
    bool apart = false;
    std::optional<std::array<Um, 2>> shoulders;     // s_A, s_B as the cut uses them
};

struct PlainCheck {
    CheckResult result = CheckResult::not_checked;
    Maybe value, worst, limit;
};

struct PlainConfirmation {
    Confirmed what = Confirmed::closed;
    Maybe expected, plus_minus;
    bool operator==(const PlainConfirmation&) const = default;
};

// Everything read and computed, before the checks.
struct PlainShaft {
    const Job* job = nullptr;
    const Catalogue* catalogue = nullptr;
    const Series* series = nullptr;
    const Workshop* workshop = nullptr;
    Figure closed_as_stated, closed;
    bool from_outer_cross = false;
    std::array<PlainHalf, 2> halves;
    std::vector<PlainFit> fits;
    PlainDeciding deciding;
    PlainStops stops;
    std::optional<PlainCut> cut;
    Um clearance = 0;
};

struct PlainAnswer {
    PlainShaft shaft;
    Verdict verdict = Verdict::refused;
    std::array<PlainCheck, check_count> checks;
    std::vector<PlainConfirmation> confirm;  // in the order of Confirmed
};

// By 0.01 mm or more.
bool below(Um a, Um b);
// Not more apart than the tolerance, 0.01 mm ignored.
bool within(Um tolerance, Um apart);
Figure figure_of(const Measurement& measured, const Workshop& workshop);
MaybeFigure figure_of(const std::optional<Measurement>& measured, const Workshop& workshop);
bool is_wide(const PlainShaft& shaft, std::size_t end);
Um spacing(const PlainShaft& shaft, std::size_t end);

// Where its closed length starts when the job does not say: true for the outer cross; nothing where nobody knows.
std::optional<bool> usual_from_outer_cross(const Series* series, Shape shape);

// t + 2u: how far what was sawn may read from what was to be kept.
Um saw_and_two_tapes(const PlainShaft& shaft, Um tape);

PlainHalf read_half(const PlainShaft& shaft, std::size_t which);
PlainFit read_fit(const JobFit& from, const PlainShaft& shaft, const std::optional<PlainMachine>& machine);
PlainDeciding decide(const std::vector<PlainFit>& fits);
bool fit_contradicts(const PlainFit& fit);
// Whether a measured length lies from the machine's own extreme by more than its tolerance.
bool disputed(const PlainFit& fit);
// Whether the ripple is the machine's: no working angle of a standard joint was measured.
bool machine_ripples(const PlainFit& fit, const Job& job);

PlainStops find_stops(const PlainShaft& shaft);
// Whether the path of this shoulder, the other half's, bears it out: half measured, shoulder stated, and near the closed length.
bool confirmed(const PlainShaft& shaft, std::size_t shoulder);
// A stop that is to be measured before sawing.
bool asks_for_stop(const PlainShaft& shaft, std::size_t shoulder);
// A measured half that is short by its own figure alone.
bool asks_for_half(const PlainShaft& shaft, std::size_t half);
PlainCheck consistency(const PlainShaft& shaft);

// A limit as the job, else the series, else the workshop, else the default of method 4 has it.
LimitValue limit_of(const PlainShaft& shaft, Limit limit);
Um length_limit(const PlainShaft& shaft, Limit limit);
// Whether the job sets any limit looser than the workshop does.
bool any_limit_loosened(const PlainShaft& shaft);

CheckResult graded(bool fails, bool warns);
PlainCheck closing_clearance(const PlainShaft& shaft);
PlainCheck joint_angle(const PlainShaft& shaft, std::size_t end);
PlainCheck irregularity(const PlainShaft& shaft);
PlainCheck locking(const PlainShaft& shaft);
PlainCheck connection(const PlainShaft& shaft);
PlainCheck overload_device(const PlainShaft& shaft);
PlainCheck rating(const PlainShaft& shaft);
PlainCheck condition(const PlainShaft& shaft);
// An exposed lock on a primary shaft.
bool exposed_lock(const PlainShaft& shaft);

std::array<PlainCheck, check_count> plain_checks(const PlainShaft& shaft);
std::vector<PlainConfirmation> confirmations(const PlainShaft& shaft);

// `machines`: for each fit what its geometry gives, where it has one; may be empty.
PlainAnswer answer(const Job& job, const Catalogue& catalogue, const Workshop& workshop, Units units, const std::vector<std::optional<PlainMachine>>& machines = {});

}  // namespace shaftcut::test::plain
