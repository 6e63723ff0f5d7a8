// The second implementation held to figures worked out by hand, so that where the two disagree both can be wrong.
#include "support/catch.hpp"
#include "support/check_rows.hpp"
#include "support/plain/plain_method.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

plain::PlainAnswer answered(const Setting& setting) { return plain::answer(setting.job, setting.catalogue, setting.workshop, setting.job.units); }

// In mm.
double worst(const plain::PlainAnswer& answer, CheckId id) { return static_cast<double>(answer.checks[static_cast<std::size_t>(id)].worst.value_or(-1'000'000)) / 1000; }
CheckResult result(const plain::PlainAnswer& answer, CheckId id) { return answer.checks[static_cast<std::size_t>(id)].result; }

// What is asked for, as "what expected ± plus_minus" in mm.
std::vector<std::string> asked(const plain::PlainAnswer& answer)
{
    std::vector<std::string> found;
    for (const plain::PlainConfirmation& one : answer.confirm) {
        std::string text = to_word(one.what);
        if (one.expected) text += " " + figure(Length::micrometres(*one.expected), Units::mm) + " ± " + figure(Length::micrometres(*one.plus_minus), Units::mm);
        found.push_back(text);
    }
    return found;
}

// Both joints standard, so that the closed length is 796 as it stands.
Setting standard_joints()
{
    Setting setting;
    setting.job.shaft.ends[End::tractor].joint = JointKind::standard;
    setting.job.shaft.closed = measured(796);
    setting.fit().angles[End::tractor] = setting.fit().angles[End::implement];
    return setting;
}

void leave_out_halves(Setting& setting)
{
    for (const Tube tube : both_tubes) setting.half(tube).length.reset();
}

}  // namespace

