#include "printed.hpp"

#include <algorithm>

namespace shaftcut {
namespace {

// More than tenths only where they do not show on which side of its limit the value lies.
int decimals_of(const Check& check)
{
    return check.value && check.limit ? decimals_that_tell(rounded_as(check.id), Length::micrometres(*check.value), Length::micrometres(*check.limit)) : 1;
}

}  // namespace

std::string printed(const WorkOrder& order, Length length, Rounded as)
{
    return figure_of_with_unit(as, length, order.units);
}

std::string beside(const WorkOrder& order, Length length, Rounded as)
{
    return order.units == Units::in ? figure_of_with_unit(as, length, Units::mm) : std::string();
}

std::string printed_with_both(const WorkOrder& order, Length length, Rounded as)
{
    return figure_of_with_millimetres(as, length, order.units);
}

std::string spoken(CheckId id)
{
    std::string name = to_word(id);
    std::replace(name.begin(), name.end(), '-', ' ');
    return name;
}

std::string check_figure(Units units, const Check& check, const std::optional<std::int64_t>& thousandths)
{
    if (!thousandths) return "—";
    switch (check.unit) {
    case CheckUnit::mm: return figure_of_with_millimetres(rounded_as(check.id), Length::micrometres(*thousandths), units, decimals_of(check));
    case CheckUnit::deg: return figure(Angle::millidegrees(*thousandths)) + "°";
    case CheckUnit::percent: return figure(Angle::millidegrees(*thousandths)) + " %";
    case CheckUnit::kilowatt: return figure(Angle::millidegrees(*thousandths)) + " kW";
    case CheckUnit::none: break;
    }
    return figure(Angle::millidegrees(*thousandths), 3);
}

}  // namespace shaftcut
