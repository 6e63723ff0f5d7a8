#include "shaftcut/trade/data/shaft_title.hpp"

namespace shaftcut {

ShaftTitle shaft_title(const JobShaft& shaft, const Series* series)
{
    return {series ? series->name : "", series ? std::optional(series->shape) : shaft.shape, shaft.role, shaft.speed, shaft.built};
}

}  // namespace shaftcut
