// One list of orders as LibreOffice writes it: for four languages, with each of its export settings, as CSV and as workbook (tests/reading/lists/make).
#include "reading/support.hpp"

using namespace shaftcut;

namespace {

// Of the room that is called as they end.
std::vector<std::filesystem::path> lists(const std::string& suffix)
{
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::directory_iterator(reading_test::folder / "lists" / suffix)) files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    return files;
}

void check_orders(const OrderList& list)
{
    for (const Fault& fault : list.faults) FAIL(reading_test::line_of(fault));
    REQUIRE(list.orders.size() == 3);
    const BuildOrder &first = list.orders[0], &second = list.orders[1], &third = list.orders[2];
    CHECK(first.order == "B-1");
    CHECK(first.count == 2);
    CHECK(first.closed->length == Length::micrometres(742'500));
    CHECK(first.customer == "Müller & Söhne; Hof, Süd (invented)");
    CHECK(first.due == "2026-12-04");
    CHECK(second.order == "00123");
    CHECK(second.count == 1);
    CHECK(second.closed->length == Length::millimetres(830));
    CHECK(second.customer == "Żółw \"Pole\" (invented)");
    CHECK(second.due == "2026-11-03");
    CHECK(third.order == "2026/7");
    CHECK(third.count == 3);
    CHECK(third.closed->length == Length::micrometres(860'250));
    CHECK(third.customer == "Champ d'été (invented)");
    CHECK(third.due == "2027-01-31");
}

// Texts with a decimal comma in a list that is separated by commas: what the other separators are for. Numbers have a point there.
bool is_refused(const std::string& name)
{
    return name.find("-texts-comma") != std::string::npos && !name.starts_with("en-");
}

}  // namespace

TEST_CASE("CSV as a spreadsheet program writes it with each of its settings")
{
    const auto files = lists("csv");
    CHECK(files.size() == 40);
    for (const auto& file : files) {
        INFO(file.filename().string());
        const OrderList list = read_orders_csv({"f.csv", reading_test::bytes_of(file)}, reading_test::catalogue(), Units::mm);
        if (!is_refused(file.filename().string())) check_orders(list);
        else CHECK((list.orders.size() == 1 && list.faults.size() == 2));  // 830 has no decimals
    }
}

TEST_CASE("workbooks as a spreadsheet program writes them")
{
    const auto files = lists("xlsx");
    CHECK(files.size() == 20);
    for (const auto& file : files) {
        INFO(file.filename().string());
        check_orders(read_orders_csv({"f.xlsx", reading_test::bytes_of(file)}, reading_test::catalogue(), Units::mm));
    }
}
