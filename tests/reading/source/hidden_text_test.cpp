// Characters that nobody sees, in lists and files of every kind; and those that are mended.
#include "lists/pieces.hpp"
#include "reading/support.hpp"

using namespace reading_test;
using namespace shaftcut;

namespace {

std::string job_with(const std::string& customer, const std::string& length = "742")
{
    return "<job order=\"x\" units=\"mm\"><for customer=\"" + customer + "\"/><shaft series=\"Alder 2\" role=\"primary\" inner-tube=\"implement\"><closed length=\"860\"/>"
           "<end side=\"tractor\" joint=\"standard\"/><end side=\"implement\" joint=\"standard\"/></shaft>"
           "<fit><shortest length=\"" + length + "\"/><longest when=\"turning\" length=\"850\"/></fit></job>";
}

const char* const out_with_it = "take it out: what is read would not be what you see";

}  // namespace

TEST_CASE("a character that nobody sees is refused in a job, a series and a workshop, written or by its number")
{
    for (const char* written : {"\u202E", "&#x202E;", "&#8238;"})
        CHECK(lines_of(read_job_text(job_with("a" + std::string(written) + "b")).faults) ==
              "job.xml:1:32: customer holds the invisible character U+202E; " + std::string(out_with_it) + "\n");
    for (const char* bad : {"\u200B", "\u200D", "\u2060", "\uFEFF", "\u00B7\uFE0F", "\U000E0041", "&#xFDD0;", "&#x1FFFF;", "&#x9;", "&#xA;", "&#x80;", "\x7F", "\u2028", "\u2066"}) {
        INFO(bad);
        CHECK(read_job_text(job_with(bad)).faults.size() == 1);
        CHECK(read_catalogue({"c", "<catalogue units=\"mm\"><series name=\"a" + std::string(bad) + "\" shape=\"star\"><cross cap=\"22\" span=\"54\"/></series></catalogue>"}).faults.size() == 1);
        CHECK(read_workshop({"w", "<workshop units=\"mm\" name=\"a" + std::string(bad) + "\"><limits/><saw step=\"1\" kerf=\"3\" plus-minus=\"1\" least-cut=\"5\"/>"
                                  "<measuring plus-minus=\"2\"/></workshop>"}).faults.size() == 1);
    }
}

TEST_CASE("pasted blanks are plain ones and soft hyphens are dropped, in texts and in figures")
{
    const auto read = read_job_text(job_with("Hill\u00ADside\u00A0Farm&#xA0;\u202F1&#xAD;", "742\u00A0mm"));
    REQUIRE(read.value);
    CHECK(read.value->customer == "Hillside Farm  1");
    CHECK(read.value->fits[0].shortest->length == Length::millimetres(742));
    const auto list = read_pieces("length,count,label\n742\u00A0mm\u00A0,2,\"a\u00A0b\u00AD\"\n", "p.csv", Units::in);
    REQUIRE(std::holds_alternative<PieceList>(list));
    CHECK(std::get<PieceList>(list).pieces[0].length == Length::millimetres(742));
    CHECK(std::get<PieceList>(list).pieces[0].label == "a b");
}

TEST_CASE("a length in a list that is longer than a hundred characters is cut in the message")
{
    const std::string digits(5000, '9');
    for (const std::string& length : {digits, digits + ".5 mm", "0." + digits + " cm", "1/" + digits}) {
        const auto list = read_pieces("length,count,label\n" + length + ",2,a\n", "p.csv", Units::mm);
        REQUIRE(std::holds_alternative<FaultList>(list));
        for (const Fault& fault : std::get<FaultList>(list)) CHECK(line_of(fault).size() < 200);
        const std::string line = "a,1,Alder 2,primary,implement,standard,standard," + length + "\n";
        const OrderList orders = read_orders_csv({"o.csv", "order,count,series,role,inner_tube,tractor_joint,implement_joint,closed\n" + line}, catalogue(), Units::mm);
        REQUIRE_FALSE(orders.faults.empty());
        for (const Fault& fault : orders.faults) CHECK(line_of(fault).size() < 200);
    }
}
