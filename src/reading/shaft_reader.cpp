#include "shaftcut/reading/shaft_reader.hpp"

#include <algorithm>

#include "shaftcut/reading/each_once.hpp"
#include "shaftcut/reading/measurement_reader.hpp"
#include "shaftcut/trade/build_order.hpp"
#include "shaftcut/words/text.hpp"

namespace shaftcut {
namespace {

constexpr int first_year = 1950;
constexpr int last_year = 2100;

JobEnd read_end(Element& end, const KnownNames& connections)
{
    JobEnd read;
    read.connection = end.optional("connection").one_of(connections);
    read.onto = end.optional("onto").one_of(connections);
    read.lock = end.optional("lock").word<Lock>();
    read.device = end.optional("device").word<Device>();
    read.place = end.place();
    return read;
}

// Both ends, and where their joints are stated.
struct EndsReading {
    PerEach<End, JobEnd> ends;
    PerEach<End, std::optional<Attribute>> joints;
};

EndsReading read_ends(Element& element, const KnownNames& connections)
{
    EndsReading reading;
    EachOnce<End> sides;
    element.each("end", [&](Element& end) {
        const auto side = sides.take(end.required("side"), "end with side");
        const Attribute joint = end.required("joint");
        const auto kind = joint.word<JointKind>();
        JobEnd read = read_end(end, connections);
        if (!side) return;
        read.joint = kind.value_or(JointKind::standard);
        reading.ends[*side] = std::move(read);
        reading.joints[*side] = joint;
    });
    for (const End side : both_ends)
        if (!sides.met(side)) element.fault(std::string("shaft holds no end with side ") + to_word(side), "add one");
    return reading;
}

bool has_wide_angle(const PerEach<End, JobEnd>& ends)
{
    return std::any_of(both_ends.begin(), both_ends.end(), [&](End end) { return ends[end].joint == JointKind::wide_angle; });
}

void check_joints_of(const Series& series, const EndsReading& reading)
{
    for (const End end : both_ends)
        if (!series.wide_angle && reading.joints[end] && reading.ends[end].joint == JointKind::wide_angle)
            reading.joints[end]->fault("joint \"wide-angle\", but series " + quoted(series.name) + " has no wide-angle joint", "write joint=\"standard\", or another series");
}

// Nothing says from which cross of this shaft's wide-angle joint its closed length runs.
bool lacks_reference(const Series& series, const PerEach<End, JobEnd>& ends)
{
    return series.wide_angle && has_wide_angle(ends) && !series.wide_angle_reference && !usual_reference(series.shape);
}

class ShaftReader {
public:
    ShaftReader(Element& element, const Catalogue& catalogue)
        : element_(element), catalogue_(catalogue), connections_(names_in(catalogue.connections, "the catalogue")),
          series_(element.optional("series")), shape_(element.optional("shape")), spacing_(element.optional("spacing")) {}

    JobShaft read();

private:
    void read_attributes();
    void read_closed(Element& closed);
    void read_halves();
    void check_series() const;
    void check_wide_angle_of(const Series& series) const;
    void check_without_series() const;
    void check_unit_of_closed(const Series& series) const;

