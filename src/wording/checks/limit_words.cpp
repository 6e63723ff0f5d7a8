#include "checks/limit_words.hpp"

namespace shaftcut {
namespace {

std::string of_default(Limit limit, const Wording& w)
{
    switch (limit) {
    case Limit::closing_clearance: return w("common practice (about 22 manuals and guides: 12 to 75 mm, most 40)");
    case Limit::closing_clearance_floor: return w("common practice (next most common clearance)");
    case Limit::overlap_working:
    case Limit::overlap_turning: return w("common practice; here of the new closed overlap, publications differ in what they take it of");
    case Limit::least_overlap_turning: return w("common practice (most manuals that state a length)");
    case Limit::guard_setback: return w("an implement manual (25 mm short of the drive tube at most)");
    case Limit::one_chain_shortening: return w("one user handbook (about 70 mm)");
    case Limit::angle_standard_working:
    case Limit::angle_wide_working: return w("common practice");
    case Limit::angle_standard_turning:
    case Limit::angle_wide_turning:
    case Limit::angle_wide_standing: return w("two manuals");
    case Limit::angle_standard_standing: return w("published practice");
    case Limit::least_overlap_standing:
    case Limit::guard_overlap:
    case Limit::guard_setback_new:
    case Limit::irregularity: break;
    }
    return w("the project's own choice, no published figure was found");
}

}  // namespace

std::string limit_text(Limit limit, LimitValue value, const Wording& w)
{
    switch (row_of(limit).kind) {
    case LimitKind::length: return w.length(rounded_as(limit), Length::micrometres(value.numerator));
    case LimitKind::angle: return w.angle(Angle::millidegrees(value.numerator), 3);
    case LimitKind::percent: return w("{percent} %", {{"percent", figure(Angle::millidegrees(value.numerator), 3)}});
    case LimitKind::fraction: break;
    }
    return w("{numerator}/{denominator}", {{"numerator", value.numerator}, {"denominator", value.denominator}});
}

std::string say(const LimitBasis& basis, const Wording& w)
{
    switch (basis.origin) {
    case LimitOrigin::job: return w.of_new_shaft() ? w("set by the order") : w("set by the job");
    case LimitOrigin::series: return w("set by the series");
    case LimitOrigin::workshop: return w("set by the workshop");
    case LimitOrigin::standard: break;
    }
    return of_default(basis.limit, w);
}

}  // namespace shaftcut
