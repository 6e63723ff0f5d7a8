#include "shaftcut/trade/identify/identified_shaft.hpp"

namespace shaftcut {

IdentifiedShaft identified(const Measures& measures, const Catalogue& catalogue, const std::string& owner, Units units)
{
    IdentifiedShaft shaft{measures, identify(catalogue, measures), {}, catalogue.series.size(), owner, units};
    if (const Series* series = find_series(catalogue, shaft.found.fits.series)) shaft.likeliest = *series;
    return shaft;
}

}  // namespace shaftcut
