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

// "12", "12.5": degrees to `decimals` places (0 to 3), half away from zero, without trailing zeros or a sign for the unit.
std::string figure(Angle angle, int decimals = 1);

}  // namespace shaftcut
