#include "cut/deciding.hpp"

namespace shaftcut {
namespace {

// Of the fits that have the deciding length the one known least well; null where none has it.
template <class Of>
const FitReading* deciding_among(const std::vector<FitReading>& fits, const std::optional<Toleranced>& deciding, const Of& of)
{
    const FitReading* found = nullptr;
    for (const FitReading& fit : fits) {
        const std::optional<Toleranced>& length = of(fit.fit);
        if (!length || !deciding || length->value != deciding->value) continue;
        if (!found || length->plus_minus > of(found->fit)->plus_minus) found = &fit;
    }
    return found;
}

}  // namespace

const ExtremeLength* deciding_shortest(const std::vector<FitReading>& fits, const Fit& deciding)
{
    const FitReading* fit = deciding_among(fits, deciding.shortest, [](const Fit& of) -> const auto& { return of.shortest; });
    return fit ? fit->computed_shortest() : nullptr;
}

const ExtremeLength* deciding_longest(const std::vector<FitReading>& fits, const Fit& deciding, Range range)
{
    const FitReading* fit = deciding_among(fits, deciding.longest[range], [&](const Fit& of) -> const auto& { return of.longest[range]; });
    return fit ? fit->computed_longest(range) : nullptr;
}

const ExtremeAngle* deciding_angle(const std::vector<FitReading>& fits, const Fit& deciding, End end, Range range)
{
    for (const FitReading& fit : fits)
        if (deciding.angles[end][range] && fit.fit.angles[end][range] == deciding.angles[end][range]) return fit.computed_angle(end, range);
    return nullptr;
}

}  // namespace shaftcut
