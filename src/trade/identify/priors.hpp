// How probable things are before anything is measured. All are the project's own choice: a repair shop sees few shafts from outside its catalogue, and some
// that were repaired with parts of another series.
#pragma once

#include <array>
#include <cstddef>

#include "shaftcut/trade/data/terms.hpp"

namespace shaftcut::identifying {

inline constexpr double slip = 0.015;  // a figure is grossly wrong: misread, mistyped, the wrong part

// A shaft as a whole. Mixed: one part is of another series than the other two, or all three differ.
inline constexpr double prior_one = 0.86, prior_none = 0.06, prior_mixed = 0.08;
inline constexpr double each_part_odd = 0.3, all_differ = 0.1;  // of the mixed
// Of a mixed shaft: the two like parts, and the odd part, are of no series here.
inline constexpr double others_of_none = 0.1, odd_of_none = 0.2;

// A series that is not in the catalogue has a joint, or tubes, as one has that is: makers share sizes. Its two ends have the same joint.
inline constexpr double joint_shared = 0.7, tubes_shared = 0.4, ends_alike = 0.7;
// Where it has its own: a span is so many times the cap (trade sizes run 2.4 to 3.0, from memory); one tube's width so many times the other's; the two pairs
// of a cross are alike half the time; millimetres that like sizes read apart.
inline constexpr double span_to_cap = 2.6, span_to_cap_deviation = 0.3, inner_to_outer = 0.82, inner_to_outer_deviation = 0.06;
inline constexpr double pairs_alike = 0.5, like_pairs_apart = 0.3, like_ends_apart = 0.25;

// What is stated of a figure's place is right: which cross, which tube, which shape, which way a cross is held or greased.
inline constexpr double place_right = 0.95, role_right = 0.97, shape_right = 0.985, look_right = 0.97;
// A joint is a wide-angle one where the series lists one; lists none (catalogues have gaps); is not known.
inline constexpr double wide_listed = 0.35, wide_unlisted = 0.02, wide_of_none = 0.25;
// A wide-angle joint's cross whose second pair the catalogue does not state has both pairs alike.
inline constexpr double unstated_pair_alike = 0.5;
// Shapes of tubes of no series here, in the order of Shape.
inline constexpr std::array<double, 6> shape_of_none{0.40, 0.20, 0.20, 0.10, 0.07, 0.03};
static_assert(shape_of_none.size() == Words<Shape>::all.size());

// A guard's writing names the right series; of a mixed shaft that of the two like parts or the odd part's, where a joint is odd and where the tubes are, for a
// guard goes with its tubes.
inline constexpr double writing_right = 0.8;
struct MixedWriting {
    double names_others = 0, names_odd = 0;
};
inline constexpr MixedWriting writing_odd_joint{0.7, 0.1}, writing_odd_tubes{0.2, 0.6};
// A wrong writing is a name of the catalogue; of these it is one of the nearest few series whose guards fit the tubes.
inline constexpr double wrong_known = 0.75, wrong_near = 0.7;
inline constexpr std::size_t near_series = 4;

// What is called certain, what is listed, and what a measurement must tell to be worth making.
inline constexpr double certain = 0.95, listed_from = 0.001, listed_in_all = 0.9995, listed_worth = 0.01;
inline constexpr double worth_bits = 0.05, like_rate = 0.02;
// What a series must hold to be named among those that stay together, and of how many at most.
inline constexpr double together_from = 0.02;
inline constexpr std::size_t together_most = 6;
// Two series are told apart by figures so many standard deviations apart.
inline constexpr double told_apart = 4;

}  // namespace shaftcut::identifying
