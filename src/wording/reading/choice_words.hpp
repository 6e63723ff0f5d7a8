// What tells one change of a job from another, on the button that makes it.
#pragma once

#include <string>

#include "job_changes.hpp"
#include "wording.hpp"

namespace shaftcut {

// Empty of the only one.
std::string say(const ChoiceOf& choice, const Wording& w);

}  // namespace shaftcut
