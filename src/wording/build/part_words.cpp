// What the parts of a shaft made to order are called, and where they go.
#include "build/build_words.hpp"

namespace shaftcut {
namespace {

std::string cross_name(const PartName& name, const Wording& w)
{
    if (!name.cap || !name.span) return w("{series} cross of the wide-angle joint", {{"series", name.series}});
    return w("{series} cross {cap} × {span}", {{"series", name.series}, {"cap", figure(*name.cap, Units::mm)}, {"span", figure(*name.span, Units::mm)}});
}

std::string connection_yoke(const PartName& name, const Wording& w)
{
    const std::string connection = name.connection ? *name.connection : w("of a connection that is not stated");
    const std::string lock = name.lock ? to_word(*name.lock) : w("not stated");
    return w("{series} connection yoke {connection}{wide:| of a wide-angle joint}, lock {lock}",
             {{"series", name.series}, {"connection", connection}, {"wide", name.of_wide_angle}, {"lock", lock}});
}

std::string unnamed(const PartName& name, const Wording& w)
{
    if (!name.kind) return cross_name(name, w);
    const NamedValue series{"series", name.series}, tube{"tube", name.tube.value_or(Tube::inner)};
    switch (*name.kind) {
    case PartKind::double_yoke: return w("{series} double yoke", {series});
    case PartKind::connection_yoke: return connection_yoke(name, w);
    case PartKind::tube_yoke: return w("{series} tube yoke, {tube:inner|outer} tube", {series, tube});
    case PartKind::tube: return w("{series} {tube:inner|outer} tube", {series, tube});
    case PartKind::pin: return w("{series} pin, {tube:inner|outer} tube", {series, tube});
    case PartKind::guard_tube: return w("{series} {tube:inner|outer} guard tube", {series, tube});
    case PartKind::guard_bearing: return w("{series} guard bearing, {tube:inner|outer} half", {series, tube});
    case PartKind::chain: return w("{series} guard chain", {series});
    case PartKind::device: return w("{series} {device} {connection}", {series, {"device", to_word(name.device.value_or(Device::none))}, {"connection", name.connection.value_or("")}});
    case PartKind::book: return w("{series} instruction book", {series});
    case PartKind::label: break;
    }
    return w("{series} safety label", {series});
}

std::string cross_place(const ShaftPart& part, const NamedValue& end, const Wording& w)
{
    if (!part.cross) return w("{end:tractor|implement} end", {end});
    return w("{end:tractor|implement} end, {cross:outer|inner} cross", {end, {"cross", *part.cross}});
}

}  // namespace

std::string say(const PartName& name, const Wording& w) { return name.known.empty() ? unnamed(name, w) : name.known; }

std::string place_of(const ShaftPart& part, const Wording& w)
{
    const NamedValue tube{"tube", part.tube.value_or(Tube::inner)}, end{"end", part.end.value_or(End::tractor)};
    if (!part.kind) return cross_place(part, end, w);
    switch (*part.kind) {
    case PartKind::tube:
    case PartKind::guard_tube:
    case PartKind::guard_bearing:
    case PartKind::chain: return w("{tube:inner|outer} half", {tube});
    case PartKind::tube_yoke:
    case PartKind::pin: return w("{tube:inner|outer} tube", {tube});
    case PartKind::double_yoke: return w("{end:tractor|implement} end, between the crosses", {end});
    case PartKind::connection_yoke:
    case PartKind::device: return w("{end:tractor|implement} end", {end});
    case PartKind::book: return w("with the shaft");
    case PartKind::label: break;
    }
    return w("on the guard, if it has one");
}

std::string say(ShaftTube tube, const Wording& w) { return w("{tube:inner|outer} {kind:tube|guard tube}", {{"tube", tube.tube}, {"kind", tube.kind}}); }

std::string piece_label(const BatchPiece& piece, const Wording& w)
{
    return w("{order} {tube:inner|outer} {kind:tube|guard tube}", {{"order", piece.order}, {"tube", piece.part.tube}, {"kind", piece.part.kind}});
}

}  // namespace shaftcut
