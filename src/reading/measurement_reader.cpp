#include "measurement_reader.hpp"

namespace shaftcut {

std::optional<Measurement> read_measurement(const Attribute& attribute, std::optional<Length> plus_minus)
{
    const auto length = attribute.length();
    if (!length) return std::nullopt;
    return Measurement{*length, plus_minus, attribute.place()};
}

}  // namespace shaftcut
