// What the parts of the consistency check share. Private to it.
#pragma once

#include "checks/check_parts.hpp"

namespace shaftcut {

// A sentence for each contradiction, which refuses, and for each doubt, which warns.
struct Findings {
    std::vector<std::string> contradictions;
    std::vector<std::string> doubts;
};

// A figure with the place where the job states it; a place without a file is not printed.
struct Figure {
    std::string name;
    Length length;
    Place place{};
};

// "line 7, column 12 of job.xml". The file's name without its folder: documents of one job are the same wherever it lies.
std::string short_place(const Place& place);

// "inner half 690 mm (line 7, column 12 of job.xml)".
std::string text(const CheckInput& input, const Figure& figure);

// "closed length between the inner crosses 796 mm (...)".
Figure closed_figure(const CheckInput& input);
Figure half_figure(const CheckInput& input, Tube tube);

// What halves, shoulders and the closed length say of each other.
void compare_stops(Findings& found, const CheckInput& input);

// A closed length, or halves, that fit as soon as they are read at the other cross, or exchanged.
void find_readings_elsewhere(Findings& found, const CheckInput& input);

// Lengths that no shaft has, and those that are one in the other unit.
void find_out_of_bounds(Findings& found, const CheckInput& input);

}  // namespace shaftcut
