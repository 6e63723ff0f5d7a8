// What is wrong with a file, each at its element and attribute, as JSON. Private to the layers above.
#pragma once

#include <string>

#include "shaftcut/words/problem.hpp"

namespace shaftcut {

// The shape is that of faults_json() in bench_answer.hpp.
std::string faults_json_of(const Problems& problems);

}  // namespace shaftcut
