#include "files/other_programs.hpp"

#include <arpa/inet.h>
#include <fcntl.h>
#include <netinet/in.h>
#include <spawn.h>
#include <sys/mman.h>
#include <sys/socket.h>
#include <sys/time.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <csignal>
#include <ctime>
#include <string_view>
#include <vector>

namespace shaftcut {
namespace {

constexpr int seconds_to_print = 20, waits_a_second = 20;

// Its standard input is `in`, nothing of it is heard. -1 where there is no such program.
pid_t start(std::vector<std::string> words, int in)
{
    posix_spawn_file_actions_t files;
    posix_spawn_file_actions_init(&files);
    posix_spawn_file_actions_addopen(&files, STDOUT_FILENO, "/dev/null", O_WRONLY, 0);
    posix_spawn_file_actions_addopen(&files, STDERR_FILENO, "/dev/null", O_WRONLY, 0);
    if (in >= 0) posix_spawn_file_actions_adddup2(&files, in, STDIN_FILENO);
    else posix_spawn_file_actions_addopen(&files, STDIN_FILENO, "/dev/null", O_RDONLY, 0);
    // None of this program's sockets: a browser that outlives it would keep the port.
    posix_spawn_file_actions_addclosefrom_np(&files, STDERR_FILENO + 1);
    // This program ignores what would end others.
    posix_spawnattr_t as_usual;
    posix_spawnattr_init(&as_usual);
    sigset_t defaults;
    sigemptyset(&defaults);
    for (const int signal : {SIGPIPE, SIGXFSZ}) sigaddset(&defaults, signal);
    posix_spawnattr_setsigdefault(&as_usual, &defaults);
    posix_spawnattr_setflags(&as_usual, POSIX_SPAWN_SETSIGDEF);
    std::vector<char*> pointers;
    for (std::string& word : words) pointers.push_back(word.data());
    pointers.push_back(nullptr);
    pid_t id = -1;
    if (::posix_spawnp(&id, pointers.front(), &files, &as_usual, pointers.data(), environ) != 0) id = -1;
    posix_spawn_file_actions_destroy(&files);
    posix_spawnattr_destroy(&as_usual);
    return id;
}

void pause()
{
    const timespec time{0, 1'000'000'000 / waits_a_second};
    ::nanosleep(&time, nullptr);
}

bool succeeds(pid_t id)
{
    int status = 0;
    for (int waited = 0; waited < seconds_to_print * waits_a_second; ++waited) {
        if (::waitpid(id, &status, WNOHANG) == id) return WIFEXITED(status) && WEXITSTATUS(status) == 0;
        pause();
    }
    ::kill(id, SIGKILL);
    ::waitpid(id, &status, 0);
    return false;
}

// A file without a name, so that whoever reads it may be as slow as it likes.
int file_of(const std::string& bytes)
{
    const int file = ::memfd_create("document", MFD_CLOEXEC);
    if (file < 0) return -1;
    std::size_t written = 0;
    while (written < bytes.size()) {
        const ssize_t count = ::write(file, bytes.data() + written, bytes.size() - written);
        if (count <= 0) break;
        written += static_cast<std::size_t>(count);
    }
    if (written == bytes.size() && ::lseek(file, 0, SEEK_SET) == 0) return file;
    ::close(file);
    return -1;
}

std::string answer_of(int socket, unsigned port)
{
    const timeval patience{5, 0};
    ::setsockopt(socket, SOL_SOCKET, SO_RCVTIMEO, &patience, sizeof patience);
    ::setsockopt(socket, SOL_SOCKET, SO_SNDTIMEO, &patience, sizeof patience);
    sockaddr_in end{};
    end.sin_family = AF_INET;
    end.sin_port = htons(static_cast<std::uint16_t>(port));
    end.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    if (::connect(socket, reinterpret_cast<const sockaddr*>(&end), sizeof end) != 0) return {};
    const std::string request = "GET /pairing HTTP/1.1\r\nHost: 127.0.0.1:" + std::to_string(port) + "\r\nConnection: close\r\n\r\n";
    if (::send(socket, request.data(), request.size(), MSG_NOSIGNAL) != static_cast<ssize_t>(request.size())) return {};
    std::string answer;
    std::array<char, 4096> piece{};
    for (ssize_t count; (count = ::recv(socket, piece.data(), piece.size(), 0)) > 0;) answer.append(piece.data(), static_cast<std::size_t>(count));
    return answer;
}

}  // namespace

bool print_document(const std::string& printer, const Document& document)
{
    const int file = file_of(document.bytes);
    if (file < 0) return false;
    const pid_t id = start({"lp", "-s", "-d", printer, "-t", document.name, "-"}, file);
    ::close(file);
    return id > 0 && succeeds(id);
}

bool is_printer_name(const std::string& name)
{
    const auto may = [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '.' || c == '-' || c == '_'; };
    return !name.empty() && name.size() <= 127 && name.front() != '-' && std::all_of(name.begin(), name.end(), may);
}

void open_address(const std::string& address) { start({"xdg-open", address}, -1); }

Called call_bench(unsigned port)
{
    const int socket = ::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0);
    if (socket < 0) return {};
    const std::string answer = answer_of(socket, port);
    ::close(socket);
    constexpr std::string_view begin = "HTTP/1.1 ";
    const std::size_t body = answer.find("\r\n\r\n");
    if (!answer.starts_with(begin) || body == std::string::npos) return {};
    Called called{0, answer.substr(body + 4)};
    std::from_chars(answer.data() + begin.size(), answer.data() + body, called.status);
    return called;
}

}  // namespace shaftcut
