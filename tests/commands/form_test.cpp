#include "commands/program.hpp"

#include "support/catch.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

Run form(const Folder& folder, std::vector<std::string> more)
{
    std::vector<std::string> call{"form", "--config", config_folder, "--output", folder.path()};
    call.insert(call.end(), more.begin(), more.end());
    return run(call);
}

}  // namespace

TEST_CASE("form writes one PDF, named by its series, and never overwrites it unasked")
{
    const Folder folder;
    CHECK(form(folder, {}).exit == 0);
    CHECK(form(folder, {"--series", "Alder 2", "--units", "in", "--paper", "letter", "--formats", "pdf"}).exit == 0);
    CHECK(folder.count() == 2);
    const std::string blank = read_all(folder.file("measuring-form.pdf")), alder = read_all(folder.file("measuring-form-Alder-2.pdf"));
    CHECK(blank.rfind("%PDF-1.4", 0) == 0);
    CHECK(alder.rfind("%PDF-1.4", 0) == 0);
    const Run again = form(folder, {});
    CHECK(again.exit == 3);
    CHECK(has(again.err, "--replace"));
    CHECK(form(folder, {"--replace"}).exit == 0);
    CHECK(read_all(folder.file("measuring-form.pdf")) == blank);
}

TEST_CASE("form says what it does not do")
{
    const Folder folder;
    const Run near = form(folder, {"--series", "Alder2"});
    CHECK(near.exit == 2);
    CHECK(has(near.err, "did you mean \"Alder 2\"?"));
    CHECK(form(folder, {"--series", ""}).exit == 2);
    for (const char* formats : {"json", "xlsx", "png", "pdf,json"}) CHECK(has(form(folder, {"--formats", formats}).err, "form writes PDF only"));
    CHECK(has(run({"form", "--output", "-"}).err, "name a folder"));
    CHECK(has(run({"form", "extra.xml"}).err, "options only"));
    CHECK(run({"form", "--units", "cm"}).exit == 2);
    CHECK(run({"form", "--config", folder.path()}).exit == 3);
    CHECK(folder.count() == 0);
}

TEST_CASE("the help of form offers what it writes, and no JSON to standard output")
{
    const std::string help = run({"form", "--help"}).out;
    CHECK(has(help, "documents to write, of pdf (default: pdf)"));
    CHECK_FALSE(has(help, "standard output"));
    CHECK(has(run({"cut", "--help"}).out, "writes JSON"));
}
