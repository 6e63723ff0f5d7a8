#include "shaftcut/trade/order/machine_frames.hpp"

#include "order/machine_scene.hpp"

namespace shaftcut {
namespace {

constexpr std::int64_t turns = 9, tilts = 3, heights = 13;

// From -most to most, evenly, 0 among them; 0 alone where it does not move.
std::vector<Angle> steps_of(Angle most, std::int64_t count)
{
    if (most == Angle()) return {};
    std::vector<Angle> steps;
    const std::int64_t middle = count / 2;
    for (std::int64_t i = -middle; i <= middle; ++i) steps.push_back(Angle::millidegrees(most.mdeg() * i / middle));
    return steps;
}

class FramesOf {
public:
    FramesOf(MachineFrames& frames, const GeometryReading& geometry, Range range) : frames_(frames), geometry_(geometry), range_(range) {}

    void add(const TrailedRange& range)
    {
        for (const Angle turn : steps_of(range.turn.value, turns)) add(FrameOf::turn, TrailedPosture{turn, {}, {}});
        for (const Angle pitch : steps_of(range.pitch.value, tilts)) add(FrameOf::pitch, TrailedPosture{{}, pitch, {}});
        for (const Angle roll : steps_of(range.roll.value, tilts)) add(FrameOf::roll, TrailedPosture{{}, {}, roll});
        if (frames_.frames.empty() || frames_.frames.back().range != range_) add(FrameOf::turn, TrailedPosture{});
    }

    void add(const MountedRange& range)
    {
        const Length lowest = range.lowest.value, lift = range.highest.value - lowest;
        const std::int64_t count = lift == Length() ? 1 : heights;
        for (std::int64_t i = 0; i < count; ++i) add(FrameOf::lift, MountedPosture{lowest + (i == 0 ? Length() : fraction_of({i, count - 1}, lift))});
    }

private:
    void add(FrameOf movement, const Posture& at) { frames_.frames.push_back({range_, movement, machine_scene(SceneOf::shortest, geometry_, at)}); }

    MachineFrames& frames_;
    const GeometryReading& geometry_;
    Range range_;
};

void add_extremes(MachineFrames& frames, const GeometryReading& geometry)
{
    const auto add = [&](ExtremeOf of, std::optional<Range> range, const Posture& at) { frames.extremes.push_back({of, range, machine_scene(SceneOf::shortest, geometry, at)}); };
    add(ExtremeOf::shortest, std::nullopt, geometry.lengths.shortest.at);
    for (const Range range : all_ranges) {
        const auto& found = geometry.lengths.ranges[range];
        if (!found) continue;
        add(ExtremeOf::longest, range, found->longest.at);
        add(ExtremeOf::tractor_angle, range, found->tractor.at);
        add(ExtremeOf::implement_angle, range, found->implement.at);
    }
}

}  // namespace

MachineFrames machine_frames(const FitReading& fit)
{
    MachineFrames frames;
    frames.tractor = fit.tractor;
    frames.unreadable = fit.unreadable;
    if (!fit.geometry) return frames;
    const GeometryReading& geometry = *fit.geometry;
    frames.mounted = std::holds_alternative<Mounted>(geometry.machine);
    std::visit([&](const auto& machine) {
        for (const Range range : all_ranges)
            if (const auto& moves = machine.ranges[range]) FramesOf(frames, geometry, range).add(*moves);
    }, geometry.machine);
    add_extremes(frames, geometry);
    return frames;
}

std::vector<FitReading> machines_of(const Job& job, const Catalogue& catalogue, const Workshop& workshop)
{
    const ShaftSeries series = series_of(job.shaft, catalogue);
    const LimitsInForce limits(job.limits, series.shaft ? series.shaft->limits : Limits(), workshop.limits);
    const ShaftReading shaft = read_shaft(job.shaft, series, workshop.measuring_plus_minus);
    std::vector<FitReading> fits;
    for (const JobFit& fit : job.fits)
        if (fit.machine) fits.push_back(read_fit(fit, job.shaft, series, shaft, limits, workshop.measuring_plus_minus));
    return fits;
}

}  // namespace shaftcut
