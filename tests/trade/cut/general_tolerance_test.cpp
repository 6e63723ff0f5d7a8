#include "cut/general_tolerance.hpp"

#include "support/catch.hpp"
#include "support/jobs.hpp"

using namespace shaftcut;
using test::mm;

TEST_CASE("ISO 2768-1 class c, row by row; a boundary belongs to the lower range")
{
    struct Row {
        double over, up_to, plus_minus;
    };
    // Source: ISO 2768-1, linear dimensions, class c.
    const Row row = GENERATE(Row{30, 120, 0.8}, Row{120, 400, 1.2}, Row{400, 1000, 2}, Row{1000, 2000, 3}, Row{2000, 4000, 4});
    CHECK(coarse_tolerance(mm(row.over + 0.001)) == mm(row.plus_minus));
    CHECK(coarse_tolerance(mm(row.up_to)) == mm(row.plus_minus));
    CHECK_FALSE(coarse_tolerance(mm(30)));
    CHECK_FALSE(coarse_tolerance(mm(4000.001)));
}
