#pragma once

#include "known.hpp"
#include "shaftcut/engine/saw_run.hpp"

namespace shaftcut {

SawStart start_saw(const std::shared_ptr<const Known>& known, const Source& pieces, const Wishes& wishes, const SawWishes& saw);

}  // namespace shaftcut
