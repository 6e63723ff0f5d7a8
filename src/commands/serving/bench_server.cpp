#include "serving/bench_server.hpp"

#include <fcntl.h>

#include <algorithm>
#include <boost/asio/awaitable.hpp>
#include <boost/asio/co_spawn.hpp>
#include <boost/asio/detached.hpp>
#include <boost/asio/io_context.hpp>
#include <boost/asio/ip/tcp.hpp>
#include <boost/asio/post.hpp>
#include <boost/asio/redirect_error.hpp>
#include <boost/asio/signal_set.hpp>
#include <boost/asio/steady_timer.hpp>
#include <boost/asio/use_awaitable.hpp>
#include <csignal>
#include <list>
#include <thread>

#include "serving/bench_caller.hpp"
#include "serving/bench_messages.hpp"
#include "serving/bench_workers.hpp"

namespace shaftcut {
namespace {

namespace net = boost::asio;
namespace http = boost::beast::http;
using tcp = net::ip::tcp;
using boost::system::error_code;
using Clock = BenchCaller::Clock;
using std::chrono::seconds;

constexpr std::size_t most_connections = 64, most_of_a_tablet = 16, most_bytes_on_the_way = 32 * 1024 * 1024, piece = 4096;
constexpr auto to_read = seconds(10), to_write = seconds(30), idle = seconds(60), to_end = seconds(5), to_linger = seconds(1);

// A reply that a worker makes; the timer is how the sockets' thread is told.
struct Awaited {
    explicit Awaited(net::io_context& sockets) : done(sockets, Clock::time_point::max()) {}
    net::steady_timer done;
    std::optional<Reply> reply{};
};

auto quietly(error_code& error) { return net::redirect_error(net::use_awaitable, error); }

bool is_ignored(int signal)
{
    struct sigaction now {};
    return ::sigaction(signal, nullptr, &now) == 0 && now.sa_handler == SIG_IGN;
}

}  // namespace

struct BenchServer::State {
    net::io_context sockets{1};
    net::signal_set signals{sockets};
    net::steady_timer ending{sockets};
    std::list<std::pair<tcp::acceptor, Door>> doors;
    std::list<std::shared_ptr<BenchCaller>> connections;
    BenchWorkers workers{std::max(1U, std::thread::hardware_concurrency())};
    BenchWorkers waiter{1};            // what waits for another program holds up no answer
    std::size_t bytes_on_the_way = 0;  // of replies that are being written
    bool ends = false;
    Bench* bench = nullptr;

