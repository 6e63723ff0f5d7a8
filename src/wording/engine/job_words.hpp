// What stands between the lines of a job that is begun from what was measured of a shaft.
#pragma once

#include <string>

#include "shaftcut/trade/identify/identify.hpp"
#include "wording.hpp"

namespace shaftcut::job_words {

std::string how_to_fill(const Wording& w);
// Why the shaft is of the series that the job states, or of none.
std::string of_series(IdentifyVerdict verdict, const Wording& w);
// Of a mixed shaft, where it is not sure of which series all but the odd part are.
std::string of_others(const MixedShaft& mixed, const Wording& w);
std::string of_halves(const Wording& w);
std::string of_half_at(End end, const Wording& w);
std::string of_measures(const Wording& w);

}  // namespace shaftcut::job_words
