// What a measurement is expected to bring.
#pragma once

namespace shaftcut::identifying {

// bits: of one of the series, mixed or none. best: how probable the most probable of these is afterwards. settles: that it is at least 95 % then.
struct Gain {
    double bits = 0, best = 0, settles = 0;
};

}  // namespace shaftcut::identifying
