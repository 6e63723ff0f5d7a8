// The sockets of the bench page's server: they read requests, hand them to a Bench, and write what it replies.
//
// One thread has all sockets; answers are made by as many workers as there are processors, and what waits for a printer by one of its own. What is read of a client is limited: a header of
// 8 KB, a body of 256 KB, ten seconds for both; 64 connections, of one address of the network 16, 16 requests that wait for a worker, 32 MB
// of replies on their way. Where all connections are taken the one that has said nothing for longest makes room. Sources of the figures: the
// project's own choice.
// Checked with real sockets in tests/commands/bench_sockets_test.cpp and with real signals in bench_ending_test.cpp.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <system_error>
#include <variant>

#include "bench.hpp"

namespace shaftcut {

class BenchServer {
public:
    BenchServer();
    ~BenchServer();
    BenchServer(const BenchServer&) = delete;
    BenchServer& operator=(const BenchServer&) = delete;

    // An address on which it cannot be asked.
    struct Closed {
        std::string address;
        std::error_code error;
    };
    // Opens the door of this machine and, where an address is given, that of the network on the same port. `port`: 0: any that is free.
    std::optional<Closed> open(unsigned short port, const std::string& network);
    unsigned short port() const;

    // Serves until a signal ends it (SIGINT, SIGTERM, SIGHUP): then nothing new is taken and what is being answered has five seconds. False
    // where something was still being answered then: the workers still use the bench, so that the process must end without it.
    bool serve(Bench& bench);

private:
    struct State;
    std::unique_ptr<State> state_;
};

// Whether an address can be given to open(): one machine's, of IPv4 or IPv6, as it is written ("192.168.1.20").
bool is_network_address(const std::string& text);

// A whole request as the server reads it, but for time: what it is, or why it is refused.
std::variant<Request, NoReply> read_request(std::string_view bytes);

}  // namespace shaftcut
