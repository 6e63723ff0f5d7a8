#include "changed_inputs.hpp"

#include <random>

namespace shaftcut::test {
namespace {

bool may_be_empty(const std::string& name) { return name != "closed" && name != "shortest" && name != "longest_turning"; }

// The tolerance of an element holds for all of its lengths, also for one that is added to it.
std::optional<Length> element_tolerance(const JobHalf& half)
{
    for (const auto* one : {&half.length, &half.guard, &half.shoulder, &half.lubrication_hole})
        if (*one) return (*one)->plus_minus;
    return std::nullopt;
}

void set(std::optional<Measurement>& measurement, const std::optional<Length>& length, std::optional<Length> plus_minus)
{
    if (!length) return measurement.reset();
    if (!measurement) measurement = Measurement{{}, plus_minus, {}};
    measurement->length = *length;
}

void set_input(Job& job, const std::string& name, const std::optional<Length>& length)
{
    if (name == "closed") job.shaft.closed.length = *length;
    if (name == "shortest") job.fits[0].shortest->length = *length;
    for (const Range range : all_ranges)
        if (name == std::string("longest_") + to_word(range)) set(job.fits[0].longest[range], length, std::nullopt);
    for (const Tube tube : both_tubes) {
        JobHalf& half = job.shaft.halves[tube];
        const auto plus_minus = element_tolerance(half);
        if (name == std::string(to_word(tube)) + "_half") set(half.length, length, plus_minus);
        if (name == std::string(to_word(tube)) + "_guard_half") set(half.guard, length, plus_minus);
    }
}

JobFit deciding_job_fit(const WorkOrder& order)
{
    JobFit fit;
    fit.reference = Reference::inner_cross;
    if (order.fit.shortest) fit.shortest = {order.fit.shortest->value, order.fit.shortest->plus_minus, {}};
    for (const Range range : all_ranges)
        if (const auto& longest = order.fit.longest[range]) fit.longest[range] = Measurement{longest->value, longest->plus_minus, {}};
    fit.angles = order.fit.angles;
    return fit;
}

// One word for each thing that must not differ: the verdict, the checks' results, how the closed length agrees.
using Results = std::vector<std::string>;

Results results_of(const BaseJob& base, const Job& job)
{
    const WorkOrder order = worked(base, job);
    Results results{to_word(order.verdict)};
    for (const Check& check : order.checks) results.push_back(std::string(to_word(check.id)) + " " + to_word(check.result));
    results.push_back(order.stops ? std::to_string(static_cast<int>(order.stops->agreement)) : "none");
    return results;
}

// What differs between two, in words.
std::string change_between(const Results& before, const Results& after)
{
    std::string change;
    for (std::size_t i = 0; i < before.size(); ++i)
        if (before[i] != after[i]) change += before[i] + " > " + after[i] + "; ";
    return change;
}

Results results_at(const BaseJob& base, const std::string& name, Length length)
{
    return results_of(base, changed_job(base, {{name, length}}));
}

// The last micrometre in [low, high) with the results that hold at `low`.
Length last_before_change(const BaseJob& base, const std::string& name, Length low, Length high)
{
    const Results before = results_at(base, name, low);
    while (high - low > Length::micrometres(1)) {
        const Length middle = Length::micrometres(low.um() + (high.um() - low.um()) / 2);
        (results_at(base, name, middle) == before ? low : high) = middle;
    }
    return low;
}

}  // namespace

Job changed_job(const BaseJob& base, const Changes& changes)
{
    Job job = base.job;
    if (job.fits.size() > 1) job.fits = {deciding_job_fit(worked(base, base.job))};
    for (const auto& [name, length] : changes) set_input(job, name, length);
    return job;
}

Changes issued_lengths(const BaseJob& base)
{
    const Job job = changed_job(base, {});
    Changes issued{{"closed", job.shaft.closed.length}, {"shortest", job.fits[0].shortest->length}};
    const auto add = [&](const std::string& name, const std::optional<Measurement>& measurement) {
        issued[name] = measurement ? std::optional(measurement->length) : std::nullopt;
    };
    for (const Range range : all_ranges) add(std::string("longest_") + to_word(range), job.fits[0].longest[range]);
    for (const Tube tube : both_tubes) {
        add(std::string(to_word(tube)) + "_half", job.shaft.halves[tube].length);
        add(std::string(to_word(tube)) + "_guard_half", job.shaft.halves[tube].guard);
    }
    return issued;
}

std::vector<Changes> ChangeSearch::around_limits_of(const BaseJob& base, const std::string& name, Length issued)
{
    constexpr std::int64_t step = 7'300, span = 600'000;
    constexpr int most_inputs = 2;
    std::vector<Changes> all;
    const Length least = Length::micrometres(std::max<std::int64_t>(0, issued.um() - span));
    for (Length low = least; low < issued + Length::micrometres(span); low += Length::micrometres(step)) {
        const Length high = low + Length::micrometres(step);
        if (results_at(base, name, low) == results_at(base, name, high)) continue;
        const Length last = last_before_change(base, name, low, high);
        const std::string change = change_between(results_at(base, name, last), results_at(base, name, last + Length::micrometres(1)));
        const bool inches = base.job.units == Units::in;
        if (++seen_[inches ? "in " + change : change] > (inches ? 1 : most_inputs)) continue;
        for (const int off : {-10, -9, 0, 1, 10, 11}) {
            const Length length = last + Length::micrometres(off);
            if (length >= Length()) all.push_back({{name, length}});
        }
    }
    return all;
}

std::vector<Changes> ChangeSearch::around_limits(const BaseJob& base)
{
    std::vector<Changes> all;
    for (const auto& [name, length] : issued_lengths(base)) {
        for (Changes& changes : around_limits_of(base, name, length.value_or(Length::millimetres(650)))) all.push_back(std::move(changes));
        if (length && may_be_empty(name)) all.push_back({{name, std::nullopt}});
        if (!length) all.push_back({{name, Length::millimetres(650)}});
        if (!length || *length < Length::millimetres(1)) continue;
        for (const int off : {-10, -9, 9, 10}) all.push_back({{name, *length + Length::micrometres(off)}});
    }
    return all;
}

std::vector<Changes> ChangeSearch::at_random(const BaseJob& base, int count)
{
    std::vector<Changes> all;
    std::mt19937 numbers(20261124);  // the engine's sequence is fixed by the language; distributions are not, so none is used
    const auto below = [&](std::uint32_t most) { return static_cast<std::int64_t>(numbers() % most); };
    for (int i = 0; i < count; ++i) {
        Changes changes;
        for (const auto& [name, length] : issued_lengths(base)) {
            if (may_be_empty(name) && below(12) == 0) {
                changes[name] = std::nullopt;
                continue;
            }
            const std::int64_t around = length ? length->um() : 650'000;
            const std::int64_t unit = i % 2 == 0 ? 1 : 1000;
            changes[name] = Length::micrometres(std::max<std::int64_t>(0, around - 60'000 + below(static_cast<std::uint32_t>(120'000 / unit)) * unit));
        }
        all.push_back(changes);
    }
    return all;
}

}  // namespace shaftcut::test
