#include "source/faults.hpp"

#include <algorithm>
#include <concepts>

namespace shaftcut {
namespace {

// Those that no list has are told apart by their places.
bool are_same(const FaultFinding& one, const FaultFinding& other)
{
    return one.index() == other.index() && std::visit([&]<class Found>(const Found& found) {
               if constexpr (std::equality_comparable<Found>) return found == std::get<Found>(other);
               else return false;
           }, one);
}

}  // namespace

bool Faults::repeats(const Whereabouts& where, const FaultFinding& what)
{
    if (where.column.empty()) return false;
    const auto end = kept_.begin() + static_cast<std::ptrdiff_t>(std::min(kept_.size(), most_repeated));
    const auto first = std::find_if(kept_.begin(), end, [&](const Kept& kept) { return kept.where.column == where.column && are_same(kept.what, what); });
    if (first == end || first->where.spot.line == where.spot.line) return false;
    ++first->more_lines;
    return true;
}

void Faults::add(Whereabouts where, FaultFinding what)
{
    ++count_;
    if (repeats(where, what)) ++repeated_;
    else if (!full()) kept_.push_back({std::move(where), std::move(what)});
}

Fault Faults::fault_of(const Kept& kept, const std::map<Spot, std::string>& paths) const
{
    const auto found = kept.where.element ? paths.find(*kept.where.element) : paths.end();
    std::string path = (found == paths.end() ? "" : found->second) + kept.where.path;
    if (path.starts_with('/')) path.erase(0, 1);
    return {place(kept.where.spot), std::move(path), kept.what, kept.more_lines};
}

FaultList Faults::listed(const PathFinder& path_finder) const
{
    std::vector<Kept> sorted = kept_;
    std::stable_sort(sorted.begin(), sorted.end(), [](const Kept& a, const Kept& b) { return a.where.spot < b.where.spot; });
    if (sorted.size() > most_listed) sorted.erase(sorted.begin() + most_listed, sorted.end());
    std::set<Spot> elements;
    for (const Kept& kept : sorted)
        if (kept.where.element) elements.insert(*kept.where.element);
    const std::map<Spot, std::string> paths = path_finder ? path_finder(elements) : std::map<Spot, std::string>();
    FaultList list;
    for (const Kept& kept : sorted) list.push_back(fault_of(kept, paths));
    if (count_ - repeated_ > most_listed) list.push_back({list.back().place, {}, TooMany{ManyOf::faults, count_ - repeated_ - most_listed}});
    return list;
}

}  // namespace shaftcut
