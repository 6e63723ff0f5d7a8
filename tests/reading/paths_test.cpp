// The path of each fault's element, for one who shows it at a box of a form: over all kinds of files, XML and lists.
#include "lists/pieces.hpp"
#include "reading/support.hpp"

using namespace reading_test;
using namespace shaftcut;

namespace {

enum class Kind { job, catalogue, workshop, orders, orders_csv, pieces, stock, profile_stock };

template <class List>
FaultList faults_in(const std::variant<List, FaultList>& read)
{
    REQUIRE(std::holds_alternative<FaultList>(read));
    return std::get<FaultList>(read);
}

FaultList faults_of(Kind kind, const std::string& text)
{
    switch (kind) {
    case Kind::job: return read_job({"f", text}, catalogue()).faults;
    case Kind::catalogue: return read_catalogue({"f", text}).faults;
    case Kind::workshop: return read_workshop({"f", text}).faults;
    case Kind::orders: return read_orders_xml({"f", text}, catalogue()).faults;
    case Kind::orders_csv: return read_orders_csv({"f", text}, catalogue(), Units::mm).faults;
    case Kind::pieces: return faults_in(read_pieces(text, "f", Units::mm));
    case Kind::stock: return faults_in(read_stock(text, "f", Units::mm));
    case Kind::profile_stock: break;
    }
    return faults_in(read_profile_stock(text, "f", Units::mm));
}

struct Row {
    Kind kind;
    std::string text;
    std::string path;
    std::string wrong;
};

std::string replaced(std::string text, const std::string& what, const std::string& by)
{
    const std::size_t at = text.find(what);
    REQUIRE(at != std::string::npos);
    return text.replace(at, what.size(), by);
}

const std::string sound_job =
    "<job order=\"x\" units=\"mm\"><shaft series=\"Alder 2\" role=\"primary\" inner-tube=\"implement\"><closed length=\"860\"/>"
    "<end side=\"tractor\" joint=\"standard\"/><end side=\"implement\" joint=\"standard\"/>"
    "<half tube=\"inner\" length=\"690\"/><half tube=\"outer\" length=\"668\"/></shaft>"
    "<fit><shortest length=\"742\"/><longest when=\"turning\" length=\"850\"/></fit></job>";

Row job(const std::string& what, const std::string& by, const std::string& path, const std::string& wrong) { return {Kind::job, replaced(sound_job, what, by), path, wrong}; }

std::string order_element(const std::string& number)
{
    return "<order order=\"" + number + "\"><shaft series=\"Alder 2\" role=\"primary\" inner-tube=\"implement\"><closed length=\"860\"/>"
           "<end side=\"tractor\" joint=\"standard\"/><end side=\"implement\" joint=\"standard\"/></shaft></order>";
}

Row orders(const std::string& what, const std::string& by, const std::string& path, const std::string& wrong)
{
    return {Kind::orders, "<orders units=\"mm\">" + order_element("A") + replaced(order_element("B"), what, by) + "</orders>", path, wrong};
}

Row series(const std::string& inside, const std::string& path, const std::string& wrong)
{
    return {Kind::catalogue, "<catalogue units=\"mm\"><series name=\"S\" shape=\"star\"><cross cap=\"22\" span=\"54\"/>" + inside + "</series></catalogue>", path, wrong};
}

const std::string csv_header = "order,series,role,inner_tube,tractor_joint,implement_joint,closed\n";

std::vector<Row> rows()
{
    return {
        job("units=\"mm\"", "units=\"cm\"", "@units", "units \"cm\" is not known"),
        job("role=\"primary\"", "", "shaft@role", "shaft has no role"),
        job("<closed length=\"860\"/>", "", "shaft/closed", "shaft holds no closed"),
        job("length=\"668\"", "length=\"668,5\"", "shaft/half[2]@length", "length \"668,5\" is not a length"),
        job("tube=\"outer\"", "tube=\"inner\"", "shaft/half[2]@tube", "a second half with tube inner"),
        job("length=\"690\"", "length=\"690\" length=\"691\"", "shaft/half[1]@length", "a second length=\"691\""),
        job("length=\"690\"", "lenght=\"690\"", "shaft/half[1]@lenght", "unknown attribute \"lenght\""),
        job("<shortest", "<angle side=\"tractor\" plan=\"3\"/><shortest", "fit/angle@side-view", "angle has no side-view"),
        job("<shortest length=\"742\"/>", "", "fit", "fit holds no shortest"),
        job("</job>", "<fit><shortest length=\"7&#x202E;42\"/><longest when=\"turning\" length=\"850\"/></fit></job>", "fit[2]/shortest@length", "length holds the invisible character U+202E"),
        job("</shaft>", "</shaft><shaft role=\"primary\"/>", "shaft[2]", "a second shaft"),
        job("<fit>", "<fit>much", "fit", "text \"much\" in fit"),
        job("<fit>", "<fit", "", "this is not well-formed XML"),
        series("<half tube=\"outer\" shoulder=\"5\"/>", "series/half@shoulder", "shoulder \"5\" is 5 mm"),
        series("<closed-lengths>560 500</closed-lengths>", "series/closed-lengths", "\"500\" is not more than what stands before it"),
        series("<rating speed=\"540\" power=\"20\"/><rating speed=\"540\" power=\"30\"/>", "series/rating[2]@speed", "a second rating at speed 540"),
        {Kind::workshop, "<workshop units=\"mm\"><limits/><saw step=\"1\" kerf=\"30\" plus-minus=\"1\" least-cut=\"5\"/><measuring plus-minus=\"2\"/></workshop>", "saw@kerf", "kerf \"30\" is 30 mm"},
        orders("order=\"B\"", "order=\"a\"", "order[2]@order", "order \"a\" stands in line 1 as \"A\""),
        orders("length=\"860\"", "length=\"8600\"", "order[2]/shaft/closed@length", "closed is 8600 mm"),
        {Kind::orders_csv, csv_header + "A,Alder 2,primary,implement,standard,standard,860\n\nB,Alder 2,primary,implement,standard,bent,860\n", "row[2]@implement_joint", "implement_joint \"bent\" is not known"},
        {Kind::orders_csv, "order,colour\nA,red\n", "header", "the columns series, role, inner_tube, tractor_joint and implement_joint are missing"},
        {Kind::orders_csv, csv_header, "", "the list holds no order"},
        {Kind::pieces, "count,length\n1,742\n2,0\n", "row[2]@length", "\"0\" is no length to cut"},
        {Kind::pieces, "length,count\n742,1\n742\n", "row[2]", "the line has 1 fields"},
        {Kind::stock, "length,cost\n6000,cheap\n", "row[1]@cost", "\"cheap\" is not a cost"},
        {Kind::profile_stock, "profile,length\n,6000\n", "row[1]@profile", "\"\" is no profile's name"},
    };
}

}  // namespace

TEST_CASE("every fault says the path of its element")
{
    for (const Row& row : rows()) {
        INFO(row.wrong);
        const Problems problems = problems_of(faults_of(row.kind, row.text));
        const auto found = std::find_if(problems.begin(), problems.end(), [&](const Problem& problem) { return problem.wrong.starts_with(row.wrong); });
        REQUIRE(found != problems.end());
        CHECK(found->path == row.path);
    }
}

TEST_CASE("what a machine cannot be is said at the element that states it")
{
    const std::string machine = bytes_of(folder / "good" / "job_geometry.xml");
    REQUIRE(faults_of(Kind::job, machine).empty());
    const FaultList faults = faults_of(Kind::job, replaced(machine, "pitch=\"0\"", "pitch=\"95\""));
    REQUIRE_FALSE(faults.empty());
    CHECK(std::any_of(faults.begin(), faults.end(), [](const Fault& fault) { return fault.path == "fit[1]/trailed/working@pitch"; }));
}
