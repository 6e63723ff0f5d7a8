// What a second implementation of the method finds otherwise than the program.
#pragma once

#include <cstdlib>
#include <string>
#include <type_traits>
#include <vector>

#include "support/catch.hpp"
#include "support/plain/plain_method.hpp"

namespace shaftcut::test {

class Differences {
public:
    template <class T>
    void compare(const std::string& what, const T& program, const T& plain)
    {
        if (program != plain) text_ += what + ": program " + word(program) + ", plain " + word(plain) + "\n";
    }
    const std::string& text() const { return text_; }

private:
    static std::string word(const std::string& text) { return text; }
    static std::string word(std::int64_t figure) { return std::to_string(figure); }
    static std::string word(const plain::Maybe& figure) { return figure ? std::to_string(*figure) : "none"; }
    template <class E>
        requires std::is_enum_v<E>
    static std::string word(E value) { return to_word(value); }
    std::string text_;
};

inline plain::Maybe um(const std::optional<Length>& length) { return length ? plain::Maybe(length->um()) : std::nullopt; }

inline void compare_checks(Differences& found, const std::vector<Check>& program, const std::array<plain::PlainCheck, plain::check_count>& plain)
{
    for (std::size_t i = 0; i < plain.size(); ++i) {
        const std::string name = to_word(program[i].id);
        found.compare(name + " result", program[i].result, plain[i].result);
        found.compare(name + " value", program[i].value, plain[i].value);
        found.compare(name + " worst", program[i].worst, plain[i].worst);
        found.compare(name + " limit", program[i].limit, plain[i].limit);
    }
}

// Nothing may differ in worlds 0 to `usual` or what the environment variable SHAFTCUT_DIFFERENTIAL_JOBS says; ten are shown.
template <class DifferencesOf>
void check_all_agree(std::uint64_t usual, const DifferencesOf& differences_of)
{
    const char* wanted = std::getenv("SHAFTCUT_DIFFERENTIAL_JOBS");
    const std::uint64_t worlds = wanted ? std::strtoull(wanted, nullptr, 10) : usual;
    int disagreements = 0;
    for (std::uint64_t number = 0; number < worlds && disagreements < 10; ++number) {
        const std::string found = differences_of(number);
        if (found.empty()) continue;
        ++disagreements;
        UNSCOPED_INFO("number " << number << "\n" << found);
    }
    CHECK(disagreements == 0);
}

}  // namespace shaftcut::test
