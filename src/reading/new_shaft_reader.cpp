// Shafts that are still to be made: one to choose, one that is ordered.
#include "measurement_reader.hpp"
#include "shaft_ends_reader.hpp"
#include "shaft_reader.hpp"
#include "shaftcut/trade/data/build_order.hpp"
#include "xml/each_once.hpp"

namespace shaftcut {

namespace {
enum class JointToChoose { standard, wide_angle, either };
}  // namespace
template <> struct Words<JointToChoose> { static constexpr std::array all{"standard", "wide-angle", "either"}; };

namespace {

constexpr std::array of_shaft_that_is_there{"number", "series", "shape", "spacing", "built", "closed", "half", "condition", "measures"};

std::optional<JointKind> kind_of(JointToChoose joint)
{
    if (joint == JointToChoose::either) return std::nullopt;
    return joint == JointToChoose::standard ? JointKind::standard : JointKind::wide_angle;
}

}  // namespace

ShaftToChoose read_shaft_to_choose(Element& element, const Catalogue& catalogue)
{
    ShaftToChoose wanted;
    JobShaft& shaft = wanted.shaft;
    shaft.place = element.place();
    shaft.role = element.required("role").word<Role>().value_or(Role::primary);
    shaft.speed = element.optional("speed").whole(1, most_speed);
    shaft.inner_tube = element.optional("inner-tube").word<End>().value_or(End::implement);
    for (const char* name : of_shaft_that_is_there) element.refuse(name, OfShaftThatIsThere{name});
    const KnownNames connections = names_in(catalogue.connections, NamesOf::the_catalogue);
    EachOnce<End> sides;
    element.each("end", [&](Element& end) {
        const auto side = sides.take(end.required("side"), "end");
        const auto joint = end.required("joint").word<JointToChoose>();
        JobEnd read = read_end(end, end.required("connection"), connections);
        for (const char* name : {"spacing", "cross-to-groove"}) end.refuse(name, OfShaftThatIsThere{name});
        if (!side) return;
        wanted.joint[*side] = joint ? kind_of(*joint) : std::nullopt;
        shaft.ends[*side] = std::move(read);
    });
    for (const End side : both_ends)
        if (!sides.met(side)) element.fault(MissingEnd{side});
    return wanted;
}

OrderedShaft read_ordered_shaft(Element& element, const Catalogue& catalogue)
{
    OrderedShaft ordered;
    JobShaft& shaft = ordered.shaft;
    shaft.place = element.place();
    shaft.series = element.required("series").one_of(names_in(catalogue.series, NamesOf::the_catalogue));
    shaft.role = element.required("role").word<Role>().value_or(Role::primary);
    shaft.speed = element.optional("speed").whole(1, most_speed);
    shaft.inner_tube = element.required("inner-tube").word<End>().value_or(End::implement);
    ordered.guard = element.optional("guard").word<Guarded>() != Guarded::no;
    element.at_most_one("closed", [&](Element& closed) {
        shaft.closed_reference = closed.optional("reference").word<Reference>();
        ordered.closed = read_measurement(closed.required("length"), std::nullopt).value_or(Measurement{});
    });
    const EndsReading ends = read_ends(element, names_in(catalogue.connections, NamesOf::the_catalogue), EndFigures::of_series);
    shaft.ends = ends.ends;
    for (const End end : both_ends) shaft.ends[end].device = shaft.ends[end].device.value_or(Device::none);
    if (!shaft.series) return ordered;
    const Series& series = *find_series(catalogue, *shaft.series);
    for (const End end : both_ends)
        if (ends.places[end]) check_joint_of(series, shaft.ends[end], *ends.places[end]);
    ordered.lacks_reference = lacks_reference(series, shaft) && !shaft.closed_reference;
    return ordered;
}

}  // namespace shaftcut
