#include "shaftcut/words/angle.hpp"

#include <cmath>

#include "support/catch.hpp"

using namespace shaftcut;

TEST_CASE("an angle from its two views, by hand")
{
    struct Row { double side_view, plan, angle; };
    // tan²: 45 and 45 give √2, of arctangent 54.7356; arctan of √(0.75² + 1²) = 1.25 is 51.3402. To 0.001 degree, which is how an angle is kept.
    for (const Row& row : {Row{0, 0, 0}, Row{12, 0, 12}, Row{0, 5, 5}, Row{45, 45, 54.736}, Row{36.870, 45, 51.340}, Row{89.999, 0, 89.999}}) {
        INFO(row.side_view << " " << row.plan);
        CHECK(std::abs(angle_from_views(Angle::from_degrees(row.side_view), Angle::from_degrees(row.plan)).mdeg() - std::llround(row.angle * 1000)) <= 1);
    }
}

TEST_CASE("an angle from its two views is that between the line and the axis, below 90, and at least each view")
{
    for (int side_view = 0; side_view < 90; side_view += 7)
        for (int plan = 0; plan < 90; plan += 5) {
            const Angle found = angle_from_views(Angle::degrees(side_view), Angle::degrees(plan));
            // The line's direction (1, tan plan, tan side view): its angle with (1, 0, 0) by the cosine, another way to one number.
            const double y = std::tan(Angle::degrees(plan).radians()), z = std::tan(Angle::degrees(side_view).radians());
            INFO(side_view << " " << plan);
            CHECK(found.degrees() == Approx(std::acos(1 / std::sqrt(1 + y * y + z * z)) * 180 / std::acos(-1.0)).margin(0.001));
            CHECK(found >= std::max(Angle::degrees(side_view), Angle::degrees(plan)));
            CHECK(found < Angle::degrees(90));
            CHECK(found == angle_from_views(Angle::degrees(plan), Angle::degrees(side_view)));
        }
}
