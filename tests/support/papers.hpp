// The papers of an answer as the engine asks for them: with the tests' font, in the answer's units.
#pragma once

#include <string>
#include <vector>

#include "cut_sheet/cut_sheet.hpp"
#include "form/measuring_form_sheets.hpp"
#include "geometry_sheet/geometry_sheet.hpp"
#include "support/fonts.hpp"
#include "terminal/lengths_terminal.hpp"
#include "terminal/terminal_text.hpp"

namespace shaftcut::test {

inline std::vector<Page> cut_sheet_of(const WorkOrder& order, Paper paper) { return draw_cut_sheet(order, paper, font_files(), Wording(order.units)); }
inline DocumentInfo cut_sheet_info_of(const WorkOrder& order) { return cut_sheet_info(order, Wording(order.units)); }
inline std::vector<Page> geometry_sheet_of(const WorkOrder& order, Paper paper) { return draw_geometry_sheet(order, paper, font_files(), Wording(order.units)); }
inline Page machine_picture_of(const WorkOrder& order, Paper paper) { return draw_machine_picture(order, paper, font_files(), Wording(order.units)); }
inline std::vector<Page> measuring_form_of(const MeasuringForm& form, Paper paper) { return draw_measuring_form(form, paper, font_files(), Wording(form.units)); }
inline std::string terminal_text_of(const WorkOrder& order) { return terminal_text(order, Colour::none, Wording(order.units)); }

}  // namespace shaftcut::test
