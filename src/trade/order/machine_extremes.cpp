#include "shaftcut/trade/order/machine_extremes.hpp"

namespace shaftcut {
namespace {

void keep_greater(std::optional<ExtremeAngle>& kept, const ExtremeAngle& found)
{
    if (!kept || found.angle > kept->angle) kept = found;
}

void take(MachineExtremes& extremes, Range range, const RangeExtremes& found)
{
    auto& longest = extremes.longest[range];
    if (!longest || found.longest.length > longest->length) longest = found.longest;
    keep_greater(extremes.angles[End::tractor][range], found.tractor);
    keep_greater(extremes.angles[End::implement][range], found.implement);
}

}  // namespace

MachineExtremes machine_extremes(const std::vector<FitReading>& fits)
{
    MachineExtremes extremes;
    for (const FitReading& fit : fits) {
        if (!fit.geometry) continue;
        const OperatingLengths& lengths = fit.geometry->lengths;
        if (!extremes.shortest || lengths.shortest.length < extremes.shortest->length) extremes.shortest = lengths.shortest;
        for (const Range range : all_ranges)
            if (lengths.ranges[range]) take(extremes, range, *lengths.ranges[range]);
    }
    return extremes;
}

}  // namespace shaftcut
