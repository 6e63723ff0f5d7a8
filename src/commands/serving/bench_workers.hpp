// Threads that make the bench page's replies.
#pragma once

#include <boost/asio/thread_pool.hpp>
#include <cstddef>

namespace shaftcut {

// So many threads, and how many replies they have in hand or waiting. Counted by the sockets' thread alone.
struct BenchWorkers {
    explicit BenchWorkers(std::size_t threads) : most(threads + most_waiting), pool(threads) {}

    static constexpr std::size_t most_waiting = 16;
    const std::size_t most;   // at once, waiting or not
    std::size_t in_hand = 0;  // handed to them and not come back
    boost::asio::thread_pool pool;
};

}  // namespace shaftcut
