// The measured lengths of the work order's workbook: how each is called, and from where to where it runs.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "shaftcut/trade/data/terms.hpp"
#include "wording.hpp"

namespace shaftcut::workbook {

std::string inputs_heading(const Wording& w);
std::vector<std::string> input_heads(const Wording& w);

std::string closed_name(const Wording& w);
// A fit's longest in this range; without one its shortest.
std::string fit_name(std::optional<Range> range, const Wording& w);
std::string fit_at_least_name(std::optional<Range> range, const Wording& w);

// From cross to cross; of a wide-angle joint, which cross. `reference`: nothing where there is no such joint.
std::string closed_between(std::optional<Reference> reference, const Wording& w);

// What a fit's length runs between.
enum class FitBetween { crosses, outer_cross, inner_cross, inner_crosses, grooves };
// What its cell means when it is changed or empty.
enum class FitEmpty { nothing, of_geometry_unless_changed, of_geometry, not_checked };
struct FitPlaces {
    FitBetween between = FitBetween::crosses;
    FitEmpty empty = FitEmpty::nothing;
    std::string position;  // in which it was measured, as the job says; may be empty
};
std::string fit_between(const FitPlaces& places, const Wording& w);
// The deciding one of all tractors; `at_least`: what it is at least where some of them state none.
std::string deciding_between(const std::optional<Length>& at_least, bool may_stay_empty, const std::string& position, const Wording& w);

}  // namespace shaftcut::workbook
