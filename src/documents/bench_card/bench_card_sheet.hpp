// One sheet for the wall: the address of the bench page, as a code and in letters that are read from two steps away.
// Checked in tests/documents/bench_card.
#pragma once

#include <vector>

#include "shaftcut/documents/bench_card/bench_card.hpp"
#include "shaftcut/documents/page/font_files.hpp"
#include "shaftcut/documents/page/page.hpp"
#include "shaftcut/documents/page/paper.hpp"
#include "wording.hpp"

namespace shaftcut {

std::vector<Page> draw_bench_card(const BenchCard& card, Paper paper, const FontFiles& files, const Wording& w);

DocumentInfo bench_card_info(const BenchCard& card, const Wording& w);

}  // namespace shaftcut
