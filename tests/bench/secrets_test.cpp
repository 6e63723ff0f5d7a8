#include "secrets.hpp"

#include <array>
#include <set>

#include "support/catch.hpp"

using namespace shaftcut;

// FIPS 180-4: the examples of one block and of two blocks that NIST publishes with it, from memory; sha256sum gives the same.
TEST_CASE("secrets: the hash is SHA-256")
{
    CHECK(sha256("abc") == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    CHECK(sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq") == "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    CHECK(sha256("") == "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
}

TEST_CASE("secrets: two are the same where every byte is")
{
    CHECK(same_secret("", ""));
    CHECK(same_secret("12345678", "12345678"));
    for (const char* other : {"12345679", "02345678", "1234567", "123456789", ""}) CHECK_FALSE(same_secret("12345678", other));
}

TEST_CASE("secrets: random digits are of the length asked for, and each digit comes in each place")
{
    std::set<std::string> tokens;
    std::array<std::set<char>, 8> digits;
    for (int i = 0; i < 1000; ++i) {
        const std::string code = random_code();
        REQUIRE(code.size() == 8);
        for (std::size_t place = 0; place < 8; ++place) digits[place].insert(code[place]);
        tokens.insert(random_hexadecimal(32));
    }
    CHECK(tokens.size() == 1000);
    for (const std::string& token : tokens) CHECK((token.size() == 64 && token.find_first_not_of("0123456789abcdef") == std::string::npos));
    for (const auto& place : digits) CHECK(place == std::set<char>{'0', '1', '2', '3', '4', '5', '6', '7', '8', '9'});
}
