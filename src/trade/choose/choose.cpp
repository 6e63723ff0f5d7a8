#include "shaftcut/trade/choose/choose.hpp"

#include <algorithm>
#include <atomic>
#include <future>
#include <iterator>
#include <mutex>
#include <system_error>
#include <thread>

#include "choose/new_shaft.hpp"
#include "choose/series_tries.hpp"

namespace shaftcut {
namespace {

bool between_crosses(const JobFit& fit)
{
    if (fit.between == Between::grooves) return false;
    return fit.shortest || std::any_of(all_ranges.begin(), all_ranges.end(), [&](Range range) { return fit.longest[range].has_value(); });
}

std::vector<const Series*> series_to_try(const JobToChooseFor& wanted, const Catalogue& catalogue)
{
    std::vector<const Series*> all;
    for (const Series& series : catalogue.series)
        if (!wanted.only_series || *wanted.only_series == series.name) all.push_back(&series);
    return all;
}

// Says after each series how many are done, one thread at a time.
class Counter {
public:
    Counter(const ChooseProgress& progress, std::size_t of) : progress_(progress), of_(of) {}
    void add()
    {
        const std::lock_guard lock(mutex_);
        ++done_;
        if (progress_) progress_(done_, of_);
    }

private:
    const ChooseProgress& progress_;
    std::mutex mutex_;
    std::size_t done_ = 0, of_;
};

// One thread fewer than `count`, for this one works too. Where the system gives no more threads, fewer.
template <class Work>
std::vector<std::future<void>> beside_each_other(std::size_t count, const Work& work)
{
    std::vector<std::future<void>> threads;
    try {
        for (std::size_t i = 1; i < count; ++i) threads.push_back(std::async(std::launch::async, work));
    } catch (const std::system_error&) {
        // Those that there are do all of it.
    }
    return threads;
}

// Every series is tried by itself, by the next thread that is free; the answers stand in the catalogue's order.
std::vector<SeriesTries> try_all(const Wanted& wanted, const std::vector<const Series*>& all, const ChooseProgress& progress)
{
    std::vector<SeriesTries> tries(all.size());
    MachineMemory memory;
    Counter counter(progress, all.size());
    std::atomic<std::size_t> next = 0;
    const auto work = [&] {
        for (std::size_t i = next++; i < all.size(); i = next++) {
            tries[i] = try_series(wanted, *all[i], memory);
            counter.add();
        }
    };
    std::vector<std::future<void>> others = beside_each_other(std::min<std::size_t>(std::thread::hardware_concurrency(), all.size()), work);
    work();
    for (std::future<void>& other : others) other.get();
    return tries;
}

template <class Ranked>
void rank(std::vector<Ranked>& all)
{
    std::stable_sort(all.begin(), all.end(), [](const Ranked& one, const Ranked& other) { return ranks_before(one, other); });
}

std::optional<std::size_t> nearest_of(const std::vector<Choice>& refused)
{
    std::optional<std::size_t> nearest;
    for (std::size_t i = 0; i < refused.size(); ++i)
        if (refused[i].least_margin && (!nearest || *refused[*nearest].least_margin < *refused[i].least_margin)) nearest = i;
    return nearest;
}

}  // namespace

std::optional<JobToChooseFor> to_choose_for(const Job& job)
{
    JobToChooseFor wanted{job, {}, {}};
    const JobShaft& old = job.shaft;
    if (std::any_of(job.fits.begin(), job.fits.end(), between_crosses)) {
        if (!old.series) return std::nullopt;
        wanted.only_series = old.series;
    }
    JobShaft& shaft = wanted.job.shaft;
    shaft = JobShaft();
    shaft.role = old.role;
    shaft.speed = old.speed;
    shaft.inner_tube = old.inner_tube;
    shaft.place = old.place;
    for (const End end : both_ends) {
        if (!old.ends[end].connection) return std::nullopt;
        wanted.joint[end] = old.ends[end].joint;
        shaft.ends[end] = old.ends[end];
        shaft.ends[end].spacing.reset();
        shaft.ends[end].cross_to_groove.reset();
    }
    for (JobFit& fit : wanted.job.fits)
        if (!fit.reference) fit.reference = old.closed_reference;
    return wanted;
}

Choices choose(const JobToChooseFor& wanted, const Catalogue& catalogue, const Workshop& workshop, Units units, const ChooseProgress& progress)
{
    const Job& job = wanted.job;
    Choices choices{job.order, job.machine, units, {}, 0, {}, {}, {}};
    const std::vector<const Series*> all = series_to_try(wanted, catalogue);
    for (SeriesTries& tries : try_all({wanted, catalogue, workshop, units}, all, progress)) {
        std::move(tries.choices.begin(), tries.choices.end(), std::back_inserter(choices.choices));
        if (tries.to_order) choices.to_order.push_back(std::move(*tries.to_order));
    }
    for (const Series* series : all)
        if (series->closed_lengths.empty()) choices.without_lengths.push_back(series->name);
    rank(choices.choices);
    rank(choices.to_order);
    choices.serving = static_cast<std::size_t>(std::count_if(choices.choices.begin(), choices.choices.end(), [](const Choice& choice) { return choice.plan.has_value(); }));
    if (choices.serving == 0) choices.nearest = nearest_of(choices.choices);
    return choices;
}

Job job_of(const JobToChooseFor& wanted, const Choice& choice, const Catalogue& catalogue, const Workshop& workshop)
{
    const Series& series = *find_series(catalogue, choice.series);
    Job job = job_of_series(wanted, series, choice.joint);
    const LimitsInForce limits(job.limits, series.limits, workshop.limits);
    set_closed(job.shaft, series, choice.closed, limits.length(Limit::guard_setback_new), workshop.measuring_plus_minus);
    return job;
}

BuildOrder order_of(const JobToChooseFor& wanted, const ChoiceToOrder& choice) { return order_with(wanted, choice.series, choice.joint); }

}  // namespace shaftcut
