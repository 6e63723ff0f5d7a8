// Lengths outside the bounds of every shaft, and the question whether the unit is right where the other one explains them.
#include "reading/support.hpp"

using namespace reading_test;
using namespace shaftcut;

namespace {

std::string catalogue_with(const std::string& inside)
{
    const auto read = read_catalogue({"c", "<catalogue units=\"mm\"><series name=\"S\" shape=\"star\"><cross cap=\"22\" span=\"54\"/>" + inside + "</series></catalogue>"});
    return lines_of(read.faults);
}

std::string orders_with(const std::string& closed, Units units)
{
    const std::string list = "order,series,role,inner_tube,tractor_joint,implement_joint,closed\na,Alder 2,primary,implement,standard,standard," + closed + "\n";
    return lines_of(read_orders_csv({"o", list}, catalogue(), units).faults);
}

bool asks(const std::string& lines) { return lines.find("is the unit right?") != std::string::npos; }

}  // namespace

TEST_CASE("a stated shoulder is within its bounds and reaches its half's seat")
{
    const auto half = [](const std::string& tube, const std::string& rest) { return catalogue_with("<half tube=\"" + tube + "\" " + rest + "/>"); };
    for (const char* tube : {"inner", "outer"}) {
        CHECK(half(tube, "shoulder=\"25\"").empty());
        CHECK(half(tube, "shoulder=\"500\"").empty());
        CHECK_FALSE(half(tube, "shoulder=\"24.999\"").empty());
        CHECK_FALSE(half(tube, "shoulder=\"500.001\"").empty());
        CHECK(asks(half(tube, "shoulder=\"12.8\"")));
        CHECK(asks(half(tube, "shoulder=\"3251.2\"")));
        CHECK_FALSE(asks(half(tube, "shoulder=\"0\"")));
    }
    CHECK(half("inner", "shoulder=\"62\" seat=\"62\"").empty());
    CHECK(half("inner", "shoulder=\"61.991\" seat=\"62\"").empty());  // under 0.01 decides nothing
    CHECK_FALSE(half("inner", "shoulder=\"61.990\" seat=\"62\"").empty());
    CHECK(half("outer", "shoulder=\"32\" seat=\"62\"").empty());
    CHECK_FALSE(half("outer", "shoulder=\"31.990\" seat=\"62\"").empty());
}

TEST_CASE("a spacing and closed lengths of a series are within their bounds")
{
    CHECK(catalogue_with("<wide-angle spacing=\"30\"/><closed-lengths>200 3500</closed-lengths>").empty());
    CHECK_FALSE(catalogue_with("<wide-angle spacing=\"29.999\"/>").empty());
    CHECK(catalogue_with("<wide-angle spacing=\"250\"/>").empty());
    CHECK(asks(catalogue_with("<wide-angle spacing=\"2.5\"/>")));
    CHECK(catalogue_with("<closed-lengths>33.9</closed-lengths>") ==
          "c:1:96: \"33.9\" is 33.9 mm, and a closed length is 200 mm to 3500 mm; is the unit right? 25.4 times as much, 861.06 mm, could be one: so it is where inches are "
          "read as millimetres\n");
    CHECK_FALSE(catalogue_with("<closed-lengths>860 3500.001</closed-lengths>").empty());
}

TEST_CASE("a list's lengths are within their bounds, in both units")
{
    CHECK(orders_with("860", Units::mm).empty());
    CHECK(orders_with("860", Units::in) == "o:2:47: closed \"860\" is 21844 mm, and a closed length is 200 mm to 3500 mm; is the unit right? A 25.4th of that, 860 mm, could be one: "
                                           "so it is where millimetres are read as inches\n");
    CHECK(asks(orders_with("33.9", Units::mm)));
    CHECK_FALSE(orders_with("0", Units::mm).empty());
    CHECK_FALSE(orders_with("3500.001", Units::mm).empty());
}

TEST_CASE("a blade and a tape are within their bounds")
{
    const auto workshop = [](const std::string& units, const std::string& kerf, const std::string& tape) {
        return lines_of(read_workshop({"w", "<workshop units=\"" + units + "\"><limits/><saw step=\"1 mm\" kerf=\"" + kerf + "\" plus-minus=\"1 mm\" least-cut=\"5 mm\"/><measuring plus-minus=\"" +
                                            tape + "\"/></workshop>"}).faults);
    };
    CHECK(workshop("mm", "20", "25").empty());
    CHECK_FALSE(workshop("mm", "20.001", "25").empty());
    CHECK_FALSE(workshop("mm", "20", "25.001").empty());
    CHECK(asks(workshop("in", "3", "1/16")));
    CHECK(asks(workshop("in", "1/8", "2")));
    CHECK_FALSE(asks(workshop("mm", "20000", "2")));
}
