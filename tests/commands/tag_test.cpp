#include "commands/program.hpp"

#include "support/catch.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

Run cut(const Folder& folder, const std::string& sample, std::vector<std::string> more)
{
    std::vector<std::string> call{"cut", "--config", config_folder, "--output", folder.path(), "--formats", "pdf", source_folder + "/samples/" + sample};
    call.insert(call.end(), more.begin(), more.end());
    return run(call);
}

}  // namespace

TEST_CASE("cut --tag writes the tag of a shaft that is cut, and says why a refused one has none")
{
    const Folder folder;
    CHECK(cut(folder, "plain-cut.xml", {}).exit == 0);
    CHECK(folder.count() == 1);
    const Run tagged = cut(folder, "plain-cut.xml", {"--tag", "--replace"});
    CHECK(tagged.exit == 0);
    CHECK(folder.count() == 2);
    CHECK(has(tagged.out, "-tag.pdf"));
    const Run refused = cut(folder, "refused-overlap.xml", {"--tag"});
    CHECK(refused.exit == 1);
    CHECK_FALSE(has(refused.out, "-tag.pdf"));
    CHECK(has(refused.out, "no tag for"));
    CHECK(has(refused.out, "the shaft is refused"));
}

TEST_CASE("with --replace a tag goes out of use that this answer does not write again")
{
    const Folder folder;
    CHECK(cut(folder, "plain-cut.xml", {"--tag"}).exit == 0);
    const Run again = cut(folder, "plain-cut.xml", {"--replace"});
    CHECK(again.exit == 0);
    CHECK(has(again.out, "-tag.superseded.pdf"));
}

TEST_CASE("a tag is of cut, and a PDF")
{
    const Folder folder;
    CHECK(run({"lengths", "--tag", source_folder + "/samples/mounted-lift.xml"}).exit == 2);
    const Run no_pdf = run({"cut", "--config", config_folder, "--output", folder.path(), "--formats", "json", "--tag", source_folder + "/samples/plain-cut.xml"});
    CHECK(no_pdf.exit == 2);
    CHECK(has(no_pdf.err, "add pdf to --formats"));
    CHECK(folder.count() == 0);
}
