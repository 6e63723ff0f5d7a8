#include "source/outside_bounds.hpp"

namespace shaftcut {
namespace {

std::string in_mm(Length length) { return figure_with_unit(length, Units::mm, Toward::nearest, 3); }

std::string what_would_be_right(Length length, UnitSlip slip)
{
    switch (slip) {
    case UnitSlip::inches_read_as_millimetres:
        return "is the unit right? 25.4 times as much, " + in_mm(fraction_of({254, 10}, length)) + ", could be one: so it is where inches are read as millimetres";
    case UnitSlip::millimetres_read_as_inches:
        return "is the unit right? A 25.4th of that, " + in_mm(fraction_of({10, 254}, length)) + ", could be one: so it is where millimetres are read as inches";
    case UnitSlip::none: break;
    }
    return "measure it again";
}

}  // namespace

std::optional<ParseFault> outside_bounds(Length length, const Bounds& bounds, const std::string& what)
{
    if (bounds.hold(length)) return std::nullopt;
    const std::string least = bounds.least == Length() ? "at most " : in_mm(bounds.least) + " to ";
    return ParseFault{"is " + in_mm(length) + ", and " + what + " " + least + in_mm(bounds.greatest), what_would_be_right(length, unit_slip(length, bounds))};
}

}  // namespace shaftcut
