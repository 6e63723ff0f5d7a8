// What a shaft that was sawn is, by what is measured of it: right, to be sawn again, or not to be used.
//
// For each tube and guard, with m as read now, its kept length and its ± (expected_after_cut.hpp), S shortest, k closing clearance:
//
//     right      m is not more than kept + ±, or nothing need come off it; and no overlap, no tube and no guard is too short
//     saw more   else: max(up(need), least cut), with need = m + the other half's shoulder − (S − k); of a guard m + guard shoulder
//                − (S − k), and what it stands beyond its tube; if every check holds after it
//     too short  by the greatest of what an overlap, a tube or a guard lacks
//
// A tube within its ± was sawn as the sheet allows. While all are, the sheet's own figures stand: overlaps by their value cannot be
// held against readings that carry the saw's and two tapes' ±, and the clearance then passes down to the sheet's worst less
//
//     2u where the closed length was read, u that of the tape that reads now; else 2u + u_a, u_a that of the half that stops it
//
// for a half that reads kept + t + u_a + u may be u longer, and be one that was read right before. As soon as a tube lies outside, all
// lengths are as read now, each with its u alone: the checks are made again of that shaft, with the shoulders of the cut shifted by a
// closed length that was read, as it was before the cut. Its clearance may then fall short of k where no tube is to be sawn, while its
// worst is above 0.
// Checked by after_cut_test, rings_test, and by after_cut_truth_test: true shafts sawn as allowed are right, and none is called right that has
// less than is said here.
#pragma once

#include <optional>
#include <vector>

#include "shaftcut/trade/data/measured_after_cut.hpp"
#include "shaftcut/trade/order/expected_after_cut.hpp"

namespace shaftcut {

// Each worse than the one before. `measure`: something that decides was not measured, or contradicts the rest.
enum class AfterCutVerdict { right, saw_more, measure, too_short };
template <> struct Words<AfterCutVerdict> { static constexpr std::array all{"right", "saw-more", "measure", "too-short"}; };

template <> struct Words<SawnPart> { static constexpr std::array all{"inner_tube", "outer_tube", "inner_guard", "outer_guard"}; };

struct SawMore {
    Length off, need;
    bool least_cut = false;  // the saw's least cut is more than the need
};

struct PartAfterCut {
    SawnPart part = SawnPart::inner_tube;
    AfterCutVerdict result = AfterCutVerdict::measure;
    std::optional<Length> measured;  // from the inner cross
    std::optional<Expected> expected;  // nothing of a guard that was not measured before; by the tape that read it, or the workshop's
    std::optional<SawMore> saw_more;
    Length short_by;                 // 0 unless too short
};

// What the closed length says beside the halves. `longer`: a burr, chips, a guard that meets the other, or a bent tube stops it.
// `shorter`: a half was sawn short, or its stop lies deeper.
enum class ClosedAfterCutIs { as_expected, longer, shorter };

struct ClosedFinding {
    ClosedAfterCutIs is = ClosedAfterCutIs::as_expected;
    Length measured;    // telescoping
    Expected expected;  // of halves as they read; likewise
};

// What a reading between the rings shows. `outside`: not as expected, and what it proves holds. `too_little`: it does not.
// `not_the_shortest`: further apart than the shortest can be; it proves nothing. `not_closed`: nor does it where the two lengths over
// both outer ends are not known to agree, or no closed length was read.
enum class RingsShow { as_expected, outside, too_little, not_the_shortest, not_closed };

struct RingsFinding {
    std::optional<Range> longest;  // which; nothing: at the shortest
    RingsShow show = RingsShow::not_closed;
    Length pulled_out;             // the reading less P
    OnRings expected;
    std::optional<Length> proven;  // the clearance, or the overlap
    std::optional<Length> least;   // the least that will do
};

struct AfterCut {
    AfterCutVerdict verdict = AfterCutVerdict::measure;
    std::vector<PartAfterCut> parts;      // in the order of SawnPart, but for guards that are not used again
    std::optional<ClosedFinding> closed;  // where it was read
    std::vector<RingsFinding> rings;      // shortest first
    bool as_the_sheet = false;            // every tube is within its ±: the sheet's figures stand
    // Neither tube is, but the other way round both are, and no closed length bears them out as they stand: nothing is sawn on that.
    bool perhaps_exchanged = false;
    // The shaft that is judged, as it is now, telescoping.
    PerEach<Tube, Length> half;
    PerEach<Tube, std::optional<Length>> guard;
    Length closes_at;
    Overlaps overlap;
    std::vector<Check> checks;  // one for each CheckId, in its order
};

// What its documents are told.
struct ShaftAfterCut {
    WorkOrder order;
    AfterCut found;
};

// Nothing for an answer that refuses. `order` is work_up()'s of this job and catalogue.
std::optional<AfterCut> after_cut(const WorkOrder& order, const Job& job, const Catalogue& catalogue, const MeasuredAfterCut& measured);

}  // namespace shaftcut
