// A workbook written by libxlsxwriter, read back here; then with every byte of it changed, and cut off everywhere.
#include "spreadsheet/zip.hpp"

#include "support/catch.hpp"
#include "support/drawn/random_jobs.hpp"
#include "support/workbooks.hpp"

using namespace shaftcut;

namespace {

std::string workbook()
{
    const test::World world = test::sound_world(1);
    return test::workbook_bytes(work_up(world.job, world.catalogue, world.workshop, Units::mm), Paper::a4);
}

bool reads(const std::string& bytes)
{
    try {
        parts_of(bytes);
    } catch (const ZipFault&) {
        return false;
    }
    return true;
}

}  // namespace

TEST_CASE("the parts of a workbook are read back")
{
    const auto parts = parts_of(workbook());
    REQUIRE(parts.count("xl/workbook.xml") == 1);
    CHECK(parts.at("xl/workbook.xml").ends_with("</workbook>"));
    CHECK(parts.at("[Content_Types].xml").starts_with("<?xml"));
}

TEST_CASE("what is not whole is no zip file")
{
    const std::string whole = workbook();
    const auto parts = parts_of(whole);
    for (std::size_t length = 0; length < whole.size(); length += length < 100 ? 1 : 97) CHECK_FALSE(reads(whole.substr(0, length)));
    CHECK_FALSE(reads(whole + "x"));
    for (std::size_t at = 0; at < whole.size(); at += 13) {
        std::string changed = whole;
        changed[at] = static_cast<char>(changed[at] ^ 0x55);
        // Dates, versions and attributes say nothing of the parts' bytes; a name may change.
        if (!reads(changed)) continue;
        std::size_t same = 0;
        for (const auto& [name, bytes] : parts_of(changed)) same += parts.count(name) == 1 && parts.at(name) == bytes ? 1 : 0;
        CHECK(same + 1 >= parts.size());
    }
}
