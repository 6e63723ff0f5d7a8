// The ways out that no length mends: angles, yokes and locks.
#include "support/check_rows.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

std::string way_with(const WorkOrder& order, const std::string& words) { return sentence_with(say_all(order.ways_out, wording_of(order)), words); }

}  // namespace

TEST_CASE("the angles named are the limits, and a wide-angle joint is named where it would serve")
{
    struct Row { double turning, standing; bool wide; };
    for (const Row& row : {Row{40, 60, true}, Row{70, 70, true}, Row{71, 71, false}, Row{40, 71, false}, Row{36, 95, false}}) {
        Setting setting;
        auto& angles = setting.fit().angles[End::implement];
        angles[Range::turning] = Angle::from_degrees(row.turning);
        angles[Range::standing] = Angle::from_degrees(row.standing);
        const WorkOrder order = worked(setting);
        const std::string way = way_with(order, "bends by 35° at most with the PTO turning and by 90° at most with it stopped");
        INFO(row.turning << " " << row.standing);
        REQUIRE_FALSE(way.empty());
        CHECK((way.find("fit a shaft with a wide-angle joint") != std::string::npos) == row.wide);
        setting.job.shaft.ends[End::implement].joint = JointKind::wide_angle;
        CHECK(failed(worked(setting), CheckId::joint_angle_implement) != row.wide);
    }
}

TEST_CASE("no yoke is advised that would let a stub run a shaft above its speed")
{
    const auto way = [](std::optional<int> speed, const std::string& onto) {
        Setting setting;
        setting.job.shaft.speed = speed;
        setting.job.shaft.ends[End::tractor].onto = onto;
        return way_with(worked(setting), "yoke");
    };
    CHECK(way(540, "1-3/8-21").find("Do not change the yoke") == 0);
    CHECK(way(1000, "1-3/8-21").find("Fit a yoke of type 1-3/8-21 at the tractor end.") == 0);
    CHECK(way(std::nullopt, "1-3/8-21").find("Fit a yoke of type 1-3/8-21 at the tractor end if what it is coupled to runs") == 0);
}

TEST_CASE("an exposed lock that is refused asks for other yokes, not for the year that is known")
{
    Setting setting;
    setting.job.shaft.ends[End::tractor].lock = Lock::exposed_collar;
    CHECK(way_with(worked(setting), "Fit yokes whose locks").empty());
    setting.job.shaft.built = 2022;
    CHECK(way_with(worked(setting), "year of building").empty());
    CHECK_FALSE(way_with(worked(setting), "Fit yokes whose locks").empty());
}