TEST_CASE("the second implementation cuts the drawn example as the README has it")
{
    const plain::PlainAnswer answer = answered(Setting());
    CHECK(answer.verdict == Verdict::cut);
    CHECK(answer.shaft.cut->cut == std::array<plain::Um, 2>{94'000, 94'000});
    CHECK(answer.shaft.cut->closed == 702'000);
    CHECK(worst(answer, CheckId::closing_clearance) == 35);  // 742 - 2 - (796 + 2 - 94 + 1)
    CHECK(asked(answer).empty());
}

TEST_CASE("its worst clearance counts both ways of stopping and of marking")
{
    SECTION("halves of 690 and 668 read as 670 and 688")
    {
        Setting setting;
        setting.half(Tube::inner).length = measured(670, 20);
        setting.half(Tube::outer).length = measured(688, 20);
        const plain::PlainAnswer answer = answered(setting);
        CHECK(worst(answer, CheckId::closing_clearance) == -5);  // inner: cut 54 of 798, 740 - (798 - 54 + 1)
        CHECK(answer.verdict == Verdict::refused);
    }
    SECTION("a second tractor's own tolerance")
    {
        Setting setting;
        setting.fit().shortest = measured(742, 1);
        setting.job.fits.push_back(setting.fit());
        setting.job.fits[1].shortest = measured(745, 20);
        CHECK(worst(answered(setting), CheckId::closing_clearance) == 20);  // 725 - 705
    }
    SECTION("a half that is not cut")
    {
        Setting setting;
        setting.half(Tube::outer).length = measured(570, 4);  // its path 698, the room 702
        const plain::PlainAnswer answer = answered(setting);
        CHECK(answer.shaft.cut->cut == std::array<plain::Um, 2>{94'000, 0});
        CHECK(worst(answer, CheckId::closing_clearance) == 35);  // its own bound is 698 + 2 + 4 = 704, the inner half's 705
    }
}

TEST_CASE("a stop that nothing confirms is refused or asked for")
{
    SECTION("128 without its last digit")
    {
        Setting setting;
        setting.half(Tube::outer).length = measured(650);
        setting.half(Tube::inner).shoulder = measured(12.8);
        CHECK(result(answered(setting), CheckId::consistency) == CheckResult::fail);
    }
    SECTION("under the seat, on either half")
    {
        Setting setting;
        setting.series_half(Tube::inner).shoulder = mm(61.9);
        CHECK(result(answered(setting), CheckId::consistency) == CheckResult::fail);
        setting = Setting();
        setting.series_half(Tube::outer).shoulder = mm(27);
        CHECK(result(answered(setting), CheckId::consistency) == CheckResult::fail);
    }
    SECTION("unlike the series, borne out or not")
    {
        Setting setting = standard_joints();
        setting.half(Tube::inner).shoulder = measured(108);
        setting.half(Tube::outer).length = measured(688);
        CHECK(result(answered(setting), CheckId::consistency) == CheckResult::pass);
        setting.half(Tube::outer).length = measured(668);
        CHECK(result(answered(setting), CheckId::consistency) == CheckResult::fail);
        setting.half(Tube::inner).shoulder = measured(116);
        CHECK(result(answered(setting), CheckId::consistency) == CheckResult::pass);
    }
    SECTION("of no series")
    {
        Setting setting;
        setting.job = plain_job(796, 690, 650, 742, 800);
        setting.half(Tube::inner).shoulder = measured(128, 1);
        setting.half(Tube::outer).shoulder = measured(106);
        const plain::PlainAnswer answer = answered(setting);
        CHECK(result(answer, CheckId::consistency) == CheckResult::warn);
        CHECK(asked(answer) == std::vector<std::string>{"outer_half 650 ± 4", "inner_shoulder 128 ± 3", "inner_guard", "outer_guard"});
    }
    SECTION("read as a depth")
    {
        Setting setting = standard_joints();
        setting.half(Tube::outer).stop_depth = measured(562, 1);  // 668 - 562 = 106 ± 3
        const plain::PlainAnswer answer = answered(setting);
        CHECK(answer.shaft.halves[1].shoulder->value == 106'000);
        CHECK(answer.shaft.halves[1].shoulder->plus_minus == 3'000);
        CHECK(result(answer, CheckId::consistency) == CheckResult::pass);
    }
}

TEST_CASE("where closed length and halves disagree both shoulders are the greater")
{
    Setting setting = standard_joints();
    SECTION("closed before its halves say so")
    {
        setting.job.shaft.closed = measured(821);
        const plain::PlainAnswer answer = answered(setting);
        CHECK(*answer.shaft.stops.shoulders == std::array<plain::Um, 2>{153'000, 131'000});
        CHECK(result(answer, CheckId::consistency) == CheckResult::warn);
        CHECK(asked(answer) == std::vector<std::string>{"closed 821 ± 4", "inner_half 690 ± 4", "outer_half 668 ± 4"});
    }
    SECTION("closed further than its halves let it")
    {
        setting.job.shaft.closed = measured(780);
        const plain::PlainAnswer answer = answered(setting);
        CHECK(*answer.shaft.stops.shoulders == std::array<plain::Um, 2>{128'000, 106'000});
        CHECK(answer.shaft.cut->cut == std::array<plain::Um, 2>{94'000, 94'000});
        CHECK(worst(answer, CheckId::closing_clearance) == 33);  // 740 - (798 + 2 - 94 + 1)
    }
}

TEST_CASE("the other cross and exchanged halves leave a mark")
{
    Setting setting;
    SECTION("measured from the inner cross and called the outer")
    {
        setting.job.shaft.closed = measured(796);
        CHECK(result(answered(setting), CheckId::consistency) == CheckResult::fail);
        setting.job.shaft.closed = measured(809);  // off by 13 less: 745 + 64 = 809, seven more than the tolerance allows
        CHECK(result(answered(setting), CheckId::consistency) == CheckResult::warn);
    }
    SECTION("measured from the outer cross and called the inner")
    {
        setting.job.shaft.closed_reference = Reference::inner_cross;
        CHECK(result(answered(setting), CheckId::consistency) == CheckResult::fail);
    }
    SECTION("one of two wide-angle ends")
    {
        setting.job.shaft.ends[End::implement].joint = JointKind::wide_angle;
        setting.job.shaft.closed = measured(860);  // 796 + 64, where 796 + 128 was meant
        CHECK(result(answered(setting), CheckId::consistency) == CheckResult::fail);
    }
    SECTION("halves exchanged")
    {
        std::swap(setting.half(Tube::inner).length, setting.half(Tube::outer).length);
        CHECK(result(answered(setting), CheckId::consistency) == CheckResult::fail);
    }
    SECTION("an uncut shaft that its catalogue does not know")
    {
        leave_out_halves(setting);
        setting.job.shaft.closed = measured(830);
        CHECK(result(answered(setting), CheckId::consistency) == CheckResult::pass);
        CHECK(asked(answered(setting)) == std::vector<std::string>{"inner_half 660 ± 6", "outer_half 638 ± 6"});
        setting.job.shaft.closed = measured(830 - 64);
        CHECK(result(answered(setting), CheckId::consistency) == CheckResult::fail);
        setting.job.shaft.closed = measured(838);
        CHECK(result(answered(setting), CheckId::consistency) == CheckResult::warn);
    }
    SECTION("one half and no stop say nothing about the cross")
    {
        setting.half(Tube::outer).length.reset();
        setting.series_half(Tube::outer).shoulder.reset();
        CHECK(asked(answered(setting)) == std::vector<std::string>{"closed_inner_cross 796 ± 4", "outer_half 668 ± 6"});
    }
}

TEST_CASE("a length that no shaft has is refused")
{
    Setting setting = standard_joints();
    SECTION("closed") { setting.job.shaft.closed = measured(79.6); }
    SECTION("shortest") { setting.fit().shortest = measured(199.9); }
    SECTION("longest") { setting.fit().longest[Range::standing] = measured(9050); }
    SECTION("half") { setting.half(Tube::inner).length = measured(69); }
    SECTION("guard") { setting.half(Tube::inner).guard = measured(6.72); }
    SECTION("spacing")
    {
        setting.job.shaft.ends[End::tractor].joint = JointKind::wide_angle;
        setting.job.shaft.ends[End::tractor].spacing = mm(2.5);
    }
    CHECK(result(answered(setting), CheckId::consistency) == CheckResult::fail);
}

TEST_CASE("a guard that is cut away fails, one that is not used says nothing")
{
    Setting setting;
    setting.half(Tube::inner).guard = measured(50);
    CHECK(result(answered(setting), CheckId::guard_cover) == CheckResult::fail);
    setting.half(Tube::inner).guard.reset();
    setting.half(Tube::inner).guard_use = GuardUse::damaged;
    const plain::PlainAnswer answer = answered(setting);
    CHECK(result(answer, CheckId::guard_cover) == CheckResult::not_checked);
    CHECK(result(answer, CheckId::condition) == CheckResult::warn);
    CHECK(!answer.shaft.cut->guard_cut[0]);
    CHECK(asked(answer).empty());
}

TEST_CASE("a tractor that states no standing length does not pass by another's")
{
    Setting setting;
    setting.job.fits.push_back(setting.fit());
    setting.job.fits[1].longest[Range::standing].reset();
    plain::PlainAnswer answer = answered(setting);
    CHECK(result(answer, CheckId::overlap_standing) == CheckResult::not_checked);
    CHECK(worst(answer, CheckId::overlap_standing) == 257);  // 596 + 574 - 905 - 2 - 2·(2 + 1)
    setting.job.fits[1].longest[Range::turning] = measured(1075);
    answer = answered(setting);
    CHECK(result(answer, CheckId::overlap_standing) == CheckResult::fail);  // at least 1075 leaves 95
}

TEST_CASE("beside lengths that contradict each other nothing that is a length passes")
{
    Setting setting;
    setting.half(Tube::inner).length = measured(69);
    const plain::PlainAnswer answer = answered(setting);
    for (const CheckId id : {CheckId::closing_clearance, CheckId::tube_left, CheckId::guard_setback, CheckId::overlap_working})
        CHECK((result(answer, id) == CheckResult::not_checked || result(answer, id) == CheckResult::fail));
    CHECK(answer.checks[static_cast<std::size_t>(CheckId::closing_clearance)].value.has_value());
}

TEST_CASE("power is held to the rating at the job's speed")
{
    Setting setting;
    setting.catalogue.series[0].ratings = {{540, 16'000}, {1000, 25'000}};
    const auto rated = [&](int speed, std::int64_t watts) {
        setting.job.shaft.speed = speed;
        setting.job.circumstances.power = watts;
        return answered(setting).checks[static_cast<std::size_t>(CheckId::rating)];
    };
    CHECK(rated(540, 12'800).result == CheckResult::pass);
    CHECK(rated(540, 12'801).result == CheckResult::warn);
    CHECK(rated(540, 16'001).result == CheckResult::fail);
    CHECK(rated(750, 18'000).limit == 18'750);  // 25 kW · 750 / 1000
    CHECK(rated(1300, 18'000).limit == 25'000);
    setting.catalogue.series[0].ratings.clear();
    CHECK(rated(540, 1).result == CheckResult::not_checked);
}

TEST_CASE("the shaft's condition and its locks' year decide")
{
    Setting setting;
    CHECK(result(answered(setting), CheckId::condition) == CheckResult::not_checked);
    setting.job.shaft.condition = Condition();
    CHECK(result(answered(setting), CheckId::condition) == CheckResult::not_checked);
    setting.job.shaft.condition->crosses = CrossWear::worn;
    CHECK(result(answered(setting), CheckId::condition) == CheckResult::warn);
    setting.job.shaft.condition->weld = Weld::welded;
    CHECK(result(answered(setting), CheckId::condition) == CheckResult::fail);
    setting.job.shaft.condition.reset();
    setting.job.shaft.ends[End::tractor].lock = Lock::exposed_collar;
    CHECK(result(answered(setting), CheckId::locking) == CheckResult::warn);
    CHECK(asked(answered(setting)) == std::vector<std::string>{"built"});
    setting.job.shaft.built = 2021;
    CHECK(result(answered(setting), CheckId::locking) == CheckResult::fail);
}
