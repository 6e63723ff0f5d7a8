#include "machine_reader.hpp"

#include "data/machine_words.hpp"

namespace shaftcut {
namespace {

// Reads the dimensions of one element, which share their plus-minus.
class DimensionReader {
public:
    explicit DimensionReader(Element& element) : element_(element), plus_minus_(element.optional("plus-minus").plus_minus()) {}

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
    using enum TrailedMovement;
    return {read_angle(element, to_word(turn), Sign::none), read_angle(element, to_word(pitch), Sign::none), read_angle(element, to_word(roll), Sign::none)};
}

MountedRange read_range(Element& element, const MountedRange*)
{
    DimensionReader read(element);
    return {read.length(to_word(MountedMovement::lowest)), read.length(to_word(MountedMovement::highest))};
}

template <class Range>
Ranges<Range> read_ranges(Element& element)
{
    Ranges<Range> ranges;
    const auto read = [&](const char* name, std::optional<Range>& range) {
        element.at_most_one(name, [&](Element& child) { range = read_range(child, static_cast<const Range*>(nullptr)); });
    };
    read(to_word(shaftcut::Range::working), ranges.working);
    read(to_word(shaftcut::Range::turning), ranges.turning);
    read(to_word(shaftcut::Range::standing), ranges.standing);
    return ranges;
}

Trailed trailed(Element& element)
{
    using enum TrailedDimension;
    DimensionReader read(element);
    Trailed machine;
    machine.place = element.place();
    machine.pto_height = read.length(to_word(pto_height));
    // A pin in front of the PTO is no slip of the pen: geometry_problems() says what is wrong with it.
    machine.pin_behind = read.length(to_word(pin_behind), Sign::allowed);
    machine.pin_height = read.length(to_word(pin_height));
    machine.input_behind = read.length(to_word(input_behind));
    machine.input_height = read.length(to_word(input_height));
    machine.input_left = read.length(to_word(input_left), Sign::allowed);
    machine.input_tilt = read_angle(element, to_word(input_tilt), Sign::allowed);
    machine.ranges = read_ranges<TrailedRange>(element);
    return machine;
}

Mounted mounted(Element& element)
{
    using enum MountedDimension;
    DimensionReader read(element);
    Mounted machine;
    machine.place = element.place();
    machine.pto_height = read.length(to_word(pto_height));
    machine.lower_pivot_behind = read.length(to_word(lower_pivot_behind), Sign::allowed);
    machine.lower_pivot_height = read.length(to_word(lower_pivot_height));
    machine.lower_link = read.length(to_word(lower_link));
    machine.top_pivot_behind = read.length(to_word(top_pivot_behind), Sign::allowed);
    machine.top_pivot_height = read.length(to_word(top_pivot_height));
    machine.top_link = read.length(to_word(top_link));
    machine.mast = read.length(to_word(mast));
    machine.input_behind = read.length(to_word(input_behind));
    machine.input_above = read.length(to_word(input_above), Sign::allowed);
    machine.input_tilt = read_angle(element, to_word(input_tilt), Sign::allowed);
    machine.ranges = read_ranges<MountedRange>(element);
    return machine;
}

// A machine with faults is not there.
template <class Kind>
std::optional<Machine> sound(Element& element, Kind (*read)(Element&))
{
    const std::size_t before = element.faults_so_far();
    const Kind machine = read(element);
    return element.faults_so_far() == before ? std::optional<Machine>(machine) : std::nullopt;
}

}  // namespace

std::optional<Machine> read_trailed(Element& element) { return sound(element, trailed); }
std::optional<Machine> read_mounted(Element& element) { return sound(element, mounted); }

}  // namespace shaftcut
