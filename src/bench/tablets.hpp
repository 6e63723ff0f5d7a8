// The tablets that are let in from the workshop's network, as a file keeps them: of each token its hash, never the token.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace shaftcut {

// For how long a tablet stays paired.
inline constexpr std::int64_t paired_for_seconds = std::int64_t{180} * 24 * 60 * 60;

// `number`: from 1 on, its own while it is paired. `token_hash`: SHA-256 of the cookie's token. `paired`: when, seconds since 1970. `client`: the address
// that it had then.
struct Tablet {
    int number = 0;
    std::string token_hash;
    std::int64_t paired = 0;
    std::string client;
    bool operator==(const Tablet&) const = default;
};

// A line a tablet, under a first line that says what the file is. A line that cannot be read is nobody's: that tablet is not let in.
std::string tablets_text(const std::vector<Tablet>& tablets);
std::vector<Tablet> read_tablets(std::string_view text);

// The one whose token this is and that is still paired at `now`; nothing where there is none.
std::optional<Tablet> tablet_of(const std::vector<Tablet>& tablets, std::string_view token, std::int64_t now);

// Without those whose time has run out, and with one more.
std::vector<Tablet> with_tablet(std::vector<Tablet> tablets, std::string token_hash, std::int64_t now, const std::string& client);

// "2026-11-28": the day of a time, in UTC.
std::string day_of(std::int64_t seconds);

}  // namespace shaftcut
