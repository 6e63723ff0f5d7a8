#include "measured_reader.hpp"

#include "measurement_reader.hpp"
#include "order_number.hpp"
#include "xml/each_once.hpp"
#include "xml/element.hpp"

namespace shaftcut {
namespace {

std::string read_order_of(const Attribute& order, const Job* job)
{
    const std::string found = read_order(order);
    if (job && order.given() && order_faults(found).empty() && found != job->order) order.fault(OtherOrder{found, job->order});
    return found;
}

ClosedAfterCut read_closed(Element& closed)
{
    const Attribute length = closed.required("length");
    const auto reference = closed.optional("reference").word<Reference>();
    return {read_measurement(length, closed.optional("plus-minus").plus_minus()).value_or(Measurement{}), reference};
}

void check_guard(const Attribute& attribute, std::optional<Tube> tube, const Job* job)
{
    if (!job || !tube || !attribute.given() || guard_is_used(job->shaft, *tube)) return;
    attribute.fault(UnusedGuard{attribute.called(), *tube, job->shaft.halves[*tube].guard_use});
}

HalfAfterCut read_half(Element& half, std::optional<Tube> tube, const Job* job)
{
    const Attribute length = half.optional("length"), guard = half.optional("guard"), stands_out = half.optional("stands-out");
    const auto plus_minus = half.optional("plus-minus").plus_minus();
    if (guard.given() && stands_out.given()) stands_out.fault(Contradiction::guard_and_stands_out);
    for (const Attribute* of_guard : {&guard, &stands_out}) check_guard(*of_guard, tube, job);
    return {read_measurement(length, plus_minus), read_measurement(guard, plus_minus), read_measurement(stands_out, plus_minus)};
}

MarksAfterCut read_marks(Element& element)
{
    const auto plus_minus = element.optional("plus-minus").plus_minus();
    const auto read = [&](const char* name) { return read_measurement(element.optional(name), plus_minus); };
    MarksAfterCut marks{read("overall-dry"), read("overall"), read("closed"), read("shortest"), {}};
    for (const Range range : {Range::turning, Range::standing}) marks.longest[range] = read(to_word(range));
    return marks;
}

MeasuredAfterCut read_root(Element& element, const Job* job)
{
    MeasuredAfterCut measured;
    measured.units = element.units();
    measured.place = element.place();
    measured.order = read_order_of(element.required("order"), job);
    measured.date = read_date(element.optional("date"));
    measured.by = element.optional("by").text().value_or("");
    element.at_most_one("closed", [&](Element& closed) { measured.closed = read_closed(closed); });
    EachOnce<Tube> tubes;
    element.each("half", [&](Element& half) {
        const auto tube = tubes.take(half.required("tube"), "half");
        const HalfAfterCut read = read_half(half, tube, job);
        if (tube) measured.halves[*tube] = read;
    });
    element.at_most_one("marks", [&](Element& marks) { measured.marks = read_marks(marks); });
    return measured;
}

}  // namespace

Read<MeasuredAfterCut> read_measured(const Source& source, const Job* job)
{
    Read<MeasuredAfterCut> read;
    MeasuredAfterCut measured;
    read.faults = read_document(source, "measured", [&](Element& element) { measured = read_root(element, job); });
    if (read.faults.empty()) read.value = std::move(measured);
    return read;
}

}  // namespace shaftcut
