#include "measures_reader.hpp"

#include "order_number.hpp"
#include "xml/each_once.hpp"

namespace shaftcut {
namespace {

constexpr std::size_t most_crosses = 2, most_tubes = 2;

std::optional<Length> read_plus_minus(const Attribute& attribute)
{
    const auto plus_minus = attribute.plus_minus();
    if (!plus_minus || *plus_minus > Length()) return plus_minus;
    attribute.fault(WrongValue{Unfit::no_length, {attribute.called(), attribute.value()}});
    return std::nullopt;
}

Length read_spacers(const Attribute& spacers, const Attribute& length, const std::optional<Length>& read)
{
    const Length both = spacers.positive_length().value_or(Length());
    if (read && both >= *read) length.fault(WrongValue{Unfit::not_above_spacers, {length.called(), length.value()}});
    return both;
}

// One reading more of a figure, its length in the attribute of this name. `called`: what is read, for the fault of a fourth.
void take_reading(Element& element, const char* attribute, SizeReadings& readings, std::size_t& count)
{
    if (++count == most_readings + 1) element.fault(TooMany{ManyOf::readings, most_readings, element.name()});
    const Attribute length = element.required(attribute);
    const auto read = length.positive_length();
    const auto plus_minus = read_plus_minus(element.optional("plus-minus"));
    if (read) readings.push_back({*read, plus_minus, {}, length.place()});
}

// The readings of one figure below an element, each an element of this name.
SizeReadings read_lengths(Element& element, const char* name)
{
    SizeReadings readings;
    std::size_t count = 0;
    element.each(name, [&](Element& child) { take_reading(child, "length", readings, count); });
    return readings;
}

// The readings of both pairs of a cross: which pair an element is of it states, the first where it does not.
template <class Take>
void each_of_pair(Element& cross, const char* name, const Take& take)
{
    PerEach<CapPair, std::size_t> counts{};
    cross.each(name, [&](Element& child) {
        const CapPair pair = child.optional("pair").word<CapPair>().value_or(CapPair::first);
        take(child, pair, counts[pair]);
    });
}

void read_caps(Element& cross, MeasuredCross& read)
{
    each_of_pair(cross, "cap", [&](Element& cap, CapPair of, std::size_t& count) {
        MeasuredPair& pair = read.pairs[of];
        const Attribute measured_in = cap.optional("measured-in");
        const CapRead how = measured_in.word<CapRead>().value_or(CapRead::cap);
        if (!pair.cap.empty() && pair.cap_read != how) cap.fault(Contradiction::caps_read_both_ways);
        pair.cap_read = how;
        take_reading(cap, "diameter", pair.cap, count);
    });
}

void read_spans(Element& cross, MeasuredCross& read)
{
    each_of_pair(cross, "span", [&](Element& span, CapPair of, std::size_t& count) {
        SizeReadings& readings = read.pairs[of].span;
        const std::size_t before = readings.size();
        const Attribute length = span.optional("length"), spacers = span.optional("spacers");
        take_reading(span, "length", readings, count);
        const bool sound = readings.size() > before;
        const Length both = read_spacers(spacers, length, sound ? std::optional(readings.back().length) : std::nullopt);
        if (sound) readings.back().spacers = both;
    });
}

MeasuredCross read_cross(Element& element, EachOnce<CrossPlace>& places)
{
    MeasuredCross cross;
    cross.at = places.take(element.optional("at"), "cross");
    cross.circlip = element.optional("circlip").word<Circlip>();
    cross.nipple = element.optional("nipple").word<Nipple>();
    read_caps(element, cross);
    read_spans(element, cross);
    return cross;
}

void read_crosses(Element& element, MeasuredEnd& end)
{
    EachOnce<CrossPlace> places;
    const bool standard = end.joint == JointKind::standard;
    std::size_t count = 0;
    element.each("cross", [&](Element& child) {
        MeasuredCross cross = read_cross(child, places);
        ++count;
        if (standard && cross.at) child.fault(Contradiction::at_of_standard_joint);
        if (standard && count == 2) child.fault(Contradiction::second_cross_of_standard_joint);
        if (!standard && count == most_crosses + 1) child.fault(TooMany{ManyOf::crosses, most_crosses});
        if (count <= most_crosses) end.crosses.push_back(std::move(cross));
    });
}

MeasuredEnd read_end(Element& element)
{
    MeasuredEnd end;
    end.joint = element.optional("joint").word<JointKind>();
    read_crosses(element, end);
    std::size_t count = 0;
    element.each("spacing", [&](Element& spacing) {
        if (end.joint == JointKind::standard && count == 0) spacing.fault(Contradiction::spacing_of_standard_joint);
        take_reading(spacing, "length", end.spacing, count);
    });
    return end;
}

void read_ends(Element& element, Measures& measures)
{
    EachOnce<End> sides;
    element.each("end", [&](Element& child) {
        const auto side = sides.take(child.required("side"), "end");
        MeasuredEnd read = read_end(child);
        if (side) measures.ends[*side] = std::move(read);
    });
}

void read_tubes(Element& element, Measures& measures)
{
    measures.shape = element.optional("shape").word<Shape>();
    EachOnce<Tube> tubes;
    std::size_t count = 0;
    element.each("tube", [&](Element& child) {
        if (++count == most_tubes + 1) child.fault(TooMany{ManyOf::tubes, most_tubes});
        MeasuredTube tube{tubes.take(child.optional("tube"), "tube")};
        tube.width = read_lengths(child, "width");
        tube.wall = read_lengths(child, "wall");
        if (count <= most_tubes) measures.tubes.push_back(std::move(tube));
    });
}

MeasuredClosed read_closed(Element& element)
{
    const Attribute length = element.required("length");
    const auto read = length.positive_length();
    const auto plus_minus = read_plus_minus(element.optional("plus-minus"));
    return {{read.value_or(Length()), plus_minus, {}, length.place()}, element.optional("reference").word<Reference>()};
}

void read_parts(Element& element, Measures& measures)
{
    read_ends(element, measures);
    element.at_most_one("tubes", [&](Element& tubes) { read_tubes(tubes, measures); });
    element.at_most_one("guard", [&](Element& guard) { measures.writing = guard.required("writing").name(); });
    element.at_most_one("closed", [&](Element& closed) { measures.closed = read_closed(closed); });
}

// It names files, as an order does.
std::string read_shaft_name(const Attribute& attribute)
{
    if (!attribute.given()) return {};
    for (WrongValue wrong : order_faults(attribute.value())) {
        wrong.stated.name = attribute.called();
        attribute.fault(wrong);
    }
    return attribute.value();
}

Measures read_root(Element& element)
{
    Measures measures;
    measures.units = element.units();
    measures.shaft = read_shaft_name(element.required("shaft"));
    measures.date = read_date(element.optional("date"));
    read_parts(element, measures);
    return measures;
}

}  // namespace

Read<Measures> read_measures(const Source& source)
{
    Read<Measures> read;
    Measures measures;
    read.faults = read_document(source, "measures", [&](Element& element) { measures = read_root(element); });
    if (read.faults.empty()) read.value = std::move(measures);
    return read;
}

Measures read_measures_of_job(Element& element)
{
    Measures measures;
    measures.units = element.units();
    measures.date = read_date(element.optional("date"));
    read_parts(element, measures);
    return measures;
}

}  // namespace shaftcut
