// Lengths as whole micrometres, so that no comparison with a limit depends on binary fractions.
#pragma once

#include <compare>
#include <cstdint>
#include <string>

namespace shaftcut {

// The unit in which a file is written or a document printed. Inside, every length is micrometres.
enum class Units { mm, in };

// A signed length. Exact in micrometres; inches are 25.4 mm exactly (international inch, 1959).
class Length {
public:
    constexpr Length() = default;

    static constexpr Length micrometres(std::int64_t count) { return Length(count); }
    static constexpr Length millimetres(std::int64_t count) { return Length(count * 1000); }
    // Rounds half away from zero to the micrometre.
    static Length from_mm(double millimetres);

    constexpr std::int64_t um() const { return um_; }
    constexpr double mm() const { return static_cast<double>(um_) / 1000.0; }

    constexpr auto operator<=>(const Length&) const = default;
    constexpr Length operator-() const { return Length(-um_); }
    constexpr Length& operator+=(Length other) { um_ += other.um_; return *this; }
    constexpr Length& operator-=(Length other) { um_ -= other.um_; return *this; }
    friend constexpr Length operator+(Length a, Length b) { return a += b; }
    friend constexpr Length operator-(Length a, Length b) { return a -= b; }
    friend constexpr Length operator*(std::int64_t factor, Length a) { return Length(factor * a.um_); }

private:
    constexpr explicit Length(std::int64_t um) : um_(um) {}
    std::int64_t um_ = 0;
};

// A positive fraction numerator/denominator, such as a limit of 1/3 or a saw step of 3175/2 micrometres.
struct Fraction {
    std::int64_t numerator = 0;
    std::int64_t denominator = 1;
    bool operator==(const Fraction&) const = default;
};

// part · whole, rounded half away from zero to the micrometre.
Length fraction_of(Fraction part, Length whole);

// Less than this decides nothing: not a comparison with a limit, not a rounding up to the saw's step.
inline constexpr Length negligible = Length::micrometres(10);

// a < b by at least the negligible length.
constexpr bool clearly_below(Length a, Length b) { return b - a >= negligible; }
// a > b by at least the negligible length.
constexpr bool clearly_above(Length a, Length b) { return clearly_below(b, a); }

// `needed` rounded up to a whole number of steps, an excess under the negligible length ignored; never negative.
// `step_um` is the step in micrometres and must be positive.
Length round_up_to_step(Length needed, Fraction step_um);

// `length` rounded down to a whole number of steps; what lacks less than the negligible length to the next step counts as it.
// `length` must not be negative, `step_um` must be positive.
Length round_down_to_step(Length length, Fraction step_um);

// The saw's step in micrometres for documents in inches: the least multiple of 1/16 in not under `step`.
Fraction step_in_sixteenths(Length step);

// How a length in inches is brought to the nearest 1/16 in on paper.
enum class Toward { nearest, up, down };

// "742", "704.5", "29-3/16": the figure alone, as in the units named. Millimetres to `decimals` places (0 to 3)
// without trailing zeros; inches to 1/16 in. Integers only: half goes away from zero under Toward::nearest.
std::string figure(Length length, Units units, Toward toward = Toward::nearest, int decimals = 1);

// figure() with its unit: "742 mm", "29-3/16 in".
std::string figure_with_unit(Length length, Units units, Toward toward = Toward::nearest, int decimals = 1);

// "742 mm"; a length in inches with its millimetres beside it, rounded the same way: "29-3/16 in (741.3 mm)".
std::string figure_with_millimetres(Length length, Units units, Toward toward = Toward::nearest, int decimals = 1);

// "mm" or "in".
const char* unit_word(Units units);

}  // namespace shaftcut
