// Angles as whole thousandths of a degree.
#pragma once

#include <compare>
#include <cstdint>
#include <string>

namespace shaftcut {

class Angle {
public:
    constexpr Angle() = default;
    static constexpr Angle millidegrees(std::int64_t count) { return Angle(count); }
    static constexpr Angle degrees(std::int64_t count) { return Angle(count * 1000); }
    // Rounds half away from zero to the thousandth of a degree.
    static Angle from_degrees(double degrees);
    static Angle from_radians(double radians);

    constexpr std::int64_t mdeg() const { return mdeg_; }
    constexpr double degrees() const { return static_cast<double>(mdeg_) / 1000.0; }
    double radians() const;

    constexpr auto operator<=>(const Angle&) const = default;
    friend constexpr Angle operator-(Angle a, Angle b) { return Angle(a.mdeg_ - b.mdeg_); }
    friend constexpr Angle operator+(Angle a, Angle b) { return Angle(a.mdeg_ + b.mdeg_); }

private:
    constexpr explicit Angle(std::int64_t mdeg) : mdeg_(mdeg) {}
    std::int64_t mdeg_ = 0;
};

// The angle between a line and an axis of which only two views were measured, from the side and from above, each below 90 degrees:
// tan β = √(tan² side view + tan² plan), from the axis' direction (1, tan plan, tan side view). Rounded to the thousandth of a degree.
// Checked in tests/words/angle_test.cpp.
Angle angle_from_views(Angle side_view, Angle plan);

// "12", "12.5": degrees to `decimals` places (0 to 3), half away from zero, without trailing zeros or a sign for the unit.
std::string figure(Angle angle, int decimals = 1);

}  // namespace shaftcut
