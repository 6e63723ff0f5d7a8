// How an answer is written for a terminal.
#pragma once

namespace shaftcut {

enum class Colour { none, ansi };

}  // namespace shaftcut
