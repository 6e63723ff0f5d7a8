// The page's texts by the part of it where they stand. Private to the wording.
#pragma once

#include "bench/bench_words.hpp"

namespace shaftcut::bench_page {

using BenchWords = std::vector<std::pair<std::string, std::string>>;

BenchWords frame_words(const Wording& w);
BenchWords together_words(const Wording& w);
BenchWords parted_words(const Wording& w);
BenchWords on_machine_words(const Wording& w);
BenchWords machine_words(const Wording& w);
BenchWords more_words(const Wording& w);
BenchWords unchecked_words(const Wording& w);  // by the check
BenchWords more_box_words(const Wording& w);
BenchWords saw_words(const Wording& w);
BenchWords quote_words(const Wording& w);
BenchWords identify_words(const Wording& w);

}  // namespace shaftcut::bench_page
