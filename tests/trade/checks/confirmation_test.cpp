// What is confirmed before sawing, with its expected length and ±.
#include "shaftcut/trade/checks/confirmation.hpp"

#include "support/check_rows.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

using ExpectedConfirmations = std::vector<std::pair<Confirmed, std::pair<double, double>>>;

// Looks as 0 ± 0.
ExpectedConfirmations asked(const Change& change)
{
    Setting setting;
    change(setting);
    ExpectedConfirmations found;
    for (const Confirmation& one : worked(setting).confirm)
        found.push_back({one.what, {one.expected.value_or(Length()).mm(), one.plus_minus.value_or(Length()).mm()}});
    return found;
}

void without_halves(Setting& s)
{
    for (const Tube tube : both_tubes) s.half(tube) = JobHalf();
    s.catalogue.series[0].closed_lengths = {mm(860)};
}

}  // namespace

TEST_CASE("a shaft with all its figures asks for nothing")
{
    CHECK(asked([](Setting&) {}).empty());
}

TEST_CASE("halves and guards that were not measured: u_C + u of the shoulder + the tape's, and a look")
{
    CHECK(asked(without_halves) == ExpectedConfirmations{{Confirmed::inner_half, {690, 6}}, {Confirmed::outer_half, {668, 6}}, {Confirmed::inner_guard, {0, 0}}, {Confirmed::outer_guard, {0, 0}}});
    CHECK(asked([](Setting& s) {
              without_halves(s);
              s.half(Tube::outer).guard_use = GuardUse::none;
          }) == ExpectedConfirmations{{Confirmed::inner_half, {690, 6}}, {Confirmed::outer_half, {668, 6}}, {Confirmed::inner_guard, {0, 0}}});
}

// The series' shoulders, 128 and 106, each ± the tape's 2 and the 2 of the reading that confirms.
TEST_CASE("both stops of a series that was told by measuring are asked for, whatever bears them out, unless the job states them")
{
    const auto told = [](Setting& s) { s.job.shaft.measures = Measures(); };
    CHECK(asked(told) == ExpectedConfirmations{{Confirmed::inner_shoulder, {128, 4}}, {Confirmed::outer_shoulder, {106, 4}}});
    CHECK(asked([&](Setting& s) {
              told(s);
              s.half(Tube::inner).shoulder = measured(128);
          }) == ExpectedConfirmations{{Confirmed::outer_shoulder, {106, 4}}});
    CHECK(asked([&](Setting& s) {
              told(s);
              for (const Tube tube : both_tubes) s.series_half(tube).shoulder.reset();
          }).size() == 1);
}

TEST_CASE("closed length and halves that disagree are both measured again")
{
    CHECK(asked([](Setting& s) { s.job.shaft.closed = measured(890); }) ==
          ExpectedConfirmations{{Confirmed::closed, {890, 4}}, {Confirmed::inner_half, {690, 4}}, {Confirmed::outer_half, {668, 4}}});
}

TEST_CASE("without a half whose stop is stated too the cross of the closed length is asked for")
{
    const ExpectedConfirmations found = asked([](Setting& s) {
        for (const Tube tube : both_tubes) s.series_half(tube).shoulder.reset();
    });
    CHECK(found == ExpectedConfirmations{{Confirmed::closed_inner_cross, {796, 4}}});
}

TEST_CASE("the year of an exposed lock is asked for where it is not stated, and nothing of a refused shaft")
{
    const auto exposed = [](std::optional<int> built) {
        return [=](Setting& s) {
            s.job.shaft.built = built;
            s.job.shaft.ends[End::tractor].lock = Lock::exposed_collar;
        };
    };
    CHECK(asked(exposed(2015)).empty());
    CHECK(asked(exposed(2022)).empty());
    Setting refused;
    without_halves(refused);
    refused.fit().longest[Range::standing] = measured(1400);
    CHECK(worked(refused).verdict == Verdict::refused);
    CHECK(worked(refused).confirm.empty());
}
