// The parts of the assembly work order, each drawn by one function, and the figures as the assembly worker sees them.
#pragma once

#include <string>

#include "assembly/assembly_words.hpp"
#include "build/build_words.hpp"
#include "page/canvas.hpp"
#include "page/sheet_parts.hpp"
#include "checks/check_words.hpp"
#include "shaftcut/trade/build/build_plan.hpp"

namespace shaftcut::assembly_sheet {

using sheet::Block;
using sheet::Blocks;
using sheet::Lead;
using sheet::Spacing;

using assembly_words::Caption;

// Of the closed length and the positions.
MeasuredFrom closed_from(const BuildPlan& plan);
bool is_wide_angle(const BuildPlan& plan, End end);

Blocks part_blocks(const BuildPlan& plan, Spacing spacing);       // to fetch, for all shafts of the order
Blocks operation_blocks(const BuildPlan& plan, Spacing spacing);  // in order, to tick
Blocks warning_blocks(const BuildPlan& plan, Spacing spacing);    // bold; empty where nothing warns
Blocks check_blocks(const BuildPlan& plan, Spacing spacing);      // a line each: those that passed or failed, and what was not checked
Blocks check_blocks_run_on(const BuildPlan& plan);                // the same of a plan that can be built, one behind the other
Blocks note_blocks(const BuildPlan& plan, Spacing spacing);
Blocks refusal_blocks(const BuildPlan& plan);  // why it cannot be built, and what could be; or what is open, and texts to send
// "BUILD 3 ALIKE", "HELD: 3 open", "DO NOT BUILD".
std::string verdict_of(const BuildPlan& plan);

// Each draws within the width of `room` from its top down and returns the y below itself.
double draw_refused(Canvas& canvas, Rect room, const BuildPlan& plan);  // in the largest words

// The following only of a plan that can be built.
double draw_use(Canvas& canvas, Rect room, const BuildPlan& plan);
double draw_shaft(Canvas& canvas, Rect room, const BuildPlan& plan);
double draw_blanks(Canvas& canvas, Rect room, const BuildPlan& plan);

// The boxes to write in: a line for a shaft that is built, with its serial number, closed length and O; who did it, when, and a signature.
// The lines of more than two shafts alike stand on a sheet of their own.
void draw_entries(Canvas& canvas, Rect room, const BuildPlan& plan);
double entries_height(const BuildPlan& plan);
// The lines of the shafts that draw_entries() has none for; nothing where it has them all.
void draw_more_entries(sheet::Sheets& sheets, const BuildPlan& plan);

}  // namespace shaftcut::assembly_sheet
