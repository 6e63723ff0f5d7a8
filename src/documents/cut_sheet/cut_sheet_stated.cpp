// What the job says around its lengths: of the shaft as it came, of its machine, and of who measured it.
#include "cut/geometry_words.hpp"
#include "cut_sheet/cut_sheet_parts.hpp"
#include "text.hpp"

namespace shaftcut::cut_sheet {
namespace {

using Rows = std::vector<std::vector<std::string>>;

void add(Rows& rows, const std::string& what, const std::string& stated)
{
    if (!stated.empty()) rows.push_back({what, stated});
}

std::string joined(const std::vector<std::string>& parts)
{
    std::string all;
    for (const std::string& part : parts) all += (part.empty() || all.empty() ? "" : ", ") + part;
    return all;
}

std::string spaced(std::string word)
{
    for (char& letter : word)
        if (letter == '-') letter = ' ';
    return word;
}

// "guard complete, chains missing": what was looked at, in the order of the bench.
std::string condition_text(const Condition& found)
{
    std::vector<std::string> parts;
    const auto say = [&](const char* what, const auto& state) {
        if (state) parts.push_back(std::string(what) + " " + spaced(to_word(*state)));
    };
    say("guard", found.guard);
    say("chains", found.chains);
    say("crosses", found.crosses);
    say("tubes", found.tubes);
    say("locks", found.locks);
    if (found.weld) parts.push_back(*found.weld == Weld::none ? "no weld" : spaced(to_word(*found.weld)));
    say("device", found.device);
    say("forks", found.phase);
    if (found.slides) parts.emplace_back(*found.slides == Slides::yes ? "slides by hand" : "does not slide by hand, though clean");
    return joined(parts);
}

std::string half_name_of(const WorkOrder& order, Tube tube) { return std::string(to_word(end_of(order.shaft, tube))) + " half"; }

void add_half(Rows& rows, const WorkOrder& order, Tube tube)
{
    const JobHalf& half = order.shaft.halves[tube];
    const std::string name = half_name_of(order, tube);
    if (half.series) add(rows, name, half.series->name ? "of series " + *half.series->name : "of no known series");
    if (half.guard_use == GuardUse::none) add(rows, name + "'s guard", "there is none");
    if (half.guard_use == GuardUse::damaged) add(rows, name + "'s guard", "damaged: not used again");
    if (!half.stop_depth) return;
    const std::string depth = printed_with_both(order, half.stop_depth->length) + " from its tube's free end inwards";
    const auto& shoulder = order.reading.shaft.halves[tube].shoulder;
    add(rows, name + "'s stop", depth + (shoulder ? "; its shoulder is then " + printed_with_both(order, shoulder->value) + " from its " +
                                                        (order.shaft.ends[end_of(order.shaft, tube)].joint == JointKind::wide_angle ? "inner cross" : "cross") : ""));
}

void add_end(Rows& rows, const WorkOrder& order, End end)
{
    const JobEnd& stated = order.shaft.ends[end];
    std::vector<std::string> parts;
    if (stated.spacing) parts.push_back("crosses " + printed_with_both(order, *stated.spacing) + " apart");
    if (stated.cross_to_groove) parts.push_back("cross to locking groove " + printed_with_both(order, *stated.cross_to_groove));
    add(rows, std::string(to_word(end)) + " joint", joined(parts));
}

void add_fit(Rows& rows, const WorkOrder& order, const FitReading& fit)
{
    const std::string of = whose(fit, order.fits.size());
    for (const End end : both_ends) {
        if (!fit.views[end]) continue;
        const AngleViews& views = *fit.views[end];
        const auto& angle = fit.angles[end][views.range];
        add(rows, of + to_word(end) + " joint, " + to_word(views.range), (angle ? figure(*angle) + "°: " : "") + "from " + figure(views.side_view) + "° seen from the side and " +
                                                                             figure(views.plan) + "° seen from above");
    }
}

std::string other_tractors_text(const Circumstances& around)
{
    if (around.other_tractors.empty()) return around.no_other_tractors ? "none" : "";
    std::string names;
    for (const std::string& name : around.other_tractors) names += (names.empty() ? "" : "; ") + name;
    return "NOT MEASURED: " + names;
}

std::string measured_text(const MeasuredBy& by) { return joined({by.name, by.date, by.with.empty() ? "" : "with " + by.with}); }

// "why: WHY; by: BY"
std::string loosened_text(const Circumstances& around)
{
    if (around.limits_why.empty()) return around.limits_by.empty() ? "" : "by " + around.limits_by;
    return around.limits_why + (around.limits_by.empty() ? "" : "; by " + around.limits_by);
}

}  // namespace

std::vector<std::pair<std::string, std::string>> heading_fields(const WorkOrder& order)
{
    const Circumstances& around = order.circumstances;
    const std::string here = around.machine_here ? "" : "NOT HERE";
    std::vector<std::pair<std::string, std::string>> fields{
        {"Customer: ", joined({order.customer, around.phone.empty() ? "" : "telephone " + around.phone})},
        {"Machine: ", joined({order.machine, here})},
        {"Tractor: ", joined({order.tractor, around.power ? power_text(*around.power) + " at the PTO" : "", around.hitch})}};
    if (const std::string others = other_tractors_text(around); !others.empty()) fields.emplace_back("Other tractors: ", others);
    return fields;
}

std::string power_text(std::int64_t watts) { return figure(Length::micrometres(watts), Units::mm, Toward::nearest, 3) + " kW"; }

void draw_stated(Sheets& sheets, const WorkOrder& order)
{
    const Circumstances& around = order.circumstances;
    const double width = sheets.room().width, names = 52;
    Table table{"The shaft and its machine as stated", {names, width - names}, {"what", "as stated"}, {}};
    add(table.rows, "shaft number", order.shaft.number);
    add(table.rows, "telephone", around.phone);
    add(table.rows, "hitch", around.hitch);
    add(table.rows, "power taken at the PTO", around.power ? power_text(*around.power) : "");
    add(table.rows, "other tractors", other_tractors_text(around));
    add(table.rows, "machine", around.machine_here ? "" : "not here: the shaft is tried elsewhere");
    add(table.rows, "measured", measured_text(around.measured_by));
    if (order.shaft.condition) add(table.rows, "as it came in", condition_text(*order.shaft.condition));
    for (const Tube tube : {tube_on(order.shaft, End::tractor), tube_on(order.shaft, End::implement)}) add_half(table.rows, order, tube);
    for (const End end : both_ends) add_end(table.rows, order, end);
    for (const FitReading& fit : order.fits) add_fit(table.rows, order, fit);
    add(table.rows, "a limit made looser", loosened_text(around));
    draw_table(sheets, table);
}

}  // namespace shaftcut::cut_sheet