    Element& element_;
    const Catalogue& catalogue_;
    KnownNames connections_;
    Attribute series_, shape_, spacing_;
    std::optional<Attribute> closed_length_, reference_;  // of the closed length
    EndsReading ends_;
    JobShaft shaft_;
};

void ShaftReader::read_attributes()
{
    shaft_.place = element_.place();
    shaft_.series = series_.one_of(names_in(catalogue_.series, "the catalogue"));
    shaft_.shape = shape_.word<Shape>();
    shaft_.spacing = spacing_.positive_length();
    shaft_.role = element_.required("role").word<Role>().value_or(Role::primary);
    shaft_.speed = element_.optional("speed").whole(1, most_speed);
    shaft_.inner_tube = element_.required("inner-tube").word<End>().value_or(End::implement);
    shaft_.built = element_.optional("built").whole(first_year, last_year);
}

void ShaftReader::read_closed(Element& closed)
{
    closed_length_ = closed.required("length");
    reference_ = closed.optional("reference");
    shaft_.closed_reference = reference_->word<Reference>();
    shaft_.closed = read_measurement(*closed_length_, closed.optional("plus-minus").length()).value_or(Measurement{});
}

JobHalf read_half(Element& half)
{
    const Attribute length = half.optional("length");
    const Attribute guard = half.optional("guard");
    const Attribute shoulder = half.optional("shoulder");
    const Attribute hole = half.optional("lubrication-hole");
    JobHalf read;
    read.features = half.optional("features").words<Feature>();
    const auto plus_minus = half.optional("plus-minus").length();
    read.length = read_measurement(length, plus_minus);
    read.guard = read_measurement(guard, plus_minus);
    read.shoulder = read_measurement(shoulder, plus_minus);
    read.lubrication_hole = read_measurement(hole, plus_minus);
    return read;
}

void ShaftReader::read_halves()
{
    EachOnce<Tube> tubes;
    element_.each("half", [&](Element& half) {
        const auto tube = tubes.take(half.required("tube"), "half with tube");
        JobHalf read = read_half(half);
        if (tube) shaft_.halves[*tube] = std::move(read);
    });
}

void ShaftReader::check_wide_angle_of(const Series& series) const
{
    check_joints_of(series, ends_);
    if (lacks_reference(series, ends_.ends) && reference_ && !reference_->given())
        reference_->fault("closed has no reference, and series " + quoted(series.name) + " does not state one",
                          "add reference=\"outer-cross\" or reference=\"inner-cross\", whichever the closed length was measured from");
}

void ShaftReader::check_series() const
{
    for (const Attribute* beside : {&shape_, &spacing_})
        if (beside->given()) beside->fault("shaft states series and " + std::string(beside->called()), "leave out what the series states");
    if (!shaft_.series) return;
    const Series& series = *find_series(catalogue_, *shaft_.series);
    check_wide_angle_of(series);
    check_unit_of_closed(series);
}

// Where every length is 25.4 times what it should be they still agree with one another, and only the series can tell. The bounds are the
// project's own choice: far beyond what a shaft that was lengthened or cut comes to, and far within the factor.
void ShaftReader::check_unit_of_closed(const Series& series) const
{
    if (series.closed_lengths.empty() || !closed_length_ || shaft_.closed.length == Length()) return;
    const Length shortest = series.closed_lengths.front(), longest = series.closed_lengths.back();
    const auto fault = [&](const std::string& compared, Length with) {
        closed_length_->fault("closed length " + figure_with_unit(shaft_.closed.length, Units::mm) + " is " + compared + " of series " + quoted(series.name) + ", " +
                                  figure_with_unit(with, Units::mm),
                              "state the unit in which it was measured, \"mm\" or \"in\", or the series that it is");
    };
    if (shaft_.closed.length.um() > 3 * longest.um()) fault("over three times the longest", longest);
    if (5 * shaft_.closed.length.um() < shortest.um()) fault("under a fifth of the shortest", shortest);
}

void ShaftReader::check_without_series() const
{
    if (!shape_.given()) element_.fault("shaft has neither series nor shape", "state the series, or shape=\"...\" for one of no known series");
    if (!has_wide_angle(ends_.ends)) return;
    if (!spacing_.given()) spacing_.fault("shaft has a wide-angle joint and neither series nor spacing", "add spacing=\"...\", centre to centre of the joint's crosses");
    if (reference_ && !reference_->given())
        reference_->fault("closed has no reference, and no series states one", "add reference=\"outer-cross\" or reference=\"inner-cross\", whichever the closed length was measured from");
}

JobShaft ShaftReader::read()
{
    read_attributes();
    element_.one("closed", [this](Element& closed) { read_closed(closed); });
    ends_ = read_ends(element_, connections_);
    shaft_.ends = ends_.ends;
    read_halves();
    if (series_.given()) check_series();
    else check_without_series();
    return std::move(shaft_);
}

}  // namespace

JobShaft read_shaft(Element& element, const Catalogue& catalogue)
{
    return ShaftReader(element, catalogue).read();
}

OrderedShaft read_ordered_shaft(Element& element, const Catalogue& catalogue)
{
    OrderedShaft ordered;
    JobShaft& shaft = ordered.shaft;
    shaft.place = element.place();
    shaft.series = element.required("series").one_of(names_in(catalogue.series, "the catalogue"));
    shaft.role = element.required("role").word<Role>().value_or(Role::primary);
    shaft.speed = element.optional("speed").whole(1, most_speed);
    shaft.inner_tube = element.required("inner-tube").word<End>().value_or(End::implement);
    ordered.guard = element.optional("guard").word<Guarded>() != Guarded::no;
    element.at_most_one("closed", [&](Element& closed) {
        shaft.closed_reference = closed.optional("reference").word<Reference>();
        ordered.closed = read_measurement(closed.required("length"), std::nullopt).value_or(Measurement{});
    });
    const EndsReading ends = read_ends(element, names_in(catalogue.connections, "the catalogue"));
    shaft.ends = ends.ends;
    for (const End end : both_ends) shaft.ends[end].device = shaft.ends[end].device.value_or(Device::none);
    if (!shaft.series) return ordered;
    const Series& series = *find_series(catalogue, *shaft.series);
    check_joints_of(series, ends);
    ordered.lacks_reference = lacks_reference(series, shaft.ends) && !shaft.closed_reference;
    return ordered;
}

}  // namespace shaftcut
