#include "cut/general_tolerance.hpp"

#include <array>

namespace shaftcut {
namespace {

struct Row {
    Length up_to;
    Length plus_minus;
};

constexpr Length least = Length::millimetres(30);

constexpr std::array rows{Row{Length::millimetres(120), Length::micrometres(800)}, Row{Length::millimetres(400), Length::micrometres(1200)},
                          Row{Length::millimetres(1000), Length::millimetres(2)}, Row{Length::millimetres(2000), Length::millimetres(3)},
                          Row{Length::millimetres(4000), Length::millimetres(4)}};

}  // namespace

std::optional<Length> coarse_tolerance(Length size)
{
    if (size <= least) return std::nullopt;
    for (const Row& row : rows)
        if (size <= row.up_to) return row.plus_minus;
    return std::nullopt;
}

}  // namespace shaftcut
