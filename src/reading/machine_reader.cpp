#include "shaftcut/reading/machine_reader.hpp"

namespace shaftcut {
namespace {

// Reads the dimensions of one element, which share their plus-minus.
class DimensionReader {
public:
    explicit DimensionReader(Element& element) : element_(element), plus_minus_(element.optional("plus-minus").length()) {}

    Dimension length(const char* name, Sign sign = Sign::none)
    {
        const Attribute attribute = element_.required(name);
        return {attribute.length(sign).value_or(Length()), plus_minus_, attribute.place()};
    }

private:
    Element& element_;
    std::optional<Length> plus_minus_;
};

AngleDimension read_angle(Element& element, const char* name, Sign sign)
{
    const Attribute attribute = element.required(name);
    return {attribute.angle(sign).value_or(Angle()), std::nullopt, attribute.place()};
}

TrailedRange read_range(Element& element, const TrailedRange*)
{
    return {read_angle(element, "turn", Sign::none), read_angle(element, "pitch", Sign::none), read_angle(element, "roll", Sign::none)};
}

MountedRange read_range(Element& element, const MountedRange*)
{
    DimensionReader read(element);
    return {read.length("lowest"), read.length("highest")};
}

template <class Range>
Ranges<Range> read_ranges(Element& element)
{
    Ranges<Range> ranges;
    const auto read = [&](const char* name, std::optional<Range>& range) {
        element.at_most_one(name, [&](Element& child) { range = read_range(child, static_cast<const Range*>(nullptr)); });
    };
    read("working", ranges.working);
    read("turning", ranges.turning);
    read("standing", ranges.standing);
    return ranges;
}

Trailed trailed(Element& element)
{
    DimensionReader read(element);
    Trailed machine;
    machine.place = element.place();
    machine.pto_height = read.length("pto-height");
    // A pin in front of the PTO is no slip of the pen: geometry_problems() says what is wrong with it.
    machine.pin_behind = read.length("pin-behind", Sign::allowed);
    machine.pin_height = read.length("pin-height");
    machine.input_behind = read.length("input-behind");
    machine.input_height = read.length("input-height");
    machine.input_left = read.length("input-left", Sign::allowed);
    machine.input_tilt = read_angle(element, "input-tilt", Sign::allowed);
    machine.ranges = read_ranges<TrailedRange>(element);
    return machine;
}

Mounted mounted(Element& element)
{
    DimensionReader read(element);
    Mounted machine;
    machine.place = element.place();
    machine.pto_height = read.length("pto-height");
    machine.lower_pivot_behind = read.length("lower-pivot-behind", Sign::allowed);
    machine.lower_pivot_height = read.length("lower-pivot-height");
    machine.lower_link = read.length("lower-link");
    machine.top_pivot_behind = read.length("top-pivot-behind", Sign::allowed);
    machine.top_pivot_height = read.length("top-pivot-height");
    machine.top_link = read.length("top-link");
    machine.mast = read.length("mast");
    machine.input_behind = read.length("input-behind");
    machine.input_above = read.length("input-above", Sign::allowed);
    machine.input_tilt = read_angle(element, "input-tilt", Sign::allowed);
    machine.ranges = read_ranges<MountedRange>(element);
    return machine;
}

}  // namespace

std::optional<Machine> read_trailed(Element& element)
{
    const std::size_t before = element.faults_so_far();
    const Trailed machine = trailed(element);
    return element.faults_so_far() == before ? std::optional<Machine>(machine) : std::nullopt;
}

std::optional<Machine> read_mounted(Element& element)
{
    const std::size_t before = element.faults_so_far();
    const Mounted machine = mounted(element);
    return element.faults_so_far() == before ? std::optional<Machine>(machine) : std::nullopt;
}

}  // namespace shaftcut
