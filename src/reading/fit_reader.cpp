#include "shaftcut/reading/fit_reader.hpp"

#include "shaftcut/reading/each_once.hpp"
#include "shaftcut/reading/measurement_reader.hpp"

namespace shaftcut {
namespace {

std::optional<Measurement> read_length(Element& element)
{
    const Attribute length = element.required("length");
    return read_measurement(length, element.optional("plus-minus").length());
}

PerEach<Range, std::optional<Measurement>> read_longest(Element& element)
{
    PerEach<Range, std::optional<Measurement>> lengths;
    EachOnce<Range> ranges;
    element.each("longest", [&](Element& longest) {
        const auto range = ranges.take(longest.required("when"), "longest when");
        const auto length = read_length(longest);
        if (range) lengths[*range] = length;
    });
    if (!ranges.met(Range::turning)) element.fault("fit holds no longest when=\"turning\"", "add <longest when=\"turning\" length=\"...\"/>");
    return lengths;
}

PerEach<Range, std::optional<Angle>> read_angles(Element& element)
{
    PerEach<Range, std::optional<Angle>> angles;
    for (const Range range : all_ranges) angles[range] = element.optional(to_word(range)).angle();
    return angles;
}

struct Side {
    PerEach<Range, std::optional<Angle>> angles;
    Place place;
};

PerEach<End, Side> read_sides(Element& element)
{
    PerEach<End, Side> sides;
    EachOnce<End> met;
    element.each("angle", [&](Element& angle) {
        const auto side = met.take(angle.required("side"), "angle with side");
        const auto angles = read_angles(angle);
        if (side) sides[*side] = {angles, angle.place()};
    });
    return sides;
}

std::optional<Reference> read_reference(const Attribute& attribute, Between between)
{
    if (between == Between::grooves && attribute.given())
        attribute.fault("reference says nothing between grooves", "leave it out, or write between=\"crosses\"");
    return attribute.word<Reference>();
}

}  // namespace

JobFit read_fit(Element& element)
{
    JobFit fit;
    fit.place = element.place();
    fit.between = element.optional("between").word<Between>().value_or(Between::crosses);
    fit.reference = read_reference(element.optional("reference"), fit.between);
    fit.tractor = element.optional("tractor").text().value_or("");
    element.one("shortest", [&](Element& shortest) { fit.shortest = read_length(shortest).value_or(Measurement{}); });
    fit.longest = read_longest(element);
    const PerEach<End, Side> sides = read_sides(element);
    for (const End end : both_ends) {
        fit.angles[end] = sides[end].angles;
        fit.angle_places[end] = sides[end].place;
    }
    return fit;
}

}  // namespace shaftcut
