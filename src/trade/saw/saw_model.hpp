// A saw task as whole numbers: kerf and trims folded in, equal lengths merged, common divisors removed.
#pragma once

#include "shaftcut/trade/saw/saw.hpp"

namespace shaftcut::saw {

using Counts = std::vector<std::int64_t>;

struct CutSize {
    Length length;           // of the piece
    std::int64_t size = 0;   // length + kerf, in the model's unit
    std::int64_t count = 0;  // pieces wanted, at least 1
};

struct BarKind {
    std::size_t stock = 0;       // index into SawTask::stock
    std::int64_t capacity = 0;   // bar − trims + kerf, in the model's unit, rounded down to a length that pieces can reach
    std::int64_t available = 0;  // never more than the pieces wanted
    std::int64_t cost = 0;       // in the model's unit of cost
};

struct Model {
    std::vector<CutSize> sizes;   // largest first
    std::vector<BarKind> bars;    // those that hold at least one piece, in the order of the stock
    std::int64_t pieces = 0;      // wanted in all
    std::int64_t cost_scale = 1;  // millionths in the model's unit of cost
};

struct Part {
    std::size_t size = 0;  // index into Model::sizes
    std::int64_t count = 0;
    bool operator==(const Part&) const = default;
};

// What one bar holds: parts in rising order of their index, each at least once.
struct Pattern {
    std::size_t bar = 0;  // index into Model::bars
    std::vector<Part> parts;
    bool operator==(const Pattern&) const = default;
};

struct PackedBars {
    Pattern pattern;
    std::int64_t count = 0;
};

using Packing = std::vector<PackedBars>;

// The task must be within its limits and hold at least one piece (plan_saw() sees to it).
Model make_model(const SawTask& task);

Counts wanted(const Model& model);                            // count of each size
Counts available(const Model& model);                         // of each bar
Counts bars_used(const Model& model, const Packing& packing);  // of each bar

std::int64_t filled(const Model& model, const Pattern& pattern);   // sum of the sizes in it
std::int64_t cost_of(const Model& model, const Packing& packing);  // in the model's unit

// Equal patterns joined, empty ones dropped, in a fixed order: by bar, fullest first, then by parts.
Packing tidied(const Model& model, Packing packing);

}  // namespace shaftcut::saw
