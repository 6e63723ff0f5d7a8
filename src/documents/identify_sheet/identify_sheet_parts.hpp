// The parts of the sheet of a shaft whose series is asked for. Each draws within the width of `room` from its top down and returns the y below itself.
#pragma once

#include "identify/figure_words.hpp"
#include "identify/verdict_words.hpp"
#include "identify_sheet/identify_sheet_words.hpp"
#include "page/canvas.hpp"
#include "shaftcut/trade/identify/identified_shaft.hpp"

namespace shaftcut::identify_sheet {

using Section = double(Canvas&, Rect, const IdentifiedShaft&, const Wording&);
Section draw_title, draw_band, draw_shaft, draw_parts, draw_cautions;

// How many are listed: series with how sure each is, and measurements of which the first is the one to do.
struct Amount {
    std::size_t series, next;
};
double draw_how_sure(Canvas& canvas, Rect room, const IdentifiedShaft& shaft, std::size_t most, const Wording& w);
double draw_next(Canvas& canvas, Rect room, const IdentifiedShaft& shaft, std::size_t most, const Wording& w);

}  // namespace shaftcut::identify_sheet
