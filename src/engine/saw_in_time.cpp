#include "saw_in_time.hpp"

namespace shaftcut {
namespace {

// The means' clock, seen from the plan's start.
class PlanClock {
public:
    PlanClock(double seconds_allowed, const SawMeans& means) : allowed_(seconds_allowed), means_(means), start_(means.seconds()) {}

    double taken() const { return means_.seconds() - start_; }
    bool stopped() const { return means_.stop && means_.stop(); }
    double left()
    {
        if (stopped()) return 0;
        const double seconds = taken();
        if (means_.news) means_.news({seconds, allowed_ - seconds, cost_, lower_bound_});
        return allowed_ - seconds;
    }
    void note(std::int64_t cost, std::int64_t lower_bound)
    {
        cost_ = cost;
        lower_bound_ = lower_bound;
    }

private:
    double allowed_;
    const SawMeans& means_;
    double start_;
    std::int64_t cost_ = 0, lower_bound_ = 0;
};

}  // namespace

SawnInTime plan_in_time(const SawTask& task, double seconds_allowed, const SawMeans& means)
{
    PlanClock clock(seconds_allowed, means);
    const SawWatch watch{[&] { return clock.left(); }, [&](std::int64_t cost, std::int64_t bound) { clock.note(cost, bound); }, means.linear_programme};
    SawnInTime sawn{plan_saw(task, watch)};
    sawn.seconds = clock.taken();
    if (clock.stopped()) sawn.end = SawEnd::interrupted;
    else if (sawn.seconds >= seconds_allowed) sawn.end = SawEnd::time_was_up;
    if (means.planned) means.planned();
    return sawn;
}

}  // namespace shaftcut
