#include "shaftcut/words/angle.hpp"

#include <cmath>
#include <numbers>

#include "shaftcut/words/length.hpp"

namespace shaftcut {

Angle Angle::from_degrees(double degrees)
{
    return Angle(std::llround(degrees * 1000.0));
}

Angle Angle::from_radians(double radians)
{
    return from_degrees(radians * 180.0 / std::numbers::pi);
}

double Angle::radians() const
{
    return degrees() * std::numbers::pi / 180.0;
}

Angle angle_from_views(Angle side_view, Angle plan)
{
    return Angle::from_radians(std::atan(std::hypot(std::tan(side_view.radians()), std::tan(plan.radians()))));
}

std::string figure(Angle angle, int decimals)
{
    // Thousandths of a degree and micrometres print alike: thousandths of the unit shown.
    return figure(Length::micrometres(angle.mdeg()), Units::mm, Toward::nearest, decimals);
}

}  // namespace shaftcut
