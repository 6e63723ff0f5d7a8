#include "shaftcut/trade/hitch/placement.hpp"

#include <algorithm>
#include <cmath>

#include "hitch/shafts_on_grid.hpp"

namespace shaftcut {
namespace {

constexpr Vector stub_axis{1, 0, 0};

// Heights are whole micrometres; one that is stated at the very end of the reach must not fall outside by a rounding.
constexpr double height_slack = 1e-6;         // mm
constexpr double rise_squared_slack = 1e-2;   // mm^2, what that height makes of the square of a rise

// Rz(turn) Ry(pitch) Rx(roll).
class Rotation {
public:
    explicit Rotation(const Coordinates& position)
    {
        for (std::size_t i = 0; i < 3; ++i) {
            cosine_[i] = std::cos(position[i]);
            sine_[i] = std::sin(position[i]);
        }
    }

    Vector operator*(Vector a) const
    {
        const Vector rolled{a.x, cosine_[2] * a.y - sine_[2] * a.z, sine_[2] * a.y + cosine_[2] * a.z};
        const Vector pitched{cosine_[1] * rolled.x + sine_[1] * rolled.z, rolled.y, -sine_[1] * rolled.x + cosine_[1] * rolled.z};
        return {cosine_[0] * pitched.x - sine_[0] * pitched.y, sine_[0] * pitched.x + cosine_[0] * pitched.y, pitched.z};
    }

private:
    std::array<double, 3> cosine_;
    std::array<double, 3> sine_;
};

Vector tilted_axis(Angle tilt)
{
    return {std::cos(tilt.radians()), 0, std::sin(tilt.radians())};
}

Vector side_view(const Dimension& behind, const Dimension& height)
{
    return {behind.value.mm(), 0, height.value.mm()};
}

// The higher of the two points `from_first` from `first` and `from_second` from `second`.
std::optional<Vector> higher_meeting(Vector first, double from_first, Vector second, double from_second)
{
    const Vector line = second - first;
    const double apart = size(line);
    if (apart == 0) return std::nullopt;
    const double foot = (apart * apart + from_first * from_first - from_second * from_second) / (2 * apart);
    const double rise_squared = from_first * from_first - foot * foot;
    if (rise_squared < -rise_squared_slack) return std::nullopt;
    const Vector square_to_line{-line.z / apart, 0, line.x / apart};
    const double rise = std::copysign(std::sqrt(std::max(rise_squared, 0.0)), square_to_line.z);
    return first + foot / apart * line + rise * square_to_line;
}

std::optional<InputShaft> input_in_place(const Trailed& machine, const Coordinates& position)
{
    return input_shaft(machine, position);
}

std::optional<InputShaft> input_in_place(const Mounted& machine, const Coordinates& position)
{
    const auto links = linkage(machine, position[0]);
    if (!links) return std::nullopt;
    return links->input;
}

// Heights of the lower hitch point at which it is `distance` from the top link's pivot.
std::vector<double> heights_at_distance(const Mounted& machine, double distance)
{
    const Vector pivot = side_view(machine.lower_pivot_behind, machine.lower_pivot_height);
    const Vector line = side_view(machine.top_pivot_behind, machine.top_pivot_height) - pivot;
    const double link = machine.lower_link.value.mm();
    const double apart = size(line);
    const double foot = apart == 0 ? link : (apart * apart + link * link - distance * distance) / (2 * apart);
    if (std::abs(foot) >= link) return {};
    const double rise = std::sqrt(link * link - foot * foot) / apart;
    return {pivot.z + foot / apart * line.z + rise * line.x, pivot.z + foot / apart * line.z - rise * line.x};
}

// Heights between which the linkage closes or does not, from below: nothing changes anywhere else.
std::vector<double> turning_points(const Mounted& machine)
{
    const double pivot = machine.lower_pivot_height.value.mm();
    const double link = machine.lower_link.value.mm();
    const double forward = machine.top_pivot_behind.value.mm() - machine.lower_pivot_behind.value.mm();
    std::vector<double> heights{pivot - link, pivot + link};
    const auto add = [&heights](const std::vector<double>& more) { heights.insert(heights.end(), more.begin(), more.end()); };
    add(heights_at_distance(machine, machine.top_link.value.mm() + machine.mast.value.mm()));
    add(heights_at_distance(machine, std::abs(machine.top_link.value.mm() - machine.mast.value.mm())));
    if (forward > 0 && forward < link) {
        const double rise = std::sqrt(link * link - forward * forward);
        add({pivot - rise, pivot + rise});
    }
    std::sort(heights.begin(), heights.end());
    return heights;
}

bool closes(const Mounted& machine, double height)
{
    const auto links = linkage(machine, height);
    return links && links->lower_hitch.x > links->top_pivot.x;
}

}  // namespace

Posture posture(const Machine& machine, const Coordinates& position)
{
    if (std::holds_alternative<Mounted>(machine)) return MountedPosture{Length::from_mm(position[0])};
    return TrailedPosture{Angle::from_radians(position[0]), Angle::from_radians(position[1]), Angle::from_radians(position[2])};
}

Coordinates coordinates(const Posture& posture)
{
    if (const auto* lift = std::get_if<MountedPosture>(&posture)) return {lift->height.mm(), 0, 0};
    const auto& turned = std::get<TrailedPosture>(posture);
    return {turned.turn.radians(), turned.pitch.radians(), turned.roll.radians()};
}

InputShaft input_shaft(const Trailed& machine, const Coordinates& position)
{
    const Vector from_pin{machine.input_behind.value.mm(), -machine.input_left.value.mm(),
                          machine.input_height.value.mm() - machine.pin_height.value.mm()};
    const Rotation turned(position);
    return {side_view(machine.pin_behind, machine.pin_height) + turned * from_pin, turned * tilted_axis(machine.input_tilt.value)};
}

std::optional<Linkage> linkage(const Mounted& machine, double height)
{
    Linkage links;
    links.lower_pivot = side_view(machine.lower_pivot_behind, machine.lower_pivot_height);
    links.top_pivot = side_view(machine.top_pivot_behind, machine.top_pivot_height);
    const double rise = height - links.lower_pivot.z;
    const double link = machine.lower_link.value.mm();
    if (std::abs(rise) > link + height_slack) return std::nullopt;
    links.lower_hitch = links.lower_pivot + Vector{std::sqrt(std::max(link * link - rise * rise, 0.0)), 0, rise};
    const auto upper = higher_meeting(links.lower_hitch, machine.mast.value.mm(), links.top_pivot, machine.top_link.value.mm());
    if (!upper) return std::nullopt;
    links.upper_hitch = *upper;
    const Vector up = unit(links.upper_hitch - links.lower_hitch);
    const Vector rearwards{up.z, 0, -up.x};
    const Vector tilt = tilted_axis(machine.input_tilt.value);
    links.input.groove = links.lower_hitch + machine.input_behind.value.mm() * rearwards + machine.input_above.value.mm() * up;
    links.input.axis = tilt.x * rearwards + tilt.z * up;
    return links;
}

std::vector<HeightSpan> reachable_heights(const Mounted& machine)
{
    const std::vector<double> heights = turning_points(machine);
    std::vector<HeightSpan> spans;
    for (std::size_t i = 0; i + 1 < heights.size(); ++i) {
        if (!closes(machine, (heights[i] + heights[i + 1]) / 2)) continue;
        if (!spans.empty() && spans.back().highest == heights[i]) spans.back().highest = heights[i + 1];
        else spans.push_back({heights[i], heights[i + 1]});
    }
    return spans;
}

Vector pto_groove(const Machine& machine)
{
    return std::visit([](const auto& kind) { return Vector{0, 0, kind.pto_height.value.mm()}; }, machine);
}

std::optional<BentShaft> shaft_in_place(const Machine& machine, const HitchShaft& shaft, const Coordinates& position)
{
    const auto input = std::visit([&](const auto& kind) { return input_in_place(kind, position); }, machine);
    if (!input) return std::nullopt;
    return bent_shaft({pto_groove(machine) + shaft.tractor.cross_to_groove.mm() * stub_axis, stub_axis, shaft.tractor.spacing.mm()},
                      {input->groove - shaft.implement.cross_to_groove.mm() * input->axis, input->axis, shaft.implement.spacing.mm()});
}

JointPair joints_of(const BentShaft& bent, const HitchShaft& shaft, double out_of_phase)
{
    return {shaft.tractor.spacing == Length() ? bent.tractor_angle() : 0.0, shaft.implement.spacing == Length() ? bent.implement_angle() : 0.0, angle_between_planes(bent) - out_of_phase};
}

std::optional<JointPair> joints_in_place(const Machine& machine, const HitchShaft& shaft, const Coordinates& position,
                                         double out_of_phase)
{
    const auto bent = shaft_in_place(machine, shaft, position);
    if (!bent) return std::nullopt;
    return joints_of(*bent, shaft, out_of_phase);
}

}  // namespace shaftcut
