// Lists of orders: what is read of them, every fault with its place, and the good orders of a list with faults.
#include "lists/orders_reader.hpp"

#include "reading/support.hpp"

using namespace shaftcut;

namespace {

const std::string header = "order,series,role,inner_tube,tractor_joint,implement_joint,closed,shortest,longest_turning\n";

OrderList csv(const std::string& text, Units units = Units::mm) { return read_orders_csv({"o.csv", text}, reading_test::catalogue(), units); }

OrderList xml(const std::string& orders) { return read_orders_xml({"o.xml", "<orders units=\"mm\">\n" + orders + "\n</orders>"}, reading_test::catalogue()); }

std::vector<std::string> faults(const OrderList& list)
{
    std::vector<std::string> lines;
    for (const Fault& fault : list.faults) lines.push_back(reading_test::line_of(fault));
    return lines;
}

std::vector<std::string> numbers(const OrderList& list)
{
    std::vector<std::string> found;
    for (const BuildOrder& order : list.orders) found.push_back(order.order);
    return found;
}

std::string order_element(const std::string& number, const std::string& more = "")
{
    return "<order order=\"" + number + "\"" + more + "><shaft series=\"Alder 2\" role=\"primary\" inner-tube=\"implement\"><closed length=\"860\"/>"
           "<end side=\"tractor\" joint=\"standard\"/><end side=\"implement\" joint=\"standard\"/></shaft></order>";
}

}  // namespace

