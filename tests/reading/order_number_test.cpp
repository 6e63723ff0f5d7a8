// The numbers of orders in lists, and what their files are called.
#include "order_number.hpp"

#include "support/catch.hpp"

using namespace shaftcut;

TEST_CASE("an order's number of any form gives a file name that no disk refuses")
{
    CHECK(file_name_of("B-2001_a.1") == "B-2001_a.1");
    CHECK(file_name_of("2026/0815") == "2026-0815");
    CHECK(file_name_of("A 17 (\xC3\xBC)") == "A-17----");
    CHECK(file_name_of("../x") == "-.-x");
    CHECK(file_name_of("con") == "con_");
    CHECK(file_name_of("LPT1.a") == "LPT1_.a");
    for (const char* order : {"2026/0815", "../x", "con", "LPT1.a", ".", "nul.", "\xC3\xBC"}) {
        INFO(order);
        CHECK(listed_order_faults(order).empty());
        CHECK(order_faults(file_name_of(order)).empty());
    }
    CHECK(listed_order_faults("").size() == 1);
    CHECK(listed_order_faults(std::string(41, 'x')).size() == 1);
}

TEST_CASE("numbers whose files would have one name are one number, and all of them are met twice")
{
    OrderNumbers met;
    CHECK_FALSE(met.add("2026/1", 2));
    CHECK_FALSE(met.met_twice("2026/1"));
    CHECK(met.add("2026-1", 3)->earlier == "2026/1");
    CHECK(met.met_twice("2026/1"));
    CHECK(met.met_twice("2026-1"));
    CHECK_FALSE(met.met_twice("2026-2"));
}
