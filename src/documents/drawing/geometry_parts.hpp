// The parts of the pages that show a machine's geometry. Private to the documents.
#pragma once

#include "drawing/captions.hpp"
#include "drawing/drawing_words.hpp"
#include "page/sheet_parts.hpp"
#include "shaftcut/trade/order/machine_frames.hpp"
#include "shaftcut/trade/order/machine_view.hpp"
#include "shaftcut/trade/order/work_order.hpp"

namespace shaftcut::geometry {

using namespace sheet;

// "−220 mm" for "-220 mm": a sign that is seen.
std::string with_minus(const std::string& figure);

// Height of the plot and of the words below it.
inline constexpr double plot_height = 88, below_plot = 13;

// Every position of the machine, in plan and side view or in side view alone, as large as leaves room for the plot below.
void draw_scenes(Sheets& sheets, const MachineView& view, const Wording& w);

// The positions of a machine that moves, each on a page of its own of one size and scale, for a screen. `fonts` and `w` must outlive it.
class ScreenScenes {
public:
    ScreenScenes(const Fonts& fonts, const MachineFrames& machine, Seen from, const Wording& w);
    Page draw(const MachineScene& scene) const;

private:
    const Fonts& fonts_;
    Seen from_;
    const Wording& w_;
    double scale_ = 1, left_ = 0, right_ = 0, low_ = 0, high_ = 0;  // mm of the machine to one of the page; the part of it that is seen
};

// Telescoping length, and the overlap where the job is not refused, against turn or lift, with the limits.
void draw_plot(Sheets& sheets, const WorkOrder& order, const MachineView& view, const Machine& machine, const Wording& w);

// All of them, one machine after another, each on its own sheet.
void draw_machines(Sheets& sheets, const WorkOrder& order, const Wording& w);

// Whose the machine of this fit is, where the order has several fits; may be empty.
inline std::string tractor_of(const WorkOrder& order, const FitReading& fit) { return order.fits.size() > 1 ? fit.tractor : std::string(); }

// The dimensions that the job gave of each machine, with their tolerances, in the order of the measuring form.
void draw_stated_machines(Sheets& sheets, const WorkOrder& order, const Wording& w);

// Every extreme with its position, over all machines of the order, and the dimensions that they come from.
void draw_extremes(Sheets& sheets, const WorkOrder& order, const Wording& w);

}  // namespace shaftcut::geometry
