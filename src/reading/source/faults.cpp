#include "source/faults.hpp"

#include <algorithm>

namespace shaftcut {

void Faults::add(Whereabouts where, FaultFinding what)
{
    ++count_;
    if (!full()) kept_.push_back({std::move(where), std::move(what)});
}

Fault Faults::fault_of(const Kept& kept, const std::map<Spot, std::string>& paths) const
{
    const auto found = kept.where.element ? paths.find(*kept.where.element) : paths.end();
    std::string path = (found == paths.end() ? "" : found->second) + kept.where.path;
    if (path.starts_with('/')) path.erase(0, 1);
    return {place(kept.where.spot), std::move(path), kept.what};
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
    if (count_ > most_listed) list.push_back({list.back().place, {}, TooMany{ManyOf::faults, count_ - most_listed}});
    return list;
}

}  // namespace shaftcut
