// What stands on the plate of a new shaft, and on the paper around it.
#pragma once

#include <string>

#include "shaftcut/trade/build/build_plan.hpp"
#include "wording.hpp"

namespace shaftcut {

// The program declares nothing: on the paper and on the terminal.
std::string plates_bear_no_mark(const Wording& w);

namespace plate {

// Of the file.
std::string document_title(const std::string& order, const Wording& w);
std::string document_subject(const Wording& w);

// Of the paper around the plates: whose they are and how many; how often the paper is needed where one does not hold them all.
std::string whose(const BuildPlan& plan, const Wording& w);
std::string more_sheets(int times, const Wording& w);

enum class Caption { made_by, serial_number, year, speed_unknown, mass, weigh, how_to, read_the_book };
std::string say(Caption caption, const Wording& w);
std::string series(const std::string& name, const Wording& w);
std::string greatest_speed(int per_minute, const Wording& w);
// Of a series that is rated: power and torque at the greatest speed.
std::string rating(std::int64_t watts, std::int64_t newton_metres, const Wording& w);

}  // namespace plate
}  // namespace shaftcut
