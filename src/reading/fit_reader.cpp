#include "fit_reader.hpp"

#include <algorithm>

#include "angle_reader.hpp"
#include "end_figures.hpp"
#include "hitch/hitch_problems.hpp"
#include "hitch/hitch_shaft.hpp"
#include "hitch/shafts_on_grid.hpp"
#include "machine_reader.hpp"
#include "measurement_reader.hpp"
#include "xml/each_once.hpp"

namespace shaftcut {
namespace {

// A length and the position in which it was measured.
struct LengthReading {
    Measurement length;
    std::string at;
};

LengthReading read_length(Element& element)
{
    const Attribute length = element.required("length");
    const auto read = read_measurement(length, element.optional("plus-minus").plus_minus());
    return {read.value_or(Measurement{}), element.optional("at").text(most_name_characters).value_or("")};
}

void read_lengths(Element& element, JobFit& fit)
{
    element.at_most_one("shortest", [&](Element& shortest) {
        const LengthReading read = read_length(shortest);
        fit.shortest = read.length;
        fit.shortest_at = read.at;
    });
    EachOnce<Range> ranges;
    element.each("longest", [&](Element& longest) {
        const auto range = ranges.take(longest.required("when"), "longest");
        const LengthReading read = read_length(longest);
        if (!range) return;
        fit.longest[*range] = read.length;
        fit.longest_at[*range] = read.at;
    });
}

// Of a shaft that is still to be chosen no length runs between crosses.
std::optional<Reference> read_reference(const Attribute& attribute, Between between, bool to_choose)
{
    if (between == Between::grooves && attribute.given())
        attribute.fault(to_choose ? Contradiction::reference_before_choice : Contradiction::reference_of_grooves);
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
        if (trailed) child.fault(Contradiction::two_machines);
        reading = {read_mounted(child), true};
    });
    return reading;
}

bool gives_turning(const Machine& machine)
{
    return std::visit([](const auto& kind) { return kind.ranges.turning.has_value(); }, machine);
}

bool measures_anything(const JobFit& fit)
{
    return fit.shortest || std::any_of(all_ranges.begin(), all_ranges.end(), [&](Range range) { return fit.longest[range].has_value(); });
}

// Of a shaft that is still to be chosen. Another word than one of these two has its own fault.
void check_between(const Attribute& between, const JobFit& fit)
{
    const bool crosses = !between.given() || between.value() == to_word(Between::crosses);
    if (crosses && measures_anything(fit)) between.fault(Contradiction::crosses_before_choice);
}

// What every fit must know, from a tape measure or from the machine.
void check_complete(const Element& element, const JobFit& fit, const MachineReading& machine)
{
    if (machine.given && !machine.machine) return;
    if (!fit.shortest && !machine.given) element.fault(Contradiction::no_shortest);
    if (fit.longest[Range::turning] || (machine.machine && gives_turning(*machine.machine))) return;
    element.fault(machine.given ? Contradiction::no_turning_of_machine : Contradiction::no_turning);
}

// The yokes that these lengths run over must be known; of a shaft of one series between grooves that is a check's matter, which refuses.
std::vector<End> unknown_yokes(const FitShaft& shaft, bool only_own)
{
    std::vector<End> unknown;
    for (const End end : both_ends)
        if ((!only_own || has_own_figures(shaft.shaft, end)) && !yoke_of(shaft.shaft, shaft.series, end)) unknown.push_back(end);
    return unknown;
}

UnknownYoke unknown_yoke(bool of_machine, const FitShaft& shaft, End end)
{
    const Series* series = series_at(shaft.series, shaft.shaft, end);
    return {of_machine, end, has_own_figures(shaft.shaft, end), series ? std::optional(series->name) : std::nullopt, shaft.shaft.ends[end].connection};
}

void check_grooves(const Element& element, const FitShaft& shaft)
{
    for (const End end : unknown_yokes(shaft, true)) element.fault(unknown_yoke(false, shaft, end));
}

// In the file's unit.
void fault_all(const Element& element, const HitchProblems& of_machine)
{
    for (const HitchProblem& problem : of_machine) element.fault_at(problem.place, OfMachine{problem.fault, element.units()});
}

void check_machine(const Element& element, const Machine& machine, const FitShaft& shaft)
{
    const HitchProblems impossible = geometry_problems(machine);
    fault_all(element, impossible);
    if (!shaft.sound) return;
    const std::vector<End> unknown = unknown_yokes(shaft, false);
    for (const End end : unknown) element.fault(unknown_yoke(true, shaft, end));
    if (!unknown.empty() || !impossible.empty()) return;
    const auto meets = hitch_shaft(shaft.shaft, shaft.series);
    if (!std::holds_alternative<HitchShaft>(meets)) return;
    fault_all(element, operating_problems(machine, std::get<HitchShaft>(meets)));
}

}  // namespace

JobFit read_fit(Element& element, const FitShaft& shaft, std::size_t before)
{
    if (before == most_fits) element.fault(TooMany{ManyOf::fits, most_fits});
    JobFit fit;
    fit.place = element.place();
    const Attribute between = element.optional("between");
    fit.between = between.word<Between>().value_or(Between::crosses);
    fit.reference = read_reference(element.optional("reference"), fit.between, shaft.to_choose);
    fit.tractor = element.optional("tractor").text().value_or("");
    read_lengths(element, fit);
    if (shaft.to_choose) check_between(between, fit);
    const PerEach<End, AnglesReading> sides = read_angles(element);
    for (const End end : both_ends) {
        fit.angles[end] = sides[end].angles;
        fit.views[end] = sides[end].views;
        fit.angle_places[end] = sides[end].place;
    }
    const MachineReading machine = read_machine(element);
    fit.machine = machine.machine;
    check_complete(element, fit, machine);
    if (fit.between == Between::grooves && shaft.sound && before < most_fits) check_grooves(element, shaft);
    if (machine.machine && before < most_fits) check_machine(element, *machine.machine, shaft);
    return fit;
}

}  // namespace shaftcut
