// The shaft in a job, and whether the catalogue knows what it names.
#pragma once

#include "shaftcut/trade/data/catalogue.hpp"
#include "shaftcut/trade/data/job.hpp"
#include "xml/element.hpp"

namespace shaftcut {

// Reads a `shaft` element. Faults beside those of form: a series or connection that `catalogue` does not hold; shape or
// spacing beside a series, which states them; neither series nor shape; a half that names the shaft's own series; an end that states what its half's series is
// there to state, a spacing at a standard joint or beside the shaft's; where an end has a wide-angle joint: a series
// without one, no spacing that anything states, and no reference of the closed length where nothing says from which cross it
// runs; and those of its halves and its condition. Checked in tests/reading/job_reader_test.cpp, job_says_test.cpp and by tests/reading/bad/.
JobShaft read_shaft(Element& element, const Catalogue& catalogue);

// A shaft to be made: a job's, of a series, without halves, with its closed length where that is ordered.
struct OrderedShaft {
    JobShaft shaft;
    bool guard = true;
    std::optional<Measurement> closed;
    bool lacks_reference = false;  // it has a wide-angle joint, and neither it nor its series states from which cross it is measured
};

// Reads a `shaft` element of an order. An end that states no device gets none. Faults as above, as far as a new shaft has what they are about; a reference that is
// lacking is for the reader of the order, who knows the fits.
OrderedShaft read_ordered_shaft(Element& element, const Catalogue& catalogue);

// A shaft of which no more is known than what is asked of it. A joint without a kind: either will do.
struct ShaftToChoose {
    JobShaft shaft;
    PerEach<End, std::optional<JointKind>> joint;
};

// Reads a `shaft` element of a job to choose a shaft for. Its ends name their connections, over whose yokes the lengths run; where nothing says which end carries
// the inner tube, the implement's does. A fault beside those of form is all that belongs to a shaft that is there: series, closed, half and so on.
// Checked in tests/reading/choose_reader_test.cpp and by tests/reading/bad/choose.
ShaftToChoose read_shaft_to_choose(Element& element, const Catalogue& catalogue);

}  // namespace shaftcut
