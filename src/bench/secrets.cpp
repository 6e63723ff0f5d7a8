#include "secrets.hpp"

#include <sodium.h>

#include <array>
#include <stdexcept>
#include <vector>

namespace shaftcut {
namespace {

constexpr std::uint32_t codes = 100'000'000;
constexpr std::size_t code_digits = 8;

// It may be called as often as one likes, from any thread.
void begin()
{
    if (sodium_init() < 0) throw std::runtime_error("libsodium");
}

std::string hexadecimal(const unsigned char* bytes, std::size_t count)
{
    std::string text(2 * count + 1, '\0');
    sodium_bin2hex(text.data(), text.size(), bytes, count);
    text.pop_back();
    return text;
}

}  // namespace

std::string random_hexadecimal(std::size_t bytes)
{
    begin();
    std::vector<unsigned char> random(bytes);
    randombytes_buf(random.data(), random.size());
    return hexadecimal(random.data(), random.size());
}

std::string random_code()
{
    begin();
    const std::string digits = std::to_string(randombytes_uniform(codes));
    return std::string(code_digits - digits.size(), '0') + digits;
}

std::string sha256(std::string_view bytes)
{
    begin();
    std::array<unsigned char, crypto_hash_sha256_BYTES> hash{};
    crypto_hash_sha256(hash.data(), reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size());
    return hexadecimal(hash.data(), hash.size());
}

bool same_secret(std::string_view one, std::string_view other)
{
    begin();
    return one.size() == other.size() && sodium_memcmp(one.data(), other.data(), one.size()) == 0;
}

std::string sodium_in_use() { return sodium_version_string(); }

}  // namespace shaftcut
