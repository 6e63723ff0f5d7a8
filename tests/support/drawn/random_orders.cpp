#include "support/drawn/random_orders.hpp"

namespace shaftcut::test {
namespace {

constexpr std::uint64_t apart = 0x9E3779B97F4A7C15;  // so that an order's dice are not its job's

void add_guard_figures(Dice& dice, SeriesHalf& half)
{
    if (!dice.one_in(20)) half.guard_seat = dice.length(30, 60);
    if (!dice.one_in(20)) half.guard_seat_wide_angle = dice.length(60, 100);
    if (half.seat && dice.one_in(2)) half.pin_hole = *half.seat + dice.length(5, 40);
}

// Each part is named, but now and then one is not.
void name_parts(Dice& dice, Series& series)
{
    const auto name = [&](CataloguePart part) {
        if (!dice.one_in(60)) series.parts.push_back(std::move(part));
    };
    series.parts.clear();
    for (Cross& cross : series.crosses) cross.part = dice.one_in(60) ? "" : "cross";
    if (series.wide_angle)
        for (Cross& cross : series.wide_angle->crosses) cross.part = dice.one_in(60) ? "" : "other cross";
    for (const PartKind kind : {PartKind::tube, PartKind::tube_yoke, PartKind::guard_tube}) name({kind, to_word(kind), 1});
    for (const PartKind kind : {PartKind::pin, PartKind::double_yoke, PartKind::connection_yoke, PartKind::guard_bearing, PartKind::chain, PartKind::label, PartKind::book}) name({kind, to_word(kind), 1});
    CataloguePart device{PartKind::device, "device", 1};
    if (!dice.one_in(3)) device.replaces = dice.one_in(2) ? Replaces::nothing : Replaces::connection_yoke;
    name(std::move(device));
}

// A job's fit reaches from a shaft that is to be shortened; one that is to be built needs more room.
void spread(Dice& dice, JobFit& fit)
{
    if (dice.one_in(6)) return;
    const Length longer = dice.length(0, 60);
    fit.longest[Range::turning]->length = fit.shortest->length + longer;
    if (fit.longest[Range::working]) fit.longest[Range::working]->length = fit.shortest->length + Length::micrometres(longer.um() / 2);
    if (fit.longest[Range::standing]) fit.longest[Range::standing]->length = fit.longest[Range::turning]->length + dice.length(0, 40);
}

}  // namespace

OrderWorld random_order(std::uint64_t number)
{
    World from = random_world(number);
    Dice dice(number ^ apart);
    OrderWorld world{{}, std::move(from.catalogue), std::move(from.workshop), from.units};
    Series& series = world.catalogue.series[0];
    for (const Tube tube : both_tubes) {
        SeriesHalf& half = series.halves[tube];
        if (!half.shoulder && !dice.one_in(6)) half.shoulder = dice.length(60, 150);
        if (!half.seat && !dice.one_in(6)) half.seat = dice.length(30, 70);
        add_guard_figures(dice, half);
    }
    name_parts(dice, series);
    BuildOrder& order = world.order;
    order.order = "R-" + std::to_string(number);
    order.count = static_cast<int>(dice.from(1, 4));
    order.units = from.units;
    order.shaft = from.job.shaft;
    order.shaft.series = series.name;
    order.shaft.shape.reset();
    order.shaft.spacing.reset();
    order.shaft.built.reset();
    order.shaft.halves = {};
    order.shaft.condition.reset();
    for (const End end : both_ends) {
        order.shaft.ends[end].spacing.reset();
        order.shaft.ends[end].cross_to_groove.reset();
    }
    order.guard = !dice.one_in(5);
    order.limits = from.job.limits;
    order.place = {"orders.csv", 2, 1};
    if (!order.shaft.closed_reference && !series.wide_angle_reference && !usual_reference(series.shape)) order.shaft.closed_reference = Reference::outer_cross;
    if (dice.one_in(3)) {
        order.closed = Measurement{from.job.shaft.closed.length, std::nullopt, order.place};
    } else {
        order.fits = from.job.fits;
        for (JobFit& fit : order.fits) spread(dice, fit);
    }
    order.shaft.closed = {};
    return world;
}

}  // namespace shaftcut::test
