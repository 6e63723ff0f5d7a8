// What the shaft is used for and the state it came in: the power against the rating, and the condition.
#include "support/check_rows.hpp"

using namespace shaftcut;
using namespace shaftcut::test;
using enum CheckResult;

namespace {

Change taken(std::optional<std::int64_t> watts, std::optional<int> speed, std::vector<Rating> ratings)
{
    return [=](Setting& s) {
        s.job.circumstances.power = watts;
        s.job.shaft.speed = speed;
        s.catalogue.series[0].ratings = ratings;
    };
}
const std::vector<Rating> two{{1000, 25'000}, {540, 16'000}};

Change with_other_half(std::int64_t watts, std::optional<std::string> name, std::vector<Rating> ratings)
{
    return [=](Setting& s) {
        taken(watts, 540, two)(s);
        Series other = s.catalogue.series[0];
        other.name = "Other 1";
        other.ratings = ratings;
        s.catalogue.series.push_back(other);
        s.half(Tube::inner).series = OtherSeries{name};
        s.half(Tube::inner).shoulder = measured(128);
    };
}

template <class T>
Change came_in(std::optional<T> Condition::* what, T state)
{
    return [=](Setting& s) {
        s.job.shaft.condition = Condition();
        (*s.job.shaft.condition).*what = state;
    };
}

Check condition_of(const Change& change)
{
    Setting setting;
    change(setting);
    return check(worked(setting), CheckId::condition);
}

bool says(const Check& check, const std::string& text) { return said(check).find(text) != std::string::npos; }

}  // namespace

