#include "identify/figure_kinds.hpp"

#include <array>
#include <cmath>
#include <stdexcept>

namespace shaftcut::identifying {
namespace {

// In the order of SizeKind. A bore widens and a joint's two crosses wear apart; everything else wears away.
constexpr std::array<SizeLaw, 7> laws{{
    //  u     t     a     w     g    b     d     trade      usual
    {0.10, 0.05, 0.30, 0.06, -1, 0.10, 0.08, {10, 60}, {14, 50}},
    {0.20, 0.06, 0.40, 0.12, +1, 0.10, 0.10, {10, 60}, {14, 50}},
    {0.30, 0.20, 0.30, 0.20, -1, 0.10, 0.15, {20, 150}, {36, 130}},
    {1.00, 0.50, 0.30, 0.40, +1, 0.10, 0.40, {30, 150}, {45, 130}},
    {0.40, 0.40, 0.50, 0.35, -1, 0.15, 0.20, {15, 130}, {20, 110}},
    {0.40, 0.40, 0.10, 0.20, -1, 0.30, 0.25, {15, 130}, {20, 110}},
    {0.30, 0.30, 0.30, 0.20, -1, 0.15, 0.15, {1, 15}, {2, 10}},
}};

Length to_length(double mm) { return Length::micrometres(std::llround(1000 * mm)); }

}  // namespace

const SizeLaw& law_of(SizeKind kind) { return laws[static_cast<std::size_t>(kind)]; }

SizeKind width_of(Tube tube) { return tube == Tube::inner ? SizeKind::inner_width : SizeKind::outer_width; }

bool is_look(IdentifyingKind kind)
{
    switch (kind) {
    case IdentifyingKind::joint:
    case IdentifyingKind::circlip:
    case IdentifyingKind::nipple:
    case IdentifyingKind::shape:
    case IdentifyingKind::role:
    case IdentifyingKind::writing: return true;
    default: return false;
    }
}

SizeKind size_kind(const IdentifyingFigure& figure)
{
    switch (figure.kind) {
    case IdentifyingKind::cap: return SizeKind::cap;
    case IdentifyingKind::cap_in_bore: return SizeKind::cap_in_bore;
    case IdentifyingKind::span: return SizeKind::span;
    case IdentifyingKind::spacing: return SizeKind::spacing;
    case IdentifyingKind::width: return width_of(figure.tube.value_or(Tube::inner));
    case IdentifyingKind::wall: return SizeKind::wall;
    default: throw std::logic_error("no size of a part");
    }
}

}  // namespace shaftcut::identifying

namespace shaftcut {

std::optional<Length> usual_plus_minus(IdentifyingKind kind, bool over_spacers)
{
    using namespace identifying;
    if (is_look(kind)) return std::nullopt;
    if (kind == IdentifyingKind::closed) return to_length(closed_plus_minus);
    if (kind == IdentifyingKind::span && over_spacers) return to_length(plus_minus_over_spacers);
    return to_length(law_of(size_kind({{}, kind, {}, CapPair::first, {}, false})).plus_minus);
}

}  // namespace shaftcut
