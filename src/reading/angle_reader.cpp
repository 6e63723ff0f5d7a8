#include "angle_reader.hpp"

#include "xml/each_once.hpp"

namespace shaftcut {
namespace {

constexpr Angle right_angle = Angle::degrees(90);

// Seen from the side or from above a joint that folds by a right angle has no angle that says by how much.
std::optional<Angle> read_view(const Attribute& attribute)
{
    const auto angle = attribute.angle();
    if (!angle || *angle < right_angle) return angle;
    attribute.fault(WrongValue{Unfit::view_angle, {attribute.called(), attribute.value()}});
    return std::nullopt;
}

struct ViewAttributes {
    Attribute side_view, plan, when;
    bool any() const { return side_view.given() || plan.given() || when.given(); }
};

// Both views or none of them, and a range only with them.
bool are_complete(const ViewAttributes& stated)
{
    for (const Attribute* view : {&stated.side_view, &stated.plan})
        if (!view->given()) view->fault(MissingView{view->called()});
    return stated.side_view.given() && stated.plan.given();
}

std::optional<AngleViews> read_views(const ViewAttributes& stated)
{
    if (!stated.any()) return std::nullopt;
    const auto when = stated.when.word<Range>();
    const auto side_view = read_view(stated.side_view), plan = read_view(stated.plan);
    if (!are_complete(stated) || !side_view || !plan || (stated.when.given() && !when)) return std::nullopt;
    return AngleViews{when.value_or(Range::working), *side_view, *plan};
}

AnglesReading read_angle(Element& element)
{
    AnglesReading reading;
    reading.place = element.place();
    PerEach<Range, bool> given;
    for (const Range range : all_ranges) {
        const Attribute attribute = element.optional(to_word(range));
        given[range] = attribute.given();
        reading.angles[range] = attribute.angle();
    }
    const ViewAttributes stated{element.optional("side-view"), element.optional("plan"), element.optional("when")};
    reading.views = read_views(stated);
    if (!reading.views) return reading;
    const auto [range, side_view, plan] = *reading.views;
    if (given[range]) stated.side_view.fault(AngleAndViews{range});
    reading.angles[range] = angle_from_views(side_view, plan);
    return reading;
}

}  // namespace

PerEach<End, AnglesReading> read_angles(Element& fit)
{
    PerEach<End, AnglesReading> sides;
    EachOnce<End> met;
    fit.each("angle", [&](Element& angle) {
        const auto side = met.take(angle.required("side"), "angle");
        AnglesReading read = read_angle(angle);
        if (side) sides[*side] = std::move(read);
    });
    return sides;
}

}  // namespace shaftcut
