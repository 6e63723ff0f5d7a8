#include "hitch/hitch_problem_words.hpp"

namespace shaftcut {
namespace {

std::string exact(Angle angle) { return figure(angle, 3); }
std::string measured(Length length, const Wording& w) { return w.length(Rounded::measured, length); }

std::string position(const TrailedPosture& at, const Wording& w)
{
    return w("turn {turn} degrees, pitch {pitch} degrees, roll {roll} degrees", {{"turn", exact(at.turn)}, {"pitch", exact(at.pitch)}, {"roll", exact(at.roll)}});
}

std::string position(const MountedPosture& at, const Wording& w) { return w("a height of {height}", {{"height", measured(at.height, w)}}); }

std::string position(const Posture& posture, const Wording& w)
{
    return std::visit([&w](const auto& at) { return position(at, w); }, posture);
}

// "a height from 200 mm to 500 mm or from 600 mm to 700 mm above ground".
std::string reached(const std::vector<Heights>& all, const Wording& w)
{
    std::vector<std::string> spans;
    for (const Heights& one : all) spans.push_back(w("from {lowest} to {highest}", {{"lowest", w.length(Rounded::at_least, one.lowest)}, {"highest", w.length(Rounded::at_most, one.highest)}}));
    return w("a height {spans} above ground", {{"spans", w.either(spans)}});
}

FaultWords said(const NoRangeStated&, const Wording& w) { return {w("no range of movement is stated"), w("state working, turning or standing")}; }

FaultWords said(const TiltedBack& fault, const Wording& w)
{
    return {w("an input-tilt of {tilt} degrees turns the input shaft's axis back on itself", {{"tilt", exact(fault.tilt)}}), w("between -90 and 90 degrees")};
}

FaultWords said(const MovementOutOfBounds& fault, const Wording& w)
{
    return {w("a {movement:turn|pitch|roll} of {angle} degrees", {{"movement", fault.movement}, {"angle", exact(fault.angle)}}),
            w("plus or minus 0 to under {below} degrees about straight and level", {{"below", fault.below}})};
}

FaultWords said(const PinInFront& fault, const Wording& w)
{
    return {w("the pin is {distance} in front of the PTO stub's groove", {{"distance", measured(fault.distance, w)}}), w("a pin 0 or more behind it")};
}

FaultWords said(const LinkWithoutLength& fault, const Wording& w)
{
    return {w("a {link:lower-link|top-link|mast} of {length}", {{"link", fault.link}, {"length", measured(fault.length, w)}}), w("a length above 0")};
}

FaultWords said(const LowestAboveHighest& fault, const Wording& w)
{
    return {w("a lowest of {lowest} is above the highest of {highest}", {{"lowest", measured(fault.lowest, w)}, {"highest", measured(fault.highest, w)}}),
            w("a lowest that is the highest or below it")};
}

FaultWords said(const HeightOutOfReach& fault, const Wording& w)
{
    return {w("the links cannot bring the lower hitch point to {height}", {{"height", measured(fault.height, w)}}), reached(fault.reached, w)};
}

FaultWords said(const HeightsApart& fault, const Wording& w)
{
    return {w("the links cannot pass from {lowest} to {highest}", {{"lowest", measured(fault.lowest, w)}, {"highest", measured(fault.highest, w)}}), reached(fault.reached, w)};
}

std::string meet_nowhere(Length top_link, Length mast, const Wording& w)
{
    return w("a top-link of {top_link} and a mast of {mast} meet at no height", {{"top_link", measured(top_link, w)}, {"mast", measured(mast, w)}});
}

FaultWords said(const TopPivotTooFarBack& fault, const Wording& w)
{
    return {meet_nowhere(fault.top_link, fault.mast, w),
            w("a top link pivot in front of the lower hitch point, which is {behind} behind the PTO stub's groove", {{"behind", w.length(Rounded::at_most, fault.hitch_behind)}})};
}

FaultWords said(const TopLinkDoesNotClose& fault, const Wording& w)
{
    return {meet_nowhere(fault.top_link, fault.mast, w),
            w("with the lower hitch point at {height}, a top-link from {at_least} to {at_most}",
              {{"height", measured(fault.height, w)}, {"at_least", w.length(Rounded::at_least, fault.at_least)}, {"at_most", w.length(Rounded::at_most, fault.at_most)}})};
}

FaultWords said(const NoRoomForShaft& fault, const Wording& w)
{
    return {w("an input-behind of {input_behind} leaves no room for the shaft at {position}", {{"input_behind", measured(fault.input_behind, w)}, {"position", position(fault.at, w)}}),
            w("more than {least}", {{"least", w.length(Rounded::at_least, fault.least)}})};
}

FaultWords said(const FoldsBack& fault, const Wording& w)
{
    return {w("the shaft folds back on itself at {position}", {{"position", position(fault.at, w)}}), w("on the way there, up to {position}", {{"position", position(fault.last, w)}})};
}

}  // namespace

FaultWords say(const HitchFault& fault, const Wording& w)
{
    return std::visit([&w](const auto& one) { return said(one, w); }, fault);
}

}  // namespace shaftcut
