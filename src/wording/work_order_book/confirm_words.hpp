// The Order sheet's block of what is confirmed before anything is sawn.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "shaftcut/trade/checks/confirmation.hpp"
#include "wording.hpp"

namespace shaftcut::workbook {

std::string confirm_heading(const Wording& w);
std::string confirm_remark(const Wording& w);
std::vector<std::string> confirm_heads(const Wording& w);

// What is measured or looked at, from where to where. `cross`: from which a closed length runs, where a joint has two.
std::string confirm_name(Confirmed what, std::optional<Reference> cross, Length guard_setback, const Wording& w);

enum class ConfirmReason { not_measured, lengths_disagree, short_alone, cross_unknown, nothing_bears_it_out, guard_not_measured, lock_exposed, series_by_measures };
std::string reason(ConfirmReason why, const Wording& w);
std::string found_as_expected(bool as_expected, const Wording& w);

}  // namespace shaftcut::workbook
