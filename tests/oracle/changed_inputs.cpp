#include "oracle/changed_inputs.hpp"

#include <algorithm>
#include <random>
#include <utility>

#include "data/bounds.hpp"
#include "oracle/deciding_job_fits.hpp"

namespace shaftcut::test {
namespace {

bool has_machine(const Job& job)
{
    return std::any_of(job.fits.begin(), job.fits.end(), [](const JobFit& fit) { return fit.machine.has_value(); });
}

bool may_be_empty(const BaseJob& base, const std::string& name)
{
    if (has_machine(base.job)) return name != "closed";
    return name != "closed" && name != "shortest" && name != "longest_turning";
}

// What the machine of a job's only fit gives by itself for the shortest or one range's longest.
std::optional<Length> computed(const BaseJob& base, std::optional<Range> range)
{
    const auto& geometry = base.issued.fits[0].geometry;
    if (!geometry) return std::nullopt;
    if (!range) return geometry->lengths.shortest.length;
    const auto& extremes = geometry->lengths.ranges[*range];
    return extremes ? std::optional(extremes->longest.length) : std::nullopt;
}

bool measures_any(const JobFit& fit)
{
    return fit.shortest || std::any_of(all_ranges.begin(), all_ranges.end(), [&](Range range) { return fit.longest[range].has_value(); });
}

// The tolerance of an element holds for all of its lengths, also for one that is added to it.
std::optional<Length> element_tolerance(const JobHalf& half)
{
    for (const auto* one : {&half.length, &half.guard, &half.shoulder, &half.stop_depth, &half.lubrication_hole})
        if (*one) return (*one)->plus_minus;
    return std::nullopt;
}

void set(std::optional<Measurement>& measurement, const std::optional<Length>& length, std::optional<Length> plus_minus)
{
    if (!length) return measurement.reset();
    if (!measurement) measurement = Measurement{{}, plus_minus, {}};
    measurement->length = *length;
}

// A length of the only fit of a job with a machine. What the workbook got from the machine is typed between the inner crosses:
// the changed job says so where it measures nothing else; where it does, only the shortest may be such a length, and is put
// at the job's own reference.
void set_beside_machine(const BaseJob& base, Job& job, std::optional<Range> range, const std::optional<Length>& length)
{
    JobFit& fit = job.fits[0];
    auto& measurement = range ? fit.longest[*range] : fit.shortest;
    const bool issued = (range ? base.job.fits[0].longest[*range] : base.job.fits[0].shortest).has_value();
    if (issued || !length) return set(measurement, length, std::nullopt);
    if (length == computed(base, range)) return measurement.reset();
    const bool beside_others = measures_any(base.job.fits[0]);
    if (!beside_others) fit.reference = Reference::inner_cross;
    set(measurement, range || !beside_others ? *length : *length - in_line(Length(), base.issued.fits[0].reaches), std::nullopt);
}

void set_fit_input(const BaseJob& base, Job& job, std::optional<Range> range, const std::optional<Length>& length)
{
    if (job.fits[0].machine) set_beside_machine(base, job, range, length);
    else set(range ? job.fits[0].longest[*range] : job.fits[0].shortest, length, std::nullopt);
}

void set_input(const BaseJob& base, Job& job, const std::string& name, const std::optional<Length>& length)
{
    if (name == "closed") job.shaft.closed.length = *length;
    if (name == "shortest") set_fit_input(base, job, std::nullopt, length);
    for (const Range range : all_ranges)
        if (name == std::string("longest_") + to_word(range)) set_fit_input(base, job, range, length);
    for (const Tube tube : both_tubes) {
        JobHalf& half = job.shaft.halves[tube];
        const auto plus_minus = element_tolerance(half);
        if (name == std::string(to_word(tube)) + "_half") set(half.length, length, plus_minus);
        if (name == std::string(to_word(tube)) + "_guard_half") set(half.guard, length, plus_minus);
    }
}

std::optional<Length> read_as(const BaseJob& base, const std::string& name, std::optional<Range> range, Length typed)
{
    const Fit fit = worked(base, changed_job(base, {{name, typed}})).fit;
    const auto& length = range ? fit.longest[*range] : fit.shortest;
    return length ? std::optional(length->value) : std::nullopt;
}

// What would have to be typed into a fit's cell to measure what the machine gives by itself; nothing for other cells.
std::optional<Length> as_typed(const BaseJob& base, const std::string& name)
{
    if (base.job.fits.size() > 1) return std::nullopt;
    std::optional<Range> range;
    for (const Range one : all_ranges)
        if (name == std::string("longest_") + to_word(one)) range = one;
    if (!range && name != "shortest") return std::nullopt;
    const auto given = computed(base, range);
    if (!given) return std::nullopt;
    Length low = *given, high = *given + Length::millimetres(500);  // yokes and spacings are less
    while (high - low > Length::micrometres(1)) {
        const Length middle = Length::micrometres((low.um() + high.um()) / 2);
        (read_as(base, name, range, middle) <= given ? low : high) = middle;
    }
    return low;
}

// One word for each thing that must not differ: the verdict, the checks' results, how the closed length agrees.
using Results = std::vector<std::string>;

Results results_of(const BaseJob& base, const Job& job)
{
    const WorkOrder order = worked(base, job);
    Results results{to_word(order.verdict)};
    for (const Check& check : order.checks) results.push_back(std::string(to_word(check.id)) + " " + to_word(check.result));
    results.push_back(order.stops ? std::to_string(static_cast<int>(order.stops->agreement)) : "none");
    for (const char* what : Words<Confirmed>::all) {
        const bool asked = std::any_of(order.confirm.begin(), order.confirm.end(), [&](const Confirmation& one) { return std::string(to_word(one.what)) == what; });
        results.push_back(std::string(what) + (asked ? " asked" : " not asked"));
    }
    return results;
}

// What differs between two, each in words.
std::vector<std::string> changes_between(const Results& before, const Results& after)
{
    std::vector<std::string> changes;
    for (std::size_t i = 0; i < before.size(); ++i)
        if (before[i] != after[i]) changes.push_back(before[i] + " > " + after[i]);
    return changes;
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
    const bool several = job.fits.size() > 1 && !has_machine(job);
    if (several) job.fits = {deciding_job_fit(base.issued)};
    for (const auto& [name, length] : changes) set_input(base, job, name, length);
    if (several && knows_some_as_least(base.issued)) job.fits.push_back(stating_the_rest(base.issued, job.fits[0]));
    return job;
}

Changes issued_lengths(const BaseJob& base)
{
    const Job job = changed_job(base, {});
    Changes issued{{"closed", job.shaft.closed.length}};
    const auto add = [&](const std::string& name, const std::optional<Measurement>& measurement) {
        issued[name] = measurement ? std::optional(measurement->length) : std::nullopt;
    };
    for (const Tube tube : both_tubes) {
        add(std::string(to_word(tube)) + "_half", job.shaft.halves[tube].length);
        if (job.shaft.halves[tube].guard_use == GuardUse::kept) add(std::string(to_word(tube)) + "_guard_half", job.shaft.halves[tube].guard);
    }
    if (job.fits.size() > 1 && has_machine(job)) return issued;
    const auto add_fit = [&](const std::string& name, std::optional<Range> range, const std::optional<Measurement>& measurement) {
        add(name, measurement);
        if (!measurement && job.fits[0].machine) issued[name] = computed(base, range);
    };
    add_fit("shortest", std::nullopt, job.fits[0].shortest);
    for (const Range range : all_ranges) add_fit(std::string("longest_") + to_word(range), range, job.fits[0].longest[range]);
    return issued;
}

bool ChangeSearch::is_new(const std::vector<std::string>& changes, const std::string& kind, int most)
{
    bool found = false;
    for (const std::string& change : changes) found = ++seen_[kind + change] <= most || found;
    return found;
}

std::vector<Changes> ChangeSearch::around_limits_of(const BaseJob& base, const std::string& name, const Around& around)
{
    std::vector<Changes> all;
    const Length least = std::max(Length(), around.middle - around.span);
    Results at_low, at_high = results_at(base, name, least);
    for (Length low = least; low < around.middle + around.span; low += around.step) {
        const Length high = low + around.step;
        at_low = std::exchange(at_high, results_at(base, name, high));
        if (at_low == at_high) continue;
        const Length last = last_before_change(base, name, low, high);
        if (!is_new(changes_between(results_at(base, name, last), results_at(base, name, last + Length::micrometres(1))), around.kind + name + " ", around.most_inputs)) continue;
        for (const int off : {-10, -9, 0, 1, 10, 11}) {
            const Length length = last + Length::micrometres(off);
            if (length >= Length()) all.push_back({{name, length}});
        }
    }
    return all;
}

namespace {

// Jobs of which an input is bounded alike, with the same other contradictions beside it.
std::string sort_of(const BaseJob& base, const std::optional<Length>& issued)
{
    const bool stands = base.issued.fit.longest[Range::standing].has_value();
    return std::string(issued ? "" : " left out") + (base.issued.reading.has_wide_angle ? " wide-angle" : "") + (stands ? "" : " no standing");
}

// About the ends of what the input may be, and the length as if its unit were the other one.
std::vector<Changes> about_bounds(const BaseJob& base, const std::string& name, const std::optional<Length>& issued)
{
    const bool half = name.ends_with("half");
    const Bounds& bounds = !half ? telescoping_bounds : name.ends_with("guard_half") ? guard_half_bounds : half_bounds;
    std::vector<Changes> all;
    for (const Length end : {bounds.least, bounds.greatest})
        for (const int off : {-1, 0, 1}) {
            const Length beyond = name == "closed" ? base.issued.reading.closed.value - base.issued.reading.shaft.closed.value : Length();
            all.push_back({{name, end + beyond + Length::micrometres(off)}});
        }
    if (!issued) return all;
    for (const std::int64_t slipped : {issued->um() * 254 / 10, issued->um() * 10 / 254})
        if (slipped <= Length::millimetres(100'000).um()) all.push_back({{name, Length::micrometres(slipped)}});  // the most that a file may state
    return all;
}

}  // namespace

std::vector<Changes> ChangeSearch::around_limits(const BaseJob& base)
{
    std::vector<Changes> all;
    const auto add = [&](std::vector<Changes> more) { all.insert(all.end(), more.begin(), more.end()); };
    const bool inches = base.job.units == Units::in, machine = has_machine(base.job);
    for (const auto& [name, length] : issued_lengths(base)) {
        // A machine takes time, so fewer jobs are worked up, and more of them about what it gives by itself.
        const Length step = Length::micrometres(machine ? 60'000 : 7'300);
        add(around_limits_of(base, name, {length.value_or(Length::millimetres(650)), Length::millimetres(600), step, (inches ? "in " : "") + (base.by_itself ? base.name : ""), inches ? 1 : 2}));
        if (const auto given = as_typed(base, name))
            add(around_limits_of(base, name, {*given, Length::millimetres(6), Length::millimetres(1), base.name + " " + name + " ", 1}));
        if (!machine && is_new({"bounds"}, (inches ? "in " : "") + name + sort_of(base, length), 1)) add(about_bounds(base, name, length));
        if (length && may_be_empty(base, name)) all.push_back({{name, std::nullopt}});
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
            if (may_be_empty(base, name) && below(12) == 0) {
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
