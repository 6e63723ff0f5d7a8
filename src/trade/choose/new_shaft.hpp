// A shaft of a series as the catalogue describes it, before anybody has measured it. Private to its room.
#pragma once

#include "shaftcut/trade/choose/choose.hpp"

namespace shaftcut {

// Why the series has no shaft with such joints; nothing where it has one.
std::optional<WhyNotServed> why_no_such_shaft(const Series& series, const PerEach<End, JointKind>& joint);

// The joints to try: those that are asked for; where either will do both, those of fewer wide-angle joints first.
std::vector<PerEach<End, JointKind>> joints_to_try(const JobToChooseFor& wanted);

// What is wanted, of this series and with these joints. It has no closed length yet.
Job job_of_series(const JobToChooseFor& wanted, const Series& series, const PerEach<End, JointKind>& joint);

// What is known of that shaft at a closed length as listed: the length, and the guards of a new shaft. `setback`: guard-setback-new.
void set_closed(JobShaft& shaft, const Series& series, Length closed, Length setback, Length measuring_plus_minus);

// At which cross its closed lengths are listed; nothing without a wide-angle joint.
std::optional<Reference> listed_at(const Series& series, const PerEach<End, JointKind>& joint);

BuildOrder order_with(const JobToChooseFor& wanted, const std::string& series, const PerEach<End, JointKind>& joint);

}  // namespace shaftcut
