// How a fit's machine is searched: by operating_lengths(), or by whoever has the answer for such a shaft already. Private to the trade layer.
#pragma once

#include <functional>

#include "shaftcut/trade/cut/datum.hpp"

namespace shaftcut {

// Gives what operating_lengths() gives for the same machine, shaft and plus or minus.
using MachineSearch = std::function<std::variant<OperatingLengths, HitchProblems>(const Machine&, const HitchShaft&, Length measuring)>;

// read_fit() of datum.hpp with a search of its own.
FitReading read_fit(const JobFit& fit, const JobShaft& shaft, const ShaftSeries& series, const ShaftReading& reading,
                    const LimitsInForce& limits, Length measuring_plus_minus, const MachineSearch& search);

}  // namespace shaftcut
