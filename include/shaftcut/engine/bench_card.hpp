// The document of a bench page's card.
#pragma once

#include <vector>

#include "shaftcut/documents/bench_card/bench_card.hpp"
#include "shaftcut/documents/page/document.hpp"
#include "shaftcut/engine/wishes.hpp"

namespace shaftcut {

// bench-card.pdf. Needs the fonts of the wishes. Throws std::bad_alloc, and std::runtime_error with a sentence.
std::vector<Document> documents(const BenchCard& card, const std::vector<Format>& formats, const Wishes& wishes);

}  // namespace shaftcut
