// Collects what is wrong with one file, so that its reader goes on and a user sees every fault at once.
#pragma once

#include <cstddef>
#include <functional>
#include <map>
#include <set>
#include <string>
#include <vector>

#include "shaftcut/words/problem.hpp"
#include "source/findings.hpp"

namespace shaftcut {

// `path` as in Problem. `more_lines`: how many lines of a list below it have the same fault.
struct Fault {
    Place place;
    std::string path;
    FaultFinding what;
    std::size_t more_lines = 0;
};

using FaultList = std::vector<Fault>;

// Where a fault is. `spot`: what its message names. `path`: of a list the whole of it; of XML what follows the path of the element or attribute
// that begins at `element`: "@length" of an attribute, "/closed" of a child that is missing. `column`: of a list, so that a fault that it has in
// many lines is listed once.
struct Whereabouts {
    Spot spot;
    std::string path = {};
    std::optional<Spot> element = {};
    std::string column = {};
};

class Faults {
public:
    // At most this many are listed; a last one says how many more there are.
    static constexpr std::size_t most_listed = 200;
    // The paths of the elements and attributes that begin at these spots.
    using PathFinder = std::function<std::map<Spot, std::string>(const std::set<Spot>&)>;

    // `file` is the name by which messages call the file.
    explicit Faults(std::string file) : file_(std::move(file)) {}

    void add(Whereabouts where, FaultFinding what);
    void add(Spot spot, FaultFinding what) { add(Whereabouts{spot}, std::move(what)); }
    bool none() const { return count_ == 0; }
    std::size_t count() const { return count_; }
    // True once further faults are counted but no longer kept: nobody need go to the trouble of finding out more.
    bool full() const { return kept_.size() == most_kept; }
    // The faults by line, column, and order of finding; of a list's that are the same in one column the first.
    FaultList listed(const PathFinder& paths = {}) const;
    Place place(Spot spot) const { return {file_, spot.line, spot.column}; }

private:
    // More than are listed, because they are found in another order than that of their places.
    static constexpr std::size_t most_kept = 5 * most_listed;
    // So many faults are looked for in the lines below them: a hostile list cannot make it slow.
    static constexpr std::size_t most_repeated = 100;

    struct Kept {
        Whereabouts where;
        FaultFinding what;
        std::size_t more_lines = 0;
    };

    bool repeats(const Whereabouts& where, const FaultFinding& what);

    Fault fault_of(const Kept& kept, const std::map<Spot, std::string>& paths) const;

    std::string file_;
    std::vector<Kept> kept_;
    std::size_t count_ = 0;
    std::size_t repeated_ = 0;
};

}  // namespace shaftcut
