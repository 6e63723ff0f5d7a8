// Who may ask the bench page's server for what.
//
// A page of another site, open in the same browser, must be able to do nothing here: not by a name of its own that leads to this
// machine (DNS rebinding: Host), not by sending a form (Origin, Content-Type), not by a link (Sec-Fetch-Site). Sources: OWASP's cheat
// sheets on cross-site request forgery and on denial of service, and W3C's Fetch Metadata, from memory. Checked in tests/bench/guard_test.cpp.
#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "bench/reply_words.hpp"
#include "request.hpp"

namespace shaftcut {

// The names under which each door may be asked, with the port: "127.0.0.1:8117", "localhost:8117".
struct ServerNames {
    std::vector<std::string> here, network;
    const std::vector<std::string>& of(Door door) const { return door == Door::here ? here : network; }
};

// `port`: of both doors; `network`: the address of the second one, empty where there is none. Port 80 is left out by browsers.
ServerNames server_names(const std::string& network, unsigned port);

// Why this request is none of this server's own page; nothing where it is.
std::optional<NoReply> refused_by_guard(const Request& request, const ServerNames& names);

// At most `most_requests_a_minute` of each client: whoever has had them waits until a minute after the first of them.
inline constexpr int most_requests_a_minute = 600;
class RateLimit {
public:
    // Counts a request. `seconds`: of a clock that never goes back.
    bool allows(const std::string& client, double seconds);
    std::size_t clients() const { return counted_.size(); }

private:
    // Nobody can make it hold more than so many addresses: new ones are refused until older ones are forgotten.
    static constexpr std::size_t most_clients = 4096;
    struct Minute {
        double began = 0;
        int requests = 0;
    };
    void forget(double seconds);
    std::map<std::string, Minute> counted_;
};

}  // namespace shaftcut
