#include "source/faults.hpp"

#include <algorithm>
#include <tuple>

namespace shaftcut {

void Faults::add(Spot spot, std::string wrong, std::string right)
{
    ++count_;
    if (!full()) kept_.push_back({place(spot), std::move(wrong), std::move(right)});
}

Problems Faults::listed() const
{
    Problems sorted = kept_;
    std::stable_sort(sorted.begin(), sorted.end(), [](const Problem& a, const Problem& b) {
        return std::tie(a.place.line, a.place.column) < std::tie(b.place.line, b.place.column);
    });
    if (count_ <= most_listed) return sorted;
    sorted.resize(most_listed);
    sorted.push_back({sorted.back().place, std::to_string(count_ - most_listed) + " more faults are not listed", "mend those above first"});
    return sorted;
}

}  // namespace shaftcut
