// Somebody who is connected to the bench page's server.
#pragma once

#include <boost/asio/ip/tcp.hpp>
#include <boost/asio/steady_timer.hpp>
#include <boost/beast/core/flat_buffer.hpp>
#include <chrono>
#include <memory>
#include <optional>
#include <string>

#include "request.hpp"

namespace shaftcut {

// A socket with a time for what is being done on it.
struct BenchCaller : std::enable_shared_from_this<BenchCaller> {
    using Clock = std::chrono::steady_clock;

    BenchCaller(boost::asio::ip::tcp::socket taken, Door through) : socket(std::move(taken)), timer(socket.get_executor()), door(through)
    {
        boost::system::error_code error;
        const auto end = socket.remote_endpoint(error);
        if (!error) client = end.address().to_string(error);
        socket.set_option(boost::asio::ip::tcp::no_delay(true), error);
    }

    // What is begun on the socket from here on is cancelled after so long. Time that ran out once stays so until the next call.
    void allow(Clock::duration time)
    {
        late = false;
        cancel_after(time, ++allowed);
    }
    void close()
    {
        ++allowed;
        timer.cancel();
        boost::system::error_code ignored;
        socket.close(ignored);
    }

    boost::asio::ip::tcp::socket socket;
    boost::asio::steady_timer timer;
    Door door;
    std::string client;
    boost::beast::flat_buffer buffer{};
    std::optional<Clock::time_point> silent_since{};  // while nothing of a request has come
    int allowed = 0;
    bool late = false;

private:
    // Again and again until something else is allowed: while bytes are at hand nothing waits that could be cancelled.
    void cancel_after(Clock::duration time, int own)
    {
        timer.expires_after(time);
        timer.async_wait([self = shared_from_this(), own](const boost::system::error_code& error) {
            if (error || own != self->allowed) return;
            self->late = true;
            boost::system::error_code ignored;
            self->socket.cancel(ignored);
            self->cancel_after(std::chrono::milliseconds(50), own);
        });
    }
};

}  // namespace shaftcut