TEST_CASE("an order of a CSV list with every column")
{
    const OrderList list = csv(
        "order,count,series,role,speed,inner_tube,tractor_joint,tractor_connection,tractor_lock,tractor_device,implement_joint,implement_connection,implement_lock,"
        "implement_device,guard,closed,closed_reference,shortest,longest_working,longest_turning,longest_standing,fit_between,fit_reference,customer,machine,due\n"
        "A-1,3,Hazel 3,secondary,1000,tractor,wide-angle,1-3/8-6,clamp-bolt,none,standard,1-3/8-21,covered-collar,slip-clutch,no,,outer-cross,742.5,29-3/16 in,850,905 mm,"
        "crosses,inner-cross,\"Field, Son & Co\",rake,2026-12-01\n");
    REQUIRE(faults(list).empty());
    const BuildOrder& order = list.orders.at(0);
    CHECK(order.order == "A-1");
    CHECK(order.count == 3);
    CHECK(order.shaft.series == "Hazel 3");
    CHECK(order.shaft.role == Role::secondary);
    CHECK(order.shaft.speed == 1000);
    CHECK(order.shaft.inner_tube == End::tractor);
    CHECK(order.shaft.ends[End::tractor].joint == JointKind::wide_angle);
    CHECK(order.shaft.ends[End::tractor].connection == "1-3/8-6");
    CHECK(order.shaft.ends[End::tractor].lock == Lock::clamp_bolt);
    CHECK(order.shaft.ends[End::implement].device == Device::slip_clutch);
    CHECK_FALSE(order.guard);
    CHECK_FALSE(order.closed);
    CHECK(order.shaft.closed_reference == Reference::outer_cross);
    const JobFit& fit = order.fits.at(0);
    CHECK(fit.shortest->length == Length::micrometres(742'500));
    CHECK(fit.longest[Range::working]->length == Length::micrometres(741'363));
    CHECK(fit.longest[Range::standing]->length == Length::millimetres(905));
    CHECK(fit.reference == Reference::inner_cross);
    CHECK(order.customer == "Field, Son & Co");
    CHECK(order.machine == "rake");
    CHECK(order.due == "2026-12-01");
}

TEST_CASE("what a list leaves out: one shaft, with its guard, no device, lengths in the units of the call")
{
    const OrderList list = csv(header + "A-1,Alder 2,primary,implement,standard,standard,33.5,,\n", Units::in);
    REQUIRE(faults(list).empty());
    const BuildOrder& order = list.orders.at(0);
    CHECK(order.count == 1);
    CHECK(order.guard);
    CHECK(order.shaft.ends[End::tractor].device == Device::none);
    CHECK(order.closed->length == Length::micrometres(850'900));
    CHECK(order.fits.empty());
    CHECK(order.units == Units::in);
}

TEST_CASE("every fault of a CSV list by line and column in one go, and the good lines are still there")
{
    const OrderList list = csv(header + "A-1,Alder 2,primary,implement,standard,standard,860,,\n"
                                        ",Alder 3,third,,double,,,,\n"
                                        "A-3,Alder 2,primary,implement,standard,standard,860,742,850\n"
                                        "A-4,Alder 2,primary,implement,standard,standard,,742,\n"
                                        "A-5,Birch 1,secondary,implement,wide-angle,standard,\"7,5\",,\n"
                                        "A-6,Alder 2\n"
                                        "A-1,Alder 2,primary,implement,standard,standard,860,,\n"
                                        "A-8,Alder 2,primary,implement,standard,standard,,742,850\n");
    CHECK(numbers(list) == std::vector<std::string>{"A-8"});
    CHECK(faults(list) == std::vector<std::string>{
              "o.csv:3:1: order \"\" is no order number; write 1 to 40 characters",
              "o.csv:3:1: the order states neither closed nor shortest and longest_turning; write the one or the others",
              "o.csv:3:2: series \"Alder 3\" is not in the catalogue; did you mean \"Alder 2\"?",
              "o.csv:3:10: role \"third\" is not known; write primary or secondary",
              "o.csv:3:16: inner_tube is empty; write tractor or implement",
              "o.csv:3:17: tractor_joint \"double\" is not known; write standard or wide-angle",
              "o.csv:3:24: implement_joint is empty; write standard or wide-angle",
              "o.csv:4:49: closed stands beside lengths of a fit; leave one of them out: the shaft is made to the one or to the other",
              "o.csv:5:54: longest_turning is empty; write the longest length with the PTO turning, beside shortest",
              "o.csv:6:33: tractor_joint \"wide-angle\", but series \"Birch 1\" has no wide-angle joint; write standard, or another series",
              "o.csv:6:53: closed \"7,5\" is not a length; write digits with a decimal point, such as 742, 742.5 mm, 29.25 in or 29-3/16 in",
              "o.csv:7:1: the line has 2 fields; write 9, as the first line names",
              "o.csv:8:1: order \"A-1\" stands in line 2 too; give each its own number; until then neither is built"});
}

TEST_CASE("columns that say nothing in their line are faults")
{
    const std::string columns = "order,series,role,inner_tube,tractor_joint,implement_joint,closed,shortest,longest_turning,fit_between,fit_reference,count,guard,due,speed\n";
    const std::string start = "A,Alder 2,primary,implement,wide-angle,standard,";
    CHECK(faults(csv(columns + start + "860,,,crosses,inner-cross,,,,\n")).size() == 2);
    CHECK(faults(csv(columns + start + ",742,850,grooves,inner-cross,,,,\n")).size() == 1);
    CHECK(faults(csv(columns + start + "860,,,,,0,maybe,2026-02-30,x\n")).size() == 4);
    CHECK(faults(csv(columns + start + "860,,,,,10001,,,\n")).size() == 1);
}

TEST_CASE("a wide-angle joint of a series without a reference must state one")
{
    Catalogue catalogue = reading_test::catalogue();
    for (Series& series : catalogue.series)
        if (series.name == "Alder 2") series.shape = Shape::other, series.wide_angle_reference.reset();
    const std::string columns = "order,series,role,inner_tube,tractor_joint,implement_joint,closed,closed_reference,shortest,longest_turning,fit_between,fit_reference\n";
    const auto count = [&](const std::string& rest) {
        return read_orders_csv({"o.csv", columns + "A,Alder 2,primary,implement,wide-angle,standard," + rest + "\n"}, catalogue, Units::mm).faults.size();
    };
    CHECK(count("860,,,,,") == 1);
    CHECK(count("860,outer-cross,,,,") == 0);
    CHECK(count(",,742,850,,") == 1);
    CHECK(count(",,742,850,,inner-cross") == 0);
    CHECK(count(",,742,850,grooves,") == 0);
    const auto of_xml = [&](const std::string& closed, const std::string& fit) {
        const std::string text = "<orders units=\"mm\"><order order=\"A\"><shaft series=\"Alder 2\" role=\"primary\" inner-tube=\"implement\">" + closed +
                                 "<end side=\"tractor\" joint=\"wide-angle\"/><end side=\"implement\" joint=\"standard\"/></shaft>" + fit + "</order></orders>";
        return read_orders_xml({"o.xml", text}, catalogue).faults.size();
    };
    const std::string lengths = "<shortest length=\"742\"/><longest when=\"turning\" length=\"850\"/></fit>";
    CHECK(of_xml("<closed length=\"860\"/>", "") == 1);
    CHECK(of_xml("<closed length=\"860\" reference=\"inner-cross\"/>", "") == 0);
    CHECK(of_xml("", "<fit>" + lengths) == 1);
    CHECK(of_xml("", "<fit reference=\"inner-cross\">" + lengths) == 0);
    CHECK(of_xml("", "<fit between=\"grooves\">" + lengths) == 0);
}

TEST_CASE("an order with an unknown series or connection is never sound, however many faults a list has")
{
    std::string many;
    const std::size_t count = 3000;
    for (std::size_t i = 0; i < count; ++i) {
        std::string order = order_element("A-" + std::to_string(i));
        if (i % 2 == 0) order.replace(order.find("Alder 2"), 7, "Qlder");
        else order.replace(order.find("joint=\"standard\""), 16, "joint=\"standard\" connection=\"Q\"");
        many += order + "\n";
    }
    const OrderList list = xml(many);
    CHECK(list.orders.empty());
    CHECK(faults(list).back().ends_with(std::to_string(count - 200) + " more faults are not listed; mend those above first"));
}

TEST_CASE("numbers that differ in capitals only name the same files on many disks, and are one number")
{
    const std::string start = "order,series,role,inner_tube,tractor_joint,implement_joint,closed\n", rest = ",Alder 2,primary,implement,standard,standard,830\n";
    const OrderList list = csv(start + "B-1" + rest + "b-1" + rest + "B-1" + rest);
    CHECK(faults(list) == std::vector<std::string>{
                             "o.csv:3:1: order \"b-1\" stands in line 2 as \"B-1\", which names the same files on many disks; give each its own number; until then neither is built",
                             "o.csv:4:1: order \"B-1\" stands in line 2 too; give each its own number; until then neither is built"});
    CHECK(list.orders.empty());
    const OrderList elements = xml(order_element("B-1") + "\n" + order_element("b-1"));
    CHECK(faults(elements) == std::vector<std::string>{"o.xml:3:8: order \"b-1\" stands in line 2 as \"B-1\", which names the same files on many disks; give each its own number; until then neither is built"});
    CHECK(numbers(elements).empty());
}

TEST_CASE("a list without its columns, without orders, or with too many is refused whole")
{
    CHECK(faults(csv("order,series\nA,Alder 2\n")).at(0).starts_with("o.csv:1:1: the columns role, inner_tube, tractor_joint and implement_joint are missing; "));
    CHECK(faults(csv(header)) == std::vector<std::string>{"o.csv:1:1: the list holds no order; write one a line under its header"});
    CHECK(csv("").orders.empty());
    std::string many = header;
    for (std::size_t i = 0; i <= most_orders; ++i) many += "A-" + std::to_string(i) + ",Alder 2,primary,implement,standard,standard,860,,\n";
    const OrderList list = csv(many);
    CHECK(list.orders.empty());
    CHECK(faults(list) == std::vector<std::string>{"o.csv:1:1: the list holds more than 20000 orders; split it"});
    std::string many_elements;
    for (std::size_t i = 0; i <= most_orders; ++i) many_elements += order_element("A-" + std::to_string(i));
    const OrderList elements = xml(many_elements);
    CHECK(elements.orders.empty());
    CHECK(faults(elements).size() == 1);
}

TEST_CASE("the sound orders of an XML list with faults are still there")
{
    const OrderList list = xml(order_element("A-1") + order_element("A-2", " colour=\"red\"") + order_element("A-3") + order_element("A-1") + order_element("A-5", " count=\"7\""));
    CHECK(numbers(list) == std::vector<std::string>{"A-3", "A-5"});
    CHECK(list.orders[1].count == 7);
    CHECK(faults(list).size() == 2);
    // An unknown child is reported only when its order has been left: also of the last one.
    const std::string spoilt = "<order order=\"A-9\"><wheel/>" + order_element("x").substr(std::string("<order order=\"x\">").size());
    CHECK(numbers(xml(order_element("A-1") + spoilt)) == std::vector<std::string>{"A-1"});
    CHECK(numbers(xml(spoilt + order_element("A-1"))) == std::vector<std::string>{"A-1"});
}

TEST_CASE("of a file that is no sound XML nothing is built")
{
    const OrderList twice = xml(order_element("A-1") + order_element("A-2", " due=\"2026-01-01\" due=\"2026-01-02\""));
    CHECK(twice.orders.empty());
    CHECK(faults(twice).size() == 1);
    CHECK(xml(order_element("A-1") + "<order").orders.empty());
}

TEST_CASE("an XML list's geometry is read as a job's")
{
    const OrderList list = read_orders_xml({"o.xml", reading_test::bytes_of(reading_test::folder / "good/orders_geometry.xml")}, reading_test::catalogue());
    REQUIRE(list.orders.size() == 2);
    CHECK(list.orders[0].fits[0].machine.has_value());
}

TEST_CASE("a list in the words of another language")
{
    const OrderList list = csv("Auftrag;Stückzahl;Baureihe;Rolle;Innenrohr an;Gelenk traktorseitig;Gelenk geräteseitig;Länge geschlossen;Schutz;Kunde;Liefertermin\n"
                               "A-1;2,00;Alder 2;primär;Gerät;Weitwinkel;Standard;742,5;Ja;Hof (invented);4.12.2026\n");
    REQUIRE(faults(list).empty());
    const BuildOrder& order = list.orders.at(0);
    CHECK(order.count == 2);
    CHECK(order.shaft.role == Role::primary);
    CHECK(order.shaft.inner_tube == End::implement);
    CHECK(order.shaft.ends[End::tractor].joint == JointKind::wide_angle);
    CHECK(order.closed->length == Length::micrometres(742'500));
    CHECK(order.due == "2026-12-04");
    CHECK(faults(csv("Auftrg;Baureihe\nA;Alder 2\n")).at(1).starts_with("o.csv:1:1: unknown column \"Auftrg\"; did you mean Auftrag? "));
    CHECK(faults(csv("order;Auftrag\nA;A\n")).at(0).starts_with("o.csv:1:1: the column order stands there twice"));
}
