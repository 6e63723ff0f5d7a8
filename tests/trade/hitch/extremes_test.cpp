#include "shaftcut/trade/hitch/extremes.hpp"

#include <cmath>

#include "support/catch.hpp"

using namespace shaftcut;

namespace {

using At = std::array<double, 3>;

Box box(At middle, At half)
{
    Box all{middle, half, {1, 1, 1}};
    for (std::size_t i = 0; i < 3; ++i)
        if (half[i] > 0) all.points[i] = 7;
    return all;
}

}  // namespace

TEST_CASE("the greatest value is found inside, on a face, along an edge and in a corner")
{
    struct Row { At top; At expected; const char* where; };
    const Row rows[] = {
        {{0.31, -0.17, 0.73}, {0.31, -0.17, 0.73}, "inside"},
        {{2, -0.17, 0.73}, {1, -0.17, 0.73}, "on a face"},
        {{2, -0.17, -3}, {1, -0.17, -1}, "along an edge"},
        {{-2, 5, -3}, {-1, 1, -1}, "in a corner"},
    };
    for (const Row& row : rows) {
        INFO(row.where);
        const auto hill = [&row](const At& at) -> std::optional<double> {
            double value = 0;
            for (std::size_t i = 0; i < 3; ++i) value -= std::cosh(at[i] - row.top[i]);
            return value;
        };
        const Greatest found = greatest(hill, box({}, {1, 1, 1}));
        REQUIRE(found.value);
        for (std::size_t i = 0; i < 3; ++i) CHECK(found.at[i] == Approx(row.expected[i]).margin(1e-6));
    }
}

TEST_CASE("the top of a narrow ridge askew to the grid is found")
{
    const auto ridge = [](const At& at) -> std::optional<double> {
        const double off = at[0] - 0.83 * at[1];
        const double along = at[0] + at[1] - 0.4;
        return -1000 * off * off - along * along;
    };
    const Greatest found = greatest(ridge, box({}, {1, 1, 0}));
    CHECK(found.value.value() == Approx(0).margin(1e-9));
}

TEST_CASE("the higher of two hills is found, and of equal ones the positive")
{
    const auto hills = [](double more) {
        return [more](const At& at) -> std::optional<double> {
            return std::cos(4 * at[0]) * -1 + more * at[0];  // tops near -0.785 and 0.785
        };
    };
    CHECK(greatest(hills(0), box({}, {1, 0, 0})).at[0] == Approx(0.785398).margin(1e-5));
    CHECK(greatest(hills(0.01), box({}, {1, 0, 0})).at[0] > 0);
    CHECK(greatest(hills(-0.01), box({}, {1, 0, 0})).at[0] < 0);
}

TEST_CASE("a movement that changes nothing stays at its middle, one that cannot move is held")
{
    const auto slope = [](const At& at) -> std::optional<double> { return at[0] + at[2]; };
    const Greatest found = greatest(slope, box({3, 4, 5}, {1, 1, 0}));
    CHECK(found.at == At{4, 4, 5});
    CHECK(found.value.value() == Approx(9));
}

TEST_CASE("a function that is level but for rounding has its greatest value")
{
    const auto level = [](const At& at) -> std::optional<double> { return 500 * std::hypot(std::cos(at[0]), std::sin(at[0])); };
    for (const double half : {0.1, 0.5, 0.873, 1.0, 1.2}) {
        const Greatest found = greatest(level, box({}, {half, 0, 0}));
        CHECK(found.value.value() == Approx(500));
        CHECK(found.at[0] == 0);
    }
}

TEST_CASE("a position without an answer ends the search")
{
    const auto partly = [](const At& at) -> std::optional<double> {
        if (at[0] > 0.9) return std::nullopt;
        return at[0];
    };
    const Greatest found = greatest(partly, box({}, {1, 0, 0}));
    CHECK_FALSE(found.value);
    CHECK(found.at[0] > 0.9);
}
