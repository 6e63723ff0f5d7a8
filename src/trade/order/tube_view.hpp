// The four tubes of a shaft as a sheet or a screen shows them: what each was, what comes off it, what is kept. Private to the layers above.
#pragma once

#include <optional>
#include <vector>

#include "shaftcut/trade/order/work_order.hpp"

namespace shaftcut {

// One of the four tubes, named by the end that it is on.
struct TubeView {
    End end = End::tractor;
    Tube tube = Tube::inner;
    bool guard = false;
    std::optional<Length> before;  // as measured, or worked out from the closed length
    bool measured = false;
    bool used = true;              // a guard that is damaged or missing is not
    std::optional<Length> cut;     // nothing when refused
    std::optional<Length> kept;    // nothing when refused or not known

    SawnPart part() const { return guard ? guard_part(tube) : tube_part(tube); }
    bool comes_off() const { return cut && *cut > Length(); }
};
TubeView tube_view(const WorkOrder& order, End end, bool guard);
// As they lie, those that are used.
std::vector<TubeView> tube_views(const WorkOrder& order);

}  // namespace shaftcut
