// The joint angles of a fit.
#pragma once

#include "shaftcut/trade/data/job.hpp"
#include "xml/element.hpp"

namespace shaftcut {

// What is stated of one end's joint; those computed from two views are among the angles.
struct AnglesReading {
    PerEach<Range, std::optional<Angle>> angles;
    std::optional<AngleViews> views;
    Place place;
};

// Reads the `angle` elements of a fit. Faults beside those of form: a second one for one side; one of two views without the other, a view of 90
// degrees or more, a range of views that are not there, and views beside the angle of their own range.
// Checked in tests/reading/job_says_test.cpp and by tests/reading/bad/.
PerEach<End, AnglesReading> read_angles(Element& fit);

}  // namespace shaftcut
