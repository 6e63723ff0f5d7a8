// Random bytes, a hash and a comparison that tells nothing by its time, by libsodium.
//
// The hash is SHA-256 (FIPS 180-4); its test is that standard's own example. Random bytes come from the system (getrandom).
// Checked in tests/bench/secrets_test.cpp.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace shaftcut {

// So many bytes, written as twice as many hexadecimal digits in small letters.
std::string random_hexadecimal(std::size_t bytes);

// Eight decimal digits, each code as likely as any other.
std::string random_code();

// SHA-256, as 64 hexadecimal digits in small letters.
std::string sha256(std::string_view bytes);

// Takes as long for texts of one length that differ at their beginning as for those that differ at their end.
bool same_secret(std::string_view one, std::string_view other);

// "1.0.18": the version that is loaded.
std::string sodium_in_use();

}  // namespace shaftcut
