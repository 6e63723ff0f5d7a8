#include "shaftcut/trade/build/operations.hpp"

#include <algorithm>

#include "shaftcut/trade/build/build_plan.hpp"
#include "shaftcut/trade/saw/saw_order.hpp"
#include "text.hpp"

namespace shaftcut {
namespace {

// Sawn lengths are exact; all others are rounded to what a tape measure shows.
std::string sawn_text(const BuildPlan& plan, Length length) { return saw_figure_with_unit(length, plan.units); }

std::string length_text(const BuildPlan& plan, Length length, Toward toward = Toward::nearest) { return figure_with_millimetres(length, plan.units, toward); }

std::string from_text(const BuildPlan& plan, Reference reference)
{
    if (!plan.has_wide_angle) return "cross to cross";
    return reference == Reference::outer_cross ? "from the outer cross of the wide-angle joint" : "from the inner cross of the wide-angle joint";
}

const char* name_of(PartKind kind) { return kind == PartKind::tube ? " tube" : " guard tube"; }

void add_sawing(std::vector<Operation>& operations, const BuildPlan& plan)
{
    std::vector<std::string> pieces;
    std::string fetched;
    const auto add = [&](Tube tube, PartKind kind, Length length) {
        const std::string piece = "the " + (to_word(tube) + std::string(name_of(kind))) + " to " + sawn_text(plan, length);
        if (kind == PartKind::tube && !plan.built->sawn[tube]) fetched += " Fetch the " + std::string(to_word(tube)) + " tube made to " + sawn_text(plan, length) + "; do not saw it.";
        else pieces.push_back(piece);
    };
    const BuiltLengths& lengths = plan.built->lengths;
    for (const Tube tube : both_tubes) add(tube, PartKind::tube, lengths.blank[tube]);
    for (const Tube tube : both_tubes)
        if (lengths.guard_blank[tube]) add(tube, PartKind::guard_tube, *lengths.guard_blank[tube]);
    std::string does;
    if (!pieces.empty()) does = "Saw " + listed(pieces, "and") + ", each ± " + figure_with_unit(plan.saw.plus_minus, Units::mm) + ".";
    if (does.empty()) fetched.erase(0, 1);
    operations.push_back({Work::saw, does + fetched});
}

void add_drilling(std::vector<Operation>& operations, const BuildPlan& plan)
{
    std::vector<std::string> holes;
    for (const Tube tube : both_tubes)
        if (const auto& hole = plan.built->lengths.pin_hole[tube]) holes.push_back(hole_text(*hole, plan.units) + " from the " + to_word(tube) + " tube's yoke end");
    if (holes.size() == both_tubes.size()) operations.push_back({Work::drill, "Drill the pin holes, centre at " + listed(holes, "and at") + "."});
    else if (holes.empty()) operations.push_back({Work::drill, "Drill the pin holes through the yokes' own holes, tubes driven fully home: the catalogue does not state where they are."});
    else operations.push_back({Work::drill, "Drill the pin hole, centre at " + holes.front() + "; the other tube's through its yoke's own hole, driven fully home: the catalogue does not state where it is."});
}

void add_yokes(std::vector<Operation>& operations, const BuildPlan& plan)
{
    const auto end_of_tube = [&](Tube tube) { return std::string(to_word(end_of(plan.ordered, tube))); };
    operations.push_back({Work::yoke, "Drive the tube yokes fully home: the inner tube's for the " + end_of_tube(Tube::inner) + " end, the outer tube's for the " +
                                          end_of_tube(Tube::outer) + " end. Drive the pins flush."});
    for (const End end : both_ends) {
        const JobEnd& of = plan.ordered.ends[end];
        const std::string at = "At the " + std::string(to_word(end)) + " end ";
        const std::string yoke = of.connection ? "the " + *of.connection + " yoke" : std::string("the connection yoke");
        operations.push_back({Work::cross, of.joint == JointKind::standard
                                               ? at + "fit the cross with its four caps and rings between the tube yoke and " + yoke + "."
                                               : at + "fit the inner cross between the tube yoke and the double yoke, the outer cross between that and " + yoke + ", each with its four caps and rings."});
        if (of.device && *of.device != Device::none)
            operations.push_back({Work::device, at + "fit the " + to_word(*of.device) + " the way round marked on it."});
    }
}

const char* phase_words(Shape shape)
{
    switch (shape) {
    case Shape::lemon: return "Lemon tubes go together in two ways, and both are in phase.";
    case Shape::triangular: return "Triangular tubes go together in three ways, of which one is in phase.";
    case Shape::square: return "Square tubes go together in four ways, of which two are in phase.";
    default: return "Tubes of this shape can be put together out of phase.";
    }
}

void add_grease(std::vector<Operation>& operations)
{
    operations.push_back({Work::grease, "Grease each cross until all four caps show it; grease the inner tube."});
}

// The forks are seen best without the guard, and a guard half goes on from the free end: so the halves are parted once more.
void add_joining(std::vector<Operation>& operations, const BuildPlan& plan)
{
    operations.push_back({Work::phase, std::string("Put the halves together in phase: both tube yokes' forks in one plane. ") + phase_words(plan.shape) + " Mark both tubes" +
                                           (plan.guard ? ", and part them again." : ".")});
    if (!plan.guard) return;
    std::vector<std::string> setbacks;
    for (const Tube tube : both_tubes)
        setbacks.push_back("the " + std::string(to_word(tube)) + " one " + length_text(plan, plan.built->lengths.half[tube] - *plan.built->lengths.guard_half[tube]));
    operations.push_back({Work::bearing, "Set a greased guard bearing into each tube yoke's groove."});
    operations.push_back({Work::guard, "Push each guard tube over its half on to the bearing; it ends short of its drive tube: " + listed(setbacks, "and") + "."});
    operations.push_back({Work::phase, "Put the halves together, guard in guard: the marks meet."});
    operations.push_back({Work::chain, "Hook a chain to each guard half; never hang the shaft by it."});
}

void add_label(std::vector<Operation>& operations, const BuildPlan& plan)
{
    std::string does = "Stick the safety label on" + std::string(plan.guard ? " the guard" : "") + ", to be read from the tractor. Write on it: order " + plan.order + ", closed " +
                       length_text(plan, plan.built->closed_at[plan.reference]) + " " + from_text(plan, plan.reference);
    const auto& longest = plan.built->use.longest[Range::turning];
    if (plan.ordered_closed && longest) does += "; turning, pull to " + length_text(plan, (*longest)[plan.reference], Toward::down) + " at most, measured the same way";
    operations.push_back({Work::label, does + "."});
}

std::optional<Length> telescoping_to_try(const BuildPlan& plan)
{
    std::optional<Length> longest;
    for (const Range range : all_ranges)
        if (const auto& of = plan.fit.longest[range]) longest = std::max(longest, std::optional(of->value));
    if (longest) return longest;
    for (const Range range : all_ranges)
        if (const auto& of = plan.built->use.longest[range]) longest = std::max(longest, std::optional((*of)[Reference::inner_cross]));
    return longest;
}

Length beyond_inner_crosses(const BuildPlan& plan) { return plan.built->closed_at[plan.reference] - plan.built->lengths.closed; }

void add_checks(std::vector<Operation>& operations, const BuildPlan& plan)
{
    const BuiltShaft& built = *plan.built;
    operations.push_back({Work::check, "Push fully together and measure " + from_text(plan, plan.reference) + ", joints straight: " + length_text(plan, built.closed_at[plan.reference]) +
                                           " ± " + figure_with_unit(plan.saw.plus_minus, Units::mm) + "."});
    if (const auto longest = telescoping_to_try(plan)) {
        const Length left = built.lengths.half[Tube::inner] + built.lengths.half[Tube::outer] - *longest;
        operations.push_back({Work::check, "Pull out to " + length_text(plan, *longest + beyond_inner_crosses(plan)) + " in the same way: it slides freely, " +
                                               length_text(plan, left, Toward::down) + " of overlap left."});
    }
    operations.push_back({Work::check, plan.guard ? "Turn by hand: no joint binds, each guard half turns freely." : "Turn by hand: no joint binds."});
}

}  // namespace

std::optional<Length> longest_to_try(const BuildPlan& plan)
{
    const auto longest = telescoping_to_try(plan);
    return longest ? std::optional(*longest + beyond_inner_crosses(plan)) : std::nullopt;
}

std::string hole_text(Length length, Units units)
{
    constexpr std::int64_t um_of_an_inch = 25'400;
    std::string millimetres = figure_with_unit(length, Units::mm, Toward::nearest, 3);
    if (units == Units::mm) return millimetres;
    const std::int64_t thousandths = (1000 * length.um() + um_of_an_inch / 2) / um_of_an_inch;
    return millimetres + " (" + figure(Length::micrometres(thousandths), Units::mm, Toward::nearest, 3) + " in)";
}

std::vector<Operation> operations_of(const BuildPlan& plan)
{
    std::vector<Operation> operations;
    add_sawing(operations, plan);
    operations.push_back({Work::deburr, "Deburr every end inside and out; clear the swarf."});
    add_drilling(operations, plan);
    add_yokes(operations, plan);
    add_grease(operations);
    add_joining(operations, plan);
    add_label(operations, plan);
    add_checks(operations, plan);
    return operations;
}

}  // namespace shaftcut
