// How a check is called, what came of it, and its figures.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "shaftcut/trade/checks/checks.hpp"
#include "wording.hpp"

namespace shaftcut {

// "closing clearance".
std::string spoken(CheckId id, const Wording& w);

// "pass", "WARNING", "FAILED", "not checked".
std::string loudly(CheckResult result, const Wording& w);

// A check's value, worst case or limit, rounded as that check's lengths are: "44 mm", "12.5°", "—" where there is none.
std::string check_figure(const Check& check, const std::optional<std::int64_t>& thousandths, const Wording& w);

}  // namespace shaftcut
