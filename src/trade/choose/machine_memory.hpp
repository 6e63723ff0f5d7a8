// What a machine's geometry gives, searched once for all shafts of the same yokes and spacings. Private to its room.
#pragma once

#include <future>
#include <map>
#include <mutex>
#include <tuple>

#include "cut/machine_search.hpp"

namespace shaftcut {

// Of one job's fits. Several threads may ask at once: who asks first searches, the others wait for it.
class MachineMemory {
public:
    // For the fit of this number, whose machine is always the same.
    MachineSearch search_of(std::size_t fit);

private:
    using Found = std::variant<OperatingLengths, HitchProblems>;
    using Key = std::tuple<std::size_t, Length, Length, Length, Length, std::int64_t>;

    Found found(const Key& key, const Machine& machine, const HitchShaft& shaft, Length measuring);

    std::mutex mutex_;
    std::map<Key, std::shared_future<Found>> found_;
};

}  // namespace shaftcut
