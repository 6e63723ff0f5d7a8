// Joint angles, how unevenly the output turns, and the load.
#include "checks/finding_sentences.hpp"
#include "hitch/geometry_figures.hpp"
#include "separated.hpp"

namespace shaftcut {
namespace {

// "turning 36.6° (turned 60° to the right), limit 35°": to 0.1 degree where that shows whether it is past the limit.
std::string text(const AngleInRange& found, const Wording& w)
{
    const int decimals = found.angle != found.limit && w.angle(found.angle) == w.angle(found.limit) ? 3 : 1;
    const NamedValue range{"range", found.range}, angle{"angle", w.angle(found.angle, decimals)}, limit{"limit", w.angle(found.limit, 3)};
    if (!found.at) return w("{range:working|turning|standing} {angle}, limit {limit}", {range, angle, limit});
    return w("{range:working|turning|standing} {angle} ({posture}), limit {limit}", {range, angle, limit, {"posture", in_words(*found.at, w)}});
}

}  // namespace

std::string sentence(const JointAngles& found, const Wording& w)
{
    std::vector<std::string> angles;
    for (const AngleInRange& one : found.angles) angles.push_back(text(one, w));
    return w("The {joint:standard|wide-angle} joint at the {end:tractor|implement} end: {angles}.", {{"joint", found.joint}, {"end", found.end}, {"angles", separated(angles, "; ")}});
}

std::string sentence(const SpeedRipple& found, const Wording& w)
{
    return w("The output's speed ripples by {ripple} in the working position; limit {limit}.", {{"ripple", w.percent(found.percent)}, {"limit", w.percent(found.limit)}});
}

std::string sentence(const RippleGreatestAt& found, const Wording& w) { return w("It is greatest {posture}.", {{"posture", in_words(found.at, w)}}); }

std::string sentence(const RippleOutOfPhase& found, const Wording& w)
{
    const NamedValue step{"step", w.angle(found.step)};
    if (!found.percent) return w("Put together one step of {step} out of phase it would not turn.", {step});
    return w("Put together one step of {step} out of phase it would be up to {ripple}.", {step, {"ripple", w.percent(*found.percent)}});
}

std::string sentence(const LoadTaken& found, const Wording& w)
{
    return w("The {taken} taken at the PTO {level:is within|is more than 80 % of|is more than} the {carried} that series {series} carries at {speed} min⁻¹.",
             {{"taken", w.power(found.taken)}, {"level", found.level}, {"carried", w.power(found.carried)}, {"series", found.series}, {"speed", found.speed}});
}

}  // namespace shaftcut
