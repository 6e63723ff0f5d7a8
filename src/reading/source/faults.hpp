// Collects what is wrong with one file, so that its reader goes on and a user sees every fault at once.
#pragma once

#include <compare>
#include <cstddef>
#include <string>

#include "shaftcut/words/problem.hpp"

namespace shaftcut {

// Line and column in the file that is being read, as in Place.
struct Spot {
    int line = 1;
    int column = 1;
    auto operator<=>(const Spot&) const = default;
};

class Faults {
public:
    // At most this many are listed; a last line says how many more there are.
    static constexpr std::size_t most_listed = 200;

    // `file` is the name by which messages call the file.
    explicit Faults(std::string file) : file_(std::move(file)) {}

    void add(Spot spot, std::string wrong, std::string right);
    bool none() const { return count_ == 0; }
    std::size_t count() const { return count_; }
    // True once further faults are counted but no longer kept: nobody need go to the trouble of a good sentence.
    bool full() const { return kept_.size() == most_kept; }
    // The faults by line, column, and order of finding.
    Problems listed() const;
    Place place(Spot spot) const { return {file_, spot.line, spot.column}; }

private:
    // More than are listed, because they are found in another order than that of their places.
    static constexpr std::size_t most_kept = 5 * most_listed;

    std::string file_;
    Problems kept_;
    std::size_t count_ = 0;
};

}  // namespace shaftcut
