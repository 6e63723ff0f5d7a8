// What catalogue add asks and says, in the words of the measuring form. A question ends with a blank: the answer stands behind it.
#pragma once

#include <string>
#include <vector>

#include "shaftcut/trade/data/series_figure.hpp"
#include "wording.hpp"

namespace shaftcut {

// Before the first question. `file`: series.xml; `units`: of what is answered without a unit.
std::string series_begins(const std::string& file, Units units, const Wording& w);
std::string say(const SeriesQuestion& question, const Wording& w);
// `series`: as it will stand there, in lines.
std::string series_to_write(const std::string& series, const Wording& w);
bool is_yes(const std::string& answer, const Wording& w);
std::string series_dropped(const Wording& w);
std::string series_written(const std::vector<std::string>& names, const std::string& file, const Wording& w);

}  // namespace shaftcut
