// How a shaft made to order is put together: common practice of published manuals, in our own words.
#include "build/build_words.hpp"

namespace shaftcut {
namespace {

// Sawn lengths are exact; all others are rounded to what a tape measure shows.
std::string sawn(Length length, const Wording& w) { return saw_figure_with_unit(length, w.units()); }
std::string measured(Length length, const Wording& w) { return w.both(Rounded::measured, length); }
std::string at_most(Length length, const Wording& w) { return figure_with_millimetres(length, w.units(), Toward::down); }

std::string does(PlainOperation operation, const Wording& w)
{
    switch (operation) {
    case PlainOperation::deburr: return w("Deburr every end inside and out; clear the swarf.");
    case PlainOperation::grease: return w("Grease each cross until all four caps show it; grease the inner tube.");
    case PlainOperation::set_bearings: return w("Set a greased guard bearing into each tube yoke's groove.");
    case PlainOperation::join_guard_in_guard: return w("Put the halves together, guard in guard: the marks meet.");
    case PlainOperation::hook_chains: break;
    }
    return w("Hook a chain to each guard half; never hang the shaft by it.");
}

std::string does(const SawTubes& operation, const Wording& w)
{
    std::vector<std::string> pieces, said;
    for (const auto& [tube, length] : operation.sawn)
        pieces.push_back(w("the {tube:inner|outer} {kind:tube|guard tube} to {length}", {{"tube", tube.tube}, {"kind", tube.kind}, {"length", sawn(length, w)}}));
    if (!pieces.empty()) said.push_back(w("Saw {pieces}, each ± {tolerance}.", {{"pieces", w.all_of(pieces)}, {"tolerance", figure_with_unit(operation.plus_minus, Units::mm)}}));
    for (const auto& [tube, length] : operation.fetched)
        said.push_back(w("Fetch the {tube:inner|outer} tube made to {length}; do not saw it.", {{"tube", tube.tube}, {"length", sawn(length, w)}}));
    return running_text(said);
}

std::string does(const DrillPinHoles& operation, const Wording& w)
{
    const auto& inner = operation.pin_hole[Tube::inner];
    const auto& outer = operation.pin_hole[Tube::outer];
    if (inner && outer)
        return w("Drill the pin holes, centre at {inner} from the inner tube's yoke end and at {outer} from the outer tube's yoke end.",
                 {{"inner", hole_length(*inner, w)}, {"outer", hole_length(*outer, w)}});
    if (!inner && !outer) return w("Drill the pin holes through the yokes' own holes, tubes driven fully home: the catalogue does not state where they are.");
    return w("Drill the pin hole, centre at {hole} from the {tube:inner|outer} tube's yoke end; the other tube's through its yoke's own hole, driven fully home: the catalogue does not state "
             "where it is.",
             {{"hole", hole_length(inner ? *inner : *outer, w)}, {"tube", inner ? Tube::inner : Tube::outer}});
}

std::string does(const DriveTubeYokes& operation, const Wording& w)
{
    return running_text({w("Drive the tube yokes fully home: the inner tube's for the {inner:tractor|implement} end, the outer tube's for the {outer:tractor|implement} end.",
                           {{"inner", operation.end[Tube::inner]}, {"outer", operation.end[Tube::outer]}}),
                         w("Drive the pins flush.")});
}

std::string does(const FitCross& operation, const Wording& w)
{
    const NamedValue end{"end", operation.end}, connection{"connection", operation.connection.value_or(w("connection"))};
    if (operation.joint == JointKind::standard)
        return w("At the {end:tractor|implement} end fit the cross with its four caps and rings between the tube yoke and the {connection} yoke.", {end, connection});
    return w("At the {end:tractor|implement} end fit the inner cross between the tube yoke and the double yoke, the outer cross between that and the {connection} yoke, each with its four caps "
             "and rings.",
             {end, connection});
}

std::string does(const FitDevice& operation, const Wording& w)
{
    return w("At the {end:tractor|implement} end fit the {device} the way round marked on it.", {{"end", operation.end}, {"device", to_word(operation.device)}});
}

std::string in_phase(Shape shape, const Wording& w)
{
    switch (shape) {
    case Shape::lemon: return w("Lemon tubes go together in two ways, and both are in phase.");
    case Shape::triangular: return w("Triangular tubes go together in three ways, of which one is in phase.");
    case Shape::square: return w("Square tubes go together in four ways, of which two are in phase.");
    default: return w("Tubes of this shape can be put together out of phase.");
    }
}

std::string does(const JoinInPhase& operation, const Wording& w)
{
    return running_text({w("Put the halves together in phase: both tube yokes' forks in one plane."), in_phase(operation.shape, w),
                         w("Mark both tubes{part:|, and part them again}.", {{"part", operation.part_again}})});
}

std::string does(const PushGuards& operation, const Wording& w)
{
    return w("Push each guard tube over its half on to the bearing; it ends short of its drive tube: the inner one {inner} and the outer one {outer}.",
             {{"inner", measured(operation.short_by[Tube::inner], w)}, {"outer", measured(operation.short_by[Tube::outer], w)}});
}

std::string does(const StickLabel& operation, const Wording& w)
{
    const std::string stick = w("Stick the safety label on{guard:| the guard}, to be read from the tractor.", {{"guard", operation.on_guard}});
    const NamedValue order{"order", operation.order}, closed{"closed", measured(operation.closed, w)}, from{"from", operation.from};
    if (!operation.pull_to_turning)
        return running_text({stick, w("Write on it: order {order}, closed {closed} {from:cross to cross|from the outer cross of the wide-angle joint|from the inner cross of the wide-angle "
                                      "joint}.",
                                      {order, closed, from})});
    return running_text({stick, w("Write on it: order {order}, closed {closed} {from:cross to cross|from the outer cross of the wide-angle joint|from the inner cross of the wide-angle joint}; "
                                  "turning, pull to {turning} at most, measured the same way.",
                                  {order, closed, from, {"turning", at_most(*operation.pull_to_turning, w)}})});
}

std::string does(const MeasureClosed& operation, const Wording& w)
{
    return w("Push fully together and measure {from:cross to cross|from the outer cross of the wide-angle joint|from the inner cross of the wide-angle joint}, joints straight: {closed} ± "
             "{tolerance}.",
             {{"from", operation.from}, {"closed", measured(operation.closed, w)}, {"tolerance", figure_with_unit(operation.plus_minus, Units::mm)}});
}

std::string does(const PullOut& operation, const Wording& w)
{
    return w("Pull out to {length} in the same way: it slides freely, {overlap} of overlap left.",
             {{"length", measured(operation.to, w)}, {"overlap", w.both(Rounded::overlap, operation.overlap_left)}});
}

std::string does(const TurnByHand& operation, const Wording& w)
{
    return w("Turn by hand: no joint binds{guard:|, each guard half turns freely}.", {{"guard", operation.guard}});
}

}  // namespace

std::string say(const Operation& operation, const Wording& w)
{
    return std::visit([&](const auto& found) { return does(found, w); }, operation.does);
}

std::string hole_length(Length length, const Wording& w)
{
    constexpr std::int64_t um_of_an_inch = 25'400;
    std::string millimetres = figure_with_unit(length, Units::mm, Toward::nearest, 3);
    if (w.units() == Units::mm) return millimetres;
    const std::int64_t thousandths = (1000 * length.um() + um_of_an_inch / 2) / um_of_an_inch;
    return millimetres + " (" + figure(Length::micrometres(thousandths), Units::mm, Toward::nearest, 3) + " in)";
}

}  // namespace shaftcut
