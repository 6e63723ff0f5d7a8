#include "hitch/geometry_figures.hpp"

#include <cstdlib>

#include "separated.hpp"

namespace shaftcut {
namespace {

std::string in_words(const TrailedPosture& at, const Wording& w)
{
    std::vector<std::string> turned;
    const auto add = [&](Angle angle, const char* pattern) {
        if (angle == Angle()) return;
        turned.push_back(w(pattern, {{"angle", w.angle(Angle::millidegrees(std::abs(angle.mdeg())))}, {"side", angle < Angle()}}));
    };
    add(at.turn, "turned {angle} to the {side:right|left}");
    add(at.pitch, "rear {angle} {side:down|up}");
    add(at.roll, "right side {angle} {side:up|down}");
    return turned.empty() ? w("straight ahead and level") : separated(turned, ", ");
}

}  // namespace

std::string in_words(const Posture& posture, const Wording& w)
{
    if (const auto* lift = std::get_if<MountedPosture>(&posture)) return w("with the lower hitch point at {height}", {{"height", w.length(Rounded::measured, lift->height)}});
    return in_words(std::get<TrailedPosture>(posture), w);
}

std::string doubt_in_words(const ExtremeLength& length, const Wording& w)
{
    const auto& most = length.influences;
    const auto effect = [&](std::size_t i) { return w.length(Rounded::measured, most[i].effect); };
    const auto counts = [&](std::size_t i) { return i < most.size() && most[i].effect > Length(); };
    const std::string doubt = w.length(Rounded::doubt, length.plus_minus);
    if (!counts(0)) return w("± {doubt}", {{"doubt", doubt}});
    if (!counts(1)) return w("± {doubt}, most of it from {first} ({effect})", {{"doubt", doubt}, {"first", most[0].dimension}, {"effect", effect(0)}});
    return w("± {doubt}, most of it from {first} ({effect}) and {second} ({second_effect})",
             {{"doubt", doubt}, {"first", most[0].dimension}, {"effect", effect(0)}, {"second", most[1].dimension}, {"second_effect", effect(1)}});
}

std::string say(Side side, const Wording& w)
{
    switch (side) {
    case Side::behind: return w("behind");
    case Side::in_front: return w("in front");
    case Side::above: return w("above");
    case Side::below: return w("below");
    case Side::left: return w("left");
    case Side::right: return w("right");
    case Side::rises: return w("rises");
    case Side::falls: break;
    }
    return w("falls");
}

}  // namespace shaftcut
