#include "terminal/lengths_terminal.hpp"

#include <fmt/format.h>
#include "hitch/geometry_figures.hpp"
#include "order/instruction_words.hpp"
#include "say_all.hpp"
#include "shaft_title_words.hpp"
#include "terminal/terminal_lines.hpp"

namespace shaftcut {
namespace {

using namespace terminal;

constexpr std::size_t name_columns = 17;

std::string length_line(const std::string& name, const std::optional<ExtremeLength>& extreme, Rounded as, const Wording& w)
{
    return extreme ? wrapped(padded(name, name_columns), length_at(*extreme, as, in_words(extreme->at, w), w)) : std::string();
}

std::string angle_line(const WorkOrder& order, End end, Range range, const Wording& w)
{
    const auto& extreme = order.extremes.angles[end][range];
    return extreme ? wrapped(padded(joint_name(end, w), name_columns), angle_at(*extreme, range, in_words(extreme->at, w), w)) : std::string();
}

}  // namespace

std::string lengths_text(const WorkOrder& order, Colour colour, const Wording& w)
{
    std::string text = lengths_title(order.order, colour_on("1", colour), colour_off(colour), w) + "\n" + wrapped(" ", shaft_for(say(order.shaft_title, w), order.machine, w));
    text += length_line(shortest_name(w), order.extremes.shortest, Rounded::shortest, w);
    for (const Range range : all_ranges) text += length_line(longest_name(range, w), order.extremes.longest[range], Rounded::longest, w);
    for (const End end : both_ends)
        for (const Range range : all_ranges) text += angle_line(order, end, range, w);
    for (const std::string& note : say_all(order.machine_notes, w)) text += wrapped(padded(say(LineName::note, w), name_columns), note);
    return text;
}

}  // namespace shaftcut
