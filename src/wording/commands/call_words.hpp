// What a call says of itself while it runs: how far it is, and what it wrote.
#pragma once

#include <cstdint>
#include <string>

#include "wording.hpp"

namespace shaftcut {

// In front of a fault of an order.
std::string order_named(const std::string& order, const Wording& w);
std::string shaft_named(const std::string& shaft, const Wording& w);

enum class Counted { jobs, orders, label_sheets, series };
std::string how_far(std::size_t done, std::size_t of, Counted what, const Wording& w);

// Of a saw plan being searched. `cost`: of the best plan so far, in millionths; 0: none yet.
std::string plan_so_far(double seconds_left, std::int64_t cost, std::int64_t lower_bound, const Wording& w);

// Why a list was not done to its end.
enum class StoppedBy { interrupt, end };
std::string stopped(StoppedBy by, std::size_t done, std::size_t of, const Wording& w);

// Below the lines of its order, or alone.
enum class WroteLine { below, alone };
std::string wrote(WroteLine line, const std::string& file, const Wording& w);
// `as`: its new name.
std::string superseded(const std::string& file, const std::string& as, const Wording& w);

std::string configuration_line(const std::string& folder, const Wording& w);

}  // namespace shaftcut
