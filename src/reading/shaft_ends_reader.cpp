#include "shaft_ends_reader.hpp"

#include <algorithm>

#include "end_figures.hpp"
#include "hitch/hitch_shaft.hpp"
#include "xml/each_once.hpp"

namespace shaftcut {

JobEnd read_end(Element& end, const Attribute& connection, const KnownNames& connections)
{
    JobEnd read;
    read.connection = connection.one_of(connections);
    read.onto = end.optional("onto").one_of(connections);
    read.lock = end.optional("lock").word<Lock>();
    read.device = end.optional("device").word<Device>();
    read.place = end.place();
    return read;
}

EndsReading read_ends(Element& element, const KnownNames& connections, EndFigures figures)
{
    EndsReading reading;
    EachOnce<End> sides;
    element.each("end", [&](Element& end) {
        const auto side = sides.take(end.required("side"), "end");
        EndPlaces places{end.required("joint")};
        const auto kind = places.joint.word<JointKind>();
        JobEnd read = read_end(end, end.optional("connection"), connections);
        if (figures == EndFigures::may_be_own) {
            places.spacing = end.optional("spacing");
            read.spacing = places.spacing->positive_length();
            places.cross_to_groove = end.optional("cross-to-groove");
            read.cross_to_groove = places.cross_to_groove->length();
        }
        if (!side) return;
        read.joint = kind.value_or(JointKind::standard);
        reading.ends[*side] = std::move(read);
        reading.places[*side] = std::move(places);
    });
    for (const End side : both_ends)
        if (!sides.met(side)) element.fault(MissingEnd{side});
    return reading;
}

void check_joint_of(const Series& series, const JobEnd& end, const EndPlaces& places)
{
    if (!series.wide_angle && end.joint == JointKind::wide_angle)
        places.joint.fault(NoWideAngle{series.name});
}

bool lacks_reference(const Series& series, const JobShaft& shaft)
{
    const auto has_one = [&](End end) { return shaft.ends[end].joint == JointKind::wide_angle && (series.wide_angle || has_own_figures(shaft, end)); };
    return std::any_of(both_ends.begin(), both_ends.end(), has_one) && !series.wide_angle_reference && !usual_reference(series.shape);
}

}  // namespace shaftcut
