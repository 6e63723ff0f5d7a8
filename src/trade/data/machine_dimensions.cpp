#include "data/machine_dimensions.hpp"

#include <string_view>

namespace shaftcut {
namespace {

// Of the dimensions that may have either sign.
struct Sides {
    std::string_view name;
    Side positive, negative;
};
constexpr std::array<Sides, 5> all_sides{{
    {to_word(MountedDimension::lower_pivot_behind), Side::behind, Side::in_front},
    {to_word(MountedDimension::top_pivot_behind), Side::behind, Side::in_front},
    {to_word(MountedDimension::input_above), Side::above, Side::below},
    {to_word(TrailedDimension::input_left), Side::left, Side::right},
    {to_word(TrailedDimension::input_tilt), Side::rises, Side::falls},
}};

const Sides* sides_of(std::string_view name)
{
    for (const Sides& sides : all_sides)
        if (sides.name == name) return &sides;
    return nullptr;
}

std::optional<Side> side_of(std::string_view name, std::int64_t value)
{
    const Sides* sides = sides_of(name);
    if (!sides || value == 0) return {};
    return value > 0 ? sides->positive : sides->negative;
}

StatedDimension stated(const char* name, const Dimension& length) { return {name, length, side_of(name, length.value.um())}; }
StatedDimension stated(const char* name, const AngleDimension& angle) { return {name, angle, side_of(name, angle.value.mdeg())}; }

template <class Kind, std::size_t count>
std::vector<StatedDimension> all_of(const Kind& machine, const std::array<NamedLength<Kind>, count>& lengths)
{
    std::vector<StatedDimension> all;
    for (const auto& length : lengths) all.push_back(stated(length.name, machine.*length.dimension));
    all.push_back(stated(to_word(TrailedDimension::input_tilt), machine.input_tilt));
    return all;
}

}  // namespace

std::optional<Side> negative_side(std::string_view name)
{
    const Sides* sides = sides_of(name);
    return sides ? std::optional(sides->negative) : std::nullopt;
}

const char* kind_word(const Machine& machine) { return std::holds_alternative<Trailed>(machine) ? "trailed" : "mounted"; }

std::vector<StatedDimension> dimensions_of(const Machine& machine)
{
    if (const auto* trailed = std::get_if<Trailed>(&machine)) return all_of(*trailed, trailed_lengths);
    return all_of(std::get<Mounted>(machine), mounted_lengths);
}

std::vector<StatedDimension> movements_of(const Machine& machine, Range range)
{
    if (const auto* trailed = std::get_if<Trailed>(&machine)) {
        const auto& moves = trailed->ranges[range];
        if (!moves) return {};
        return {stated(to_word(TrailedMovement::turn), moves->turn), stated(to_word(TrailedMovement::pitch), moves->pitch),
                stated(to_word(TrailedMovement::roll), moves->roll)};
    }
    const auto& lifts = std::get<Mounted>(machine).ranges[range];
    if (!lifts) return {};
    return {stated(to_word(MountedMovement::lowest), lifts->lowest), stated(to_word(MountedMovement::highest), lifts->highest)};
}

}  // namespace shaftcut
