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

// Marks those of which `of` is the least: of equal ones each. `counts`: which are compared.
template <class Of, class Counts>
void mark(std::vector<Alternative>& list, bool Alternative::*mark, Of of, Counts counts)
{
    const Alternative* least = nullptr;
    for (const Alternative& one : list)
        if (counts(one) && (!least || of(one) < of(*least))) least = &one;
    for (Alternative& one : list) one.*mark = least && counts(one) && !(of(*least) < of(one));
}

class AlternativeMaker {
public:
    AlternativeMaker(const Job& job, const WorkOrder& order, const QuoteMeans& means) : job_(job), order_(order), means_(means), make_(means.prices) {}

    std::vector<Alternative> all()
    {
        add_changes();
        add_this_shaft();
        add_others();
        const auto is_priced = [](const Alternative& one) { return one.totals.has_value(); };
        mark(list_, &Alternative::cheapest, [](const Alternative& one) { return one.totals->total; }, is_priced);
        mark(list_, &Alternative::soonest, [](const Alternative& one) { return *one.lead_days; }, [](const Alternative& one) { return one.totals && one.lead_days; });
        return std::move(list_);
    }

private:
    void add(Alternative alternative, std::vector<QuoteLine> lines)
    {
        // Of a refused cut the call's services are billed as done.
        if (order_.verdict != Verdict::refused)
            for (const std::string& service : means_.request.services) lines.push_back(make_.service(service));
        alternative.lines = with_charges(merged(lines), means_);
        alternative.lead_days = lead_days_of(alternative.lines);
        if (all_priced(alternative.lines)) alternative.totals = totals_of(alternative.lines, means_.prices, any_ordered(alternative.lines));
        list_.push_back(std::move(alternative));
    }

    WorkOrder worked(const Job& job) const { return work_up(job, means_.catalogue, means_.workshop, order_.units); }

    void add_changes()
    {
        for (const WayOut& way : order_.ways_out) {
            const auto changed = changed_by(way, job_, order_);
            if (!changed) continue;
            const WorkOrder then = worked(*changed);
            if (then.verdict == Verdict::refused) continue;
            Alternative alternative;
            alternative.kind = AlternativeKind::change_at_machine;
            alternative.change = way;
            alternative.is_cut = then.verdict == Verdict::cut;
            std::vector<QuoteLine> lines = lines_of(then, means_.prices);
            lines.insert(lines.begin(), make_.service(to_word(service_for(way))));
            add(std::move(alternative), std::move(lines));
        }
    }

    void add_this_shaft()
    {
        if (order_.verdict == Verdict::refused) return;
        Alternative alternative;
        alternative.is_cut = order_.verdict == Verdict::cut;
        add(std::move(alternative), lines_of(order_, means_.prices));
    }

    // The best of each series that serves, then what could be made.
    void add_others()
    {
        const auto wanted = to_choose_for(job_);
        if (!wanted) return;
        const Choices choices = choose(*wanted, means_.catalogue, means_.workshop, job_.units);
        std::set<std::string> series;
        for (std::size_t i = 0; i < choices.serving && series.size() < most_new_shafts; ++i)
            if (series.insert(choices.choices[i].series).second) add_new_shaft(*wanted, choices.choices[i]);
        const auto can_be_made = std::find_if(choices.to_order.begin(), choices.to_order.end(), [](const ChoiceToOrder& one) { return one.open.empty(); });
        if (can_be_made != choices.to_order.end()) add_made(*wanted, *can_be_made);
    }

    void add_new_shaft(const JobToChooseFor& wanted, const Choice& choice)
    {
        Alternative alternative;
        alternative.kind = AlternativeKind::new_shaft;
        alternative.series = choice.series;
        alternative.closed = choice.closed;
        alternative.is_cut = choice.result == ChoiceResult::cut;
        std::vector<QuoteLine> lines;
        if (alternative.is_cut) lines = lines_of(worked(job_of(wanted, choice, means_.catalogue, means_.workshop)), means_.prices);
        lines.insert(lines.begin(), make_.new_shaft(choice.series, choice.closed));
        add(std::move(alternative), std::move(lines));
    }

    void add_made(const JobToChooseFor& wanted, const ChoiceToOrder& choice)
    {
        const BuildPlan plan = plan_build(order_of(wanted, choice), means_.catalogue, means_.workshop, job_.units);
        if (!plan.built) return;
        Alternative alternative;
        alternative.kind = AlternativeKind::made_to_order;
        alternative.series = choice.series;
        alternative.closed = choice.closed;
        add(std::move(alternative), lines_of(plan, means_.catalogue, means_.workshop, means_.prices));
    }

    const Job& job_;
    const WorkOrder& order_;
    const QuoteMeans& means_;
    LineMaker make_;
    std::vector<Alternative> list_;
};

}  // namespace

std::vector<Alternative> alternatives_to(const Job& job, const WorkOrder& order, const QuoteMeans& means) { return AlternativeMaker(job, order, means).all(); }

}  // namespace shaftcut
