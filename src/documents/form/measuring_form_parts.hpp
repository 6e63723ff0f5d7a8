// The parts of the measuring form, each drawn by one function, and what they are made of.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "drawing/gauge_drawing.hpp"
#include "drawing/joint_drawing.hpp"
#include "drawing/tube_section.hpp"
#include "form/captions.hpp"
#include "form/form_words.hpp"
#include "form/tick_words.hpp"
#include "page/canvas.hpp"
#include "shaftcut/documents/form/measuring_form.hpp"

namespace shaftcut::measuring_form {

// Between boxes that stand side by side.
inline constexpr double gap = 2;
// Of every box to write in.
inline constexpr double box_height = 9;
// From one line of ticks to the next.
inline constexpr double tick_pitch = 4.8;

// A joint may be a wide-angle one: not where the series has none.
bool may_be_wide_angle(const MeasuringForm& form);
// The cross that lengths usually start from where none is ticked and series or shape says it.
std::optional<Reference> stated_reference(const MeasuringForm& form);

// A numbered heading, its hint beside it as narrow as it must be; the y below.
double draw_heading(Canvas& canvas, Rect room, int number, const std::string& title, const std::string& hint);
inline constexpr double heading_height = 6.4;

// A box to write in: its name in the upper corner, its unit in the lower one, what it should come to in the other.
struct Entry {
    double share = 1;
    std::string name, unit;
    std::string expected{};
};
void draw_entry(Canvas& canvas, Rect box, const Entry& entry);
// Boxes side by side over the width of `row`, each as wide as its share.
void draw_entries(Canvas& canvas, Rect row, const std::vector<Entry>& entries);

// A square to tick, with its word; the x behind them. `at`: left end of the baseline.
double draw_tick(Canvas& canvas, Point at, const std::string& word);
void draw_tick_box(Canvas& canvas, Point at);
// A name in front and its words to tick, on one line; the x behind them.
double draw_ticks(Canvas& canvas, Point at, const std::string& name, const std::vector<std::string>& words);

// A joint that may be either kind: as a standard one, and dashed what a wide-angle joint has beyond its inner cross.
void draw_either_joint(Canvas& canvas, const Frame& frame, double outer_cross, double inner_cross, bool may_be_wide);

// Each draws within the width of `room` from its top down and returns the y below itself.
using Section = double(Canvas&, Rect, const MeasuringForm&, const Wording&);
Section draw_front_title, draw_cautions, draw_shaft, draw_tube_sections, draw_condition, draw_ends, draw_closed, draw_limits;
// Of the form that asks for what tells a shaft's series.
Section draw_identify_title, draw_gauges, draw_identify_ends, draw_identify_tubes, draw_identify_closed;
Section draw_back_title, draw_halves, draw_machine_cautions, draw_positions, draw_angles, draw_trailed, draw_mounted, draw_tractors, draw_measured_by;

}  // namespace shaftcut::measuring_form
