#include "identify/figure_words.hpp"

#include <fmt/format.h>

#include <cmath>

namespace shaftcut::identify_words {
namespace {

enum class WhichOne { any, inner, outer, other };

template <class E>
WhichOne which(const std::optional<E>& one, bool other)
{
    if (other) return WhichOne::other;
    if (!one) return WhichOne::any;
    return static_cast<int>(*one) == 0 ? WhichOne::inner : WhichOne::outer;
}

// Of a length that is not negative.
std::string thousandths_of_inch(Length length)
{
    const std::int64_t thousandths = (length.um() * 10 + 127) / 254;
    return fmt::format("{}.{:03}", thousandths / 1000, thousandths % 1000);
}

Length size_of(Length length) { return length < Length() ? -length : length; }

std::string of_width(std::optional<Shape> shape, const Wording& w)
{
    switch (shape.value_or(Shape::other)) {
    case Shape::lemon: return w("calliper on the tube, across the width of the lemon; halves apart for the inner tube");
    case Shape::star: return w("calliper on the tube, between opposite points of the star; halves apart for the inner tube");
    case Shape::triangular: return w("calliper on the tube, across the flats: one jaw on a flat, one on the rounding opposite; halves apart for the inner tube");
    case Shape::square: return w("calliper on the tube, across the flats; halves apart for the inner tube");
    case Shape::splined: return w("calliper on the tube, over the outside of the splines; halves apart for the inner tube");
    case Shape::other: break;
    }
    return w("calliper on the tube; halves apart for the inner tube");
}

}  // namespace

std::string figure_name(const IdentifyingFigure& figure, const Wording& w)
{
    const NamedValue end{"end", figure.part.value_or(IdentifiedPart::tractor)}, cross{"cross", which(figure.cross, figure.other)};
    const NamedValue tube{"tube", which(figure.tube, figure.other)}, pair{"pair", figure.pair};
    switch (figure.kind) {
    case IdentifyingKind::joint: return w("the joint at the {end:tractor|implement} end", {end});
    case IdentifyingKind::cap: return w("the {pair:cap|second pair's cap} of the {cross:|inner |outer |other }cross at the {end:tractor|implement} end", {pair, cross, end});
    case IdentifyingKind::cap_in_bore: return w("the {pair:cap's bore|second pair's bore} of the {cross:|inner |outer |other }cross at the {end:tractor|implement} end", {pair, cross, end});
    case IdentifyingKind::span: return w("the {pair:span|second pair's span} of the {cross:|inner |outer |other }cross at the {end:tractor|implement} end", {pair, cross, end});
    case IdentifyingKind::spacing: return w("the spacing of the two crosses at the {end:tractor|implement} end", {end});
    case IdentifyingKind::circlip: return w("the circlips of the {cross:|inner |outer |other }cross at the {end:tractor|implement} end", {cross, end});
    case IdentifyingKind::nipple: return w("the grease nipple of the {cross:|inner |outer |other }cross at the {end:tractor|implement} end", {cross, end});
    case IdentifyingKind::shape: return w("the shape of the tubes");
    case IdentifyingKind::role: return w("which tube slides in which");
    case IdentifyingKind::width: return w("the width of {tube:a|the inner|the outer|the other} tube", {tube});
    case IdentifyingKind::wall: return w("the wall of {tube:a|the inner|the outer|the other} tube", {tube});
    case IdentifyingKind::closed: return w("the closed length");
    case IdentifyingKind::writing: break;
    }
    return w("the writing on the guard");
}

std::string short_name(const IdentifyingFigure& figure, const Wording& w)
{
    const NamedValue cross{"cross", which(figure.cross, figure.other)}, tube{"tube", which(figure.tube, figure.other)}, pair{"pair", figure.pair};
    switch (figure.kind) {
    case IdentifyingKind::cap: return w("{cross:|inner |outer |other }{pair:cap|second cap}", {cross, pair});
    case IdentifyingKind::cap_in_bore: return w("{cross:|inner |outer |other }{pair:cap, bore|second cap, bore}", {cross, pair});
    case IdentifyingKind::span: return w("{cross:|inner |outer |other }{pair:span|second span}", {cross, pair});
    case IdentifyingKind::spacing: return w("spacing");
    case IdentifyingKind::width: return w("{tube:|inner |outer |other }width", {tube});
    case IdentifyingKind::wall: return w("{tube:|inner |outer |other }wall", {tube});
    case IdentifyingKind::joint: return w("kind of joint");
    case IdentifyingKind::circlip: return w("{cross:|inner |outer |other }circlips", {cross});
    case IdentifyingKind::nipple: return w("{cross:|inner |outer |other }nipple", {cross});
    case IdentifyingKind::shape: return w("shape");
    case IdentifyingKind::role: return w("which slides in which");
    case IdentifyingKind::closed: return w("closed length");
    case IdentifyingKind::writing: break;
    }
    return w("writing");
}

std::string part_name(IdentifiedPart part, const Wording& w) { return w("{part:joint at the tractor|joint at the implement|tubes}", {{"part", part}}); }

std::string bare_figure(Length length, const Wording& w) { return w.units() == Units::mm ? figure(length, Units::mm, Toward::nearest, 2) : thousandths_of_inch(length); }

std::string calliper(Length length, const Wording& w)
{
    const std::string millimetres = figure_with_unit(length, Units::mm, Toward::nearest, 2);
    if (w.units() == Units::mm) return millimetres;
    return thousandths_of_inch(length) + " " + unit_word(Units::in) + " (" + millimetres + ")";
}

Length printed_off(const ComparedFigure& figure)
{
    const auto printed = [](Length length) { return Length::micrometres((length.um() + 5) / 10 * 10); };
    return printed(figure.measured) - printed(*figure.series);
}

std::string off_by(Length off, const Wording& w)
{
    if (off == Length()) return w("the same");
    return w("{size} {less:more|less}", {{"size", calliper(size_of(off), w)}, {"less", off < Length()}});
}

std::string bare_off(Length off, const Wording& w)
{
    if (off == Length()) return "0";
    return (off < Length() ? "−" : "+") + bare_figure(size_of(off), w);
}

std::string percent(double percent, const Wording& w)
{
    if (percent >= 95) return w("> 95 %");
    if (percent < 1) return w("< 1 %");
    return w("{percent} %", {{"percent", static_cast<int>(std::floor(percent))}});
}

std::string takes(const IdentifyingFigure& figure, std::optional<Shape> shape, const Wording& w)
{
    switch (figure.kind) {
    case IdentifyingKind::joint: return w("eye and rag, as it lies: one cross, or two with a double yoke between them");
    case IdentifyingKind::cap: return w("calliper on the cap itself, circlip off, the cap pushed out of its bore");
    case IdentifyingKind::cap_in_bore: return w("inside jaws at the mouth of the bore, outside the circlip, cross fitted");
    case IdentifyingKind::span: return w("calliper over two equal spacer pieces that stand on opposite caps, cross fitted; both pieces are deducted");
    case IdentifyingKind::spacing: return w("calliper or rule, middle of cap to middle of cap, the joint in line");
    case IdentifyingKind::circlip: return w("eye and rag, as it lies: rings inside the yoke's bores, or outside in grooves of the caps");
    case IdentifyingKind::nipple: return w("eye and rag, as it lies: in the cross's body, or in the bottom of a cap");
    case IdentifyingKind::shape: return w("eye and rag, as it lies, or at a free end");
    case IdentifyingKind::role: return w("pulled out a hand: which one slides in the other");
    case IdentifyingKind::width: return of_width(shape, w);
    case IdentifyingKind::wall: return w("calliper at the tube's free end, burr off, halves apart");
    case IdentifyingKind::closed: return w("tape, pushed fully together, middle of cap to middle of cap");
    case IdentifyingKind::writing: break;
    }
    return w("eye and rag, as it lies: what stands on the guard");
}

std::string effort(MeasuringEffort effort, const Wording& w)
{
    switch (effort) {
    case MeasuringEffort::look: return w("half a minute, a look");
    case MeasuringEffort::as_it_lies: return w("1 min, as it lies");
    case MeasuringEffort::halves_apart: return w("2 min, halves apart");
    case MeasuringEffort::circlip_off: break;
    }
    return w("10 min, circlip off");
}

}  // namespace shaftcut::identify_words
