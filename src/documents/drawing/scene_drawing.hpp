// A machine and its shaft to scale in one position, seen from above or from the side. Private to its room.
#pragma once

#include <algorithm>
#include <vector>

#include "page/canvas.hpp"
#include "shaftcut/trade/order/machine_view.hpp"
#include "wording.hpp"

namespace shaftcut::geometry {

// What a cell leaves free above and below the machine, at its sides, and for labels above it.
inline constexpr double head = 10, foot = 6, side_margin = 4, labels_above = 10;

enum class View { plan, side };

// In plan y (to the right of travel) runs up the page, for travel is to the left; in side view z does.
struct Flat {
    double x, up;
};

struct Extent {
    double left = 1e9, right = -1e9, low = 1e9, high = -1e9;
    void hold(Flat point)
    {
        left = std::min(left, point.x);
        right = std::max(right, point.x);
        low = std::min(low, point.up);
        high = std::max(high, point.up);
    }
};
// The part of the machine that is seen in all of these positions; from the side down to the ground.
Extent extent_of(View seen, const std::vector<MachineScene>& scenes);

// `scale`: mm of the machine to one of the page.
void draw_scene(Canvas& canvas, Rect cell, View view, const Extent& extent, double scale, const MachineScene& scene, const Wording& w);

}  // namespace shaftcut::geometry
