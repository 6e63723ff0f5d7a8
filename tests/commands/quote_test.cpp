// shaftcut quote as a program: offers, their totals and what is refused.
#include <nlohmann/json.hpp>

#include "commands/program.hpp"
#include "support/catch.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

Run quote(const std::vector<std::string>& arguments)
{
    std::vector<std::string> all{"quote", "--config", config_folder};
    all.insert(all.end(), arguments.begin(), arguments.end());
    return run(all);
}

nlohmann::ordered_json json_of(const std::vector<std::string>& arguments)
{
    std::vector<std::string> all{"--formats", "json", "--output", "-"};
    all.insert(all.end(), arguments.begin(), arguments.end());
    const Run ended = quote(all);
    INFO(ended.err);
    REQUIRE(!ended.out.empty());
    return nlohmann::ordered_json::parse(ended.out);
}

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

std::int64_t cents(const nlohmann::ordered_json& amount)
{
    std::string digits = amount.get<std::string>();
    std::erase(digits, '.');
    return std::stoll(digits);
}

}  // namespace

TEST_CASE("a quote that is to come out the same again is of the day of its source")
{
    ::setenv("SOURCE_DATE_EPOCH", "1795000000", 1);  // 2026-11-18, by date -u -d @1795000000
    const auto quoted = json_of({sample("plain-cut")});
    ::unsetenv("SOURCE_DATE_EPOCH");
    CHECK(quoted["date"] == "2026-11-18");
}

TEST_CASE("a job that is cut is offered, and its figures add up")
{
    const auto json = json_of({sample("plain-cut")});
    CHECK(json["verdict"] == "complete");
    CHECK(json["currency"] == "EUR");
    std::int64_t lines = 0, tax = 0;
    for (const auto& line : json["lines"]) lines += cents(line["amount"]);
    for (const auto& one : json["tax"]) tax += cents(one["amount"]);
    CHECK(lines == cents(json["net"]));
    CHECK(lines + tax == cents(json["total"]));
    CHECK(json["alternatives"].empty());
    CHECK(json["valid_until"].is_string());
}

TEST_CASE("a refused cut is not priced, and what would serve is")
{
    const Run ended = quote({"--formats", "json", "--output", "-", sample("refused-transport-height")});
    CHECK(ended.exit == 1);
    const auto json = nlohmann::ordered_json::parse(ended.out);
    CHECK(json["verdict"] == "refused");
    REQUIRE(!json["alternatives"].empty());
    CHECK(json["alternatives"][0]["kind"] == "change-at-machine");
    CHECK(json["alternatives"][0]["total"].is_string());
    for (const auto& line : json["lines"]) CHECK(line["text"] == "measuring");
}

TEST_CASE("a list is quoted customer by customer, and what is held or refused is not offered")
{
    const Folder folder;
    const Run ended = quote({"--formats", "json", "--output", folder.path(), source_folder + "/samples/orders.csv"});
    CHECK(ended.exit == 1);
    CHECK(ended.err.empty());
    std::size_t found = 0, held = 0, refused = 0;
    for (const auto& entry : std::filesystem::directory_iterator(folder.path())) {
        CHECK(entry.path().filename().string().starts_with("orders-quote"));
        const auto json = nlohmann::ordered_json::parse(read_all(entry.path().string()));
        found += json["orders"].size();
        for (const auto& order : json["orders"]) {
            held += order["verdict"] == "held" ? 1 : 0;
            refused += order["verdict"] == "refused" ? 1 : 0;
            if (order["verdict"] != "build") CHECK(json["verdict"] == "incomplete");
        }
        for (const auto& line : json["lines"]) CHECK((line["amount"].is_null() || cents(line["amount"]) >= 0));
    }
    CHECK(found > 3);
    CHECK(held > 0);
    CHECK(refused > 0);
    CHECK(has(ended.out, "is not offered"));
}

TEST_CASE("customers whose names come to one file name have a file each")
{
    const Folder folder;
    const std::string orders = read_all(source_folder + "/samples/orders.csv");
    const std::size_t heading = orders.find('\n') + 1;
    std::string list = orders.substr(0, heading), line = orders.substr(heading, orders.find('\n', heading) + 1 - heading);
    const std::string customer = "Brookside Farm (invented)";
    REQUIRE(line.find(customer) != std::string::npos);
    int number = 0;
    for (const char* name : {"Acme(x", "Acme)x", "Acme-x-2", ""}) {
        std::string own = line;
        own.replace(own.find(customer), customer.size(), name);
        list += "X-" + std::to_string(++number) + own.substr(own.find(','));
    }
    write_all(folder.file("many.csv"), list);
    quote({"--formats", "json", "--output", folder.file("out"), folder.file("many.csv")});
    for (const char* name : {"many-quote-Acme-x.json", "many-quote-Acme-x-2.json", "many-quote-Acme-x-2-2.json", "many-quote.json"}) {
        INFO(name);
        CHECK(std::filesystem::exists(folder.file("out") + "/" + name));
    }
}

