// The job that an identified shaft begins, and what a job's own measures say of it.
#include <algorithm>

#include "commands/identify_calls.hpp"

using namespace shaftcut;
using namespace shaftcut::test;
using namespace shaftcut::test::identifying_shafts;

namespace {

std::size_t count_of(const std::string& text, const std::string& what)
{
    std::size_t count = 0;
    for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + 1)) ++count;
    return count;
}

// The job that is begun of a sample, as it is written.
std::string job_of(const std::string& measures)
{
    const Folder folder;
    identify({"--job", "--formats", "json", "--output", folder.path(), measures});
    for (const auto& entry : std::filesystem::directory_iterator(folder.path()))
        if (entry.path().extension() == ".xml") return read_all(entry.path().string());
    FAIL("no job");
    return {};
}

Run cut(const std::string& job)
{
    const Folder folder;
    write_all(folder.file("job.xml"), job);
    return run({"cut", "--config", config_folder, "--formats", "json", "--output", "-", folder.file("job.xml")});
}

}  // namespace

TEST_CASE("cut names each figure of a begun job that is still open, and nothing else")
{
    for (const char* name : {"one-series", "mixed", "of-none", "undecided", "inches"}) {
        INFO(name);
        const std::string job = job_of(sample(std::string("identify/") + name));
        const Run ended = cut(job);
        CHECK(ended.exit == 2);
        CHECK(ended.out.empty());
        CHECK(count_of(ended.err, "\n") == count_of(job, "=\"?\""));
        CHECK(count_of(ended.err, " is still open; measure it or look, and write it in the place of the \"?\"\n") == count_of(ended.err, "\n"));
    }
}

TEST_CASE("a begun job that is filled in is cut, and both stops of a series told by measuring are confirmed unless they were measured")
{
    std::string job = job_of(one);
    CHECK(has(job, "<shaft series=\"Alder 2\""));
    job = with_replaced(job, "role=\"?\" inner-tube=\"?\"", "role=\"primary\" inner-tube=\"implement\"");
    job = with_replaced(job, "<shortest length=\"?\"/>", "<shortest length=\"742\"/>");
    job = with_replaced(job, "<longest when=\"turning\" length=\"?\"/>", "<longest when=\"turning\" length=\"800\"/>");
    const std::string inner = "<half tube=\"inner\" length=\"?\" stop-depth=\"?\" guard=\"?\"/>", outer = "<half tube=\"outer\" length=\"?\" stop-depth=\"?\" guard=\"?\"/>";
    const auto filled = [&](const std::string& of_inner, const std::string& of_outer) {
        return with_replaced(with_replaced(job, inner, "<half tube=\"inner\" length=\"688\" guard=\"670\"" + of_inner + "/>"), outer, "<half tube=\"outer\" length=\"666\" guard=\"648\"" + of_outer + "/>");
    };
    const auto confirmed = [](const std::string& text) {
        const Run ended = cut(text);
        INFO(ended.err);
        const Json answer = Json::parse(ended.out);
        CHECK(answer["verdict"] == "cut");
        std::vector<std::string> what;
        for (const auto& confirmation : answer["confirm"]) what.push_back(confirmation["what"]);
        return what;
    };
    CHECK(confirmed(filled(" stop-depth=\"560\"", " stop-depth=\"560\"")).empty());
    CHECK(confirmed(filled("", "")) == std::vector<std::string>{"inner_shoulder", "outer_shoulder"});
    CHECK(confirmed(filled(" stop-depth=\"560\"", "")) == std::vector<std::string>{"outer_shoulder"});
    const std::size_t from = job.find("    <measures"), to = job.find("</measures>");
    REQUIRE((from != std::string::npos && to != std::string::npos));
    job.erase(from, to + 11 - from);
    CHECK(confirmed(filled("", "")).empty());
}

