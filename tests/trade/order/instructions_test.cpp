#include "order/instructions.hpp"

#include "support/check_rows.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

bool has_step(const Setting& setting, const std::string& words)
{
    return says(worked(setting).steps, words);
}

// Cut by 94 mm off the inner half; the outer was cut before and stays.
Setting outer_stays()
{
    Setting setting;
    setting.half(Tube::outer).length = measured(560);
    setting.half(Tube::outer).guard = measured(545);
    return setting;
}

}  // namespace

TEST_CASE("a feature's work is asked for where its own tube is cut")
{
    for (const auto& [feature, words] : {std::pair(Feature::end_stop, "Take the end stop off."), std::pair(Feature::coated, "bare edge of the coated tube")}) {
        Setting setting = outer_stays();
        setting.half(Tube::inner).features = {feature};
        CHECK(has_step(setting, words));
        setting.half(Tube::inner).features.clear();
        setting.half(Tube::outer).features = {feature};
        CHECK_FALSE(has_step(setting, words));
    }
}

TEST_CASE("a second chain is asked for where a one-chain guard loses more than its limit")
{
    Setting setting;
    CHECK_FALSE(has_step(setting, "second chain"));
    setting.half(Tube::outer).features = {Feature::one_chain_guard};
    CHECK(has_step(setting, "second chain"));
    setting.fit().shortest = measured(766);  // 70 mm off
    CHECK_FALSE(has_step(setting, "second chain"));
}
