#include "catalogue_reader.hpp"

#include <algorithm>
#include <map>
#include <set>

#include "limits_reader.hpp"
#include "parts_reader.hpp"
#include "shaftcut/trade/data/job.hpp"
#include "xml/each_once.hpp"
#include "xml/element.hpp"

namespace shaftcut {

namespace {
enum class Shortening { forbidden };
}
template <> struct Words<Shortening> { static constexpr std::array all{"forbidden"}; };

namespace {

constexpr std::int64_t most_mass_per_metre = 1000;  // kg

// The names met so far of one kind of thing.
class Names {
public:
    template <class Things>
    void know(const Things& things)
    {
        for (const auto& thing : things) met_.insert(thing.name);
    }
    // The name, or an empty one where it is missing or wrong. A name met before is a fault.
    std::string take(const Attribute& attribute, SecondOf what) { return take(attribute, attribute.name(), what); }
    // Where it was read already.
    std::string take(const Attribute& attribute, const std::optional<std::string>& name, SecondOf what)
    {
        if (name && !met_.insert(*name).second) attribute.fault(SecondNamed{what, *name});
        return name.value_or("");
    }

private:
    std::set<std::string> met_;
};

// One that says the same as what stands there already is that one.
std::optional<Connection> read_connection(Element& element, Names& names, const std::vector<Connection>& there)
{
    Connection connection;
    const Attribute stated = element.required("name");
    const auto name = stated.name();
    connection.speeds = element.optional("speeds").wholes(1, most_speed);
    connection.source = element.optional("source").text().value_or("");
    const auto same = [&](const Connection& one) { return one.name == name && one.speeds == connection.speeds && one.source == connection.source; };
    if (std::any_of(there.begin(), there.end(), same)) return std::nullopt;
    connection.name = names.take(stated, name, SecondOf::connection);
    return connection;
}

Cross read_cross(Element& element)
{
    Cross cross;
    cross.cap = element.required("cap").positive_length().value_or(Length());
    cross.span = element.required("span").positive_length().value_or(Length());
    cross.part = element.optional("part").name().value_or("");
    cross.other_cap = element.optional("other-cap").positive_length();
    cross.other_span = element.optional("other-span").positive_length();
    cross.circlip = element.optional("circlip").word<Circlip>();
    cross.nipple = element.optional("nipple").word<Nipple>();
    return cross;
}

WideAngleJoint read_wide_angle(Element& element)
{
    WideAngleJoint joint;
    joint.spacing = element.required("spacing").length_within(Bounded::spacing).value_or(Length());
    element.each("cross", [&](Element& cross) { joint.crosses.push_back(read_cross(cross)); });
    return joint;
}

bool read_shortening_forbidden(Element& element)
{
    return element.optional("shortening").word<Shortening>().has_value();
}

// Its hole is in the tube, so beyond the tube's inner end.
std::optional<Length> read_pin_hole(const Attribute& attribute, std::optional<Length> seat)
{
    const auto hole = attribute.length();
    if (hole && seat && *hole <= *seat) attribute.fault(WrongValue{Unfit::pin_hole_before_seat, {attribute.called(), attribute.value()}});
    return hole;
}

// What the stop may lie short of the tube's own end in the yoke: an inner tube may run past the outer tube's end into its yoke, by
// so much (the project's own choice).
Length least_shoulder(Tube tube, Length seat) { return tube == Tube::inner ? seat : seat - Length::millimetres(30); }

void check_shoulder(const Attribute& shoulder, const SeriesHalf& half, std::optional<Tube> tube, Units units)
{
    if (!half.shoulder || !half.seat || !tube || !clearly_below(*half.shoulder, least_shoulder(*tube, *half.seat))) return;
    shoulder.fault(ShoulderShort{{shoulder.called(), shoulder.value()}, *tube, *half.seat, units});
}

SeriesHalf read_half(Element& element, std::optional<Tube> tube)
{
    SeriesHalf half;
    const Attribute shoulder = element.optional("shoulder");
    half.shoulder = shoulder.length_within(Bounded::shoulder);
    half.seat = element.optional("seat").length();
    half.least_tube = element.optional("least-tube").length();
    half.width = element.optional("width").positive_length();
    half.wall = element.optional("wall").positive_length();
    half.guard_shoulder = element.optional("guard-shoulder").length();
    half.guard_seat = element.optional("guard-seat").length();
    half.guard_seat_wide_angle = element.optional("guard-seat-wide-angle").length();
    half.pin_hole = read_pin_hole(element.optional("pin-hole"), half.seat);
    half.mass_per_metre = element.optional("mass-per-metre").thousandths(most_mass_per_metre);
    half.shortening_forbidden = read_shortening_forbidden(element);
    check_shoulder(shoulder, half, tube, element.units());
    return half;
}

PerEach<Tube, SeriesHalf> read_halves(Element& element)
{
    PerEach<Tube, SeriesHalf> halves;
    EachOnce<Tube> tubes;
    element.each("half", [&](Element& half) {
        const auto tube = tubes.take(half.required("tube"), "half");
        const SeriesHalf read = read_half(half, tube);
        if (tube) halves[*tube] = read;
    });
    return halves;
}

Yoke read_yoke(Element& element, const KnownNames& connections)
{
    Yoke yoke;
    yoke.connection = element.required("connection").one_of(connections).value_or("");
    yoke.joint = element.optional("joint").word<JointKind>();
    yoke.cross_to_groove = element.optional("cross-to-groove").length();
    return yoke;
}

// The yokes met so far of one connection: a second one may only be for the other kind of joint.
class YokesOfConnection {
public:
    bool clashes(const std::optional<JointKind>& joint)
    {
        const bool clash = for_all_ || (joint ? met_[*joint] : met_[JointKind::standard] || met_[JointKind::wide_angle]);
        if (joint) met_[*joint] = true;
        else for_all_ = true;
        return clash;
    }

private:
    bool for_all_ = false;
    PerEach<JointKind, bool> met_;
};

std::vector<Yoke> read_yokes(Element& element, const KnownNames& connections)
{
    std::vector<Yoke> yokes;
    std::map<std::string, YokesOfConnection> met;
    element.each("yoke", [&](Element& child) {
        Yoke yoke = read_yoke(child, connections);
        if (!yoke.connection.empty() && met[yoke.connection].clashes(yoke.joint))
            child.fault(SecondNamed{SecondOf::yoke, yoke.connection});
        yokes.push_back(std::move(yoke));
    });
    return yokes;
}

std::vector<Rating> read_ratings(Element& element)
{
    std::vector<Rating> ratings;
    std::set<int> met;
    element.each("rating", [&](Element& child) {
        const Attribute speed_stated = child.required("speed");
        const auto speed = speed_stated.whole(1, most_speed);
        const auto power = child.required("power").power();
        if (!speed) return;
        if (!met.insert(*speed).second) speed_stated.fault(SecondNamed{SecondOf::rating, std::to_string(*speed)});
        ratings.push_back({*speed, power.value_or(0)});
    });
    return ratings;
}

Series read_series(Element& element, Names& names, const KnownNames& connections)
{
    Series series;
    series.name = names.take(element.required("name"), SecondOf::series);
    series.place = element.place();
    series.shape = element.required("shape").word<Shape>().value_or(Shape::other);
    series.wide_angle_reference = element.optional("wide-angle-reference").word<Reference>();
    series.shortening_forbidden = read_shortening_forbidden(element);
    element.at_least_one("cross", [&](Element& cross) { series.crosses.push_back(read_cross(cross)); });
    element.at_most_one("wide-angle", [&](Element& joint) { series.wide_angle = read_wide_angle(joint); });
    series.halves = read_halves(element);
    series.yokes = read_yokes(element, connections);
    series.ratings = read_ratings(element);
    series.parts = read_parts(element, connections);
    element.at_most_one("limits", [&](Element& limits) { series.limits = read_limits(limits); });
    element.at_most_one("closed-lengths", [&](Element& lengths) { series.closed_lengths = lengths.lengths(Bounded::closed); });
    return series;
}

// `to`: what stands there already.
Catalogue read_root(Element& element, const Catalogue& to)
{
    Catalogue catalogue = to;
    Names connections;
    Names series;
    connections.know(to.connections);
    series.know(to.series);
    element.each("connection", [&](Element& child) {
        if (auto connection = read_connection(child, connections, to.connections)) catalogue.connections.push_back(std::move(*connection));
    });
    const KnownNames known = names_in(catalogue.connections, NamesOf::this_catalogue);
    element.each("series", [&](Element& child) { catalogue.series.push_back(read_series(child, series, known)); });
    return catalogue;
}

}  // namespace

Read<Catalogue> read_catalogue(const Source& source)
{
    Read<Catalogue> read;
    Catalogue catalogue;
    read.faults = read_document(source, "catalogue", [&](Element& element) { catalogue = read_root(element, {}); });
    if (read.faults.empty()) read.value = std::move(catalogue);
    return read;
}

FaultList faults_of_added(const Source& added, const Catalogue& to, Units units)
{
    return read_document(added, "catalogue", [&](Element& element) {
        if (element.units() != units) element.fault(OtherUnits{units});
        const std::size_t series = read_root(element, to).series.size();
        if (series == to.series.size()) element.fault(MissingElement{"catalogue", "series"});
    });
}

}  // namespace shaftcut
