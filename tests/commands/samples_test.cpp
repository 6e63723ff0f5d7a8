// Every sample states in its first line what comes of it: the verdict, and for a refusal the checks that refuse.
#include <iterator>
#include <set>

#include "program.hpp"
#include "shaftcut/reading/catalogue_reader.hpp"
#include "shaftcut/reading/job_reader.hpp"
#include "shaftcut/reading/workshop_reader.hpp"
#include "shaftcut/trade/work_order.hpp"
#include "support/catch.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

Source source_of(const std::string& path) { return std::get<Source>(load(path)); }

std::set<std::string> expected_of(const std::string& bytes)
{
    const std::string start = "<!-- expect: ";
    REQUIRE(bytes.rfind(start, 0) == 0);
    std::istringstream words(bytes.substr(start.size(), bytes.find(" -->") - start.size()));
    return {std::istream_iterator<std::string>(words), {}};
}

std::set<std::string> found_in(const WorkOrder& order)
{
    std::set<std::string> found{to_word(order.verdict)};
    for (const Check& check : order.checks)
        if (check.result == CheckResult::fail) found.insert(to_word(check.id));
    return found;
}

}  // namespace

TEST_CASE("each sample comes out as its first line says")
{
    const auto catalogue = read_catalogue(source_of(config_folder + "/series.xml")).value;
    const auto workshop = read_workshop(source_of(config_folder + "/workshop.xml")).value;
    REQUIRE(catalogue);
    REQUIRE(workshop);
    std::size_t samples = 0;
    for (const auto& entry : std::filesystem::directory_iterator(source_folder + "/samples")) {
        if (entry.path().extension() != ".xml") continue;
        INFO(entry.path().string());
        const Source source = source_of(entry.path().string());
        const auto job = read_job(source, *catalogue);
        REQUIRE(job.value);
        CHECK(found_in(work_up(*job.value, *catalogue, *workshop, job.value->units)) == expected_of(source.bytes));
        ++samples;
    }
    CHECK(samples >= 12);
}