TEST_CASE("a job whose measures are sure of another series than it states says so")
{
    const std::string job = read_all(sample("told-by-measuring"));
    const auto notes = [](const std::string& text) { return Json::parse(cut(text).out)["notes"].dump(); };
    CHECK(has(notes(job), "Its series was told by measuring: like Alder 2 (> 95 %)."));
    CHECK_FALSE(has(notes(read_all(sample("wide-angle-outer-cross"))), "measur"));
    const std::string larch = with_replaced(with_replaced(with_replaced(job, "series=\"Alder 2\"", "series=\"Larch 6\""), "length=\"690\"", "length=\"650\""), "length=\"668\"", "length=\"632\"");
    CHECK(has(notes(larch), "It measures like Alder 2 (> 95 %), not like Larch 6: lay old beside new before anything is sawn."));
}

// Nobody who has the shaft on the bench should go by a series that its measures exclude.
TEST_CASE("a job whose measures exclude its series says so, sure of another or not, and names no series where none is likely")
{
    std::string job = read_all(sample("told-by-measuring"));
    const std::size_t from = job.find("      <end side=\"tractor\" joint=\"wide-angle\"><cross"), to = job.find("    </measures>");
    REQUIRE((from != std::string::npos && to != std::string::npos));
    job.replace(from, to - from, "<tubes shape=\"star\"><tube tube=\"inner\"><width length=\"41\"/></tube><tube tube=\"outer\"><width length=\"47.6\"/></tube></tubes>");
    const Json answer = Json::parse(cut(job).out);
    const std::string notes = answer["notes"].dump();
    CHECK(has(notes, "they are not those of Alder 2: measure again, or put the series right, before anything is sawn."));
    CHECK_FALSE(has(notes, "first ("));
    const Folder folder;
    write_all(folder.file("job.xml"), job);
    CHECK(has(std::regex_replace(run({"cut", "--config", config_folder, "--output", folder.path(), "--formats", "svg", folder.file("job.xml")}).out, std::regex("\n +"), " "), "not those of Alder 2"));
}

TEST_CASE("where it is open of which series all but the odd part are the begun job says which, and is not cut before that is stated")
{
    const Folder folder;
    std::string series = read_all(config_folder + "/series.xml");
    const std::size_t from = series.find("<series name=\"Larch 6\""), to = series.find("</series>", from) + 9;
    REQUIRE(from != std::string::npos);
    series.insert(to, with_replaced(series.substr(from, to - from), "name=\"Larch 6\"", "name=\"Rowan--5\""));
    for (const char* name : {"Birch 1", "Rowan 5", "Elm 4", "Juniper 8"}) {
        const std::size_t at = series.find(std::string("<series name=\"") + name), end = series.find("</series>", at) + 9;
        REQUIRE(at != std::string::npos);
        series.erase(at, end - at);
    }
    write_all(folder.file("series.xml"), series);
    std::filesystem::copy_file(config_folder + "/workshop.xml", folder.file("workshop.xml"));
    write_all(folder.file("m.xml"), with_replaced(read_all(mixed), "writing=\"Larch 6\"", "writing=\"Alder 2\""));
    const auto told = [&](const std::vector<std::string>& call) {
        std::vector<std::string> all{call[0], "--config", folder.path(), "--formats", "json"};
        all.insert(all.end(), call.begin() + 1, call.end());
        return run(all);
    };
    told({"identify", "--job", "--output", folder.path(), folder.file("m.xml")});
    const std::string job = read_all(folder.file("bench-2-job.xml"));
    CHECK(has(job, "<shaft series=\"?\" role=\"?\""));
    CHECK(has(job, "Everything but the implement end's joint measures like Larch 6 or Rowan- -5: lay old beside new and state which."));
    const Run ended = told({"cut", "--output", "-", folder.file("bench-2-job.xml")});
    CHECK(ended.exit == 2);
    CHECK(count_of(ended.err, " is still open;") == count_of(job, "=\"?\""));
    CHECK(count_of(ended.err, "\n") == count_of(job, "=\"?\""));
}

TEST_CASE("of a mixed shaft the begun job has halves of their own series")
{
    const std::string job = job_of(mixed);
    CHECK(has(job, "<shaft series=\"Larch 6\""));
    // Alder 2 or Birch 1: which of the two nobody knows, and their stops differ.
    CHECK(has(job, "<half tube=\"?\" length=\"?\""));
    CHECK(has(job, "<half tube=\"?\" series=\"none\" length=\"?\""));
    CHECK(job.find("<half tube=\"?\" length") < job.find("<half tube=\"?\" series"));
}
