// How the server of the bench page ends, and begins again.
#include <ifaddrs.h>
#include <net/if.h>

#include <algorithm>
#include <cstring>
#include <thread>

#include "commands/bench_sockets.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

// This machine's first address in a network; empty where it is in none.
std::string network_address()
{
    ifaddrs* all = nullptr;
    std::string found;
    if (::getifaddrs(&all) != 0) return found;
    for (const ifaddrs* one = all; one && found.empty(); one = one->ifa_next) {
        if (!one->ifa_addr || one->ifa_addr->sa_family != AF_INET || (one->ifa_flags & IFF_LOOPBACK)) continue;
        std::array<char, INET_ADDRSTRLEN> text{};
        sockaddr_in end{};
        std::memcpy(&end, one->ifa_addr, sizeof end);
        found = ::inet_ntop(AF_INET, &end.sin_addr, text.data(), text.size());
    }
    ::freeifaddrs(all);
    return found;
}

}  // namespace

TEST_CASE("bench: told to end it takes nothing new, ends what it answers, and ends with 0")
{
    for (const int signal : {SIGTERM, SIGINT, SIGHUP}) {
        BenchProcess server;
        const std::string request = server.post("/cut-sheet", read_all(sample("plain-cut")));
        const Client silent(server.port());
        std::vector<Client> clients;
        for (int i = 0; i < 15; ++i) clients.emplace_back(server.port());
        for (const Client& client : clients) client.send(request);
        // The first has its paper; others are being made or wait.
        CHECK(clients.front().reply().ends_with("%%EOF\n"));
        server.process().send(signal);
        for (std::size_t i = 1; i < clients.size(); ++i) CHECK(clients[i].reply().ends_with("%%EOF\n"));
        CHECK(silent.rest(3000).empty());
        REQUIRE(server.process().has_ended_within(4000));
        CHECK(server.process().wait().exit == 0);
        CHECK_FALSE(Client(server.port()).connected());
    }
}

TEST_CASE("bench: told to end it waits five seconds for who is in the middle of asking, and no longer")
{
    BenchProcess server;
    const Client slow(server.port());
    slow.send("GET / HTTP/1.1\r\n");
    std::this_thread::sleep_for(std::chrono::milliseconds(200));
    server.process().send(SIGTERM);
    CHECK_FALSE(server.process().has_ended_within(3000));
    CHECK(server.process().has_ended_within(5000));
    CHECK(server.process().wait().exit == 0);
}

TEST_CASE("bench: killed while it answers, it starts again on its port at once")
{
    BenchProcess first;
    const unsigned port = first.port();
    const Client client(port);
    client.send(first.post("/cut-sheet", read_all(sample("plain-cut"))));
    first.process().send(SIGKILL);
    CHECK(first.process().wait().signal == SIGKILL);
    BenchProcess second({}, port);
    CHECK(second.port() == port);
    CHECK(status_of(second.ask(second.get("/"))) == 200);
    // The port is taken now.
    BenchProcess third({}, port);
    const Ended end = third.process().wait();
    CHECK(end.exit == 3);
    CHECK(end.err.find("cannot be served at 127.0.0.1, port " + std::to_string(port)) != std::string::npos);
}

TEST_CASE("bench: a tablet paired over the network stays paired when the server starts again, until it is revoked")
{
    const std::string address = network_address();
    if (address.empty()) {
        WARN("this machine is in no network: a tablet is let in through its door only by tests/bench/pairing_test.cpp");
        return;
    }
    const Folder state;
    ::setenv("XDG_STATE_HOME", state.path().c_str(), 1);
    std::string cookie;
    unsigned port = 0;
    // A request of a tablet, from this machine's own address in the network.
    const auto ask = [&](const std::string& line, const std::string& headers, const std::string& body = "") {
        const std::string name = address + ":" + std::to_string(port);
        const Client client(port, address, address);
        client.send(line + " HTTP/1.1\r\nHost: " + name + "\r\nOrigin: http://" + name + "\r\nContent-Type: application/xml\r\nContent-Length: " + std::to_string(body.size()) + "\r\n" + headers + "\r\n" + body);
        return client.reply();
    };
    {
        BenchProcess server({"--lan", address});
        REQUIRE(server.port() != 0);
        port = server.port();
        CHECK(status_of(ask("GET /catalogue", "")) == 401);
        const Run shown = run({"bench", "--config", config_folder, "--pair", "--port", std::to_string(port)});
        CHECK(shown.exit == 0);
        CHECK(shown.out.find("http://" + address + ":" + std::to_string(port)) != std::string::npos);
        const std::string paired = ask("POST /pair", "", "<pair code=\"" + shown.out.substr(0, 8) + "\"/>");
        CHECK(status_of(paired) == 200);
        const std::size_t at = paired.find("shaftcut-bench=");
        REQUIRE(at != std::string::npos);
        cookie = "Cookie: " + paired.substr(at, paired.find(';', at) - at) + "\r\n";
        server.process().send(SIGKILL);
        server.process().wait();
    }
    BenchProcess again({"--lan", address}, port);
    CHECK(status_of(ask("GET /catalogue", cookie)) == 200);
    CHECK(run({"bench", "--config", config_folder, "--tablets"}).out.starts_with("1  paired "));
    CHECK(run({"bench", "--config", config_folder, "--revoke", "2"}).exit == 2);
    CHECK(run({"bench", "--config", config_folder, "--revoke", "1"}).out == "tablet 1 is no longer paired\n");
    CHECK(status_of(ask("GET /catalogue", cookie)) == 401);
    CHECK(run({"bench", "--config", config_folder, "--tablets"}).out == "no tablet is paired\n");
    ::unsetenv("XDG_STATE_HOME");
}

TEST_CASE("bench: one tablet cannot take all connections")
{
    const std::string address = network_address();
    if (address.empty()) {
        WARN("this machine is in no network: how many connections a tablet may have is not tried");
        return;
    }
    const Folder state;
    ::setenv("XDG_STATE_HOME", state.path().c_str(), 1);
    BenchProcess server({"--lan", address});
    REQUIRE(server.port() != 0);
    std::vector<Client> begun;
    for (int i = 0; i < 64; ++i) {
        begun.emplace_back(server.port(), address, address);
        begun.back().send("GET / HTTP/1.1\r\n");
    }
    const auto is_open = [](const Client& client) { return !client.is_closed_within(20); };
    std::this_thread::sleep_for(std::chrono::milliseconds(300));
    CHECK(std::count_if(begun.begin(), begun.end(), is_open) == 16);
    CHECK(status_of(server.ask(server.get("/"))) == 200);
    ::unsetenv("XDG_STATE_HOME");
}
