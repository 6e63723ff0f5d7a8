// Catch2's own main, and a closing line that counts the test cases.
#if !__has_include(<catch2/catch_all.hpp>)
#define CATCH_CONFIG_RUNNER
#endif
#include "support/catch.hpp"

#if __has_include(<catch2/catch_all.hpp>)
#include <catch2/reporters/catch_reporter_registrars.hpp>
using ListenerBase = Catch::EventListenerBase;
#else
using ListenerBase = Catch::TestEventListenerBase;
#endif

#include <iostream>

namespace {

struct ClosingLine : ListenerBase {
    using ListenerBase::ListenerBase;
    void testRunEnded(const Catch::TestRunStats& stats) override
    {
        const auto& cases = stats.totals.testCases;
        std::cout << cases.passed << " passed, " << cases.failed << " failed\n";
    }
};

}  // namespace

CATCH_REGISTER_LISTENER(ClosingLine)

int main(int argc, char** argv) { return Catch::Session().run(argc, argv) == 0 ? 0 : 1; }
