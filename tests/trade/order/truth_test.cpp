// What the answer does to the true shaft: drawn are shafts and positions, measured within the stated tolerances, worked up,
// sawn by the worse of both ways of marking and pushed together. 30,000 in every run of the tests, and as many as the
// environment variable SHAFTCUT_TRUTH_JOBS says.
#include <cstdlib>
#include <map>

#include "support/catch.hpp"
#include "support/jobs.hpp"
#include "support/drawn/true_shafts.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

// Lengths are rounded to the micrometre, on the way through a bent distance twice.
constexpr Um rounded = 3;

std::uint64_t wanted()
{
    const char* jobs = std::getenv("SHAFTCUT_TRUTH_JOBS");
    return jobs ? std::strtoull(jobs, nullptr, 10) : 30'000;
}

std::string worse_than_stated(const Promise& promise, CheckId id, const std::optional<Um>& truth)
{
    const auto worst = promise.worst_of(id);
    if (!worst || !truth || *truth >= *worst - rounded) return "";
    return std::string(to_word(id)) + ": worst " + std::to_string(*worst) + ", in truth " + std::to_string(*truth) + "\n";
}

std::string broken_words(const TrueShaft& shaft, const Promise& promise)
{
    const Sawn sawn = saw(shaft, promise);
    std::string found = worse_than_stated(promise, CheckId::closing_clearance, sawn.clearance);
    for (const Range range : all_ranges) found += worse_than_stated(promise, overlap_check_id(range), sawn.overlap[static_cast<std::size_t>(range)]);
    return found + worse_than_stated(promise, CheckId::guard_cover, sawn.guard_cover);
}

Promise of_program(const World& world) { return promise_of(work_up(world.job, world.catalogue, world.workshop, world.units)); }
Promise of_second(const World& world) { return promise_of(plain::answer(world.job, world.catalogue, world.workshop, world.units)); }

struct Tally {
    std::map<Verdict, std::uint64_t> verdicts;
    std::uint64_t confirms = 0, stopped = 0, broken = 0;
};

template <class Answer>
Tally tally(std::uint64_t jobs, const Answer& answer)
{
    Tally found;
    for (std::uint64_t number = 0; number < jobs && found.broken < 10; ++number) {
        const Measured drawn = measured_shaft(number, Draw::as_described);
        const Promise promise = answer(drawn.world);
        ++found.verdicts[promise.verdict];
        if (promise.verdict == Verdict::refused) continue;
        found.confirms += promise.confirm.empty() ? 0 : 1;
        found.stopped += confirmation_stops(drawn.shaft, promise) ? 1 : 0;
        const std::string broken = broken_words(drawn.shaft, promise);
        if (broken.empty()) continue;
        ++found.broken;
        UNSCOPED_INFO("number " << number << "\n" << broken);
    }
    return found;
}

}  // namespace

TEST_CASE("no true shaft, sawn as the answer says, has less clearance, overlap or guard cover than the stated worst")
{
    const std::uint64_t jobs = wanted();
    const Tally found = tally(jobs, of_program);
    CHECK(found.broken == 0);
    CHECK(found.stopped == 0);  // each is as its job describes it
    for (const auto& [verdict, count] : found.verdicts) {
        INFO(to_word(verdict));
        CHECK(count > jobs / 50);
    }
    CHECK(found.verdicts.size() == 3);
    CHECK(found.confirms > jobs / 50);
}

TEST_CASE("nor by the second implementation's answer")
{
    const Tally found = tally(wanted() / 3, of_second);
    CHECK(found.broken == 0);
    CHECK(found.stopped == 0);
}

TEST_CASE("the stated worst clearance is reached by some true shaft")
{
    Um nearest = 1'000'000;
    for (std::uint64_t number = 0; number < 2'000; ++number) {
        const Measured drawn = measured_shaft(number, Draw::as_described);
        const Promise promise = of_program(drawn.world);
        const auto worst = promise.worst_of(CheckId::closing_clearance);
        if (worst) nearest = std::min(nearest, saw(drawn.shaft, promise).clearance - *worst);
    }
    CHECK(nearest <= 100);
}
