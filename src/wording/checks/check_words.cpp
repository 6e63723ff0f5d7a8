#include "checks/check_words.hpp"

namespace shaftcut {
namespace {

// More than tenths only where they do not show on which side of its limit the value lies.
int decimals_of(const Check& check)
{
    return check.value && check.limit ? decimals_that_tell(rounded_as(check.id), Length::micrometres(*check.value), Length::micrometres(*check.limit)) : 1;
}

}  // namespace

std::string spoken(CheckId id, const Wording& w)
{
    switch (id) {
    case CheckId::consistency: return w("consistency");
    case CheckId::closing_clearance: return w("closing clearance");
    case CheckId::overlap_working: return w("overlap working");
    case CheckId::overlap_turning: return w("overlap turning");
    case CheckId::overlap_standing: return w("overlap standing");
    case CheckId::tube_left: return w("tube left");
    case CheckId::shortening_allowed: return w("shortening allowed");
    case CheckId::guard_clearance: return w("guard clearance");
    case CheckId::guard_cover: return w("guard cover");
    case CheckId::guard_setback: return w("guard setback");
    case CheckId::joint_angle_tractor: return w("joint angle tractor");
    case CheckId::joint_angle_implement: return w("joint angle implement");
    case CheckId::irregularity: return w("irregularity");
    case CheckId::locking: return w("locking");
    case CheckId::connection: return w("connection");
    case CheckId::overload_device: return w("overload device");
    case CheckId::rating: return w("rating");
    case CheckId::condition: break;
    }
    return w("condition");
}

std::string loudly(CheckResult result, const Wording& w)
{
    switch (result) {
    case CheckResult::pass: return w("pass");
    case CheckResult::warn: return w("WARNING");
    case CheckResult::fail: return w("FAILED");
    case CheckResult::not_checked: break;
    }
    return w("not checked");
}

std::string check_figure(const Check& check, const std::optional<std::int64_t>& thousandths, const Wording& w)
{
    if (!thousandths) return "—";
    const Angle number = Angle::millidegrees(*thousandths);
    switch (check.unit) {
    case CheckUnit::mm: return w.both(rounded_as(check.id), Length::micrometres(*thousandths), decimals_of(check));
    case CheckUnit::deg: return w.angle(number);
    case CheckUnit::percent: return w.percent(*thousandths);
    case CheckUnit::kilowatt: return w("{power} kW", {{"power", figure(number)}});
    case CheckUnit::none: break;
    }
    return figure(number, 3);
}

}  // namespace shaftcut
