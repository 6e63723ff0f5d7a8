// A new series, asked for figure by figure or out of a file.
#include "commands/program.hpp"
#include "support/catch.hpp"

using namespace shaftcut::test;

namespace {

struct Office {
    Folder at;
    std::string config = at.file("config");
    Office() { std::filesystem::copy(config_folder, config); }
    Run add(const std::string& answers) const { return run({"catalogue", "add", "--config", config}, answers); }
    std::string series() const { return read_all(config + "/series.xml"); }
};

const std::string shaft = "Cedar 7\nlemon\n22\n54\n64\nouter-cross\n\n";
const std::string halves = "128\n62\n180\n43\n3.4\n122\n46\n74\n80\n3.32\n\n106\n58\n180\n51\n3.2\n100\n44\n72\n75\n3.77\nforbidden\n";
const std::string rest = "60\n64\n\n\n\n\n16\n25\n480 590\nno\nno\n";

}  // namespace

TEST_CASE("a series that is asked for stands in the catalogue as it was answered")
{
    const Office office;
    const std::string before = office.series();
    const Run added = office.add(shaft + halves + rest + "yes\n");
    INFO(added.out << added.err);
    REQUIRE(added.exit == 0);
    const std::string head = before.substr(0, before.rfind("</catalogue>"));
    CHECK(office.series() == head +
          "  <series name=\"Cedar 7\" shape=\"lemon\" wide-angle-reference=\"outer-cross\">\n"
          "    <cross cap=\"22\" span=\"54\"/>\n    <wide-angle spacing=\"64\"/>\n"
          "    <half tube=\"inner\" shoulder=\"128\" seat=\"62\" least-tube=\"180\" width=\"43\" wall=\"3.4\" guard-shoulder=\"122\" guard-seat=\"46\" guard-seat-wide-angle=\"74\" pin-hole=\"80\" mass-per-metre=\"3.32\"/>\n"
          "    <half tube=\"outer\" shoulder=\"106\" seat=\"58\" least-tube=\"180\" width=\"51\" wall=\"3.2\" guard-shoulder=\"100\" guard-seat=\"44\" guard-seat-wide-angle=\"72\" pin-hole=\"75\" mass-per-metre=\"3.77\" shortening=\"forbidden\"/>\n"
          "    <yoke connection=\"1-3/8-6\" joint=\"standard\" cross-to-groove=\"60\"/>\n    <yoke connection=\"1-3/8-6\" joint=\"wide-angle\" cross-to-groove=\"64\"/>\n"
          "    <rating speed=\"540\" power=\"16\"/>\n    <rating speed=\"1000\" power=\"25\"/>\n    <closed-lengths>480 590</closed-lengths>\n  </series>\n" +
          before.substr(head.size()));
    CHECK(run({"catalogue", "--config", office.config}).out.find("Cedar 7 (lemon)") != std::string::npos);
}

TEST_CASE("what the catalogue could not hold is said and asked for again")
{
    const Office office;
    const Run added = office.add("Alder 2\nCedar 7\nround\nother\n0\n22\n54\n\n5\n128\n");
    CHECK(added.exit == 2);
    for (const char* said : {"a second series \"Alder 2\"", "shape \"round\" is not known", "cap \"0\" is nothing", "a shoulder is 25 mm to 500 mm"}) {
        INFO(added.out);
        CHECK(added.out.find(said) != std::string::npos);
    }
    CHECK(added.out.find("Wide-angle joint, inner cross") == std::string::npos);
}

TEST_CASE("parts and limits are asked of a series that has its own, and such a shaft is built")
{
    const Office office;
    // Standard joints alone; a yoke 1-3/8-6; no rating. A device is named, and asked what it replaces; a wrong limit is asked again.
    const std::string plain = "Cedar 7\nlemon\n22\n54\n\n128\n62\n180\n43\n3.4\n122\n46\n80\n\n\n106\n58\n180\n51\n3.2\n100\n44\n75\n\n\n60\n\n\n\n\n\n\n\n";
    const std::string parts = "yes\ncross 7\nT1\nT2\nY1\nY2\nG1\nG2\npin 7\nbearing 7\nyoke 7\nclutch 7\nnothing\n\n\nchain 7\nlabel 7\nbook 7\n";
    const Run added = office.add(plain + parts + "yes\nforty\n45\n\n\n\n\n\n\n\n\n\n\n\n\n\n\n\n\nyes\n");
    INFO(added.out << added.err);
    REQUIRE(added.exit == 0);
    const std::string series = office.series();
    for (const char* line : {"<cross cap=\"22\" span=\"54\" part=\"cross 7\"/>", "<part for=\"tube-yoke\" tube=\"outer\" name=\"Y2\"/>", "<part for=\"guard-bearing\" name=\"bearing 7\"/>",
                             "<part for=\"connection-yoke\" connection=\"1-3/8-6\" name=\"yoke 7\"/>", "<part for=\"device\" device=\"slip-clutch\" replaces=\"nothing\" name=\"clutch 7\"/>",
                             "<part for=\"book\" name=\"book 7\"/>", "<limits closing-clearance=\"45\"/>"}) {
        INFO(line);
        CHECK(series.find(line) != std::string::npos);
    }
    const std::string list = office.at.file("list.csv");
    write_all(list, "order,series,role,inner_tube,tractor_joint,tractor_connection,implement_joint,implement_connection,closed\nN1,Cedar 7,primary,implement,standard,1-3/8-6,standard,1-3/8-6,830\n");
    CHECK(run({"build", "--config", office.config, "--output", office.at.file("o"), "--formats", "json", list}).out.find("N1: BUILD") != std::string::npos);
}

TEST_CASE("nothing is written before the last yes")
{
    const Office office;
    const std::string before = office.series();
    CHECK(office.add("").exit == 2);
    CHECK(office.add(shaft).exit == 2);
    CHECK(office.add(shaft + halves + rest).exit == 2);
    const Run refused = office.add(shaft + halves + rest + "no\n");
    CHECK(refused.exit == 0);
    CHECK(refused.out.find("Nothing was written.") != std::string::npos);
    CHECK(office.series() == before);
}

TEST_CASE("a filled file is taken as it stands, or refused with its places")
{
    const Office office;
    const std::string before = office.series();
    const std::string file = office.at.file("new.xml"), element = "<series name=\"Cedar 7\" shape=\"lemon\"><!-- measured -->\n    <cross cap=\"22\"  span=\"54\"/></series>";
    write_all(file, "<catalogue units=\"mm\">" + element + "</catalogue>");
    const std::vector<std::string> call{"catalogue", "add", "--config", office.config, file};
    CHECK(run(call).exit == 0);
    const std::string head = before.substr(0, before.rfind("</catalogue>"));
    CHECK(office.series() == head + "  " + element + "\n" + before.substr(head.size()));
    const Run again = run(call);
    CHECK(again.exit == 2);
    CHECK(again.err == file + ":1:31: a second series \"Cedar 7\"; give each its own name\n");
    CHECK(run({"catalogue", "add", "--config", office.config, office.at.file("none.xml")}).exit == 3);
    CHECK(run({"catalogue", "add", "a", "b"}).exit == 2);
    CHECK(run({"catalogue", "add", "--help"}).out.starts_with("shaftcut catalogue add [FILE]"));
}
