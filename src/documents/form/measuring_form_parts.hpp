// The parts of the measuring form, each drawn by one function, and what they are made of.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "drawing/joint_drawing.hpp"
#include "form/captions.hpp"
#include "form/form_words.hpp"
#include "page/canvas.hpp"
#include "shaftcut/documents/form/measuring_form.hpp"

namespace shaftcut::measuring_form {

// Between boxes that stand side by side.
inline constexpr double gap = 2;
// From one line of ticks to the next.
inline constexpr double tick_pitch = 5;
// Where a joint's first cross is drawn, and how far from it a wide-angle joint's other.
inline constexpr double first_cross_at = 15, crosses_apart = 30;
// From a joint's first cross to the groove of the stub that it is coupled to.
inline constexpr double groove_from_cross = 9;

// A joint may be a wide-angle one: not where the series has none.
bool may_be_wide_angle(const MeasuringForm& form);
// The cross that the closed length starts from where none is ticked and series or shape says it.
std::optional<Reference> stated_reference(const MeasuringForm& form);

// A numbered heading, its hint beside it or below; the y below.
double draw_heading(Canvas& canvas, Rect room, int number, const std::string& title, const std::string& hint);
inline constexpr double heading_height = 6.6;

// A box to write in, its name in the upper corner and its unit in the lower.
void draw_entry(Canvas& canvas, Rect box, const std::string& name, const std::string& unit = "");
// Boxes side by side over the width of `row`, each as wide as its share.
struct Entry {
    double share = 1;
    std::string name, unit;
};
void draw_entries(Canvas& canvas, Rect row, const std::vector<Entry>& entries);

// A square to tick, with its word and what it means; the x behind them. `at`: left end of the baseline.
double draw_tick(Canvas& canvas, Point at, const std::string& word, const std::string& hint = "");
void draw_tick_box(Canvas& canvas, Point at);
// A name in front and its words to tick, on one line; the x behind them.
double draw_ticks(Canvas& canvas, Point at, const std::string& name, const std::vector<std::string>& words);

// Which cross is which, on the left a wide-angle joint where there may be one, on the right a standard joint.
void draw_joint_names(Canvas& canvas, const Frame& frame, const MeasuringForm& form, double below_axis, const Wording& w);

// Each draws within the width of `room` from its top down and returns the y below itself.
double draw_title(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w);
double draw_cautions(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w);
double draw_shaft(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w);
double draw_condition(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w);
double draw_closed(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w);
double draw_ends(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w);
double draw_limits(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w);

double draw_parted_title(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w);
double draw_halves(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w);
double draw_machine_cautions(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w);
double draw_other_tractors(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w);
double draw_fit(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w);

double draw_machine_title(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w);
double draw_tractor(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w);
double draw_positions(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w);
double draw_angles(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w);
double draw_afterwards(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w);

double draw_trailed_title(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w);
double draw_mounted_title(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w);
double draw_trailed_dimensions(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w);
double draw_trailed_ranges(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w);
double draw_mounted_dimensions(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w);
double draw_mounted_ranges(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w);
double draw_machine_whose(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w);

// Small pictures of what a position means, `picture` filled by one.
void draw_mounted(Canvas& canvas, Rect picture, Position position);  // from the side
void draw_trailed(Canvas& canvas, Rect picture, Position position);  // from above
void draw_angle_picture(Canvas& canvas, Rect picture, const Wording& w);

}  // namespace shaftcut::measuring_form
