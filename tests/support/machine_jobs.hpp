// Jobs whose lengths come from a machine's geometry, for tests.
#pragma once

#include "support/jobs.hpp"
#include "support/machines.hpp"

namespace shaftcut::test {

// The job of jobs.hpp with standard joints at both ends and this machine instead of its measured fit.
inline Job machine_job(const Machine& machine)
{
    Job found = job();
    found.shaft.ends[End::tractor].joint = JointKind::standard;
    found.shaft.closed = measured(796);
    found.shaft.closed_reference.reset();
    found.fits[0] = JobFit();
    found.fits[0].machine = machine;
    return found;
}

// A three-point linkage whose shortest length, 598.5 mm at a height of 394 mm, lies inside its lift: the shaft is cut.
inline Mounted lifted_machine()
{
    Mounted machine = support::common_linkage(support::heights(300, 560));
    machine.top_link = support::length(650);
    machine.input_behind = support::length(0);
    machine.ranges.working = support::heights(380, 460);
    machine.ranges.standing = support::heights(200, 850);
    return machine;
}

// A trailed machine whose tractor joint is past 35 degrees from a turn of 43.5 degrees on.
inline Trailed turned_machine(double turn)
{
    Trailed machine = support::level_machine(300, 600, support::turns(turn, 8, 5));
    machine.pin_height = support::length(480);
    machine.input_left = support::length(-40);
    machine.ranges.working = support::turns(10, 4, 3);
    machine.ranges.standing = support::turns(turn, 10, 6);
    return machine;
}

}  // namespace shaftcut::test