TEST_CASE("an offer beside another has the same services and no discount below nothing")
{
    const auto json = json_of({"--alternatives", "--service", "collection", sample("between-grooves")});
    REQUIRE(json["alternatives"].size() > 2);
    CHECK(json["alternatives"][0]["kind"] == "this-shaft");
    CHECK(json["alternatives"][0]["total"] == json["total"]);
    std::int64_t least = cents(json["total"]);
    for (const auto& one : json["alternatives"])
        if (one["total"].is_string()) least = std::min(least, cents(one["total"]));
    int cheapest = 0;
    for (const auto& one : json["alternatives"]) {
        cheapest += one["cheapest"].get<bool>() ? 1 : 0;
        if (one["cheapest"].get<bool>()) CHECK(cents(one["total"]) == least);
    }
    CHECK(cheapest == 1);
    const Run below = quote({"--discount", "5000", "--formats", "json", "--output", "-", sample("refused-overlap")});
    CHECK(below.exit == 2);
    CHECK(has(below.err, "more than there is to pay"));
}

TEST_CASE("discounts, services and days are taken or refused with what would be right")
{
    const auto plain = json_of({sample("plain-cut")}), less = json_of({"--discount", "10%", "--service", "collection", sample("plain-cut")});
    CHECK(cents(less["net"]) != cents(plain["net"]));
    CHECK(less["tax"].size() == 2);
    CHECK(json_of({"--issued", "2026-01-31", sample("plain-cut")})["valid_until"] == "2026-03-02");
    for (const auto& [arguments, says] : std::initializer_list<std::pair<std::vector<std::string>, const char*>>{
             {{"--discount", "101%"}, "is no discount"},
             {{"--discount", "0%"}, "is no discount"},
             {{"--discount", "0"}, "is no discount"},
             {{"--discount", "45", "--service", "collection"}, "more than there is to pay"},
             {{"--discount", "1,50"}, "is no discount"},
             {{"--discount", "100000"}, "more than there is to pay"},
             {{"--service", "colection"}, "did you mean \"collection\"?"},
             {{"--issued", "2026-02-30"}, "is no day of the calendar"},
             {{"--issued", "24.11.2026"}, "is no day of the calendar"}}) {
        auto all = arguments;
        all.insert(all.end(), {"--formats", "json", "--output", "-", sample("plain-cut")});
        const Run ended = quote(all);
        INFO(says);
        CHECK(ended.exit == 2);
        CHECK(has(ended.err, says));
        CHECK(ended.out.empty());
    }
}

TEST_CASE("before measuring there is an estimate from one amount to another")
{
    const Folder folder;
    const std::string job = folder.file("job.xml");
    write_all(job, "<job order=\"Q-1\" units=\"mm\"><for customer=\"A\" machine=\"B\"/></job>");
    const auto json = json_of({"--before-measuring", job});
    CHECK(json["verdict"] == "estimate");
    CHECK(cents(json["total"]) < cents(json["total_up_to"]));
    CHECK(json["lines"].size() == 2);
    CHECK(quote({"--before-measuring", "--discount", "5%", "--formats", "json", "--output", "-", job}).exit == 2);
    const Run measured = quote({"--before-measuring", "--formats", "json", "--output", "-", sample("plain-cut")});
    CHECK(measured.exit == 2);
    CHECK(has(measured.err, "unknown element"));
}

TEST_CASE("an order that comes twice in one call is said, and offered once")
{
    const Run ended = quote({"--formats", "json", "--output", "-", sample("plain-cut"), sample("plain-cut")});
    CHECK(ended.exit == 2);
    CHECK(std::count(ended.out.begin(), ended.out.end(), '\n') == 1);
}

TEST_CASE("without prices nothing is quoted")
{
    const Folder folder;
    std::filesystem::copy(config_folder, folder.file("config"), std::filesystem::copy_options::recursive);
    std::filesystem::remove(folder.file("config") + "/prices.csv");
    std::string workshop = read_all(folder.file("config") + "/workshop.xml");
    const std::size_t from = workshop.find("  <prices"), to = workshop.find("</prices>");
    write_all(folder.file("config") + "/workshop.xml", workshop.erase(from, to + 10 - from));
    const Run ended = run({"quote", "--config", folder.file("config"), "--output", folder.path(), sample("plain-cut")});
    CHECK(ended.exit == 2);
    CHECK(has(ended.err, "workshop.xml states no prices"));
    write_all(folder.file("config") + "/prices.csv", "part,each\na,1\n");
    CHECK(has(run({"quote", "--config", folder.file("config"), "--output", folder.path(), sample("plain-cut")}).err, "prices.csv:1:1: the list has prices in no currency"));
}

TEST_CASE("of a list with a fault nothing is offered")
{
    const Folder folder;
    const std::string orders = read_all(source_folder + "/samples/orders.csv");
    write_all(folder.file("list.csv"), orders + orders.substr(orders.find('\n') + 1, 12) + "\n");
    const Run ended = quote({"--formats", "json", "--output", folder.file("out"), folder.file("list.csv")});
    CHECK(ended.exit == 2);
    CHECK(has(ended.err, "list.csv:"));
    CHECK(std::filesystem::is_empty(folder.file("out")));
}
