// A job's file with changes put into it, as a form on a screen does.
#pragma once

#include <string>

#include "change.hpp"

namespace shaftcut::test {

// `xml`: a file whose root the paths start below. What a path names and is not there is made.
std::string changed(const std::string& xml, const Changes& changes);

}  // namespace shaftcut::test
