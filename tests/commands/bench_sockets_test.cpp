// Slow, large, broken and ambiguous requests on real sockets.
#include <sys/stat.h>

#include <thread>

#include "commands/bench_sockets.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

TEST_CASE("bench sockets: a request is answered, several on one connection, one behind the other, and after half a close")
{
    BenchProcess server;
    REQUIRE(server.port() != 0);
    CHECK(server.out() == "http://127.0.0.1:" + std::to_string(server.port()) + "/\n");
    const std::string job = read_all(sample("plain-cut"));
    const Client client(server.port());
    client.send(server.get("/"));
    CHECK(status_of(client.reply()) == 200);
    client.send(server.post("/answer", job));
    const std::string answer = client.reply();
    CHECK(status_of(answer) == 200);
    CHECK(answer.find("\"order\":\"P-101\"") != std::string::npos);

    // Pipelined: three replies in their order.
    const Client pipelined(server.port());
    pipelined.send(server.get("/nothing") + server.post("/answer", job) + server.get("/", "Connection: close\r\n"));
    const std::string replies = pipelined.rest();
    const std::size_t first = replies.find("HTTP/1.1 404"), second = replies.find("HTTP/1.1 200"), third = replies.find("HTTP/1.1 200", second + 1);
    CHECK(first == 0);
    CHECK(second != std::string::npos);
    CHECK(third != std::string::npos);
    CHECK(replies.find("HTTP/1.1", third + 1) == std::string::npos);

    const Client half(server.port());
    half.send(server.post("/answer", job));
    half.end_sending();
    CHECK(half.rest().find("\"order\":\"P-101\"") != std::string::npos);
}

