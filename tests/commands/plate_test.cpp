// build --plate: what goes on a new shaft.
#include "commands/build_calls.hpp"
#include "support/catch.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

Run build(const Folder& folder, const std::string& list, const std::vector<std::string>& more)
{
    const std::string file = folder.file("list.csv");
    write_all(file, list);
    std::vector<std::string> call{"build", "--config", config_folder, "--output", folder.path()};
    call.insert(call.end(), more.begin(), more.end());
    call.push_back(file);
    return run(call);
}

const std::string open_order = "N1,2,Alder 2,primary,540,implement,standard,,,standard,1-3/8-6,clamp-bolt,830,,\n";

}  // namespace

TEST_CASE("build --plate writes a plate of each order that can be built, and says what it does not declare")
{
    const Folder folder;
    const Run plated = build(folder, header + "N1" + sound, {"--plate"});
    INFO(plated.out << plated.err);
    CHECK(plated.exit == 0);
    CHECK(std::filesystem::exists(folder.file("N1-plate.pdf")));
    CHECK(has(plated.out, "bears no mark of conformity"));
    CHECK(build(folder, header + "N1" + sound, {"--plate"}).exit == 3);
    const Run without = build(folder, header + "N1" + sound, {"--replace"});
    CHECK_FALSE(has(without.out, "conformity"));
}

TEST_CASE("a held order has no plate, and with --replace one of an earlier call goes out of use")
{
    const Folder folder;
    CHECK(build(folder, header + "N1" + sound, {"--plate"}).exit == 0);
    const Run held = build(folder, header + open_order, {"--plate", "--replace"});
    CHECK(held.exit == 1);
    CHECK_FALSE(std::filesystem::exists(folder.file("N1-plate.pdf")));
    CHECK(std::filesystem::exists(folder.file("N1-plate.superseded.pdf")));
}

TEST_CASE("a plate is a PDF, and of build alone")
{
    const Folder folder;
    CHECK(has(build(folder, header + "N1" + sound, {"--plate", "--formats", "json"}).err, "--plate: the plate is a PDF; add pdf to --formats"));
    CHECK(run({"cut", "--plate", source_folder + "/samples/plain-cut.xml"}).exit == 2);
}
