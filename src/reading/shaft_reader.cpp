#include "shaft_reader.hpp"

#include <algorithm>

#include "condition_reader.hpp"
#include "end_figures.hpp"
#include "half_reader.hpp"
#include "hitch/hitch_shaft.hpp"
#include "measurement_reader.hpp"
#include "measures_reader.hpp"
#include "shaft_ends_reader.hpp"
#include "shaftcut/trade/data/build_order.hpp"
#include "xml/each_once.hpp"

namespace shaftcut {

namespace {

constexpr int first_year = 1950;
constexpr int last_year = 2100;

bool has_wide_angle(const PerEach<End, JobEnd>& ends)
{
    return std::any_of(both_ends.begin(), both_ends.end(), [&](End end) { return ends[end].joint == JointKind::wide_angle; });
}

class ShaftReader {
public:
    ShaftReader(Element& element, const Catalogue& catalogue)
        : element_(element), catalogue_(catalogue), connections_(names_in(catalogue.connections, NamesOf::the_catalogue)),
          series_(element.optional("series")), shape_(element.optional("shape")), spacing_(element.optional("spacing")) {}

    JobShaft read();

private:
    void read_attributes();
    void read_closed(Element& closed);
    void read_halves();
    void read_condition_of_shaft();
    void check_series() const;
    void check_reference_of(const Series& series) const;
    void check_without_series() const;
    void check_half_series() const;
    void check_figures_of(End end, const EndPlaces& places) const;
    void check_spacing_of(End end, const EndPlaces& places) const;

    Element& element_;
    const Catalogue& catalogue_;
    KnownNames connections_;
    Attribute series_, shape_, spacing_;
    std::optional<Attribute> reference_;  // of the closed length
    EndsReading ends_;
    PerEach<Tube, std::optional<HalfReading>> halves_;
    bool halves_placed_ = true;           // it is known which half is at which end
    JobShaft shaft_;
};

void ShaftReader::read_attributes()
{
    shaft_.place = element_.place();
    shaft_.number = element_.optional("number").name().value_or("");
    shaft_.series = series_.one_of(names_in(catalogue_.series, NamesOf::the_catalogue));
    shaft_.shape = shape_.word<Shape>();
    shaft_.spacing = spacing_.positive_length();
    shaft_.role = element_.required("role").word<Role>().value_or(Role::primary);
    shaft_.speed = element_.optional("speed").whole(1, most_speed);
    const auto inner_tube = element_.required("inner-tube").word<End>();
    halves_placed_ = inner_tube.has_value();
    shaft_.inner_tube = inner_tube.value_or(End::implement);
    shaft_.built = element_.optional("built").whole(first_year, last_year);
}

void ShaftReader::read_closed(Element& closed)
{
    const Attribute length = closed.required("length");
    reference_ = closed.optional("reference");
    shaft_.closed_reference = reference_->word<Reference>();
    shaft_.closed = read_measurement(length, closed.optional("plus-minus").plus_minus()).value_or(Measurement{});
}

void ShaftReader::read_halves()
{
    EachOnce<Tube> tubes;
    const KnownNames series = names_in(catalogue_.series, NamesOf::the_catalogue);
    element_.each("half", [&](Element& half) {
        const auto tube = tubes.take(half.required("tube"), "half");
        HalfReading read = read_half(half, series);
        halves_placed_ = halves_placed_ && tube;
        if (!tube) return;
        shaft_.halves[*tube] = read.half;
        halves_[*tube] = std::move(read);
    });
}

void ShaftReader::read_condition_of_shaft()
{
    element_.at_most_one("condition", [this](Element& condition) {
        const ConditionReading reading = read_condition(condition);
        check_guards(reading, shaft_.halves);
        shaft_.condition = reading.condition;
    });
}

void ShaftReader::check_reference_of(const Series& series) const
{
    if (lacks_reference(series, shaft_) && reference_ && !reference_->given())
        reference_->fault(NoReference{ReferenceOf::closed_measured, series.name});
}

void ShaftReader::check_series() const
{
    for (const Attribute* beside : {&shape_, &spacing_})
        if (beside->given()) beside->fault(BesideSeries{beside->called()});
    if (!shaft_.series) return;
    check_half_series();
    check_reference_of(*find_series(catalogue_, *shaft_.series));
}

void ShaftReader::check_half_series() const
{
    for (const Tube tube : both_tubes)
        if (const auto& other = shaft_.halves[tube].series; other && other->name == shaft_.series)
            halves_[tube]->series.fault(OwnSeries{tube, *shaft_.series});
}

void ShaftReader::check_without_series() const
{
    if (!shape_.given()) element_.fault(Contradiction::neither_series_nor_shape);
    if (has_wide_angle(ends_.ends) && reference_ && !reference_->given())
        reference_->fault(NoReference{ReferenceOf::closed_measured});
}

// What an end states and its series states too, or nobody asks for; and what it lacks.
void ShaftReader::check_figures_of(End end, const EndPlaces& places) const
{
    const bool own = has_own_figures(shaft_, end);
    for (const Attribute* figure : {&*places.spacing, &*places.cross_to_groove})
        if (figure->given() && !own)
            figure->fault(BesideSeries{figure->called(), *shaft_.series});
    check_spacing_of(end, places);
}

void ShaftReader::check_spacing_of(End end, const EndPlaces& places) const
{
    const bool stated = places.spacing->given();
    if (stated && spacing_.given() && !series_.given()) places.spacing->fault(Contradiction::two_spacings);
    if (shaft_.ends[end].joint == JointKind::standard) {
        if (stated) places.spacing->fault(Contradiction::spacing_of_standard_joint);
        return;
    }
    const ShaftSeries known = series_of(shaft_, catalogue_);
    if (stated || spacings(shaft_, known)[end] != Length() || spacing_.given()) return;
    if (const Series* series = series_at(known, shaft_, end)) check_joint_of(*series, shaft_.ends[end], places);
    else places.joint.fault(NoSpacing{end});
}

JobShaft ShaftReader::read()
{
    read_attributes();
    element_.one("closed", [this](Element& closed) { read_closed(closed); });
    ends_ = read_ends(element_, connections_, EndFigures::may_be_own);
    shaft_.ends = ends_.ends;
    read_halves();
    read_condition_of_shaft();
    element_.at_most_one("measures", [this](Element& measures) { shaft_.measures = read_measures_of_job(measures); });
    if (series_.given()) check_series();
    else check_without_series();
    if ((series_.given() && !shaft_.series) || !halves_placed_) return std::move(shaft_);
    for (const End end : both_ends) {
        const auto& half = halves_[tube_on(shaft_, end)];
        if (ends_.places[end] && (!half || half->sound)) check_figures_of(end, *ends_.places[end]);
    }
    return std::move(shaft_);
}

}  // namespace

JobShaft read_shaft(Element& element, const Catalogue& catalogue)
{
    return ShaftReader(element, catalogue).read();
}

}  // namespace shaftcut
