// What is added to the configuration's files leaves all else as it is.
#include "shaftcut/engine/engine.hpp"

#include "support/catch.hpp"
#include "support/engine.hpp"

using namespace shaftcut;

namespace {

const Learnt learnt{{{"Note & \"mark\"", "left-out"}, {"Length", "closed"}}, {{"guard", "railed", "yes"}}};

const Source& lists()
{
    static const Source file = test::file_of(SHAFTCUT_SOURCE_DIR "/config/lists.xml");
    return file;
}

// `after` is `before` with one thing put in.
bool only_adds(const std::string& before, const std::string& after)
{
    const std::size_t same = static_cast<std::size_t>(std::mismatch(before.begin(), before.end(), after.begin(), after.end()).first - before.begin());
    return after.size() > before.size() && after.ends_with(before.substr(same));
}

}  // namespace

TEST_CASE("a map that is learnt stands beside the others")
{
    const Addition added = test::demo_engine().lists_with(lists(), "New", Units::in, learnt);
    REQUIRE(added.bytes);
    CHECK(only_adds(lists().bytes, *added.bytes));
    CHECK(added.bytes->find("  <list name=\"New\" units=\"in\">\n    <column heading=\"Note &amp; &quot;mark&quot;\" is=\"left-out\"/>\n") != std::string::npos);
}

TEST_CASE("what is learnt of a map that is there is added to it")
{
    const Addition added = test::demo_engine().lists_with(lists(), "Meadow", {}, learnt);
    REQUIRE(added.bytes);
    CHECK(only_adds(lists().bytes, *added.bytes));
    CHECK(added.bytes->find("<list", added.bytes->find("<list name") + 1) == std::string::npos);
}

TEST_CASE("where there is no file of maps one is made")
{
    const Addition added = test::demo_engine().lists_with({"lists.xml", ""}, "New", {}, learnt);
    CHECK(added.bytes.value().starts_with("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<lists units=\"mm\">\n  <list name=\"New\">\n"));
    CHECK(added.bytes->ends_with("  </list>\n</lists>\n"));
}

TEST_CASE("a map of no name, and one beside a file at fault, are refused")
{
    CHECK_FALSE(test::demo_engine().lists_with(lists(), "", {}, learnt).problems.empty());
    CHECK_FALSE(test::demo_engine().lists_with({"lists.xml", "<lists units=\"mm\"><list/></lists>"}, "New", {}, learnt).problems.empty());
}

TEST_CASE("a series is added to the catalogue, and nothing else changes")
{
    const Source catalogue = test::file_of(SHAFTCUT_SOURCE_DIR "/config/series.xml");
    const Addition added = Engine::catalogue_with(catalogue, {"new.xml", "<catalogue units=\"mm\"><series name=\"Cedar 7\" shape=\"lemon\"><cross cap=\"22\" span=\"54\"/><yoke connection=\"1-3/8-6\"/></series></catalogue>"});
    REQUIRE(added.bytes);
    CHECK(only_adds(catalogue.bytes, *added.bytes));
    CHECK(added.names == std::vector<std::string>{"Cedar 7"});
}

TEST_CASE("a connection that says the same as one that is there is taken once, another of its name is refused")
{
    const Source catalogue = test::file_of(SHAFTCUT_SOURCE_DIR "/config/series.xml");
    const auto with = [&](const std::string& connection) {
        return Engine::catalogue_with(catalogue, {"new.xml", "<catalogue units=\"mm\">" + connection + "<series name=\"Cedar 7\" shape=\"lemon\"><cross cap=\"22\" span=\"54\"/></series></catalogue>"});
    };
    const Addition same = with("<connection name=\"1-3/8-6\" source=\"ISO 500-1:2014 type 1\"   speeds=\"540\"/>");
    REQUIRE(same.bytes);
    CHECK(only_adds(catalogue.bytes, *same.bytes));
    CHECK(same.bytes->find("\"   speeds") == std::string::npos);
    const Addition other = with("<connection name=\"1-3/8-6\" source=\"ISO 500-1:2014 type 1\" speeds=\"1000\"/>");
    REQUIRE_FALSE(other.bytes);
    CHECK(to_string(other.problems.front()).find("a second connection \"1-3/8-6\"") != std::string::npos);
}

TEST_CASE("what the catalogue could not hold is refused at its place")
{
    const Source catalogue = test::file_of(SHAFTCUT_SOURCE_DIR "/config/series.xml");
    const auto wrong = [&](const std::string& text) {
        const Addition added = Engine::catalogue_with(catalogue, {"new.xml", text});
        CHECK_FALSE(added.bytes);
        return added.problems.empty() ? "" : to_string(added.problems.front());
    };
    const std::string cross = "<cross cap=\"22\" span=\"54\"/></series></catalogue>";
    CHECK(wrong("<catalogue units=\"mm\"><series name=\"Alder 2\" shape=\"lemon\">" + cross).starts_with("new.xml:1:31: a second series \"Alder 2\""));
    CHECK(wrong("<catalogue units=\"in\"><series name=\"C\" shape=\"lemon\">" + cross).find("in other units than the catalogue, which is in mm") != std::string::npos);
    CHECK(wrong("<catalogue units=\"mm\"/>").find("catalogue holds no series") != std::string::npos);
    CHECK(wrong("<catalogue units=\"mm\"><series name=\"C\" shape=\"lemon\"><half tube=\"inner\" shoulder=\"5\"/>" + cross).find("a shoulder is 25 mm to 500 mm") != std::string::npos);
}
