// What the saw takes off where so much must go.
#pragma once

#include <algorithm>

#include "shaftcut/trade/cut/cut.hpp"

namespace shaftcut {

// Nothing comes off where the step rounds the need to nothing; a sliver thinner than the blade cannot be sawn.
inline Length sawn(Length needed, const SawSettings& saw)
{
    const Length stepped = round_up_to_step(needed, saw.step_um);
    return stepped == Length() ? stepped : std::max(stepped, saw.least_cut);
}

}  // namespace shaftcut
