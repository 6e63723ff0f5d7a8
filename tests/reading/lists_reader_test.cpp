// An office's own maps of its lists, and lists read by them.
#include "lists/orders_reader.hpp"

#include "reading/support.hpp"

using namespace shaftcut;

namespace {

const ListMap& meadow()
{
    static const auto read = read_lists({"lists.xml", reading_test::bytes_of(reading_test::project / "config/lists.xml")}, reading_test::catalogue());
    return read.value.value().front();
}

const std::string heading = "Job;Item;Off;For;Wanted;Guarded;Lock, machine;Shelf\n";

OrderList read(const std::string& lines, const ListMap* map = &meadow()) { return read_orders_csv({"f.csv", lines}, reading_test::catalogue(), Units::mm, map); }

std::string faults_of(const std::string& lines) { return reading_test::lines_of(read(lines).faults); }

}  // namespace

TEST_CASE("an office's list is read by its map")
{
    const OrderList list = read(heading + "M/1;MW-083;2,00;A;4/12/26;bare;bolted;C4\n");
    REQUIRE(reading_test::lines_of(list.faults) == "");
    const BuildOrder& order = list.orders.at(0);
    CHECK(order.order == "M/1");
    CHECK(order.count == 2);
    CHECK(order.due == "2026-12-04");
    CHECK_FALSE(order.guard);
    CHECK(order.shaft.series == "Alder 2");
    CHECK(order.shaft.speed == 540);
    CHECK(order.shaft.inner_tube == End::implement);
    CHECK(order.closed->length == Length::millimetres(830));
    CHECK(order.shaft.ends[End::tractor].lock == Lock::shrouded_push_pin);
    CHECK(order.shaft.ends[End::implement].lock == Lock::clamp_bolt);
}

TEST_CASE("an article that the map does not hold is asked for")
{
    CHECK(faults_of(heading + "1;MW-88;1;A;4/12/26;bare;bolted;\n").starts_with("f.csv:2:3: article \"MW-88\" is no article of the list map \"Meadow\"; did you mean \"MW-083\"? else add it"));
}

TEST_CASE("a line may repeat its article, and must not contradict it")
{
    const std::string lines = "Job;Item;closed length;series\n1;MW-083;";
    CHECK(faults_of(lines + "830,0;Alder 2\n") == "");
    CHECK(faults_of(lines + "840;\n") == "f.csv:2:10: closed \"840\", but article \"MW-083\" is \"830 mm\"; leave one of them out, or write the same\n");
    CHECK(faults_of(lines + ";Elm 4\n") == "f.csv:2:11: series \"Elm 4\", but article \"MW-083\" is \"Alder 2\"; leave one of them out, or write the same\n");
}

TEST_CASE("a fixed length of an article beside lengths to build to is a contradiction")
{
    CHECK(faults_of("Job;Item;shortest;longest_turning\n1;MW-083;742;850\n").find("f.csv:2:3: closed") == 0);
}

TEST_CASE("a map's unit holds whatever the call's is, and an article keeps its own")
{
    ListMap map = meadow();
    map.units = Units::in;
    const OrderList list = read_orders_csv({"f.csv", heading + "1;MW-083;1;A;4/12/26;;bolted;\n"}, reading_test::catalogue(), Units::mm, &map);
    CHECK(list.units == Units::in);
    CHECK(list.orders.at(0).closed->length == Length::millimetres(830));
}

TEST_CASE("the order of day and month is the map's, and with points the day is first")
{
    ListMap map = meadow();
    const auto due = [&](const std::string& day) {
        const OrderList list = read(heading + "1;MW-083;1;A;" + day + ";;bolted;\n", &map);
        return list.orders.empty() ? reading_test::lines_of(list.faults) : list.orders.front().due;
    };
    CHECK(due("4/12/26") == "2026-12-04");
    map.dates = DateOrder::month_first;
    CHECK(due("4/12/26") == "2026-04-12");
    CHECK(due("04.12.2026") == "2026-12-04");
    CHECK(due("13/12/26").find("is no day of the calendar") != std::string::npos);
    map.dates.reset();
    CHECK(due("4/12/26").find("write 2026-12-04 or 2026-04-12") != std::string::npos);
}

TEST_CASE("an own heading stands for its column alone, whatever it would be elsewhere")
{
    ListMap map{"M", {}, {}, {{"machine", OrderColumn::customer}}, {}, {}};
    const std::string lines = "order;machine;series;role;inner_tube;tractor_joint;implement_joint;closed\n1;A;Alder 2;primary;implement;standard;standard;830\n";
    CHECK(read(lines, &map).orders.at(0).customer == "A");
    CHECK(read(lines, &map).orders.at(0).machine == "");
    CHECK(read(lines, nullptr).orders.at(0).machine == "A");
}

TEST_CASE("without a map articles and what is left out are unknown columns")
{
    CHECK(reading_test::lines_of(read("order;article\n", nullptr).faults).find("unknown column \"article\"") != std::string::npos);
    CHECK(faults_of("Job;Item;left-out\n").find("unknown column \"left-out\"") != std::string::npos);
}

TEST_CASE("what is nearly a series, a connection or a word is asked for by its name")
{
    const std::string columns = "order;series;role;inner_tube;tractor_joint;implement_joint;tractor_connection;tractor_lock;tractor_device;guard;closed\n";
    const std::string faults = faults_of(columns + "1;Alder2;primery;implementt;standart;standard;1-3/8-8;shroud-push-pin;slipclutch;ye;830\n");
    for (const char* meant : {"\"Alder 2\"?", "primary?", "implement?", "standard?", "\"1-3/8-6\"?", "shrouded-push-pin?", "slip-clutch?", "yes?"}) {
        INFO(faults);
        CHECK(faults.find(std::string("did you mean ") + meant) != std::string::npos);
    }
}

TEST_CASE("an order with a value that is asked for is not built, the others are")
{
    const std::string columns = "order;series;role;inner_tube;tractor_joint;implement_joint;closed;due\n", words = ";Alder 2;primary;implement;standard;standard;";
    const OrderList list = read(columns + "1" + words + "830;4/12/26\n1,2E+05" + words + "830;\n3" + words + "1.250;\n4" + words + "830;4.12.2026\n", nullptr);
    CHECK(list.faults.size() == 3);
    REQUIRE(list.orders.size() == 1);
    CHECK(list.orders.front().order == "4");
}
