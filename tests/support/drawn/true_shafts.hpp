// Shafts as they truly are, the positions that they must truly reach, and the job of somebody who measured both within the
// stated tolerances. What the program answers is then done to the true shaft. Shaft number n is the same on every machine.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <vector>

#include "shaftcut/trade/order/work_order.hpp"
#include "support/plain/plain_method.hpp"
#include "support/drawn/random_jobs.hpp"

namespace shaftcut::test {

using Um = std::int64_t;  // micrometres

// Telescoping. Ranges: 0 working, 1 turning, 2 standing.
struct TrueFit {
    Um shortest = 0;
    std::array<Um, 3> longest{};
};

// Index 0: the inner half. A shoulder is the face on this half that stops the other half's tube.
struct TrueShaft {
    std::array<Um, 2> half{}, shoulder{}, guard{};
    std::vector<TrueFit> fits;
    Um path(std::size_t i) const { return half[i] + shoulder[1 - i]; }
    Um closed() const { return std::max(path(0), path(1)); }
};

struct Measured {
    World world;
    TrueShaft shaft;
    bool stop_altered = false;  // by more than its tolerance
    bool half_altered = false;  // likewise
};

// What nobody measured: `as_described`, each figure lies within its tolerance of what job and series say; `altered`, a stop
// that does not set the closed length lies elsewhere than the series has it, or a half that is left out was cut before.
enum class Draw { as_described, altered };
Measured measured_shaft(std::uint64_t number, Draw draw);

// What an answer does and promises, be it the program's or the second implementation's.
struct Promise {
    Verdict verdict = Verdict::refused;
    std::array<Um, 2> cut{}, kept{}, guard_cut{};
    std::array<std::optional<Um>, 2> guard_kept{};
    Um saw = 0;                                // its tolerance
    Um in_line_sum = 0;                        // the closed length as stated less the telescoping one
    std::array<std::optional<Um>, 18> worst{}; // of the checks that pass or warn, in the order of CheckId
    std::array<bool, 3> longest_known{};
    struct Asked {
        Confirmed what;
        std::optional<Um> expected, plus_minus;
    };
    std::vector<Asked> confirm;
    std::optional<Um> worst_of(CheckId id) const { return worst[static_cast<std::size_t>(id)]; }
};
Promise promise_of(const WorkOrder& order);
Promise promise_of(const plain::PlainAnswer& answer);

// The true shaft after the cut, by the worse of both ways of marking it and with the saw's tolerance against it.
struct Sawn {
    Um clearance = 0;                               // what is left to push together at the shortest length of all fits
    std::array<std::optional<Um>, 3> overlap{};     // at the longest of all fits
    std::optional<Um> guard_cover;                  // where both guards were measured
};
Sawn saw(const TrueShaft& shaft, const Promise& promise);

// Whether what the answer asks to be confirmed is, on the true shaft, other than expected, so that nothing is sawn.
bool confirmation_stops(const TrueShaft& shaft, const Promise& promise);

}  // namespace shaftcut::test
