// The Order sheet's checks: its head, and what each check asks, whatever the lengths.
#pragma once

#include <string>
#include <vector>

#include "shaftcut/trade/checks/checks.hpp"
#include "wording.hpp"

namespace shaftcut::workbook {

std::string checks_heading(const Wording& w);
std::vector<std::string> check_heads(const Wording& w);
std::string lengths_agree(const Wording& w);

std::string clearance_asked(Length floor, const Wording& w);

// Of the overlap at the longest working, turning, and with the PTO stopped. `at_least`: some tractors state no such length.
std::string overlap_working_asked(const std::string& part, bool at_least, const Wording& w);
std::string overlap_turning_asked(const std::string& part, Length least, bool at_least, const Wording& w);
std::string overlap_standing_asked(Length least, bool at_least, const Wording& w);

std::string tube_left_asked(bool figures_known, const Wording& w);

// What a half has that forbids a cut, or asks for work after one.
struct HalfWork {
    Tube tube = Tube::inner;
    bool shortening_forbidden = false, lubrication_hole = false, coated = false, end_stop = false, one_chain_guard = false;
};
std::string shortening_asked(const std::vector<HalfWork>& halves, Length one_chain, const Wording& w);

// `lacks_guard`: a guard is missing or not used again.
std::string guard_clearance_asked(bool shoulders_known, bool lacks_guard, const Wording& w);
std::string guard_cover_asked(bool lacks_guard, const Wording& w);
std::string guard_setback_asked(bool lacks_guard, const Wording& w);

}  // namespace shaftcut::workbook
