// Writes saw plans' workbooks into a folder, and for changed inputs what the program itself says: cases.json.
// usage: saw_workbook_cases FOLDER
#include <fstream>
#include <iostream>
#include <nlohmann/json.hpp>

#include "documents/saw_cases.hpp"
#include "saw_book/saw_workbook.hpp"

namespace {

using namespace shaftcut;
using namespace shaftcut::test;
using Json = nlohmann::json;

struct Inputs {
    Length kerf, trim_start, trim_end;
    std::optional<Length> reusable;
};

// What the workbook must show for these bars under other inputs: walked here as a saw does, without the program's layout.
Json expected(const SawOrder& order, const Inputs& inputs)
{
    Json stops = Json::array(), leftovers = Json::array(), goes = Json::array();
    std::int64_t rack = 0;
    bool fits = true;
    for (const BarLayout& bar : order.bars) {
        std::int64_t at = inputs.trim_start.um();
        for (std::size_t i = 0; i < bar.pieces.size(); ++i) {
            at += (i > 0 ? inputs.kerf.um() : 0) + bar.pieces[i].length.um();
            stops.push_back(static_cast<double>(at) / 1000);
        }
        const std::int64_t end = bar.length.um() - inputs.trim_end.um();
        const std::int64_t left = std::max<std::int64_t>(0, end - at - inputs.kerf.um());
        const bool goes_back = inputs.reusable && left >= inputs.reusable->um();
        leftovers.push_back(static_cast<double>(left) / 1000);
        goes.push_back(at > end ? "DOES NOT FIT" : left == 0 ? "none" : goes_back ? "rack" : "scrap");
        if (goes.back() == "rack") rack += bar.count * left;
        fits = fits && at <= end;
    }
    return {{"stops", stops}, {"leftovers", leftovers}, {"goes", goes}, {"rack_length", static_cast<double>(rack) / 1000},
            {"bars_length", order.totals.bars_length.mm()}, {"pieces_length", order.totals.pieces_length.mm()}, {"bars_used", order.totals.bars},
            {"verdict", fits ? "fits" : "DOES NOT FIT: plan again"}};
}

Json number(std::optional<Length> length) { return length ? Json(length->mm()) : Json(nullptr); }

Json cases_of(const SawOrder& order)
{
    const SawTask& task = order.task;
    const auto um = [](std::int64_t count) { return Length::micrometres(count); };
    Json cases = Json::array();
    for (const Inputs& inputs : {Inputs{task.kerf, task.trim_start, task.trim_end, order.reusable}, Inputs{um(2'200), task.trim_start, task.trim_end, order.reusable},
                                 Inputs{um(0), um(0), um(0), std::nullopt}, Inputs{um(4'501), um(12'345), um(7), um(300'001)},
                                 Inputs{task.kerf, task.trim_start, task.trim_end, um(1)}})
        cases.push_back({{"set", {{"kerf", inputs.kerf.mm()}, {"trim_start", inputs.trim_start.mm()}, {"trim_end", inputs.trim_end.mm()},
                                  {"reusable_leftover", number(inputs.reusable)}}},
                         {"answer", expected(order, inputs)}});
    return cases;
}

}  // namespace

int main(int argc, char** argv)
{
    if (argc != 2) {
        std::cerr << "usage: saw_workbook_cases FOLDER\n";
        return 2;
    }
    Json books = Json::array();
    int number_of_book = 0;
    for (const SawCase& one : saw_cases()) {
        const std::string name = "saw-" + std::to_string(++number_of_book) + ".xlsx";
        std::ofstream(std::string(argv[1]) + "/" + name, std::ios::binary) << saw_workbook_of(one.order, Paper::a4);
        books.push_back({{"file", name}, {"name", one.name}, {"waste", static_cast<double>(one.order.totals.waste) / 1000}, {"cases", cases_of(one.order)}});
    }
    std::ofstream(std::string(argv[1]) + "/cases.json") << books.dump();
    return 0;
}
