// What the labels of pieces and shafts say. Checked in tests/documents/build_papers_test.cpp.
#pragma once

#include "shaftcut/trade/build/batch.hpp"
#include "wording.hpp"

namespace shaftcut::labels_words {

// "INNER TUBE".
std::string piece(ShaftTube tube, const Wording& w);
// With an arrow to the end on which its yoke goes: "◄ yoke at the tractor end; no. 2 of 3".
std::string piece_number(const BatchPiece& piece, std::int64_t number, const Wording& w);
// "label 14: lemon tube 43 x 3.4, bar 2".
std::string taken_from(const BatchPiece& piece, std::size_t position, std::int64_t bar, const Wording& w);
std::string pin_hole(Length from_yoke_end, const Wording& w);

std::string closed(const BatchLengths& built, const Wording& w);
// "between the crosses; shaft 2 of 3".
std::string shaft_number(const BatchLengths& built, std::int64_t number, std::int64_t of, const Wording& w);
// How far it may be pulled and pushed.
std::string use(const BatchLengths& built, const Wording& w);
std::string danger(const Wording& w);
// What the code of a shaft's label holds.
std::string shaft_code(const std::string& order, const Wording& w);

}  // namespace shaftcut::labels_words