TEST_CASE("bench sockets: what is too large is refused, and the reply arrives")
{
    BenchProcess server;
    const std::string limit_body(256 * 1024, ' ');
    CHECK(status_of(server.ask(server.post("/answer", limit_body))) == 422);
    CHECK(status_of(server.ask(server.post("/answer", limit_body + " "))) == 413);
    CHECK(status_of(server.ask(server.post("/answer", std::string(4 * 1024 * 1024, ' ')))) == 413);
    // Said, not sent.
    CHECK(status_of(server.ask("POST /answer HTTP/1.1\r\nHost: a\r\nContent-Length: 999999999999\r\n\r\n")) == 413);
    CHECK(status_of(server.ask(server.get("/", "Cookie: " + std::string(7000, 'a') + "\r\n"))) == 200);
    CHECK(status_of(server.ask(server.get("/", "Cookie: " + std::string(9000, 'a') + "\r\n"))) == 431);
    std::string bomb;
    for (int i = 0; i < 5000; ++i) bomb += "A" + std::to_string(i) + ": b\r\n";
    CHECK(status_of(server.ask(server.get("/", bomb))) == 431);
    CHECK(status_of(server.ask("GET /" + std::string(20'000, 'a') + " HTTP/1.1\r\n\r\n")) == 431);
    CHECK(status_of(server.ask(std::string(100'000, 'a'))) != 200);
    CHECK(status_of(server.ask(server.get("/"))) == 200);
}

TEST_CASE("bench sockets: where a request ends is never a matter of opinion")
{
    BenchProcess server;
    const std::string begin = server.get("/answer").substr(0, server.get("/answer").size() - 2), job = "<job/>", smuggled = server.get("/catalogue");
    const auto post = [&](const std::string& headers, const std::string& body) {
        const Client client(server.port());
        client.send("POST" + begin.substr(3) + "Origin: http://127.0.0.1:" + std::to_string(server.port()) + "\r\nContent-Type: application/xml\r\n" + headers + "\r\n" + body);
        const std::string reply = client.rest();
        INFO(headers << reply);
        // One reply and the connection's end: nothing behind it is taken for a request.
        CHECK(reply.find("HTTP/1.1", 1) == std::string::npos);
        CHECK(reply.find("Connection: close") != std::string::npos);
        return status_of(reply);
    };
    CHECK(post("Content-Length: 6\r\nContent-Length: 6\r\n", job + smuggled) == 400);
    CHECK(post("Content-Length: 6\r\nContent-Length: 60\r\n", job + smuggled) == 400);
    CHECK(post("Content-Length: 6, 6\r\n", job + smuggled) == 400);
    CHECK(post("Content-Length: +6\r\n", job + smuggled) == 400);
    CHECK(post("Content-Length: -6\r\n", job + smuggled) == 400);
    CHECK(post("Content-Length: 0x6\r\n", job + smuggled) == 400);
    CHECK(post("Content-Length:\r\n", job + smuggled) == 400);
    CHECK(post("Content-Length: 6\r\nTransfer-Encoding: chunked\r\n", "0\r\n\r\n" + smuggled) == 400);
    CHECK(post("Transfer-Encoding: chunked\r\nContent-Length: 6\r\n", "0\r\n\r\n" + smuggled) == 400);
    CHECK(post("Transfer-Encoding: chunked\r\n", "6\r\n<job/>\r\n0\r\n\r\n" + smuggled) == 411);
    CHECK(post("Transfer-Encoding: identity\r\nContent-Length: 6\r\n", job + smuggled) >= 400);
    CHECK(post("Transfer-Encoding: xchunked\r\n", job + smuggled) == 411);
    CHECK(post("", job + smuggled) == 411);
    CHECK(post("Content-Length : 6\r\n", job + smuggled) == 400);
}

TEST_CASE("bench sockets: bytes that are no request are refused, and the server goes on")
{
    BenchProcess server;
    for (const char* bytes : {"\r\n\r\n\r\n", "GET\r\n\r\n", "GET / HTTP/9.9\r\n\r\n", "GET / HTTP/1.1\r\nno colon\r\n\r\n", "GET / HTTP/1.1\r\n: empty\r\n\r\n", "\x16\x03\x01\x02\x01\x01", "GET /\x01 HTTP/1.1\r\n\r\n",
                              "get / HTTP/1.1\r\nHost: a\r\n\r\n", "PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n", "GET http://127.0.0.1/ HTTP/1.1\r\n\r\n", "CONNECT a:1 HTTP/1.1\r\n\r\n"}) {
        INFO(bytes);
        const Client client(server.port());
        client.send(bytes);
        client.end_sending();
        const int status = status_of(client.rest());
        CHECK((status == 0 || (status >= 400 && status < 500)));
    }
    CHECK(status_of(server.ask(server.get("/"))) == 200);
}

TEST_CASE("bench sockets: who is slow is told so after ten seconds, and holds up nobody")
{
    BenchProcess server;
    std::vector<Client> slow;
    for (int i = 0; i < 40; ++i) slow.emplace_back(server.port());
    for (std::size_t i = 0; i < slow.size(); ++i) slow[i].send(i % 2 == 0 ? "GET / HTTP/1.1\r\nHost: " : server.post("/answer", std::string(1000, ' ')).substr(0, 500));
    const auto start = std::chrono::steady_clock::now();
    const auto seconds = [&] { return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count(); };
    CHECK(status_of(server.ask(server.get("/"))) == 200);
    CHECK(seconds() < 2);
    // A byte now and then is as slow.
    for (int i = 0; i < 8; ++i) {
        std::this_thread::sleep_for(std::chrono::seconds(1));
        slow[0].send("a");
        slow[1].send(" ");
    }
    for (const Client& client : slow) CHECK(status_of(client.rest(15'000)) == 408);
    CHECK(seconds() > 9);
    CHECK(seconds() < 16);
}

TEST_CASE("bench sockets: of 64 who are connected the longest silent one makes room, and none that has begun to ask")
{
    BenchProcess server;
    std::vector<Client> silent;
    for (int i = 0; i < 64; ++i) silent.emplace_back(server.port());
    // The last one is served once it is taken; the first is closed for it.
    silent.back().send(server.get("/"));
    CHECK(status_of(silent.back().reply()) == 200);
    CHECK(status_of(server.ask(server.get("/"))) == 200);
    CHECK(silent.front().is_closed_within(2000));
    CHECK_FALSE(silent[10].is_closed_within(50));
    CHECK(silent[10].send(server.get("/")));
    CHECK(status_of(silent[10].reply()) == 200);

    std::vector<Client> begun;
    for (int i = 0; i < 64; ++i) {
        begun.emplace_back(server.port());
        begun.back().send("GET / HTTP/1.1\r\n");
    }
    std::this_thread::sleep_for(std::chrono::milliseconds(300));
    const Client late(server.port());
    late.send(server.get("/"));
    const int status = status_of(late.rest(2000));
    CHECK((status == 503 || status == 0));
    begun.front().send(server.get("/").substr(server.get("/").find("Host")));
    CHECK(status_of(begun.front().reply()) == 200);
}

TEST_CASE("bench sockets: who never pauses is as slow, and what was refused is not listened to for longer than a moment")
{
    BenchProcess server;
    const auto start = std::chrono::steady_clock::now();
    const auto seconds = [&] { return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count(); };
    // A thread each, so that bytes are nearly always at hand.
    const std::string body(260'000, ' '), whole = server.post("/answer", body), unread = whole.substr(0, whole.size() - body.size());
    std::vector<double> closed(12, 99);
    std::vector<std::thread> senders;
    for (std::size_t i = 0; i < closed.size(); ++i)
        senders.emplace_back([&, i] {
            const Client client(server.port());
            const bool is_refused_at_once = i % 4 == 0;
            client.send(is_refused_at_once ? "POST / HTTP/1.1\r\nTransfer-Encoding: chunked\r\n\r\n" : unread);
            // Silent to begin with, or the body would be whole; then without a pause while the time runs out.
            while (!is_refused_at_once && seconds() < 9.8) std::this_thread::sleep_for(std::chrono::milliseconds(1));
            while (seconds() < 20 && client.send("a"))
                if (!is_refused_at_once && seconds() > 10.3) std::this_thread::sleep_for(std::chrono::milliseconds(5));
            closed[i] = seconds();
        });
    for (std::thread& sender : senders) sender.join();
    for (std::size_t i = 0; i < closed.size(); ++i) {
        INFO(i);
        CHECK(closed[i] < (i % 4 == 0 ? 5 : 14));
    }
}

TEST_CASE("bench sockets: a printer that hangs holds up no answer")
{
    const Folder programs;
    write_all(programs.file("lp"), "#!/bin/sh\nsleep 4\n");
    ::chmod(programs.file("lp").c_str(), 0700);
    const std::string path = std::getenv("PATH");
    ::setenv("PATH", (programs.path() + ":" + path).c_str(), 1);
    BenchProcess server({"--printer", "Saw"});
    ::setenv("PATH", path.c_str(), 1);
    const std::string job = read_all(sample("plain-cut"));
    std::vector<Client> printing;
    const std::size_t more_than_workers = std::thread::hardware_concurrency() + 1;
    for (std::size_t i = 0; i < more_than_workers; ++i) {
        printing.emplace_back(server.port());
        printing.back().send(server.post("/print?what=tag", job));
    }
    std::this_thread::sleep_for(std::chrono::milliseconds(500));
    const auto start = std::chrono::steady_clock::now();
    CHECK(status_of(server.ask(server.post("/answer", job))) == 200);
    CHECK(std::chrono::steady_clock::now() - start < std::chrono::seconds(2));
    CHECK(status_of(printing.front().reply(10'000)) == 200);
}

TEST_CASE("bench sockets: more papers at once than there are workers and places to wait are put off, and none is lost")
{
    BenchProcess server;
    const std::string request = server.post("/cut-sheet", read_all(sample("plain-cut")));
    std::vector<Client> clients;
    for (int i = 0; i < 60; ++i) clients.emplace_back(server.port());
    for (const Client& client : clients) client.send(request);
    int made = 0, put_off = 0;
    for (const Client& client : clients) {
        const std::string reply = client.reply(20'000);
        if (status_of(reply) == 200 && reply.ends_with("%%EOF\n")) ++made;
        if (status_of(reply) == 503) ++put_off;
    }
    CHECK(made + put_off == 60);
    CHECK(made >= 17);
    CHECK(put_off > 0);
    CHECK(status_of(server.ask(request)) == 200);
}

TEST_CASE("bench sockets: clients are told apart by their address")
{
    BenchProcess server;
    const Client eager(server.port(), "127.0.0.2"), other(server.port(), "127.0.0.3");
    for (int i = 0; i < 600; ++i) {
        eager.send(server.get("/nothing"));
        if (status_of(eager.reply()) != 404) FAIL("refused too early");
    }
    eager.send(server.get("/nothing"));
    CHECK(status_of(eager.reply()) == 429);
    other.send(server.get("/"));
    CHECK(status_of(other.reply()) == 200);
}
