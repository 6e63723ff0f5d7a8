#include "shaftcut/trade/data/rounding.hpp"

namespace shaftcut {

std::string figure_of(Rounded as, Length length, Units units, int decimals) { return figure(length, units, toward_of(as), decimals); }

std::string figure_of_with_unit(Rounded as, Length length, Units units, int decimals) { return figure_with_unit(length, units, toward_of(as), decimals); }

std::string figure_of_with_millimetres(Rounded as, Length length, Units units, int decimals) { return figure_with_millimetres(length, units, toward_of(as), decimals); }

std::string size_of_with_millimetres(Rounded as, Length negative, Units units, int decimals)
{
    const Toward toward = toward_of(as);
    const Toward away = toward == Toward::down ? Toward::up : toward == Toward::up ? Toward::down : Toward::nearest;
    return figure_with_millimetres(-negative, units, away, decimals);
}

int decimals_that_tell(Rounded as, Length one, Length other)
{
    return one == other || figure_of(as, one, Units::mm) != figure_of(as, other, Units::mm) ? 1 : 3;
}

}  // namespace shaftcut
