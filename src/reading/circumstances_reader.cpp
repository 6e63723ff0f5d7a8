#include "circumstances_reader.hpp"

#include "limits_reader.hpp"
#include "order_number.hpp"

namespace shaftcut {

namespace {
enum class OtherTractors { none };
enum class Here { yes, no };
}  // namespace
template <> struct Words<OtherTractors> { static constexpr std::array all{"none"}; };
template <> struct Words<Here> { static constexpr std::array all{"yes", "no"}; };

namespace {

void check_other_tractors(const Attribute& none, const Element& element, std::size_t count)
{
    if (none.given() && count > 0) none.fault(Contradiction::other_tractors);
    if (count > most_other_tractors) element.fault(TooMany{ManyOf::other_tractors, most_other_tractors});
}

}  // namespace

Job with_for(Element& element, Job job)
{
    Circumstances& around = job.circumstances;
    job.customer = element.optional("customer").text().value_or("");
    around.phone = element.optional("phone").text().value_or("");
    job.machine = element.optional("machine").text().value_or("");
    around.machine_here = element.optional("machine-here").word<Here>() != Here::no;
    job.tractor = element.optional("tractor").text().value_or("");
    around.hitch = element.optional("hitch").text().value_or("");
    around.power = element.optional("power").power();
    const Attribute none = element.optional("other-tractors");
    around.no_other_tractors = none.word<OtherTractors>().has_value();
    element.each("other-tractor", [&](Element& other) { around.other_tractors.push_back(other.required("name").stated_text().value_or("")); });
    check_other_tractors(none, element, around.other_tractors.size());
    return job;
}

Job with_measured_by(Element& element, Job job)
{
    MeasuredBy& by = job.circumstances.measured_by;
    by.name = element.optional("name").text().value_or("");
    by.date = read_date(element.optional("date"));
    by.with = element.optional("with").text().value_or("");
    return job;
}

Job with_limits(Element& element, Job job)
{
    job.limits = read_limits(element);
    job.circumstances.limits_why = element.optional("why").text().value_or("");
    job.circumstances.limits_by = element.optional("by").text().value_or("");
    return job;
}

}  // namespace shaftcut
