// What is said of a shaft whose series was asked for: its verdict, how sure that is, what to measure next, and what it does not say.
// Checked in tests/wording/identify/verdict_words_test.cpp.
#pragma once

#include <string>
#include <vector>

#include "both_halves.hpp"
#include "shaftcut/trade/identify/identified_shaft.hpp"
#include "wording.hpp"

namespace shaftcut::identify_words {

// "measures like Alder 2", "Larch 6, perhaps Rowan 5", "mixed", "of no series here", "no series here as a whole".
std::string verdict(const IdentifiedShaft& shaft, const Wording& w);
// Why, what is off, and what it rests on; not what to do next.
std::vector<std::string> reasons(const IdentifiedShaft& shaft, const Wording& w);
// What to measure next with how, or that nothing more helps and why; empty where the verdict stands and nothing is worth measuring.
std::vector<std::string> next_steps(const IdentifiedShaft& shaft, const Wording& w);
// What it does not say. Of a shaft of one series, or of several, for ordering and for the saw.
std::vector<std::string> cautions(const Identification& found, const Wording& w);
// Where a job says it: of a shaft of which each half is its own.
std::string for_a_job(const Wording& w);

// Beside a probability, in the column of the series.
std::string mixed_column(const Wording& w);
std::string none_column(const Wording& w);

// A figure that no shaft has.
Said say(const OutsideTrade& outside, const Wording& w);
Said empty_catalogue(const Wording& w);

}  // namespace shaftcut::identify_words
