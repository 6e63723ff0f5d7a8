// How a tablet of the workshop's network is let in: by a code that the workshop's PC shows.
//
// A code is made when the PC asks for one, holds for ten minutes, for one tablet and for five tries; then there is none until the PC asks
// again, so that whoever guesses has five tries of a hundred million for each time that somebody there wants to pair. Source of the
// lengths: the project's own choice. Checked in tests/bench/pairing_test.cpp.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "request.hpp"
#include "tablets.hpp"

namespace shaftcut {

inline constexpr double code_holds_seconds = 600;
inline constexpr int code_tries = 5;

// What pairing needs of the world. `tablets` and `keep` are the file; `keep` is false where it could not be written.
struct PairingMeans {
    std::function<double()> seconds;          // a clock that never goes back
    std::function<std::int64_t()> now;        // seconds since 1970
    std::function<std::string()> code;        // eight digits
    std::function<std::string()> token;       // hexadecimal digits
    std::function<std::vector<Tablet>()> tablets;
    std::function<bool(const std::string& token_hash, std::int64_t now, const std::string& client)> keep;
};

class Pairing {
public:
    explicit Pairing(PairingMeans means) : means_(std::move(means)) {}

    struct Code {
        std::string digits;
        int seconds = 0;  // for which it still holds
    };
    // For the PC: the one that holds, or a new one.
    Code code();

    // Its code is wrong, or none holds; it is right, but the tablet could not be kept.
    enum class NotLetIn { wrong_code, not_kept };
    // The cookie to set for a tablet at `client` that gives the right code.
    std::variant<std::string, NotLetIn> pair(std::string_view code, const std::string& client);

    // Whether a request has the cookie of a tablet that is paired.
    bool is_paired(const Request& request) const;

    std::vector<Tablet> tablets() const { return means_.tablets(); }

private:
    bool holds() const;

    PairingMeans means_;
    std::string code_;
    double made_ = 0;
    int tries_ = 0;
};

// The code of `<pair code="12345678"/>`, which is all that such a body may be; else empty.
std::string code_in(std::string_view body);

}  // namespace shaftcut
