// Every sample states in its first line what comes of it: the verdict, and for a refusal the checks that refuse.
#include <iterator>
#include <set>

#include "commands/program.hpp"
#include "support/catch.hpp"
#include "support/engine.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

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
    std::size_t samples = 0;
    for (const auto& entry : std::filesystem::directory_iterator(source_folder + "/samples")) {
        if (entry.path().extension() != ".xml") continue;
        INFO(entry.path().string());
        const Source source = file_of(entry.path().string());
        const Answer answer = demo_engine().answer(source, {});
        REQUIRE(answer.work_order);
        CHECK(found_in(*answer.work_order) == expected_of(source.bytes));
        ++samples;
    }
    CHECK(samples >= 12);
}
