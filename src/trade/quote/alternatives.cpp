#include "quote/alternatives.hpp"

#include <algorithm>
#include <set>

#include "quote/lines.hpp"
#include "quote/machine_changes.hpp"
#include "shaftcut/trade/choose/choose.hpp"
#include "shaftcut/trade/quote/totals.hpp"

namespace shaftcut {
namespace {

constexpr std::size_t most_new_shafts = 3;

Alternative priced(Alternative alternative, std::vector<QuoteLine> lines, const QuoteMeans& means)
{
    alternative.lines = with_charges(std::move(lines), means);
    alternative.lead_days = lead_days_of(alternative.lines);
    if (all_priced(alternative.lines)) alternative.totals = totals_of(alternative.lines, means.prices, any_ordered(alternative.lines));
    return alternative;
}

void add(std::vector<QuoteLine>& lines, const std::vector<QuoteLine>& more) { lines.insert(lines.end(), more.begin(), more.end()); }

void add_changes(std::vector<Alternative>& list, const Job& job, const WorkOrder& order, const QuoteMeans& means)
{
    for (const WayOut& way : order.ways_out) {
        const auto changed = changed_by(way, job, order);
        if (!changed) continue;
        const WorkOrder then = work_up(*changed, means.catalogue, means.workshop, order.units);
        if (then.verdict == Verdict::refused) continue;
        Alternative alternative;
        alternative.kind = AlternativeKind::change_at_machine;
        alternative.change = way;
        alternative.is_cut = then.verdict == Verdict::cut;
        std::vector<QuoteLine> lines{LineMaker(means.prices).service(to_word(service_for(way)))};
        add(lines, lines_of(then, means.prices));
        list.push_back(priced(std::move(alternative), std::move(lines), means));
    }
}

void add_this_shaft(std::vector<Alternative>& list, const WorkOrder& order, const QuoteMeans& means)
{
    if (order.verdict == Verdict::refused) return;
    Alternative alternative;
    alternative.is_cut = order.verdict == Verdict::cut;
    list.push_back(priced(std::move(alternative), lines_of(order, means.prices), means));
}

void add_new_shaft(std::vector<Alternative>& list, const JobToChooseFor& wanted, const Choice& choice, const QuoteMeans& means)
{
    Alternative alternative;
    alternative.kind = AlternativeKind::new_shaft;
    alternative.series = choice.series;
    alternative.closed = choice.closed;
    alternative.is_cut = choice.result == ChoiceResult::cut;
    std::vector<QuoteLine> lines{LineMaker(means.prices).new_shaft(choice.series, choice.closed)};
    if (alternative.is_cut) add(lines, lines_of(work_up(job_of(wanted, choice, means.catalogue, means.workshop), means.catalogue, means.workshop, wanted.job.units), means.prices));
    list.push_back(priced(std::move(alternative), std::move(lines), means));
}

void add_made(std::vector<Alternative>& list, const JobToChooseFor& wanted, const ChoiceToOrder& choice, const QuoteMeans& means)
{
    const BuildPlan plan = plan_build(order_of(wanted, choice), means.catalogue, means.workshop, wanted.job.units);
    if (!plan.built) return;
    Alternative alternative;
    alternative.kind = AlternativeKind::made_to_order;
    alternative.series = choice.series;
    alternative.closed = choice.closed;
    list.push_back(priced(std::move(alternative), lines_of(plan, means.catalogue, means.workshop, means.prices), means));
}

// The best of each series that serves, then what could be made.
void add_others(std::vector<Alternative>& list, const Job& job, const QuoteMeans& means)
{
    const auto wanted = to_choose_for(job);
    if (!wanted) return;
    const Choices choices = choose(*wanted, means.catalogue, means.workshop, job.units);
    std::set<std::string> series;
    for (std::size_t i = 0; i < choices.serving && series.size() < most_new_shafts; ++i)
        if (series.insert(choices.choices[i].series).second) add_new_shaft(list, *wanted, choices.choices[i], means);
    const auto can_be_made = std::find_if(choices.to_order.begin(), choices.to_order.end(), [](const ChoiceToOrder& one) { return one.open.empty(); });
    if (can_be_made != choices.to_order.end()) add_made(list, *wanted, *can_be_made, means);
}

// Marks those of which `of` is the least: of equal ones each.
template <class Of>
void mark(std::vector<Alternative>& list, bool Alternative::*mark, Of of)
{
    const Alternative* least = nullptr;
    for (const Alternative& one : list)
        if (one.totals && one.lead_days && (!least || of(one) < of(*least))) least = &one;
    for (Alternative& one : list) one.*mark = least && one.totals && one.lead_days && !(of(*least) < of(one));
}

}  // namespace

std::vector<Alternative> alternatives_to(const Job& job, const WorkOrder& order, const QuoteMeans& means)
{
    std::vector<Alternative> list;
    add_changes(list, job, order, means);
    add_this_shaft(list, order, means);
    add_others(list, job, means);
    mark(list, &Alternative::cheapest, [](const Alternative& one) { return one.totals->total; });
    mark(list, &Alternative::soonest, [](const Alternative& one) { return *one.lead_days; });
    return list;
}

}  // namespace shaftcut
