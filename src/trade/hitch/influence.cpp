#include "shaftcut/trade/hitch/influence.hpp"

#include <algorithm>
#include <cmath>

#include "data/machine_dimensions.hpp"

namespace shaftcut {
namespace {

constexpr Length length_step = Length::micrometres(50);
constexpr Angle angle_step = Angle::millidegrees(10);
constexpr double on_the_end = 1e-9;  // radians or mm: a search puts a position on the end of a range exactly

// A changed copy of the machine at a changed position, and the length there.
class Trial {
public:
    Trial(const Machine& machine, const HitchShaft& shaft, const Coordinates& position)
        : machine_(machine), shaft_(shaft), position_(position), length_(*length()) {}

    template <class Kind>
    Influence of(const char* name, Dimension Kind::*dimension, Length measuring)
    {
        Dimension& changed = std::get<Kind>(machine_).*dimension;
        return measured(name, changed.place, changed.plus_minus.value_or(measuring).mm(), length_step.mm(),
                        [&changed](int sign) { changed.value += sign * length_step; });
    }

    template <class Kind>
    Influence of_tilt()
    {
        AngleDimension& tilt = std::get<Kind>(machine_).input_tilt;
        return measured(to_word(TrailedDimension::input_tilt), tilt.place, tilt.plus_minus.value_or(Angle()).degrees(), angle_step.degrees(),
                        [&tilt](int sign) { tilt.value = tilt.value + Angle::millidegrees(sign * angle_step.mdeg()); });
    }

    Influence of_end(const char* name, const Dimension& end, Length measuring)
    {
        return measured(name, end.place, end.plus_minus.value_or(measuring).mm(), length_step.mm(),
                        [this](int sign) { position_[0] += sign * length_step.mm(); });
    }

    // A movement's end grows outwards on both sides.
    Influence of_end(const char* name, const AngleDimension& end, std::size_t movement)
    {
        const double outwards = std::copysign(angle_step.radians(), position_[movement]);
        return measured(name, end.place, end.plus_minus.value_or(Angle()).degrees(), angle_step.degrees(),
                        [this, movement, outwards](int sign) { position_[movement] += sign * outwards; });
    }

private:
    std::optional<double> length() const
    {
        const auto shaft = shaft_in_place(machine_, shaft_, position_);
        if (!shaft) return std::nullopt;
        return shaft->length;
    }

    // `move(1)` makes the dimension greater by `step`, `move(-1)` less.
    template <class Move>
    Influence measured(const char* name, const Place& place, double plus_minus, double step, const Move& move)
    {
        move(1);
        const auto more = length();
        move(-1);
        move(-1);
        const auto less = length();
        move(1);
        Influence influence{name, place, 0, Length()};
        const double sides = (more ? 1 : 0) + (less ? 1 : 0);
        if (sides > 0) influence.slope = (more.value_or(length_) - less.value_or(length_)) / (sides * step);
        const double effect = sides > 0 ? std::min(std::abs(influence.slope) * plus_minus, length_) : length_;
        influence.effect = Length::from_mm(effect);
        return influence;
    }

    Machine machine_;
    const HitchShaft& shaft_;
    Coordinates position_;
    double length_;
};

std::vector<Influence> greatest_first(std::vector<Influence> influences)
{
    std::stable_sort(influences.begin(), influences.end(), [](const auto& a, const auto& b) { return a.effect > b.effect; });
    return influences;
}

}  // namespace

std::vector<Influence> influences(const Machine& machine, const HitchShaft& shaft, const Coordinates& position,
                                  const TrailedRange& range, Length measuring)
{
    Trial trial(machine, shaft, position);
    std::vector<Influence> all;
    for (const auto& length : trailed_lengths) all.push_back(trial.of(length.name, length.dimension, measuring));
    all.push_back(trial.of_tilt<Trailed>());
    const auto add_end = [&](const char* name, const AngleDimension& end, std::size_t movement) {
        if (std::abs(std::abs(position[movement]) - end.value.radians()) < on_the_end) all.push_back(trial.of_end(name, end, movement));
    };
    add_end(to_word(TrailedMovement::turn), range.turn, 0);
    add_end(to_word(TrailedMovement::pitch), range.pitch, 1);
    add_end(to_word(TrailedMovement::roll), range.roll, 2);
    return greatest_first(std::move(all));
}

std::vector<Influence> influences(const Machine& machine, const HitchShaft& shaft, const Coordinates& position,
                                  const MountedRange& range, Length measuring)
{
    Trial trial(machine, shaft, position);
    std::vector<Influence> all;
    for (const auto& length : mounted_lengths) all.push_back(trial.of(length.name, length.dimension, measuring));
    all.push_back(trial.of_tilt<Mounted>());
    const auto add_end = [&](const char* name, const Dimension& end) {
        if (std::abs(position[0] - end.value.mm()) < on_the_end) all.push_back(trial.of_end(name, end, measuring));
    };
    add_end(to_word(MountedMovement::lowest), range.lowest);
    add_end(to_word(MountedMovement::highest), range.highest);
    return greatest_first(std::move(all));
}

Length worst_case(const std::vector<Influence>& influences)
{
    Length sum;
    for (const Influence& influence : influences) sum += influence.effect;
    return sum;
}

}  // namespace shaftcut
