// What the sheet says that a shaft whose series is asked for lies on at the bench. Probabilities are whole per cents, and no more is said of how likely
// anything is. Checked in tests/documents/identify_sheet.
#pragma once

#include <string>
#include <vector>

#include "shaftcut/trade/identify/identified_shaft.hpp"
#include "wording.hpp"

namespace shaftcut::identify_sheet {

// Of the file.
std::string document_title(const std::string& shaft, const Wording& w);
std::string document_subject(const Wording& w);

enum class Caption {
    title, tractor, implement, tubes, figure, measured, series, off, not_measured, not_stated, how_sure, whole_column, part_column, measure_next, nothing_more, reading, shape_unknown, joint_unknown
};
std::string say(Caption caption, const Wording& w);

// Over a part's figures: "like Alder 2 (> 95 %)", "like no series here", "Alder 2 or Birch 1".
std::string like(const PartOrigin& part, const Wording& w);
// What the joint or the tubes were seen to be: "wide-angle joint", "lemon tubes".
std::string joint(std::optional<JointKind> kind, const Wording& w);
std::string tubes(std::optional<Shape> shape, const Wording& w);
// Over the column of the series' figures.
std::string against(const std::string& series, const Wording& w);
std::string more_figures(std::size_t count, const Wording& w);
std::string more_series(std::size_t count, const Wording& w);
std::string units_of(const Wording& w);

// The verdict in capitals, its series as the catalogue writes it.
std::string loudly(const IdentifiedShaft& shaft, const Wording& w);
// "1 the inner tube's width, 2 min, halves apart".
std::string next_head(std::size_t number, const NextMeasurement& next, const Wording& w);

}  // namespace shaftcut::identify_sheet
