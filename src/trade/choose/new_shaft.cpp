#include "choose/new_shaft.hpp"

#include <algorithm>

#include "checks/check_parts.hpp"

namespace shaftcut {
namespace {

std::vector<JointKind> kinds_to_try(const std::optional<JointKind>& asked)
{
    return asked ? std::vector{*asked} : std::vector{JointKind::standard, JointKind::wide_angle};
}

bool is_wide(const PerEach<End, JointKind>& joint, End end) { return joint[end] == JointKind::wide_angle; }

// A shaft that is bought now comes under the rule that no lock part may stand out. The rule's own year says so, where it matters.
std::optional<int> year_of_new(const JobShaft& shaft)
{
    const bool exposed = std::any_of(both_ends.begin(), both_ends.end(), [&](End end) { return shaft.ends[end].lock && is_exposed(*shaft.ends[end].lock); });
    return exposed ? std::optional(lock_rule_from) : std::nullopt;
}

Measurement at(const JobShaft& shaft, Length length) { return {length, std::nullopt, shaft.place}; }

}  // namespace

std::optional<WhyNotServed> why_no_such_shaft(const Series& series, const PerEach<End, JointKind>& joint)
{
    for (const End end : both_ends)
        if (is_wide(joint, end) && !series.wide_angle) return SeriesWithoutJoint{end};
    const bool listed_somewhere = series.wide_angle_reference || usual_reference(series.shape);
    if ((is_wide(joint, End::tractor) || is_wide(joint, End::implement)) && !listed_somewhere) return SeriesWithoutReference{};
    return std::nullopt;
}

std::vector<PerEach<End, JointKind>> joints_to_try(const JobToChooseFor& wanted)
{
    std::vector<PerEach<End, JointKind>> tries;
    for (const JointKind implement : kinds_to_try(wanted.joint[End::implement]))
        for (const JointKind tractor : kinds_to_try(wanted.joint[End::tractor])) {
            PerEach<End, JointKind> joint;
            joint[End::tractor] = tractor;
            joint[End::implement] = implement;
            tries.push_back(joint);
        }
    return tries;
}

Job job_of_series(const JobToChooseFor& wanted, const Series& series, const PerEach<End, JointKind>& joint)
{
    Job job = wanted.job;
    job.shaft.series = series.name;
    for (const End end : both_ends) job.shaft.ends[end].joint = joint[end];
    job.shaft.built = year_of_new(job.shaft);
    return job;
}

void set_closed(JobShaft& shaft, const Series& series, Length closed, Length setback, Length measuring_plus_minus)
{
    shaft.closed = at(shaft, closed);
    for (const Tube tube : both_tubes) shaft.halves[tube].guard.reset();
    const Shaft reading = read_shaft(shaft, all_of(&series), measuring_plus_minus).shaft;
    for (const Tube tube : both_tubes) {
        const Half& half = reading.halves[tube];
        if (!half.length) continue;
        const Length behind_tube = half.length->value - setback;
        const auto& face = reading.halves[other(tube)].guard_shoulder;
        shaft.halves[tube].guard = at(shaft, face ? std::min(behind_tube, reading.closed.value - *face) : behind_tube);
    }
}

std::optional<Reference> listed_at(const Series& series, const PerEach<End, JointKind>& joint)
{
    if (!is_wide(joint, End::tractor) && !is_wide(joint, End::implement)) return std::nullopt;
    return series.wide_angle_reference ? series.wide_angle_reference : usual_reference(series.shape);
}

BuildOrder order_with(const JobToChooseFor& wanted, const std::string& series, const PerEach<End, JointKind>& joint)
{
    BuildOrder order;
    static_cast<OrderHead&>(order) = wanted.job;
    order.shaft.series = series;
    for (const End end : both_ends) {
        JobEnd& of = order.shaft.ends[end];
        of.joint = joint[end];
        of.device = of.device.value_or(Device::none);
    }
    return order;
}

}  // namespace shaftcut
