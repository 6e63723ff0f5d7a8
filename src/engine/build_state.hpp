#pragma once

#include "known.hpp"
#include "shaftcut/engine/build_run.hpp"

namespace shaftcut {

BuildStart start_build(const std::shared_ptr<const Known>& known, const Source& orders, const Wishes& wishes, const SawWishes& saw);

}  // namespace shaftcut
