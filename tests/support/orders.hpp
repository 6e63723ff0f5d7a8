// Orders for tests, built in code: the series of jobs.hpp, whose guards have their figures too.
#pragma once

#include "build/build_words.hpp"
#include "support/jobs.hpp"

namespace shaftcut::test {

// Every part by what it is; profiles as if they had no name.
inline void name_parts(Series& series)
{
    for (Cross& cross : series.crosses) cross.part = "cross";
    if (series.wide_angle && series.wide_angle->crosses.empty()) series.wide_angle->crosses.push_back({mm(22), mm(54), {}});
    if (series.wide_angle)
        for (Cross& cross : series.wide_angle->crosses) cross.part = "cross of the wide-angle joint";
    for (const Tube tube : both_tubes) {
        series.parts.push_back({PartKind::tube, series.name + " " + to_word(tube) + " tube", 1, tube});
        series.parts.push_back({PartKind::guard_tube, series.name + " " + to_word(tube) + " guard tube", 1, tube});
    }
    for (const PartKind kind : {PartKind::tube_yoke, PartKind::pin, PartKind::double_yoke, PartKind::connection_yoke, PartKind::guard_bearing, PartKind::chain, PartKind::label, PartKind::book})
        series.parts.push_back({kind, to_word(kind), 1});
    CataloguePart device{PartKind::device, "device", 1};
    device.replaces = Replaces::nothing;
    series.parts.push_back(device);
}

inline Catalogue build_catalogue()
{
    Catalogue found = catalogue();
    auto& halves = found.series[0].halves;
    halves[Tube::inner].guard_shoulder = mm(122);
    halves[Tube::inner].guard_seat = mm(46);
    halves[Tube::inner].guard_seat_wide_angle = mm(74);
    halves[Tube::outer].guard_shoulder = mm(100);
    halves[Tube::outer].guard_seat = mm(44);
    halves[Tube::outer].guard_seat_wide_angle = mm(72);
    name_parts(found.series[0]);
    return found;
}

// The shaft of job() as an order: a wide-angle joint at the tractor, made to reach from 742 to 850 mm turning.
inline BuildOrder build_order()
{
    const Job from = job();
    BuildOrder order;
    order.order = "B-2001";
    order.shaft = from.shaft;
    order.shaft.halves = {};
    order.shaft.closed = {};
    order.fits = from.fits;
    order.place = {"orders.csv", 2, 1};
    return order;
}

inline BuildOrder closed_order(double closed, Reference reference = Reference::outer_cross)
{
    BuildOrder order = build_order();
    order.fits.clear();
    order.closed = Measurement{mm(closed), std::nullopt, {"orders.csv", 2, 20}};
    order.shaft.closed_reference = reference;
    return order;
}

inline BuildPlan planned(const BuildOrder& order, Units units = Units::mm) { return plan_build(order, build_catalogue(), workshop(), units); }

inline BuildPlan planned_with(const BuildOrder& order, const Catalogue& catalogue) { return plan_build(order, catalogue, workshop(), Units::mm); }

inline const Check& check(const BuildPlan& plan, CheckId id) { return check_of(plan.checks, id); }

// A fit between the inner crosses, in mm, its longest with the PTO turning.
inline JobFit reaching(double shortest, double longest)
{
    JobFit fit;
    fit.reference = Reference::inner_cross;
    fit.shortest = measured(shortest);
    fit.longest[Range::turning] = measured(longest);
    return fit;
}

// The job that somebody would write who measured the shaft of this plan, for the same fits.
inline Job measured_as_built(const BuildPlan& plan, const std::vector<JobFit>& fits)
{
    Job found;
    found.order = plan.order;
    found.shaft = plan.built->shaft;
    found.shaft.built = 2026;
    found.fits = fits;
    return found;
}

}  // namespace shaftcut::test
