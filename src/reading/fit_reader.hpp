// One tractor and machine that a job's shaft must serve.
#pragma once

#include "shaftcut/trade/data/catalogue.hpp"
#include "shaftcut/trade/data/job.hpp"
#include "shaftcut/trade/data/shaft_series.hpp"
#include "xml/element.hpp"

namespace shaftcut {

// Of one job or order: a machine's geometry takes milliseconds to search, and a file has room for thousands (the project's own choice).
inline constexpr std::size_t most_fits = 100;

// The job's shaft, which a machine's geometry must have room for.
struct FitShaft {
    const JobShaft& shaft;
    ShaftSeries series;
    bool sound = false;  // read without a fault; otherwise nothing is compared with it
    bool to_choose = false;  // there is none yet: nothing is compared with it, and no length can run between its crosses
};

// Reads a `fit` element. Faults beside those of form: no shortest or no longest with the PTO turning, where no machine's
// geometry gives it; two lengths for one range; a yoke between grooves that is of no series and states no length; a reference between grooves, where it says nothing;
// a trailed and a mounted machine; a machine that cannot be (geometry_problems), a yoke that its shaft must know and does
// not, lengths between crosses of a shaft that is still to be chosen, those of its angles (read_angles), and positions that leave no room for the shaft (no_answer_problem). `before` is how many fits of the same job were read: past
// most_fits that is a fault of the first one too many, and no geometry is searched any more.
// Checked in tests/reading/job_reader_test.cpp and by tests/reading/bad/.
JobFit read_fit(Element& element, const FitShaft& shaft, std::size_t before);

}  // namespace shaftcut
