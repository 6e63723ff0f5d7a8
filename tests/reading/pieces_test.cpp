#include "lists/pieces.hpp"

#include "reading/said.hpp"
#include "support/catch.hpp"

using namespace shaftcut;

namespace {

template <class Result>
std::vector<std::string> faults(const Result& result)
{
    REQUIRE(std::holds_alternative<FaultList>(result));
    std::vector<std::string> lines;
    for (const Fault& fault : std::get<FaultList>(result)) lines.push_back(to_string(problem_of(fault)));
    return lines;
}

}  // namespace

TEST_CASE("pieces are read exactly")
{
    const auto result = read_pieces("length,count,label\n742.5,3,tube A\n29-3/16 in,1,\n", "p.csv", Units::mm);
    REQUIRE(std::holds_alternative<PieceList>(result));
    const PieceList& list = std::get<PieceList>(result);
    REQUIRE(list.pieces.size() == 2);
    CHECK(list.pieces[0].length == Length::micrometres(742'500));
    CHECK(list.pieces[0].count == 3);
    CHECK(list.pieces[0].label == "tube A");
    CHECK(list.pieces[1].length == Length::micrometres(741'363));
    CHECK(list.spots[1] == Spot{3, 1});
}

TEST_CASE("stock: empty count and cost, decimal costs to the millionth")
{
    const auto result = read_stock("length,count,cost\n6000,,\n1250.5,0,\n3000,2,12.345678\n3000,2,1000000\n", "s.csv", Units::mm);
    REQUIRE(std::holds_alternative<std::vector<SawStock>>(result));
    const std::vector<SawStock>& stock = std::get<std::vector<SawStock>>(result);
    CHECK_FALSE(stock[0].count.has_value());
    CHECK(stock[0].cost == 6000 * cost_unit);
    CHECK(stock[1].count == 0);
    CHECK(stock[1].cost == 1'250'500'000);
    CHECK(stock[2].cost == 12'345'678);
    CHECK(stock[3].cost == most_saw_cost);
    const auto lengths_only = read_stock("length\n118 in\n", "s.csv", Units::mm);
    REQUIRE(std::holds_alternative<std::vector<SawStock>>(lengths_only));
    CHECK(std::get<std::vector<SawStock>>(lengths_only)[0].cost == 2'997'200'000);
}

TEST_CASE("faults of both lists, all in one go")
{
    CHECK(faults(read_pieces("length,count,label\n0,1,a\n742,0,b\n742 cm,1.5,c\n", "p.csv", Units::mm))
          == std::vector<std::string>{
              "p.csv:2:1: \"0\" is no length to cut; write a length above 0",
              "p.csv:3:5: \"0\" is not a whole number from 1 to 2000000; write digits only",
              "p.csv:4:1: \"742 cm\" has an unknown unit; write mm or in after the figure, or leave it out",
              "p.csv:4:8: \"1.5\" is not a whole number from 1 to 2000000; write digits only"});
    CHECK(faults(read_pieces("length,count\n0,1\n742\n742,0\n", "p.csv", Units::mm))
          == std::vector<std::string>{
              "p.csv:2:1: \"0\" is no length to cut; write a length above 0",
              "p.csv:3:1: the line has 1 fields; write 2, as the first line names",
              "p.csv:4:5: \"0\" is not a whole number from 1 to 2000000; write digits only"});
    std::string many = "length,count\n";
    for (int i = 0; i < 300; ++i) many += "x" + std::to_string(i) + ",1\n";
    CHECK(faults(read_pieces(many, "p.csv", Units::mm)).back() == "p.csv:201:1: 100 more faults are not listed; mend those above first");
    CHECK(faults(read_pieces("length,count,label\n5,1," + std::string(101, 'x') + "\n", "p.csv", Units::mm)).size() == 1);
    std::string stock = "length,count,cost\n";
    for (const char* cost : {"1.2345678", "1.", ".5", "-1", "1e3", "1000000.000001", "1 000", "nan"}) stock += std::string("6000,,") + cost + "\n";
    const auto lines = faults(read_stock(stock, "s.csv", Units::mm));
    CHECK(lines.size() == 8);
    CHECK(lines[0] == "s.csv:2:7: \"1.2345678\" is not a cost; write a plain number from 0 to 1000000 with at most 6 decimals, or nothing");
}
