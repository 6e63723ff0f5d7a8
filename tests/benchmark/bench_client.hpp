// A client of the bench page's server, and the server as a process.
#pragma once

#include <arpa/inet.h>
#include <netinet/in.h>
#include <netinet/tcp.h>
#include <signal.h>
#include <sys/socket.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cstdio>
#include <fstream>
#include <stdexcept>
#include <string>

namespace shaftcut::benchmark {

// `words`: a program and its arguments; its first line says "http://127.0.0.1:PORT/".
class Server {
public:
    explicit Server(const std::string& program, const std::string& configuration)
    {
        std::array<int, 2> pipe{};
        if (::pipe(pipe.data()) != 0) throw std::runtime_error("no pipe could be made");
        id_ = ::fork();
        if (id_ == 0) {
            ::dup2(pipe[1], STDOUT_FILENO);
            ::execl(program.c_str(), program.c_str(), "bench", "--port", "0", "--config", configuration.c_str(), static_cast<char*>(nullptr));
            ::_exit(127);
        }
        ::close(pipe[1]);
        std::string line;
        for (char c = 0; ::read(pipe[0], &c, 1) == 1 && c != '\n';) line += c;
        ::close(pipe[0]);
        const std::size_t colon = line.rfind(':');
        if (!line.starts_with("http://127.0.0.1:")) throw std::runtime_error("the server did not start");
        port_ = std::stoi(line.substr(colon + 1));
    }
    Server(const Server&) = delete;
    Server& operator=(const Server&) = delete;
    ~Server()
    {
        ::kill(id_, SIGTERM);
        ::waitpid(id_, nullptr, 0);
    }

    int port() const { return port_; }
    // Resident memory now.
    long kilobytes() const
    {
        std::ifstream status("/proc/" + std::to_string(id_) + "/status");
        for (std::string line; std::getline(status, line);)
            if (line.starts_with("VmRSS:")) return std::stol(line.substr(6));
        return 0;
    }

private:
    pid_t id_ = 0;
    int port_ = 0;
};

// One connection that stays, from a loopback address of its own, by which the server tells clients apart.
class Tablet {
public:
    Tablet(int port, int number) : port_(port), socket_(::socket(AF_INET, SOCK_STREAM, 0))
    {
        const sockaddr_in own = end_of(0x7f000100U + static_cast<unsigned>(number), 0), server = end_of(INADDR_LOOPBACK, port);
        if (::bind(socket_, reinterpret_cast<const sockaddr*>(&own), sizeof own) != 0 || ::connect(socket_, reinterpret_cast<const sockaddr*>(&server), sizeof server) != 0)
            throw std::runtime_error("no connection to the server");
        const int at_once = 1;
        ::setsockopt(socket_, IPPROTO_TCP, TCP_NODELAY, &at_once, sizeof at_once);
    }
    Tablet(const Tablet&) = delete;
    Tablet& operator=(const Tablet&) = delete;
    ~Tablet() { ::close(socket_); }

    // The reply's status.
    int post(const std::string& path, const std::string& body)
    {
        const std::string name = "127.0.0.1:" + std::to_string(port_);
        const std::string request = "POST " + path + " HTTP/1.1\r\nHost: " + name + "\r\nOrigin: http://" + name + "\r\nContent-Type: application/xml\r\nContent-Length: " + std::to_string(body.size()) +
                                    "\r\n\r\n" + body;
        if (::send(socket_, request.data(), request.size(), MSG_NOSIGNAL) != static_cast<ssize_t>(request.size())) return 0;
        return reply();
    }

private:
    static sockaddr_in end_of(unsigned address, int port)
    {
        sockaddr_in end{};
        end.sin_family = AF_INET;
        end.sin_port = htons(static_cast<std::uint16_t>(port));
        end.sin_addr.s_addr = htonl(address);
        return end;
    }
    int reply()
    {
        std::string all;
        std::array<char, 65536> piece{};
        for (;;) {
            const std::size_t header = all.find("\r\n\r\n"), length = all.find("Content-Length: ");
            if (header != std::string::npos && all.size() >= header + 4 + std::stoul(all.substr(length + 16))) return std::stoi(all.substr(9, 3));
            const ssize_t count = ::recv(socket_, piece.data(), piece.size(), 0);
            if (count <= 0) return 0;
            all.append(piece.data(), static_cast<std::size_t>(count));
        }
    }

    int port_, socket_;
};

}  // namespace shaftcut::benchmark
