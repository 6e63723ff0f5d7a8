#include "saw/saw_branch.hpp"

#include <algorithm>

namespace shaftcut::saw {
namespace {

bool holds(const std::vector<std::size_t>& sizes, std::size_t size)
{
    return std::find(sizes.begin(), sizes.end(), size) != sizes.end();
}

void keep_apart(Apart& apart, std::size_t a, std::size_t b)
{
    if (holds(apart[a], b)) return;
    apart[a].push_back(b);
    if (a != b) apart[b].push_back(a);
}

}  // namespace

Branch whole_task(const Model& model)
{
    return {wanted(model), Apart(model.sizes.size())};
}

bool can_join(const Branch& branch, std::size_t a, std::size_t b)
{
    const std::size_t sizes = branch.counts.size();
    if (a >= sizes || b >= sizes || holds(branch.apart[a], b)) return false;
    return a == b ? branch.counts[a] >= 2 : branch.counts[a] >= 1 && branch.counts[b] >= 1;
}

Branch joined(Branch branch, std::size_t a, std::size_t b, std::size_t joint)
{
    if (joint >= branch.counts.size()) {
        branch.counts.resize(joint + 1, 0);
        branch.apart.resize(joint + 1);
    }
    --branch.counts[a];
    --branch.counts[b];
    ++branch.counts[joint];
    for (const std::size_t part : {a, b})
        for (const std::size_t other : std::vector<std::size_t>(branch.apart[part])) keep_apart(branch.apart, joint, other);
    return branch;
}

Branch kept_apart(Branch branch, std::size_t a, std::size_t b)
{
    keep_apart(branch.apart, a, b);
    return branch;
}

CutSize joint_size(const Model& model, std::size_t a, std::size_t b)
{
    return {model.sizes[a].length + model.sizes[b].length, model.sizes[a].size + model.sizes[b].size, 1};
}

bool permitted(const Apart& apart, const Pattern& pattern)
{
    const auto count_of = [&](std::size_t size) {
        for (const Part& part : pattern.parts)
            if (part.size == size) return part.count;
        return std::int64_t{0};
    };
    for (const Part& part : pattern.parts) {
        if (part.size >= apart.size()) continue;
        for (const std::size_t other : apart[part.size])
            if (other == part.size ? part.count > 1 : count_of(other) > 0) return false;
    }
    return true;
}

}  // namespace shaftcut::saw
