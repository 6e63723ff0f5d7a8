#include "shaftcut/trade/order/work_order.hpp"

#include <algorithm>

#include "advice/advice.hpp"
#include "identify/priors.hpp"
#include "order/instructions.hpp"
#include "shaftcut/trade/checks/confirmation.hpp"
#include "shaftcut/trade/identify/identify.hpp"

namespace shaftcut {
namespace {

// The tractors that the fits name, for a job that names none itself.
std::string tractors_of_fits(const Job& job)
{
    std::string names;
    for (const JobFit& fit : job.fits)
        if (!fit.tractor.empty()) names += (names.empty() ? "" : "; ") + fit.tractor;
    return names;
}

void fill_heading(WorkOrder& order, const Job& job, const Series* series, const Workshop& workshop)
{
    order.order = job.order;
    order.date = job.date;
    order.customer = job.customer;
    order.machine = job.machine;
    order.tractor = job.tractor.empty() ? tractors_of_fits(job) : job.tractor;
    order.circumstances = job.circumstances;
    order.owner = workshop.name;
    order.shaft_title = shaft_title(job.shaft, series);
    order.shaft = job.shaft;
    order.shape = series ? std::optional(series->shape) : job.shaft.shape;
}

// A series lists its closed lengths at its own reference, whichever joints the shaft has.
std::vector<Length> listed_closed(const Series* series, const ShaftReading& reading)
{
    if (!series) return {};
    const Reference reference = series->wide_angle_reference.value_or(usual_reference(series->shape).value_or(Reference::inner_cross));
    const Length beyond = reading.closed_at[reference] - reading.closed_at[Reference::inner_cross];
    std::vector<Length> listed;
    for (const Length length : series->closed_lengths) listed.push_back(length - beyond);
    return listed;
}

Overlaps overlaps_of(const CutPlan& plan, const Fit& fit)
{
    Overlaps overlaps;
    overlaps.closed = plan.overlap_at(plan.closed);
    overlaps.shortest = plan.overlap_at(fit.shortest->value);
    for (const Range range : all_ranges)
        if (fit.longest[range]) overlaps.longest[range] = plan.overlap_at(fit.longest[range]->value);
    return overlaps;
}

CutFigures cut_figures(const WorkOrder& order, const CutPlan& plan)
{
    PerEach<Reference, Length> closed_at;
    closed_at[Reference::inner_cross] = plan.closed;
    closed_at[Reference::outer_cross] = plan.closed + order.reading.shaft.spacing[End::tractor] + order.reading.shaft.spacing[End::implement];
    return {plan, closed_at, overlaps_of(plan, order.fit)};
}

std::optional<Length> overlap_before(const Shaft& shaft)
{
    const auto& inner = shaft.halves[Tube::inner].length;
    const auto& outer = shaft.halves[Tube::outer].length;
    if (!inner || !outer) return std::nullopt;
    return inner->value + outer->value - shaft.closed.value;
}

void judge(WorkOrder& order, const CheckInput& input)
{
    order.checks = run_checks(input);
    if (any_failed(order.checks)) {
        order.verdict = Verdict::refused;
        order.ways_out = ways_out(input, order.checks);
        return;
    }
    order.verdict = nothing_to_cut(*input.plan) ? Verdict::fits : Verdict::cut;
    order.cut = cut_figures(order, *input.plan);
    order.confirm = confirmations(input, order.measuring_plus_minus);
}

// Less than a hundredth, and less than a tenth of what it held before anything was measured, which in a large catalogue is little too (own choice).
double excluded_below(std::size_t series_known) { return std::min(1.0, 10 * identifying::prior_one / static_cast<double>(series_known)); }

// A job whose halves state their own series says itself that it is not whole: then no part of it may be of the shaft's.
bool excludes(const Identification& found, const JobShaft& shaft, std::size_t series_known)
{
    const bool whole = !shaft.halves[Tube::inner].series && !shaft.halves[Tube::outer].series;
    for (const ListedSeries& listed : found.series)
        if (listed.series == shaft.series) return (whole ? listed.percent : listed.percent_any_part) < excluded_below(series_known);
    return shaft.series.has_value();  // what is not listed is less than any of this
}

std::optional<IdentifiedBy> identified_by(const JobShaft& shaft, const Catalogue& catalogue)
{
    if (!shaft.measures || catalogue.series.empty()) return std::nullopt;
    const Identification found = identify(catalogue, *shaft.measures);
    double percent = 0;
    for (const ListedSeries& listed : found.series)
        if (listed.series == found.fits.series) percent = listed.percent;
    return IdentifiedBy{found.verdict, found.fits.series, percent, shaft.series, excludes(found, shaft, catalogue.series.size())};
}

}  // namespace

WorkOrder work_up(const Job& job, const Catalogue& catalogue, const Workshop& workshop, Units units)
{
    const ShaftSeries all_series = series_of(job.shaft, catalogue);
    const Series* series = all_series.shaft;
    const Length measuring = workshop.measuring_plus_minus;
    WorkOrder order;
    order.units = units;
    order.limits = LimitsInForce(job.limits, series ? series->limits : Limits(), workshop.limits);
    order.saw = saw_settings(workshop.saw, units);
    order.measuring_plus_minus = measuring;
    fill_heading(order, job, series, workshop);
    order.reading = read_shaft(job.shaft, all_series, measuring);
    order.listed_closed = listed_closed(series, order.reading);
    for (const JobFit& fit : job.fits)
        order.fits.push_back(read_fit(fit, job.shaft, all_series, order.reading, order.limits, measuring));
    for (const FitReading& fit : order.fits)
        if (fit.geometry) order.machines.push_back(machine_view(fit));
    order.extremes = machine_extremes(order.fits);
    order.fit = deciding_fit(order.fits);
    order.stops = stops_of(order.reading.shaft);
    order.overlap_closed_before = overlap_before(order.reading.shaft);
    const auto plan = plan_cut(order.reading.shaft, order.stops, order.fit.shortest, order.limits.length(Limit::closing_clearance), order.saw);
    judge(order, {job, catalogue, series, order.limits, order.saw, order.reading, order.fits, order.fit, order.stops, plan});
    order.identified = identified_by(job.shaft, catalogue);
    order.notes = notes_for(order);
    order.machine_notes = machine_notes_for(order);
    order.notes.insert(order.notes.end(), order.machine_notes.begin(), order.machine_notes.end());
    order.steps = steps_for(order);
    order.cautions = cautions_for(order);
    return order;
}

}  // namespace shaftcut
