// The real server as a process, and clients that write what they like.
#pragma once

#include <arpa/inet.h>
#include <netinet/in.h>
#include <poll.h>
#include <sys/socket.h>
#include <unistd.h>

#include <array>
#include <chrono>
#include <utility>

#include "commands/process.hpp"

namespace shaftcut::test {

// A client's socket. `source`: the loopback address that it comes from, by which the server tells clients apart.
class Client {
public:
    explicit Client(unsigned port, const std::string& source = "127.0.0.1", const std::string& to = "127.0.0.1") : socket_(::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0))
    {
        REQUIRE(socket_ >= 0);
        const sockaddr_in own = end_of(source, 0), server = end_of(to, port);
        ::bind(socket_, reinterpret_cast<const sockaddr*>(&own), sizeof own);
        connected_ = ::connect(socket_, reinterpret_cast<const sockaddr*>(&server), sizeof server) == 0;
    }
    Client(Client&& other) noexcept : socket_(std::exchange(other.socket_, -1)), connected_(other.connected_) {}
    Client(const Client&) = delete;
    Client& operator=(const Client&) = delete;
    ~Client()
    {
        if (socket_ >= 0) ::close(socket_);
    }

    bool connected() const { return connected_; }
    // False where the server takes no more.
    bool send(std::string_view bytes) const
    {
        while (!bytes.empty()) {
            const ssize_t count = ::send(socket_, bytes.data(), bytes.size(), MSG_NOSIGNAL);
            if (count <= 0) return false;
            bytes.remove_prefix(static_cast<std::size_t>(count));
        }
        return true;
    }
    // Whether the server ends the connection within so long; what it sends before that is dropped.
    bool is_closed_within(int milliseconds) const
    {
        const auto end = std::chrono::steady_clock::now() + std::chrono::milliseconds(milliseconds);
        while (std::chrono::steady_clock::now() < end) {
            pollfd waited{socket_, POLLIN, 0};
            std::array<char, 65536> piece{};
            if (::poll(&waited, 1, 20) == 1 && ::recv(socket_, piece.data(), piece.size(), 0) <= 0) return true;
        }
        return false;
    }
    void end_sending() const { ::shutdown(socket_, SHUT_WR); }

    // Whatever comes until the server closes, or for so long.
    std::string rest(int milliseconds = 5000) const
    {
        std::string all;
        for (std::string piece; !(piece = some(milliseconds)).empty();) all += piece;
        return all;
    }
    // One reply: its header and as much of a body as it says.
    std::string reply(int milliseconds = 5000) const
    {
        std::string all;
        while (!is_whole(all)) {
            const std::string piece = some(milliseconds);
            if (piece.empty()) break;
            all += piece;
        }
        return all;
    }

private:
    static sockaddr_in end_of(const std::string& address, unsigned port)
    {
        sockaddr_in end{};
        end.sin_family = AF_INET;
        end.sin_port = htons(static_cast<std::uint16_t>(port));
        ::inet_pton(AF_INET, address.c_str(), &end.sin_addr);
        return end;
    }
    static bool is_whole(const std::string& reply)
    {
        const std::size_t header = reply.find("\r\n\r\n"), length = reply.find("Content-Length: ");
        if (header == std::string::npos || length == std::string::npos) return false;
        return reply.size() >= header + 4 + std::stoul(reply.substr(length + 16));
    }
    std::string some(int milliseconds) const
    {
        pollfd waited{socket_, POLLIN, 0};
        std::array<char, 65536> piece{};
        if (::poll(&waited, 1, milliseconds) != 1) return {};
        const ssize_t count = ::recv(socket_, piece.data(), piece.size(), 0);
        return count > 0 ? std::string(piece.data(), static_cast<std::size_t>(count)) : std::string();
    }

    int socket_;
    bool connected_ = false;
};

inline int status_of(const std::string& reply) { return reply.starts_with("HTTP/1.1 ") ? std::stoi(reply.substr(9, 3)) : 0; }

// The server on a port of its own, or on this one.
class BenchProcess {
public:
    explicit BenchProcess(const std::vector<std::string>& more = {}, unsigned port = 0) : process_(Start{words(more, port), "count 0", folder_.file("out")})
    {
        for (int waited = 0; waited < 10'000 && port_ == 0; waited += 10) {
            const std::string line = read_all(folder_.file("out"));
            const std::size_t end = line.find("/\n"), colon = line.rfind(':', end);
            if (end != std::string::npos) port_ = static_cast<unsigned>(std::stoul(line.substr(colon + 1, end - colon - 1)));
            else if (process_.has_ended_within(10)) break;
        }
    }
    unsigned port() const { return port_; }
    std::string out() const { return read_all(folder_.file("out")); }
    Process& process() { return process_; }

    std::string get(const std::string& path, const std::string& more = "") const { return "GET " + path + " HTTP/1.1\r\nHost: " + name() + "\r\n" + more + "\r\n"; }
    std::string post(const std::string& path, const std::string& body, const std::string& more = "") const
    {
        return "POST " + path + " HTTP/1.1\r\nHost: " + name() + "\r\nOrigin: http://" + name() + "\r\nContent-Type: application/xml\r\nContent-Length: " + std::to_string(body.size()) + "\r\n" + more +
               "\r\n" + body;
    }
    std::string ask(const std::string& request) const
    {
        const Client client(port_);
        client.send(request);
        return client.reply();
    }

private:
    static std::vector<std::string> words(const std::vector<std::string>& more, unsigned port)
    {
        std::vector<std::string> words{"bench", "--config", config_folder, "--port", std::to_string(port)};
        words.insert(words.end(), more.begin(), more.end());
        return words;
    }
    std::string name() const { return "127.0.0.1:" + std::to_string(port_); }

    Folder folder_;
    Process process_;
    unsigned port_ = 0;
};

}  // namespace shaftcut::test