    std::optional<Closed> open_door(const std::string& address, unsigned short port, Door door);
    void watch_signals();
    void end();
    bool make_room(const BenchCaller& newcomer);
    net::awaitable<void> take(tcp::acceptor& acceptor, Door door);
    net::awaitable<void> serve(std::shared_ptr<BenchCaller> connection);
    net::awaitable<bool> serve_one(BenchCaller& connection);
    net::awaitable<bool> is_asked(BenchCaller& connection);
    net::awaitable<std::optional<NoReply>> read(BenchCaller& connection, RequestParser& parser);
    net::awaitable<Reply> reply_to(Request request);
    net::awaitable<Reply> worked(ReplyWork work);
    net::awaitable<bool> write(BenchCaller& connection, Reply reply, bool keep_alive);
    net::awaitable<void> linger(BenchCaller& connection);
};

std::optional<BenchServer::Closed> BenchServer::State::open_door(const std::string& address, unsigned short port, Door door)
{
    const tcp::endpoint end(net::ip::make_address(address), port);
    tcp::acceptor acceptor(sockets);
    error_code error;
    acceptor.open(end.protocol(), error);
    if (!error) ::fcntl(acceptor.native_handle(), F_SETFD, FD_CLOEXEC);
    if (!error) acceptor.set_option(tcp::acceptor::reuse_address(true), error);
    if (!error) acceptor.bind(end, error);
    if (!error) acceptor.listen(net::socket_base::max_listen_connections, error);
    if (error) return Closed{address, std::error_code(error.value(), std::system_category())};
    doors.emplace_back(std::move(acceptor), door);
    return std::nullopt;
}

// A signal that the process was started to ignore goes on being ignored.
void BenchServer::State::watch_signals()
{
    for (const int signal : {SIGINT, SIGTERM, SIGHUP})
        if (!is_ignored(signal)) signals.add(signal);
    signals.async_wait([this](const error_code& error, int) {
        if (!error) end();
    });
}

void BenchServer::State::end()
{
    ends = true;
    error_code ignored;
    for (auto& [acceptor, door] : doors) acceptor.close(ignored);
    for (const auto& connection : connections)
        if (connection->silent_since) connection->close();
    if (connections.empty()) return;
    ending.expires_after(to_end);
    ending.async_wait([this](const error_code& error) {
        if (!error) sockets.stop();
    });
}

// Where all connections are taken, or all that one address of the network may have: closes the one of them of which nothing has come for
// longest. False where of each something has.
bool BenchServer::State::make_room(const BenchCaller& newcomer)
{
    const auto is_own = [&](const auto& one) { return newcomer.door == Door::network && one->door == Door::network && one->client == newcomer.client; };
    const bool has_its_own = static_cast<std::size_t>(std::count_if(connections.begin(), connections.end(), is_own)) >= most_of_a_tablet;
    if (!has_its_own && connections.size() < most_connections) return true;
    const auto silent = [&](const auto& one) { return has_its_own && !is_own(one) ? Clock::time_point::max() : one->silent_since.value_or(Clock::time_point::max()); };
    const auto longest = std::min_element(connections.begin(), connections.end(), [&](const auto& a, const auto& b) { return silent(a) < silent(b); });
    if (silent(*longest) == Clock::time_point::max()) return false;
    (*longest)->close();
    connections.erase(longest);
    return true;
}

net::awaitable<void> BenchServer::State::take(tcp::acceptor& acceptor, Door door)
{
    for (;;) {
        error_code error;
        tcp::socket socket = co_await acceptor.async_accept(quietly(error));
        if (ends) co_return;
        if (error) {
            // No descriptor is free, or the client has gone: both pass.
            net::steady_timer pause(sockets, std::chrono::milliseconds(50));
            co_await pause.async_wait(quietly(error));
            continue;
        }
        auto newcomer = std::make_shared<BenchCaller>(std::move(socket), door);
        if (!make_room(*newcomer)) {
            // No room, and none to wait for its request: a few bytes fit into the socket, or are lost.
            const auto response = response_of(bench->refusal(NoReply::busy), false);
            newcomer->socket.non_blocking(true, error);
            http::write(newcomer->socket, response, error);
            continue;
        }
        connections.push_back(std::move(newcomer));
        net::co_spawn(sockets, serve(connections.back()), net::detached);
    }
}

net::awaitable<void> BenchServer::State::serve(std::shared_ptr<BenchCaller> connection)
{
    bool stays = true;
    while (stays && !ends) stays = co_await serve_one(*connection);
    connection->close();
    connections.remove(connection);
    if (ends && connections.empty()) ending.cancel();
    co_return;
}

// Whether the connection stays.
net::awaitable<bool> BenchServer::State::serve_one(BenchCaller& connection)
{
    const bool asked = co_await is_asked(connection);
    if (!asked) co_return false;
    RequestParser parser;
    limit(parser);
    connection.allow(to_read);
    const std::optional<NoReply> unreadable = co_await read(connection, parser);
    if (unreadable) {
        const bool written = co_await write(connection, bench->refusal(*unreadable), false);
        if (written) co_await linger(connection);
        co_return false;
    }
    const bool keep_alive = parser.keep_alive();
    Reply reply = co_await reply_to(request_of(parser, connection.client, connection.door));
    const bool stays = keep_alive && !ends;
    const bool written = co_await write(connection, std::move(reply), stays);
    co_return written && stays;
}

// Waits for the first bytes of a request.
net::awaitable<bool> BenchServer::State::is_asked(BenchCaller& connection)
{
    if (connection.buffer.size() > 0) co_return true;
    connection.silent_since = Clock::now();
    connection.allow(idle);
    error_code error;
    const std::size_t count = co_await connection.socket.async_read_some(connection.buffer.prepare(piece), quietly(error));
    connection.silent_since.reset();
    connection.buffer.commit(count);
    co_return !error;
}

net::awaitable<std::optional<NoReply>> BenchServer::State::read(BenchCaller& connection, RequestParser& parser)
{
    error_code error;
    co_await http::async_read_header(connection.socket, connection.buffer, parser, quietly(error));
    std::optional<NoReply> refused = error ? std::nullopt : why_no_body(parser);
    if (refused) co_return refused;
    if (!error) co_await http::async_read(connection.socket, connection.buffer, parser, quietly(error));
    if (!error) co_return std::nullopt;
    co_return connection.late ? NoReply::too_slow : why_unreadable(error);
}

net::awaitable<Reply> BenchServer::State::reply_to(Request request)
{
    auto admitted = bench->admit(std::move(request));
    if (auto* reply = std::get_if<Reply>(&admitted)) co_return std::move(*reply);
    Reply reply = co_await worked(std::move(std::get<ReplyWork>(admitted)));
    co_return reply;
}

net::awaitable<Reply> BenchServer::State::worked(ReplyWork work)
{
    BenchWorkers& hands = work.waits ? waiter : workers;
    if (hands.in_hand >= hands.most || bytes_on_the_way >= most_bytes_on_the_way) co_return bench->refusal(NoReply::busy);
    ++hands.in_hand;
    const auto awaited = std::make_shared<Awaited>(sockets);
    net::post(hands.pool, [this, awaited, make = std::move(work.make)] {
        auto reply = std::make_shared<Reply>(make());
        net::post(sockets, [awaited, reply] {
            awaited->reply = std::move(*reply);
            awaited->done.cancel();
        });
    });
    error_code cancelled;
    while (!awaited->reply) co_await awaited->done.async_wait(quietly(cancelled));
    --hands.in_hand;
    co_return std::move(*awaited->reply);
}

net::awaitable<bool> BenchServer::State::write(BenchCaller& connection, Reply reply, bool keep_alive)
{
    const auto response = response_of(std::move(reply), keep_alive);
    const std::size_t bytes = response.body().size();
    connection.allow(to_write);
    bytes_on_the_way += bytes;
    error_code error;
    co_await http::async_write(connection.socket, response, quietly(error));
    bytes_on_the_way -= bytes;
    co_return !error;
}

// What still comes of a request that was refused is read and dropped for a moment: closed at once, the reply may be lost with it.
net::awaitable<void> BenchServer::State::linger(BenchCaller& connection)
{
    error_code error;
    connection.socket.shutdown(tcp::socket::shutdown_send, error);
    connection.allow(to_linger);
    std::vector<char> dropped(piece);
    while (!error && !connection.late) co_await connection.socket.async_read_some(net::buffer(dropped), quietly(error));
    co_return;
}

BenchServer::BenchServer() : state_(std::make_unique<State>()) {}
BenchServer::~BenchServer() = default;

std::optional<BenchServer::Closed> BenchServer::open(unsigned short port, const std::string& network)
{
    auto closed = state_->open_door("127.0.0.1", port, Door::here);
    return closed || network.empty() ? closed : state_->open_door(network, this->port(), Door::network);
}

unsigned short BenchServer::port() const { return state_->doors.front().first.local_endpoint().port(); }

bool BenchServer::serve(Bench& bench)
{
    state_->bench = &bench;
    state_->watch_signals();
    for (auto& [acceptor, door] : state_->doors) net::co_spawn(state_->sockets, state_->take(acceptor, door), net::detached);
    state_->sockets.run();
    if (state_->workers.in_hand + state_->waiter.in_hand > 0) return false;
    state_->workers.pool.join();
    state_->waiter.pool.join();
    return true;
}

bool is_network_address(const std::string& text)
{
    error_code error;
    const auto address = net::ip::make_address(text, error);
    if (error || address.is_unspecified() || address.is_multicast() || address.is_loopback()) return false;
    return address.to_string() == text && text.find('%') == std::string::npos;
}

}  // namespace shaftcut
