// How a tool is held to what tells a shaft's series: the habits of the trade, drawn by hand and to no maker's drawing.
#pragma once

#include <optional>

#include "page/canvas.hpp"
#include "shaftcut/trade/identify/identify.hpp"

namespace shaftcut {

// About 32 wide.
inline constexpr double gauge_height = 21;

// Whether there is a drawing of this: none of what only the eye reads, nor of the closed length.
bool has_gauge_drawing(IdentifyingKind kind);

// In the middle of `picture`. Spacer pieces are black, a tube's section is that of `shape`. Nothing where there is no drawing.
void draw_gauge(Canvas& canvas, Rect picture, IdentifyingKind kind, std::optional<Shape> shape);

}  // namespace shaftcut
