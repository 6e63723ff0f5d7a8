#include "shaftcut/trade/build/build.hpp"

#include <algorithm>

namespace shaftcut {
namespace {

// Rounding is for lengths that can be: a negative one stays, to be refused as it is.
Length kept(Length length, Fraction step_um) { return length > Length() ? round_down_to_step(length, step_um) : length; }

// To the step that keeps the setback within what a new shaft may have, and never so long that the guards stop the shaft.
Length guard_half_of(const Series& series, Tube tube, Length half, Length room, Length setback, Fraction step_um)
{
    const Length guard = half - setback;
    const Length stepped = guard > Length() ? round_up_to_step(guard, step_um) : guard;
    const auto& face = series.halves[other(tube)].guard_shoulder;
    return face ? std::min(stepped, kept(room - *face, step_um)) : stepped;
}

}  // namespace

std::optional<Length> guard_seat_of(const Series& series, const JobShaft& shaft, Tube tube)
{
    const SeriesHalf& half = series.halves[tube];
    return shaft.ends[end_of(shaft, tube)].joint == JointKind::wide_angle ? half.guard_seat_wide_angle : half.guard_seat;
}

std::vector<HalfFigure> unstated_for_building(const Series& series, const BuildOrder& order)
{
    std::vector<HalfFigure> unstated;
    for (const Tube tube : both_tubes) {
        const SeriesHalf& half = series.halves[tube];
        if (!half.shoulder) unstated.push_back({tube, HalfFigureKind::shoulder});
        if (!half.seat) unstated.push_back({tube, HalfFigureKind::seat});
        const bool wide = order.shaft.ends[end_of(order.shaft, tube)].joint == JointKind::wide_angle;
        if (order.guard && !guard_seat_of(series, order.shaft, tube)) unstated.push_back({tube, wide ? HalfFigureKind::guard_seat_wide_angle : HalfFigureKind::guard_seat});
    }
    return unstated;
}

BuiltLengths build_lengths(const Series& series, const BuildOrder& order, Length room, Length setback, Fraction step_um)
{
    BuiltLengths built;
    for (const Tube tube : both_tubes) {
        const SeriesHalf& half = series.halves[tube];
        built.half[tube] = kept(room - *series.halves[other(tube)].shoulder, step_um);
        built.blank[tube] = built.half[tube] - *half.seat;
        if (half.pin_hole) built.pin_hole[tube] = *half.pin_hole - *half.seat;
        if (!order.guard) continue;
        built.guard_half[tube] = guard_half_of(series, tube, built.half[tube], room, setback, step_um);
        built.guard_blank[tube] = *built.guard_half[tube] - *guard_seat_of(series, order.shaft, tube);
    }
    built.closed = std::max(built.half[Tube::inner] + *series.halves[Tube::outer].shoulder, built.half[Tube::outer] + *series.halves[Tube::inner].shoulder);
    return built;
}

}  // namespace shaftcut
