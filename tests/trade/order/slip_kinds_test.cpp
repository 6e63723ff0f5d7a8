// Slips that are known to happen, made in sound jobs whose figures are taken to be the truth.
#include <map>

#include "support/catch.hpp"
#include "support/jobs.hpp"
#include "support/drawn/mistypings.hpp"
#include "support/drawn/random_slips.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

constexpr std::uint64_t jobs = 600;

WorkOrder worked(const World& world) { return work_up(world.job, world.catalogue, world.workshop, world.units); }

World slipped(std::uint64_t number, Slip which)
{
    World world = sound_world(number);
    Dice dice(number * slip_count + static_cast<std::uint64_t>(which));
    slip(dice, world, which);
    return world;
}

bool same_shortest(const World& one, const World& other)
{
    for (std::size_t i = 0; i < one.job.fits.size(); ++i)
        if (one.job.fits[i].shortest->length != other.job.fits[i].shortest->length) return false;
    return true;
}

bool any_wide(const World& world)
{
    const auto& ends = world.job.shaft.ends;
    return ends[End::tractor].joint == JointKind::wide_angle || ends[End::implement].joint == JointKind::wide_angle;
}

}  // namespace

TEST_CASE("no slip leaves a tube too long in silence, but one in the shortest length")
{
    std::map<Slip, Fate> fates;
    for (std::uint64_t number = 0; number < jobs; ++number) {
        const Seen truth = seen_of(worked(sound_world(number)));
        if (truth.promise.verdict == Verdict::refused) continue;
        for (int which = 0; which < slip_count; ++which) {
            const World world = slipped(number, static_cast<Slip>(which));
            const Fate fate = fate_of(truth, seen_of(worked(world)));
            fates[static_cast<Slip>(which)] += fate;
            INFO("number " << number << ", slip " << which);
            CHECK((fate.dangerous == 0 || !same_shortest(world, sound_world(number))));
        }
    }
    for (const Slip which : {Slip::other_cross, Slip::exchanged_halves, Slip::digit, Slip::inches, Slip::tiny_guard}) CHECK(fates[which].refused > 20);
}

TEST_CASE("a closed length called by the other cross is refused wherever half and stop are known")
{
    int refused = 0;
    for (std::uint64_t number = 0; number < jobs; ++number) {
        World world = sound_world(number);
        if (!any_wide(world)) continue;
        world.job.shaft.closed_reference = Reference::outer_cross;
        INFO(number);
        CHECK(failed(worked(world), CheckId::consistency));
        ++refused;
    }
    CHECK(refused > 100);
}

TEST_CASE("a tractor that leaves out its standing length never passes by another's")
{
    for (std::uint64_t number = 0; number < jobs; ++number) {
        World world = sound_world(number);
        world.job.fits.push_back(world.job.fits[0]);
        world.job.fits.back().longest[Range::standing].reset();
        const WorkOrder order = worked(world);
        INFO(number);
        CHECK(check(order, CheckId::overlap_standing).result != CheckResult::pass);
        CHECK(check(order, CheckId::overlap_standing).result != CheckResult::warn);
        CHECK_FALSE(order.fit.longest[Range::standing].has_value());
    }
}
