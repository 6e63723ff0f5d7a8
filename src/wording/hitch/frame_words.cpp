#include "hitch/frame_words.hpp"

#include "hitch/geometry_figures.hpp"
#include "hitch/hitch_problem_words.hpp"

namespace shaftcut {
namespace {

std::string said(const YokeNotKnown& why, const Wording& w)
{
    return w("The distance from cross to locking groove of the {end:tractor|implement} yoke is not known, so where the shaft begins is not known either.", {{"end", why.end}});
}

std::string said(const GeometryImpossible& why, const Wording& w)
{
    const FaultWords words = say(why.problem.fault, w);
    return w("{wrong}; {right}.", {{"wrong", words.wrong}, {"right", words.right}});
}

}  // namespace

std::string frame_said(const Posture& at, const std::string& length, const Wording& w) { return w("{posture}: {length}", {{"posture", in_words(at, w)}, {"length", length}}); }

std::string shortest_said(const std::string& length, const Posture& at, const Wording& w)
{
    return w("Shortest of all: {length}, {posture}", {{"length", length}, {"posture", in_words(at, w)}});
}

std::string longest_said(Range range, const std::string& length, const Posture& at, const Wording& w)
{
    return w("Longest {range:working|turning|standing}: {length}, {posture}", {{"range", range}, {"length", length}, {"posture", in_words(at, w)}});
}

std::string angle_said(End end, Range range, Angle angle, const Posture& at, const Wording& w)
{
    return w("The {end:tractor|implement} joint bends most {range:working|turning|standing}: {angle}, {posture}",
             {{"end", end}, {"range", range}, {"angle", w.angle(angle)}, {"posture", in_words(at, w)}});
}

std::string why_no_frames(const WhyUnreadable& why, const Wording& w)
{
    return std::visit([&w](const auto& one) { return said(one, w); }, why);
}

std::string only_first_drawn(std::size_t most, const Wording& w) { return w("Only the first {most} machines of a job are drawn as they move.", {{"most", std::to_string(most)}}); }

}  // namespace shaftcut
