#include "shaftcut/reading/fit_reader.hpp"

#include "shaftcut/reading/each_once.hpp"
#include "shaftcut/reading/machine_reader.hpp"
#include "shaftcut/reading/measurement_reader.hpp"
#include "shaftcut/trade/hitch.hpp"
#include "shaftcut/trade/hitch_problems.hpp"
#include "shaftcut/trade/hitch_shaft.hpp"
#include "shaftcut/words/text.hpp"

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
        const auto length = read_length(longest).value_or(Measurement{});
        if (range) lengths[*range] = length;
    });
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

// The machine's geometry as far as it was read: a machine with faults is not there, but was given.
struct MachineReading {
    std::optional<Machine> machine;
    bool given = false;
};

MachineReading read_machine(Element& element)
{
    MachineReading reading;
    bool trailed = false;
    element.at_most_one("trailed", [&](Element& child) {
        trailed = true;
        reading = {read_trailed(child), true};
    });
    element.at_most_one("mounted", [&](Element& child) {
        if (trailed) child.fault("fit holds a trailed and a mounted machine", "leave one of them out");
        reading = {read_mounted(child), true};
    });
    return reading;
}

bool gives_turning(const Machine& machine)
{
    return std::visit([](const auto& kind) { return kind.ranges.turning.has_value(); }, machine);
}

// What every fit must know, from a tape measure or from the machine.
void check_complete(const Element& element, const JobFit& fit, const MachineReading& machine)
{
    if (machine.given && !machine.machine) return;
    if (!fit.shortest && !machine.given) element.fault("fit holds no shortest", "add one, or the machine's geometry");
    if (fit.longest[Range::turning] || (machine.machine && gives_turning(*machine.machine))) return;
    element.fault("fit holds no longest when=\"turning\"", "add <longest when=\"turning\" length=\"...\"/>" +
                  std::string(machine.given ? ", or the machine's turning range" : ""));
}

std::string unknown_yoke(const FitShaft& shaft, End end)
{
    const auto& connection = shaft.shaft.ends[end].connection;
    const std::string wrong = std::string("the machine's geometry needs the length of the ") + to_word(end) + " end's yoke, cross to groove, and ";
    if (!connection) return wrong + "that end states no connection";
    const Series* series = series_at(shaft.series, shaft.shaft, end);
    return wrong + (series ? "series " + quoted(series->name) + " gives none for connection " + quoted(*connection) : "no series gives it");
}

void check_machine(const Element& element, const Machine& machine, const FitShaft& shaft)
{
    const Problems impossible = geometry_problems(machine, element.units());
    for (const Problem& problem : impossible) element.fault(problem);
    if (!shaft.sound) return;
    const auto meets = hitch_shaft(shaft.shaft, shaft.series);
    if (const auto* unknown = std::get_if<std::vector<End>>(&meets)) {
        for (const End end : *unknown) element.fault(unknown_yoke(shaft, end), "give it in the catalogue, or measure the lengths instead");
        return;
    }
    if (!impossible.empty()) return;
    const auto lengths = operating_lengths(machine, std::get<HitchShaft>(meets), Length(), element.units());
    if (const auto* no_room = std::get_if<Problems>(&lengths))
        for (const Problem& problem : *no_room) element.fault(problem);
}

}  // namespace

JobFit read_fit(Element& element, const FitShaft& shaft, std::size_t before)
{
    if (before == most_fits) element.fault("more than " + std::to_string(most_fits) + " fits", "leave out those that others outdo, or divide the file");
    JobFit fit;
    fit.place = element.place();
    fit.between = element.optional("between").word<Between>().value_or(Between::crosses);
    fit.reference = read_reference(element.optional("reference"), fit.between);
    fit.tractor = element.optional("tractor").text().value_or("");
    element.at_most_one("shortest", [&](Element& shortest) { fit.shortest = read_length(shortest).value_or(Measurement{}); });
    fit.longest = read_longest(element);
    const PerEach<End, Side> sides = read_sides(element);
    for (const End end : both_ends) {
        fit.angles[end] = sides[end].angles;
        fit.angle_places[end] = sides[end].place;
    }
    const MachineReading machine = read_machine(element);
    fit.machine = machine.machine;
    check_complete(element, fit, machine);
    if (machine.machine && before < most_fits) check_machine(element, *machine.machine, shaft);
    return fit;
}

}  // namespace shaftcut
