// The ends of a shaft as a file states them. Of the readers of shafts alone.
#pragma once

#include "source/known_names.hpp"
#include "shaftcut/trade/data/catalogue.hpp"
#include "shaftcut/trade/data/job.hpp"
#include "xml/element.hpp"

namespace shaftcut {

// An end but for its joint.
JobEnd read_end(Element& end, const Attribute& connection, const KnownNames& connections);

// Where an end states what its series else states; of an order's, where the joint is.
struct EndPlaces {
    Attribute joint;
    std::optional<Attribute> spacing{}, cross_to_groove{};
};

// Both ends, and where their figures are stated.
struct EndsReading {
    PerEach<End, JobEnd> ends;
    PerEach<End, std::optional<EndPlaces>> places;
};

// An order's end has no figures of its own: its shaft is of one series.
enum class EndFigures { of_series, may_be_own };

EndsReading read_ends(Element& element, const KnownNames& connections, EndFigures figures);

// A fault where the series has no wide-angle joint and the end has one.
void check_joint_of(const Series& series, const JobEnd& end, const EndPlaces& places);

// Nothing says from which cross of this shaft's wide-angle joint its closed length runs. A joint that the series has not is another fault.
bool lacks_reference(const Series& series, const JobShaft& shaft);

}  // namespace shaftcut
