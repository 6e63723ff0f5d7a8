// One of the targets as a libFuzzer program: SHAFTCUT_FUZZ_TARGET is its name.
#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <cstdlib>

#include "fuzz/targets.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    using namespace shaftcut::fuzz;
    static const Target& target = *std::find_if(targets().begin(), targets().end(), [](const Target& row) { return row.name == std::string(SHAFTCUT_FUZZ_TARGET); });
    const std::string wrong = target.run({reinterpret_cast<const char*>(data), size});
    if (wrong.empty()) return 0;
    std::fprintf(stderr, "%s: %s\n", target.name, wrong.c_str());
    std::abort();
}
