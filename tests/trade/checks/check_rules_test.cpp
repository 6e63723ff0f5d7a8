// The table of checks against what the checks say.
#include "checks/check_rules.hpp"

#include "support/check_rows.hpp"
#include "support/drawn/random_jobs.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

TEST_CASE("a check's figures are in its row's unit, and only a check with a unit has figures")
{
    std::array<int, check_rules.size()> with_figures{};
    for (std::uint64_t number = 0; number < 2'000; ++number) {
        const World world = random_world(number);
        for (const Check& one : work_up(world.job, world.catalogue, world.workshop, world.units).checks) {
            const CheckRule& rule = rule_of(one.id);
            INFO(number << " " << to_word(one.id));
            if (!one.value && !one.worst && !one.limit) continue;
            CHECK(one.unit == rule.unit);
            CHECK(rule.unit != CheckUnit::none);
            ++with_figures[static_cast<std::size_t>(one.id)];
        }
    }
    for (const CheckRule& rule : check_rules) CHECK((with_figures[static_cast<std::size_t>(rule.id)] > 0) == (rule.unit != CheckUnit::none));
}

TEST_CASE("what needs halves or positions is about lengths, and so is what other lengths mend")
{
    for (const CheckRule& rule : check_rules) {
        INFO(to_word(rule.id));
        if (rule.needs_positions) CHECK(rule.needs_lengths);
        if (rule.needs_lengths || rule.mended_by_lengths) CHECK(rule.follows_lengths);
        if (rule.follows_lengths) CHECK(rule.follows_machine);
    }
}
