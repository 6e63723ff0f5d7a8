// How a shaft made to order is put together: common practice of published manuals, in our own words.
#include "build/build_words.hpp"

namespace shaftcut {
namespace {

// Sawn lengths are exact; all others are rounded to what a tape measure shows.
std::string sawn(Length length, const Wording& w) { return saw_figure_with_unit(length, w.units()); }
std::string measured(Length length, const Wording& w) { return w.both(Rounded::measured, length); }
std::string at_most(Length length, const Wording& w) { return figure_with_millimetres(length, w.units(), Toward::down); }

std::string does(const CheckPieces& operation, const Wording& w)
{
    std::vector<std::string> pieces, said;
    for (const auto& [tube, length] : operation.sawn)
        pieces.push_back(w("{tube:inner|outer} {kind:tube|guard tube} {length} ____", {{"tube", tube.tube}, {"kind", tube.kind}, {"length", sawn(length, w)}}));
    if (!pieces.empty())
        said.push_back(w("Hold each piece against its label and measure it, ± {tolerance}: {pieces}.", {{"tolerance", figure_with_unit(operation.plus_minus, Units::mm)}, {"pieces", w.all_of(pieces)}}));
    for (const auto& [tube, length] : operation.fetched)
        said.push_back(w("Measure the {tube:inner|outer} tube that was fetched, {length} ____; do not saw it.", {{"tube", tube.tube}, {"length", sawn(length, w)}}));
    said.push_back(w("Deburr every end inside and out; clear the swarf."));
    return running_text(said);
}

std::string fixed(const std::optional<Length>& pin_hole, const Wording& w)
{
    if (!pin_hole) return w("Drill through the yoke's own hole and drive the pin flush.");
    return w("Drill, centre at {hole} from the tube's yoke end, and drive the pin flush.", {{"hole", hole_length(*pin_hole, w)}});
}

std::string does(const FixOuterYoke& operation, const Wording& w)
{
    return running_text({w("Outer tube: mark on it how deep its yoke takes it, and drive the yoke for the {end:tractor|implement} end home until its edge is at the mark.", {{"end", operation.end}}),
                         fixed(operation.pin_hole, w)});
}

std::string in_one_plane(Shape shape, const Wording& w)
{
    switch (shape) {
    case Shape::lemon: return w("Lemon tubes go together in two ways, and both are in phase.");
    case Shape::triangular: return w("Triangular tubes go together in three ways, of which one is in phase.");
    case Shape::square: return w("Square tubes go together in four ways, of which two are in phase.");
    default: return w("Tubes of this shape can be put together out of phase.");
    }
}

std::string does(const FixInnerYoke& operation, const Wording& w)
{
    return running_text({w("Inner tube: likewise with the yoke for the {end:tractor|implement} end, but do not fix it yet.", {{"end", operation.end}}),
                         w("Push the halves together dry and lay them on the flat: both tube yokes' forks in one plane."), in_one_plane(operation.shape, w), fixed(operation.pin_hole, w)});
}

std::string fitted(const FitCross& operation, const Wording& w)
{
    const NamedValue end{"end", operation.end}, connection{"connection", operation.connection.value_or(w("connection"))}, device{"device", to_word(operation.instead.value_or(Device::none))};
    if (operation.joint == JointKind::standard && operation.instead)
        return w("At the {end:tractor|implement} end fit the cross with its four caps and rings between the tube yoke and the {device}.", {end, device});
    if (operation.joint == JointKind::standard)
        return w("At the {end:tractor|implement} end fit the cross with its four caps and rings between the tube yoke and the {connection} yoke.", {end, connection});
    if (operation.instead)
        return w("At the {end:tractor|implement} end fit the inner cross between the tube yoke and the double yoke, the outer cross between that and the {device}, each with its four caps and rings.",
                 {end, device});
    return w("At the {end:tractor|implement} end fit the inner cross between the tube yoke and the double yoke, the outer cross between that and the {connection} yoke, each with its four caps "
             "and rings.",
             {end, connection});
}

std::string does(const StrokesAndCrosses& operation, const Wording& w)
{
    return running_text({w("Still together: one paint stroke on each tube yoke, in line."), fitted(operation.cross[End::tractor], w), fitted(operation.cross[End::implement], w)});
}

std::string does(const MeasureClosed& operation, const Wording& w)
{
    return running_text({w("Push fully together, dry, strokes in line, joints straight: closed length {from:cross to cross|from the outer cross of the wide-angle joint|from the inner cross of the "
                           "wide-angle joint} {closed} ± {tolerance}; and O, over both outer ends between two edges that stay in sight with the guards on.",
                           {{"from", operation.from}, {"closed", measured(operation.closed, w)}, {"tolerance", figure_with_unit(operation.plus_minus, Units::mm)}}),
                         w("Write both in its boxes."), w("Outside: put it aside and ask; never force it.")});
}

std::string does(const PartAndGrease& operation, const Wording& w)
{
    return w("Part the halves. Grease the inner tube{guard:|, the guard bearings} and each cross until all four caps show it.", {{"guard", operation.guard}});
}

std::string does(const FitGuards& operation, const Wording& w)
{
    return running_text({w("Set a guard bearing into each tube yoke's groove, push each guard over its half until it latches, and pull it: it does not come off."),
                         w("The tube stands out of its guard: inner {inner} ____, outer {outer} ____.",
                           {{"inner", measured(operation.stands_out[Tube::inner], w)}, {"outer", measured(operation.stands_out[Tube::outer], w)}})});
}

std::string does(const JoinAgain& operation, const Wording& w)
{
    return running_text({w("Strokes in line, push fully together: O as in step 5."), w("Turn by hand: no joint binds{guard:|, each guard half turns freely}.", {{"guard", operation.guard}})});
}

std::string does(const FitFittings& operation, const Wording& w)
{
    std::vector<std::string> said;
    for (const End end : both_ends)
        if (const auto& device = operation.device[end]) said.push_back(w("At the {end:tractor|implement} end fit the {device} the way round marked on it.", {{"end", end}, {"device", to_word(*device)}}));
    for (const End end : operation.springing) said.push_back(w("Pull the lock at the {end:tractor|implement} end back and let go: it springs back.", {{"end", end}}));
    return running_text(said);
}

std::string does(const HookChains&, const Wording& w) { return w("Hook one chain to each guard half; never hang the shaft by it."); }

std::string does(const StickLabel& operation, const Wording& w)
{
    const std::string stick = w("Stick the safety label on{guard:| the guard}, to be read from the tractor.", {{"guard", operation.on_guard}});
    const std::string book = w("Put its instruction book with it.");
    const NamedValue order{"order", operation.order}, closed{"closed", measured(operation.closed, w)}, from{"from", operation.from};
    if (!operation.pull_to_turning)
        return running_text({stick, w("Write on it: order {order}, closed {closed} {from:cross to cross|from the outer cross of the wide-angle joint|from the inner cross of the wide-angle "
                                      "joint}.",
                                      {order, closed, from}), book});
    return running_text({stick, w("Write on it: order {order}, closed {closed} {from:cross to cross|from the outer cross of the wide-angle joint|from the inner cross of the wide-angle joint}; "
                                  "turning, pull to {turning} at most, measured the same way.",
                                  {order, closed, from, {"turning", at_most(*operation.pull_to_turning, w)}}), book});
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
