// What the job says around its lengths: of the shaft as it came, of its machine, and of who measured it.
#include "hitch/geometry_figures.hpp"
#include "condition_words.hpp"
#include "cut_sheet/cut_sheet_parts.hpp"

namespace shaftcut::cut_sheet {
namespace {

using Rows = std::vector<std::vector<std::string>>;

void add(Rows& rows, const std::string& what, const std::string& stated)
{
    if (!stated.empty()) rows.push_back({what, stated});
}

void add_half(Rows& rows, const WorkOrder& order, Tube tube, const Wording& w)
{
    const JobHalf& half = order.shaft.halves[tube];
    const End end = end_of(order.shaft, tube);
    if (half.series) add(rows, half_row(end, w), half.series->name ? of_series(*half.series->name, w) : say(StatedCaption::no_series, w));
    if (half.guard_use == GuardUse::none) add(rows, half_guard_row(end, w), say(StatedCaption::no_guard, w));
    if (half.guard_use == GuardUse::damaged) add(rows, half_guard_row(end, w), say(StatedCaption::damaged_guard, w));
    if (!half.stop_depth) return;
    const auto& shoulder = order.reading.shaft.halves[tube].shoulder;
    add(rows, half_stop_row(end, w), stop_depth(half.stop_depth->length, shoulder ? std::optional(shoulder->value) : std::nullopt, order.shaft.ends[end].joint, w));
}

void add_fit(Rows& rows, const WorkOrder& order, const FitReading& fit, const Wording& w)
{
    const std::string tractor = order.fits.size() > 1 ? fit.tractor : "";
    for (const End end : both_ends) {
        if (!fit.views[end]) continue;
        const AngleViews& views = *fit.views[end];
        add(rows, joint_angle_row(tractor, end, views.range, w), seen_in_two_views(fit.angles[end][views.range], views, w));
    }
}

std::string other_tractors_text(const Circumstances& around, const Wording& w)
{
    if (!around.other_tractors.empty()) return not_measured(around.other_tractors, w);
    return around.no_other_tractors ? say(StatedCaption::no_other_tractors, w) : "";
}

}  // namespace

std::vector<std::pair<std::string, std::string>> heading_fields(const WorkOrder& order, const Wording& w)
{
    const Circumstances& around = order.circumstances;
    std::vector<std::pair<std::string, std::string>> fields{
        {say(TitleCaption::customer, w), one_by_one({order.customer, telephone(around.phone, w)})},
        {say(TitleCaption::machine, w), one_by_one({order.machine, around.machine_here ? "" : say(TitleCaption::not_here, w)})},
        {say(TitleCaption::tractor, w), one_by_one({order.tractor, around.power ? power_at_pto(*around.power, w) : "", around.hitch})}};
    if (const std::string others = other_tractors_text(around, w); !others.empty()) fields.emplace_back(say(TitleCaption::other_tractors, w), others);
    return fields;
}

Table stated_table(Sheets& sheets, const WorkOrder& order, const Wording& w)
{
    const Circumstances& around = order.circumstances;
    Table table{say(StatedCaption::heading, w), {0, 0}, {say(StatedCaption::what, w), say(StatedCaption::as_stated, w)}, {}};
    const auto add_row = [&](StatedCaption name, const std::string& stated) { add(table.rows, say(name, w), stated); };
    add_row(StatedCaption::shaft_number, order.shaft.number);
    add_row(StatedCaption::telephone, around.phone);
    add_row(StatedCaption::hitch, around.hitch);
    add_row(StatedCaption::power, around.power ? w.power(*around.power) : "");
    add_row(StatedCaption::other_tractors, other_tractors_text(around, w));
    add_row(StatedCaption::machine, around.machine_here ? "" : say(StatedCaption::machine_elsewhere, w));
    add_row(StatedCaption::measured, measured_by(around.measured_by, w));
    if (order.shaft.condition) add_row(StatedCaption::came_in, condition_words(*order.shaft.condition, w));
    for (const Tube tube : {tube_on(order.shaft, End::tractor), tube_on(order.shaft, End::implement)}) add_half(table.rows, order, tube, w);
    for (const End end : both_ends) add(table.rows, joint_row(end, w), joint_lengths(order.shaft.ends[end], w));
    for (const FitReading& fit : order.fits) add_fit(table.rows, order, fit, w);
    add_row(StatedCaption::loosened, loosened(around.limits_why, around.limits_by, w));
    table.widths[0] = names_width(sheets.canvas(), table, 70);
    table.widths[1] = sheets.room().width - table.widths[0];
    return table;
}

}  // namespace shaftcut::cut_sheet
