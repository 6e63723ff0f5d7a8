#include "shaftcut/trade/saw_finish.hpp"

#include <algorithm>

namespace shaftcut::saw {

Length leftover_of(const SawTask& task, const Model& model, const Pattern& pattern)
{
    Length left = task.stock[model.bars[pattern.bar].stock].length - task.trim_start - task.trim_end;
    for (const Part& part : pattern.parts) left -= part.count * (model.sizes[part.size].length + task.kerf);
    return std::max(left, Length());
}

Packing finished(const SawTask&, const Model&, Packing packing, const SawWatch&)
{
    return packing;
}

}  // namespace shaftcut::saw
