// How a shaft made to order is put together: the work in order, each operation with the figures that it needs. Common practice of
// published manuals, in our own words.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "shaftcut/trade/data/terms.hpp"
#include "shaftcut/words/length.hpp"

namespace shaftcut {

enum class Work { saw, deburr, drill, yoke, cross, grease, device, phase, guard, bearing, chain, label, check };
template <> struct Words<Work> {
    static constexpr std::array all{"saw", "deburr", "drill", "yoke", "cross", "grease", "device", "phase", "guard", "bearing", "chain", "label", "check"};
};

struct Operation {
    Work work = Work::check;
    std::string does;  // a sentence or two in the documents' units
};

struct BuildPlan;

// The length that the finished shaft is pulled to on the bench, at the reference of its closed length: the fit's greatest known, else
// the greatest that it may be pulled to. Nothing where neither is known.
std::optional<Length> longest_to_try(const BuildPlan& plan);

// "17 mm", in inches "17 mm (0.669 in)": where a hole is drilled, in millimetres first, for a sixteenth of an inch may be half a
// millimetre beside it.
std::string hole_text(Length length, Units units);

// Of a plan whose shaft is built but for its operations.
std::vector<Operation> operations_of(const BuildPlan& plan);

}  // namespace shaftcut
