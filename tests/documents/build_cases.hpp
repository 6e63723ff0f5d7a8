// The shafts made to order whose papers the tests make: ordinary ones, and those that are hardest to fit on paper.
#pragma once

#include <string>
#include <vector>

#include "build/build_words.hpp"
#include "support/jobs.hpp"
#include "support/saw/linear_programme.hpp"

// Not in `test` itself: other tests make other orders under the same names.
namespace shaftcut::test::papers {

struct BuildCase {
    std::string name;
    BuildOrder order;
    Units units = Units::mm;
    std::size_t most_sheets = 2;
};

// The catalogue of the jobs, with what building needs: guards, pin holes, masses and the names of parts.
inline Catalogue build_catalogue()
{
    Catalogue found = catalogue();
    Series& series = found.series.front();
    for (const Tube tube : both_tubes) {
        SeriesHalf& half = series.halves[tube];
        half.guard_shoulder = *half.shoulder - mm(6);
        half.guard_seat = mm(45);
        half.guard_seat_wide_angle = mm(73);
        half.pin_hole = *half.seat + mm(18);
        half.mass_per_metre = tube == Tube::inner ? 3320 : 3770;
    }
    for (Cross& cross : series.crosses) cross.part = "cross 22 x 54";
    for (Cross& cross : series.wide_angle->crosses) cross.part = cross.cap == mm(22) ? "cross 22 x 54" : "cross 27 x 70";
    series.yokes.push_back({"1-3/8-21", std::nullopt, mm(60)});
    series.parts = {{PartKind::tube, "lemon tube 43 x 3.4", 1, Tube::inner},
                    {PartKind::tube, "lemon tube 51 x 3.2", 1, Tube::outer},
                    {PartKind::tube_yoke, "tube yoke lemon 43", 1, Tube::inner},
                    {PartKind::tube_yoke, "tube yoke lemon 51", 1, Tube::outer},
                    {PartKind::pin, "spring pin 10 x 60", 1},
                    {PartKind::double_yoke, "double yoke 64", 1},
                    {PartKind::connection_yoke, "yoke with clamp bolt", 1, std::nullopt, std::nullopt, std::nullopt, Lock::clamp_bolt},
                    {PartKind::connection_yoke, "yoke with shrouded push pin", 1, std::nullopt, std::nullopt, std::nullopt, Lock::shrouded_push_pin},
                    {PartKind::guard_tube, "guard tube 80", 1, Tube::inner},
                    {PartKind::guard_tube, "guard tube 90", 1, Tube::outer},
                    {PartKind::guard_bearing, "guard bearing 54", 1},
                    {PartKind::chain, "restraint chain 500", 1},
                    {PartKind::label, "safety label", 1},
                    {PartKind::book, "instruction book", 1},
                    {PartKind::device, "slip clutch, four plates", 1, {}, {}, {}, {}, Device::slip_clutch, Replaces::nothing}};
    return found;
}

inline Workshop build_workshop()
{
    Workshop found = workshop();
    found.name = "Demonstration workshop (invented)";
    return found;
}

// To a fit, a wide-angle joint at the tractor.
inline BuildOrder build_order(const std::string& number)
{
    const Job from = job();
    BuildOrder order;
    order.order = number;
    order.customer = "Demonstration farm (invented)";
    order.machine = "mounted mower (invented)";
    order.due = "2026-12-04";
    order.shaft = from.shaft;
    for (const Tube tube : both_tubes) order.shaft.halves[tube] = {};
    order.fits = from.fits;
    order.place = {"orders.csv", 2, 1};
    return order;
}

inline BuildOrder closed_order(const std::string& number, double closed)
{
    BuildOrder order = build_order(number);
    order.fits.clear();
    order.closed = measured(closed);
    return order;
}

inline BuildPlan planned(const BuildOrder& order, Units units = Units::mm) { return plan_build(order, build_catalogue(), build_workshop(), units); }
inline BuildPlan planned(const BuildCase& one) { return planned(one.order, one.units); }

inline std::vector<BuildCase> make_build_cases()
{
    std::vector<BuildCase> cases;
    const auto add = [&](const std::string& name, BuildOrder order, Units units = Units::mm, std::size_t most_sheets = 2) {
        cases.push_back({name, std::move(order), units, most_sheets});
    };
    BuildOrder three = build_order("B-101");
    three.count = 3;
    add("three alike", three);
    BuildOrder inner_at_tractor = three;
    inner_at_tractor.shaft.inner_tube = End::tractor;
    add("inner tube at the tractor", inner_at_tractor);
    BuildOrder standard = closed_order("B-102", 830);
    standard.shaft.ends[End::tractor].joint = JointKind::standard;
    add("standard joints, closed length only", standard);
    BuildOrder both = build_order("B-103");
    both.shaft.ends[End::implement].joint = JointKind::wide_angle;
    both.shaft.ends[End::implement].device = Device::slip_clutch;
    add("two wide-angle joints and a clutch", both);
    add("closed length only", closed_order("B-104", 860.5));
    BuildOrder bare = build_order("B-105");
    bare.guard = false;
    add("without a guard", bare);
    add("inches", three, Units::in);
    BuildOrder inches = both;
    inches.order = std::string(40, 'W');
    inches.count = 10'000;
    inches.customer = "Żółć " + std::string(300, 'w') + " مزرعة";
    inches.machine = std::string(300, 'm');
    add("long texts in inches", inches, Units::in, 5);
    BuildOrder unnamed = both;
    for (const End end : both_ends) unnamed.shaft.ends[end].connection.reset();
    add("held: connections not stated", unnamed);
    BuildOrder clutch = build_order("B-106");
    clutch.shaft.ends[End::implement].device = Device::overrunning_clutch;
    add("held: no such device", clutch);
    BuildOrder refused = build_order("B-109");
    refused.shaft.ends[End::tractor].lock = Lock::exposed_push_pin;
    add("refused: lock", refused);
    BuildOrder far = build_order("B-110");
    far.fits.front().longest[Range::turning] = measured(1400);
    far.fits.front().longest[Range::standing] = measured(1500);
    add("refused: overlap", far);
    add("refused: overlap, inches", far, Units::in);
    return cases;
}

inline const std::vector<BuildCase>& build_cases()
{
    static const std::vector<BuildCase> cases = make_build_cases();
    return cases;
}

// All cases as one batch with its saw plans.
inline Batch batch_of(const std::vector<BuildOrder>& orders, Units units, const Catalogue& catalogue = build_catalogue(), const Workshop& workshop = build_workshop())
{
    BatchBuilder builder("demo-batch", workshop.name, units);
    for (const BuildOrder& order : orders) builder.add(plan_build(order, catalogue, workshop, units), *find_series(catalogue, *order.shaft.series));
    Batch batch = builder.take();
    const Length bar = mm(6000);
    const BatchSaw saw{workshop.saw.kerf, mm(10), mm(5), mm(500), {{bar, std::nullopt, bar.um() * cost_of_a_micrometre}}, {}};
    for (ProfileTask& task : saw_tasks(batch, saw, [w = wording_of(batch)](const BatchPiece& piece) { return piece_label(piece, w); })) {
        SawOutcome outcome = plan_saw(task.task, {[left = 200]() mutable { return left-- > 0 ? 1.0 : 0.0; }, {}, linear_programme()});
        const SawHeading heading{batch.name + ", " + task.profile, batch.owner, units, mm(500)};
        batch.plans.push_back({task.profile, lay_out(heading, std::move(task.task), std::get<SawPlan>(std::move(outcome)), SawEnd::finished, 0), {}});
    }
    batch.unplanned = profiles_without_bars(batch, saw);
    return batch;
}

inline Batch case_batch(Units units)
{
    std::vector<BuildOrder> orders;
    for (const BuildCase& one : build_cases())
        if (one.order.count < 100 && one.name != "inches" && one.name != "refused: overlap, inches") orders.push_back(one.order);
    // The cases share numbers where only units differ; a list's are all different.
    for (std::size_t i = 0; i < orders.size(); ++i) orders[i].order = "L-" + std::to_string(i + 1);
    return batch_of(orders, units);
}

}  // namespace shaftcut::test::papers
