#include "work_order_book/machine_sheet_words.hpp"

namespace shaftcut::workbook {
namespace {

const char* english(CurveName which)
{
    switch (which) {
    case CurveName::telescoping: return "telescoping length";
    case CurveName::level: return "level";
    case CurveName::shortest: return "shortest";
    case CurveName::longest: return "longest";
    case CurveName::least_overlap: break;
    }
    return "least overlap after the cut";
}

}  // namespace

std::string machine_title(bool mounted, const std::string& order, const std::string& tractor, const Wording& w)
{
    return tractor.empty() ? w("Telescoping length over the {mounted:turn|lift} ({order})", {{"mounted", mounted}, {"order", order}})
                           : w("Telescoping length over the {mounted:turn|lift} ({order}, {tractor})", {{"mounted", mounted}, {"order", order}, {"tractor", tractor}});
}

std::string machine_remark(bool mounted, const Wording& w)
{
    if (mounted) return running_text({w("From the machine's geometry."), w("Heights are of the lower hitch point above ground.")});
    return running_text({w("From the machine's geometry."), w("Shortest and longest are over pitch and roll of the range that turns furthest; a turn to the right is positive.")});
}

std::vector<std::string> machine_heads(bool mounted, const Wording& w)
{
    const auto in_unit = [&](const char* pattern) { return w(pattern, {{"unit", unit_word(w.units())}}); };
    return {mounted ? in_unit("height, {unit}") : w("turn, degrees"), in_unit("shortest, {unit}"), mounted ? in_unit("length, {unit}") : in_unit("level, {unit}"),
            in_unit("longest, {unit}"), w("angles, degrees"), in_unit("least overlap, {unit}")};
}

std::string joint_angles(Angle tractor, Angle implement, const Wording& w) { return w("{tractor} and {implement}", {{"tractor", figure(tractor)}, {"implement", figure(implement)}}); }

std::string position_axis(bool mounted, const Wording& w)
{
    return mounted ? w("implement lifted: height of the lower hitch point above ground, {unit}", {{"unit", unit_word(w.units())}})
                   : w("machine turned about the pin, degrees; to the right positive");
}

std::string length_axis(const Wording& w) { return w("length between the inner crosses, overlap: {unit}", {{"unit", unit_word(w.units())}}); }
std::string name_of(CurveName which, const Wording& w) { return w(english(which)); }

}  // namespace shaftcut::workbook
