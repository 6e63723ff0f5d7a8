// Debian 12 has Catch2 version 2, Debian 13 version 3: the tests use only what both share.
#pragma once
#if __has_include(<catch2/catch_all.hpp>)
#include <catch2/catch_all.hpp>
using Catch::Approx;
#else
#include <catch2/catch.hpp>
#endif
