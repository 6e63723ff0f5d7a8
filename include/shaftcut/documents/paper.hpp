// The sheet that a document is printed on.
#pragma once

namespace shaftcut {

enum class Paper { a4, letter };

}  // namespace shaftcut
