// Branches of a search: pieces sawn from one bar, or never from one bar.
//
// For two sizes of a branch, either some bar of a plan holds a piece of each, and then one of each can be joined to a piece that is
// cut as a whole, or no bar does. So the two branches together hold every plan. (D. M. Ryan and B. A. Foster's rule, 1981, here
// for pieces that come several times; checked by tests/trade/saw/saw_tree_test.cpp against enumeration.)
#pragma once

#include "saw/saw_knapsack.hpp"

namespace shaftcut::saw {

struct Branch {
    Counts counts;  // of each size of the model, what is still to be cut
    Apart apart;
};

// All pieces, any together.
Branch whole_task(const Model& model);

// True when `a` and `b` name sizes of the branch that can share a bar; of one size it takes two pieces.
bool can_join(const Branch& branch, std::size_t a, std::size_t b);

// One piece of each is now one piece of size `joint`, which keeps apart from what either kept apart from. can_join() must hold.
Branch joined(Branch branch, std::size_t a, std::size_t b, std::size_t joint);

// No bar holds both; of one size: at most one. can_join() must hold.
Branch kept_apart(Branch branch, std::size_t a, std::size_t b);

// The size of pieces of a and b joined.
CutSize joint_size(const Model& model, std::size_t a, std::size_t b);

// True when the pattern holds nothing that is kept apart.
bool permitted(const Apart& apart, const Pattern& pattern);

}  // namespace shaftcut::saw
