// The samples worked up, each in millimetres and in inches.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "catalogue_reader.hpp"
#include "documents/cut_sheet/sheet_cases.hpp"
#include "job_reader.hpp"
#include "files/load.hpp"
#include "support/catch.hpp"
#include "workshop_reader.hpp"

namespace shaftcut::test {

inline std::vector<SheetCase> sample_orders(const std::string& root)
{
    const auto source_of = [](const std::string& path) { return std::get<Source>(load(path)); };
    const auto catalogue = read_catalogue(source_of(root + "/config/series.xml")).value;
    const auto workshop = read_workshop(source_of(root + "/config/workshop.xml")).value;
    REQUIRE(catalogue);
    REQUIRE(workshop);
    std::vector<SheetCase> orders;
    for (const auto& entry : std::filesystem::directory_iterator(root + "/samples")) {
        if (entry.path().extension() != ".xml") continue;
        const auto job = read_job(source_of(entry.path().string()), *catalogue);
        REQUIRE(job.value);
        for (const Units units : {Units::mm, Units::in})
            orders.push_back({entry.path().stem().string() + " in " + unit_word(units), work_up(*job.value, *catalogue, *workshop, units)});
    }
    REQUIRE(orders.size() >= 24);
    return orders;
}

}  // namespace shaftcut::test
