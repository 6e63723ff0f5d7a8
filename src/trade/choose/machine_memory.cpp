#include "choose/machine_memory.hpp"

namespace shaftcut {

MachineSearch MachineMemory::search_of(std::size_t fit)
{
    return [this, fit](const Machine& machine, const HitchShaft& shaft, Length measuring) {
        const Key key{fit, shaft.tractor.cross_to_groove, shaft.tractor.spacing, shaft.implement.cross_to_groove, shaft.implement.spacing, shaft.phase_step.mdeg()};
        return found(key, machine, shaft, measuring);
    };
}

MachineMemory::Found MachineMemory::found(const Key& key, const Machine& machine, const HitchShaft& shaft, Length measuring)
{
    std::promise<Found> promise;
    std::shared_future<Found> future;
    {
        const std::lock_guard lock(mutex_);
        const auto [known, added] = found_.try_emplace(key);
        if (!added) future = known->second;
        else known->second = promise.get_future().share();
    }
    if (future.valid()) return future.get();
    try {
        Found searched = operating_lengths(machine, shaft, measuring);
        promise.set_value(searched);
        return searched;
    } catch (...) {
        promise.set_exception(std::current_exception());
        throw;
    }
}

}  // namespace shaftcut
