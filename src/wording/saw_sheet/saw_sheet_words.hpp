// What the saw sheet says of its own: captions, how to read it, and lines with figures. Checked in tests/documents/saw_sheet.
#pragma once

#include "shaftcut/trade/build/batch.hpp"
#include "wording.hpp"

namespace shaftcut::saw_sheet_words {

enum class Caption { subject, bars_to_fetch, how_to_saw, number, length, stop, label, use_whole, rack, not_planned };
std::string say(Caption caption, const Wording& w);

std::string title(const std::string& name, const Wording& w);
// "Kerf 3 mm  ·  start trim 0 mm  ·  ...".
std::string settings(const SawOrder& order, const Wording& w);
// How to read the sheet, a sentence or more each.
std::vector<std::string> how_to_saw(const Wording& w);

std::string fetch(const BarsToFetch& bars, const Wording& w);
std::string totals(const SawTotals& totals, const Wording& w);

// "Bars 4–6: 3 alike of 6000 mm": `number` is of the first of the bars alike.
std::string bar(const BarLayout& bar, std::int64_t number, const Wording& w);
std::string bar_continued(const BarLayout& bar, std::int64_t number, const Wording& w);
// What becomes of the bar's end.
std::string leftover(const BarLayout& bar, Length trim_end, const Wording& w);

// Of pieces that stand in no plan.
std::string not_planned_title(const std::string& batch, const Wording& w);
std::string not_planned(const std::string& profile, const Wording& w);
std::string why(const NotPlanned& left_out, const Wording& w);
std::string piece(const BatchPiece& piece, const Wording& w);

}  // namespace shaftcut::saw_sheet_words
