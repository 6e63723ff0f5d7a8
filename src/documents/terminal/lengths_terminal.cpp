#include "terminal/lengths_terminal.hpp"

#include <fmt/format.h>

#include "cut/geometry_words.hpp"
#include "terminal/terminal_lines.hpp"

namespace shaftcut {
namespace {

std::string length_line(const WorkOrder& order, const std::string& name, const std::optional<ExtremeLength>& extreme, Rounded as)
{
    if (!extreme) return {};
    return wrapped(fmt::format("  {:<17}", name), figure_of_with_millimetres(as, extreme->length, order.units) + " ± " +
                                                      figure_of_with_unit(Rounded::doubt, extreme->plus_minus, order.units) + ", " + in_words(extreme->at, order.units));
}

std::string angle_line(const WorkOrder& order, End end, Range range)
{
    const auto& extreme = order.extremes.angles[end][range];
    if (!extreme) return {};
    return wrapped(fmt::format("  {:<17}", std::string(to_word(end)) + " joint"), figure(extreme->angle) + "° " + to_word(range) + ", " + in_words(extreme->at, order.units));
}

}  // namespace

std::string lengths_text(const WorkOrder& order, Colour colour)
{
    const std::string machine = order.machine.empty() ? "" : ", for " + order.machine;
    std::string text = order.order + ": " + painted("OPERATING LENGTHS", "1", colour) + " between the inner crosses\n" + wrapped(" ", order.shaft_title + machine);
    text += length_line(order, "shortest", order.extremes.shortest, Rounded::shortest);
    for (const Range range : all_ranges) text += length_line(order, std::string("longest ") + to_word(range), order.extremes.longest[range], Rounded::longest);
    for (const End end : both_ends)
        for (const Range range : all_ranges) text += angle_line(order, end, range);
    for (const std::string& note : order.machine_notes) text += wrapped("  note             ", note);
    return text;
}

}  // namespace shaftcut
