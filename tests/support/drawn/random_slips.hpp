// What a random job says beside its lengths, and the slips of the pen and the tape that random jobs make.
#pragma once

#include "support/drawn/random_jobs.hpp"

namespace shaftcut::test {

// The closed length between the inner crosses, as the job means it.
Length telescoping_closed(const World& world);

// Stops measured on the shaft, halves of another series, guards that are not used, the shaft's condition, its power.
void say_more(Dice& dice, World& world);

// One of the slips that are known to happen.
enum class Slip { other_cross, exchanged_halves, digit, inches, standing_left_out, tiny_guard };
inline constexpr int slip_count = 6;
void slip(Dice& dice, World& world);
void slip(Dice& dice, World& world, Slip which);

}  // namespace shaftcut::test
