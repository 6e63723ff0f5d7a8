// The bench page's server but for its sockets: a request to a reply.
//
// One thread asks admit(), which is quick: it guards, counts, and answers what needs no engine. What is left to be done any thread may do.
// Checked in tests/bench, and by the fuzz targets of tests/fuzz/bench_target.cpp.
#pragma once

#include <functional>
#include <optional>
#include <variant>

#include "desk.hpp"
#include "guard.hpp"
#include "pairing.hpp"
#include "reply.hpp"

namespace shaftcut {

// What changes while the server runs; one thread's. `address`: of the network's door, "http://192.168.1.20:8117/".
struct House {
    ServerNames names;
    std::function<double()> seconds;  // a clock that never goes back
    std::optional<Pairing> pairing = {};  // where the network is served
    std::string address = {};
    RateLimit rate = {};
};

// Still to be done. It throws nothing. `waits`: for another program, which may take its time.
struct ReplyWork {
    std::function<Reply()> make;
    bool waits = false;
};

class Bench {
public:
    Bench(Desk desk, House house) : desk_(std::move(desk)), house_(std::move(house)) {}
    Bench(const Bench&) = delete;
    Bench& operator=(const Bench&) = delete;

    // A reply, or what makes it; the work must end before the bench does.
    std::variant<Reply, ReplyWork> admit(Request request);
    // Both.
    Reply respond(Request request);

    // Of a request that could not be read, or that cannot be answered now.
    Reply refusal(NoReply why) const { return no_reply(why, desk_.w); }

private:
    std::variant<Reply, ReplyWork> routed(Request request);

    Desk desk_;
    House house_;
};

}  // namespace shaftcut
