// A machine and its shaft in one position. Private to its room.
#pragma once

#include "shaftcut/trade/order/machine_view.hpp"

namespace shaftcut {

// The position must lie within a range of the machine.
MachineScene machine_scene(SceneOf of, const GeometryReading& geometry, const Posture& at);

}  // namespace shaftcut