TEST_CASE("rating at a stated speed: fails above it, warns above 80 per cent of it")
{
    hold_all(CheckId::rating, {{"on 80 per cent", taken(12'800, 540, two), pass, 12.8, {}, 16},
                               {"above 80 per cent", taken(12'801, 540, two), warn, 12.801, {}, 16},
                               {"on the rating", taken(16'000, 540, two), warn, 16, {}, 16},
                               {"above the rating", taken(16'001, 540, two), fail, 16.001, {}, 16},
                               {"at the other speed", taken(20'000, 1000, two), pass, 20, {}, 25}});
}

TEST_CASE("rating at a speed that is not stated: the torque of the next higher one, above all of them the highest one's power")
{
    // 25 kW at 1000 min⁻¹ is 18.75 kW at 750 with the same torque; 16 kW at 540 is 10.370 kW at 350 (10 370.37 W, rounded down).
    hold_all(CheckId::rating, {{"between", taken(18'750, 750, two), warn, 18.75, {}, 18.75},
                               {"between, above", taken(18'751, 750, two), fail, 18.751, {}, 18.75},
                               {"between, on 80 per cent", taken(15'000, 750, two), pass, 15, {}, 18.75},
                               {"below all", taken(10'370, 350, two), warn, 10.37, {}, 10.37},
                               {"below all, above", taken(10'371, 350, two), fail, 10.371, {}, 10.37},
                               {"above all", taken(25'000, 1300, two), warn, 25, {}, 25},
                               {"above all, above", taken(25'001, 1300, two), fail, 25.001, {}, 25}});
}

TEST_CASE("rating needs power, speed and a rating, and says which is missing")
{
    hold_all(CheckId::rating, {{"no power", taken(std::nullopt, 540, two), not_checked, {}, {}, {}},
                               {"no speed", taken(16'000, std::nullopt, two), not_checked, {}, {}, {}},
                               {"no rating", taken(16'000, 540, {}), not_checked, {}, {}, {}}});
    Setting setting;
    taken(16'000, 540, {})(setting);
    CHECK(says(check(worked(setting), CheckId::rating), "series Alder 2 states no rating"));
}

TEST_CASE("of two series in one shaft the weaker one counts, and one that is not known never passes")
{
    hold_all(CheckId::rating, {{"weaker half", with_other_half(11'000, "Other 1", {{540, 10'000}}), fail, 11, {}, 10},
                               {"stronger half", with_other_half(11'000, "Other 1", {{540, 40'000}}), pass, 11, {}, 16},
                               {"unrated half", with_other_half(11'000, "Other 1", {}), not_checked, 11, {}, 16},
                               {"unrated half, near the other's", with_other_half(15'000, "Other 1", {}), warn, 15, {}, 16},
                               {"unrated half, above the other's", with_other_half(17'000, "Other 1", {}), fail, 17, {}, 16},
                               {"half of none", with_other_half(11'000, std::nullopt, {}), not_checked, 11, {}, 16}});
}

TEST_CASE("condition: what refuses, by its name")
{
    const std::vector<std::pair<Change, std::string>> rows{{came_in(&Condition::weld, Weld::welded), "welded"},
                                                           {came_in(&Condition::weld, Weld::cracked), "cracked"},
                                                           {came_in(&Condition::tubes, TubeState::bent), "bent"},
                                                           {came_in(&Condition::tubes, TubeState::twisted), "twisted"},
                                                           {came_in(&Condition::slides, Slides::no), "do not slide"}};
    for (const auto& [change, named] : rows) {
        const Check found = condition_of(change);
        INFO(named);
        CHECK(found.result == fail);
        CHECK(says(found, named));
        REQUIRE(found.contradictions.size() == 1);
        Setting setting;
        change(setting);
        CHECK(worked(setting).verdict == Verdict::refused);
    }
}

TEST_CASE("condition: what warns, by its name")
{
    const auto tractor = [](Setting& s) { s.job.circumstances.other_tractors = {"80 hp tractor"}; };
    const auto half = [](Tube tube, GuardUse use) {
        return [=](Setting& s) {
            s.half(tube).guard.reset();
            s.half(tube).guard_use = use;
        };
    };
    const std::vector<std::pair<Change, std::string>> rows{{came_in(&Condition::guard, Completeness::missing), "guard is missing"},
                                                           {came_in(&Condition::guard, Completeness::damaged), "guard is damaged"},
                                                           {came_in(&Condition::chains, Completeness::missing), "chain is missing"},
                                                           {came_in(&Condition::chains, Completeness::damaged), "chain is damaged"},
                                                           {came_in(&Condition::crosses, CrossWear::worn), "cross is worn"},
                                                           {came_in(&Condition::tubes, TubeState::dented), "dented"},
                                                           {came_in(&Condition::locks, LockState::stiff), "stiff"},
                                                           {came_in(&Condition::locks, LockState::damaged), "lock is damaged"},
                                                           {came_in(&Condition::device, DeviceState::stuck), "stuck"},
                                                           {came_in(&Condition::phase, Phase::turned), "not in one plane"},
                                                           {half(Tube::inner, GuardUse::none), "inner half has no guard"},
                                                           {half(Tube::outer, GuardUse::damaged), "outer half's guard is damaged"},
                                                           {tractor, "was not measured: 80 hp tractor."}};
    for (const auto& [change, named] : rows) {
        const Check found = condition_of(change);
        INFO(named << ": " << said(found));
        CHECK(found.result == warn);
        CHECK(says(found, named));
        CHECK(found.contradictions.empty());
    }
}

TEST_CASE("condition: good where it is said to be, not checked where nothing is said, and a refusal says the warnings too")
{
    hold_all(CheckId::condition, {{"nothing said", [](Setting&) {}, not_checked, {}, {}, {}},
                                  {"an empty condition", [](Setting& s) { s.job.shaft.condition = Condition(); }, not_checked, {}, {}, {}},
                                  {"good crosses", came_in(&Condition::crosses, CrossWear::good), pass, {}, {}, {}},
                                  {"slides", came_in(&Condition::slides, Slides::yes), pass, {}, {}, {}},
                                  {"no other tractor is no look at the shaft", [](Setting& s) { s.job.circumstances.no_other_tractors = true; }, not_checked, {}, {}, {}}});
    const Check both = condition_of([](Setting& s) {
        s.job.shaft.condition = Condition();
        s.job.shaft.condition->weld = Weld::cracked;
        s.job.shaft.condition->crosses = CrossWear::worn;
    });
    CHECK(both.result == fail);
    CHECK(says(both, "cracked"));
    CHECK(says(both, "worn"));
    CHECK(both.contradictions.size() == 1);
}
