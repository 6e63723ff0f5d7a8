#include "shaftcut/trade/order/machine_frames.hpp"

#include <algorithm>

#include "support/catch.hpp"
#include "support/machine_jobs.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

MachineFrames frames_of(const Job& job) { return machine_frames(machines_of(job, catalogue(), workshop()).at(0)); }

std::size_t count_of(const MachineFrames& frames, Range range, FrameOf movement)
{
    return static_cast<std::size_t>(std::count_if(frames.frames.begin(), frames.frames.end(), [&](const MachineFrame& one) { return one.range == range && one.movement == movement; }));
}

// No position of a range lies beyond its extremes.
void hold_between(const MachineFrames& frames)
{
    const Length shortest = frames.extremes.front().scene.length;
    for (const MachineFrame& frame : frames.frames) {
        CHECK_FALSE(clearly_below(frame.scene.length, shortest));
        for (const ExtremeFrame& extreme : frames.extremes) {
            if (extreme.range != frame.range) continue;
            if (extreme.of == ExtremeOf::longest) CHECK_FALSE(clearly_above(frame.scene.length, extreme.scene.length));
            for (const End end : both_ends)
                if (extreme.of == (end == End::tractor ? ExtremeOf::tractor_angle : ExtremeOf::implement_angle))
                    CHECK(frame.scene.angles[end].degrees() <= extreme.scene.angles[end].degrees() + 0.01);
        }
    }
}

}  // namespace

TEST_CASE("a trailed machine turns, pitches and rolls, one at a time, through each of its ranges")
{
    const MachineFrames frames = frames_of(machine_job(turned_machine(50)));
    CHECK_FALSE(frames.mounted);
    CHECK_FALSE(frames.unreadable);
    CHECK(count_of(frames, Range::turning, FrameOf::turn) == 9);
    CHECK(count_of(frames, Range::turning, FrameOf::pitch) % 3 == 0);
    for (const MachineFrame& frame : frames.frames) {
        const auto& at = std::get<TrailedPosture>(frame.scene.at);
        CHECK((at.turn == Angle() || frame.movement == FrameOf::turn));
        CHECK((at.pitch == Angle() || frame.movement == FrameOf::pitch));
        CHECK((at.roll == Angle() || frame.movement == FrameOf::roll));
    }
    hold_between(frames);
}

TEST_CASE("a mounted machine is lifted from the lowest to the highest of each range")
{
    const Job job = machine_job(lifted_machine());
    const MachineFrames frames = frames_of(job);
    CHECK(frames.mounted);
    CHECK(count_of(frames, Range::turning, FrameOf::lift) == 13);
    const MountedRange& range = std::get<Mounted>(*job.fits[0].machine).ranges[Range::turning].value();
    std::vector<Length> heights;
    for (const MachineFrame& frame : frames.frames)
        if (frame.range == Range::turning) heights.push_back(std::get<MountedPosture>(frame.scene.at).height);
    CHECK(heights.front() == range.lowest.value);
    CHECK(heights.back() == range.highest.value);
    CHECK(std::is_sorted(heights.begin(), heights.end()));
    hold_between(frames);
}

TEST_CASE("a range that does not move is one frame, and a machine that cannot be has none")
{
    Job still = machine_job(turned_machine(50));
    Trailed& machine = std::get<Trailed>(*still.fits[0].machine);
    for (auto* range : {&machine.ranges.working, &machine.ranges.turning, &machine.ranges.standing})
        if (*range) (*range)->turn.value = (*range)->pitch.value = (*range)->roll.value = Angle();
    const MachineFrames frames = frames_of(still);
    for (const Range range : all_ranges) CHECK(count_of(frames, range, FrameOf::turn) == (machine.ranges[range] ? 1 : 0));

    machine.pin_behind.value = mm(-10);
    const MachineFrames none = frames_of(still);
    CHECK(none.frames.empty());
    CHECK(none.unreadable);
}
