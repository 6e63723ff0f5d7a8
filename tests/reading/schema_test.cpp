// The schemas and the readers state the same rules twice. Here xmllint judges every file of tests/reading by its schema,
// and some ten thousand files that differ from a good one in one thing, and the verdicts are compared. Where XSD 1.0
// cannot express a rule, a row below names it, the schema's own text lists it, and some file here is refused by it alone.
#include <array>
#include <cstdio>
#include <fstream>
#include <map>
#include <memory>
#include <regex>
#include <set>


#include "reading/mutants.hpp"
#include "reading/support.hpp"
#include "support/folder.hpp"

using namespace reading_test;
using namespace shaftcut;

namespace {

struct Exception {
    const char* kinds;    // the schemas that list it
    const char* rule;     // as they list it
    const char* message;  // what the reader says then
};

const std::array exceptions{
    Exception{"lists job series workshop orders measured choose measures", "a fraction without a unit where the file is in millimetres", "is a fraction of a millimetre"},
    Exception{"lists job series workshop orders measured choose measures", "a length over 100 m", "is over 100 m"},
    Exception{"lists job series workshop orders measured choose measures", "a fraction of an inch of 1 or more after a whole number, or with a denominator of 0 or over 1000",
              R"re("[0-9]+(-[0-9]+)?/[0-9]+( ?in)?" is not a length)re"},
    Exception{"lists job series workshop orders measured choose measures", "blanks around a number or a date",
              R"re("( [^"]*|[^"]* )" is (no day|not (a whole number|an angle|a number)))re"},
    Exception{"job series workshop orders choose", "a limit's fraction of 0 or above 1", R"re("[0-9./]+" is not a fraction)re"},
    Exception{"job series workshop measures", "a length that must be more than 0 and comes to 0", "is nothing"},
    Exception{"workshop", "a missing or second limits, saw or measuring", "(workshop holds no|a second) (limits|saw|measuring);"},
    Exception{"lists job series workshop orders measured choose measures", "a document type", "a document type stands here"},
    Exception{"job orders measured choose measures", "an order that names a device on Windows", "names a device, not a file, on Windows"},
    Exception{"workshop", "a second firm or prices", "a second (firm|prices);"},
    Exception{"workshop", "a currency that there is not", "is no currency"},
    Exception{"workshop", "an amount of money with more decimals than the currency has, or of more than 100000000", "is not an amount of money"},
    Exception{"workshop", "an item that is not for one thing, or does not state one price of its kind", "item (is for nothing|does not state one price)"},
    Exception{"workshop", "a second price or operation of one name", "a second (price for|operation)"},
    Exception{"workshop", "an item whose to is less than its from", "to is less than from"},
    Exception{"workshop", "a tax-note without tax", "tax-note stands without tax"},
    Exception{"job orders choose", "a second for or limits", "a second (for|limits);"},
    Exception{"job", "a missing end or fit", "holds no (end|fit)"},
    Exception{"orders", "a missing end", "holds no end"},
    Exception{"choose", "a missing fit", "holds no fit"},
    Exception{"choose", "a second measured-by", "a second measured-by;"},
    Exception{"choose", "a machine that cannot be", "no range of movement|axis back on itself|a (turn|pitch|roll|lower-link|top-link|mast) of|in front of the PTO|the links cannot|meet at no height|a lowest of"},
    Exception{"choose", "a connection that the catalogue does not hold", "is not in the catalogue"},
    Exception{"choose", "lengths between crosses", "no shaft is chosen yet whose crosses"},
    Exception{"orders", "a closed length and a fit, or neither", "order holds (a closed length and a fit|neither a closed length nor a fit)"},
    Exception{"job orders choose", "a missing shortest, or longest when=\"turning\", that no machine's geometry gives", "holds no (shortest|longest when=\"turning\")"},
    Exception{"job orders", "a machine that cannot be, or leaves no room for its shaft",
              "no range of movement|axis back on itself|a (turn|pitch|roll|lower-link|top-link|mast) of|in front of the PTO|the links cannot|meet at no height|"
              "a lowest of|leaves no room|folds back on itself"},
    Exception{"job orders", "a machine's geometry and a yoke of unknown length", "geometry needs the length of"},
    Exception{"lists job orders", "a series or connection that the catalogue does not hold", "is not in the catalogue"},
    Exception{"job", "shape or spacing beside a series", "shaft states series and"},
    Exception{"job", "neither series nor shape", "neither series nor shape"},
    Exception{"job", "a wide-angle joint of no known series whose spacing nothing states", "nothing states its spacing"},
    Exception{"job orders measured choose measures", "a tolerance above 25 mm", "a length may be off by at most 25 mm"},
    Exception{"workshop", "a kerf above 20 mm, or a tolerance above 25 mm", "(a length may be off by at most 25 mm|turns to chips at most 20 mm)"},
    Exception{"measured", "another order than the job's", "but the job is order"},
    Exception{"measured", "a second marks", "a second marks;"},
    Exception{"measured", "guard beside stands-out", "half states guard and stands-out"},
    Exception{"measured", "a guard that the job says is not used again", "whose guard is not used again"},
    Exception{"job", "a second condition or measured-by", "a second (condition|measured-by);"},
    Exception{"job choose", "other-tractors=\"none\" beside an other-tractor", "for states other-tractors"},
    Exception{"job", "a guard that the condition and a half speak of differently", "guard \"(complete|missing)\", but"},
    Exception{"job", "a stop-depth beside a shoulder or without a length", "half states (shoulder and stop-depth|stop-depth and no length)"},
    Exception{"job", "a cut-to without a length", "half states cut-to and no length"},
    Exception{"job", "a half of the shaft's own series", "states the shaft's own series"},
    Exception{"job", "what an end states and its half's series states", "and its half is of series"},
    Exception{"job", "a spacing at a standard joint, or beside the shaft's", "(end states spacing, and its joint is standard|shaft and end state spacing)"},
    Exception{"job", "lengths between grooves of a yoke of no known series whose length nothing states", "a fit between grooves needs the length of"},
    Exception{"job orders choose", "one view of an angle without the other, or a range without them", "angle has no (side-view|plan)"},
    Exception{"job orders choose", "two views of an angle beside its own figure", "and its two views"},
    Exception{"lists orders", "a closed, shortest or longest length outside 200 to 3500 mm", "(closed|shortest|longest) length is 200 mm to 3500 mm"},
    Exception{"series", "a shoulder outside 25 to 500 mm, a spacing outside 30 to 250 mm, or a closed length outside 200 to 3500 mm",
              "(shoulder is 25 mm to 500 mm|apart by 30 mm to 250 mm|closed length is 200 mm to 3500 mm)"},
    Exception{"series", "a shoulder that lies short of the seat", "lies short of the tube's own end"},
    Exception{"job orders", "a wide-angle joint of a series that has none", "has no wide-angle joint"},
    Exception{"job", "a wide-angle joint and no reference of the closed length that anything states", "closed has no reference"},
    Exception{"job orders choose", "a reference between grooves", "says nothing between grooves"},
    Exception{"job", "a feature named twice", "twice"},
    Exception{"series", "a series without a cross", "series holds no cross"},
    Exception{"series", "a second limits", "a second limits;"},
    Exception{"series", "two yokes for one connection and joint, where one leaves out the joint", "a second yoke for"},
    Exception{"series", "closed lengths that do not ascend", "is not more than what stands before it"},
    Exception{"lists", "a value that its column does not take", "means \"[^\"]*\" is not known"},
    Exception{"series", "a pin-hole that is not beyond the seat", "is not beyond the seat"},
    Exception{"series", "a part that states what parts of its kind do not depend on", "such a part does not depend on it"},
    Exception{"series", "a second part for one place", "a second part for"},
    Exception{"measures", "a second tubes", "a second tubes;"},
    Exception{"job", "a second measures or tubes", "a second (measures|tubes);"},
    Exception{"job measures", "a third cross or tube, or a fourth reading of one figure", "more than (2 crosses|2 tubes|3 readings)"},
    Exception{"job measures", "a span that is no more than its spacers", "is no more than its spacers"},
    Exception{"job measures", "a standard joint with a spacing, a cross that says at, or two crosses", "(end states spacing, and its joint|cross states at|a second cross, and its end)"},
    Exception{"job measures", "readings of one cap in the bore and on the cap", "one cap is read in its bore"},
};

// The names of the files in `in` that the schema accepts.
std::set<std::string> accepted_by_schema(const std::string& in, const std::string& kind)
{
    const std::string schema = (project / "config" / (kind + ".xsd")).string();
    const std::string command = "cd '" + in + "' && ls | xargs timeout 300 xmllint --nonet --noout --schema '" + schema + "' 2>&1";
    const std::unique_ptr<FILE, int (*)(FILE*)> output(::popen(command.c_str(), "r"), ::pclose);
    REQUIRE(output);
    const std::string ending = " validates\n";
    std::set<std::string> accepted;
    std::array<char, 4096> line{};
    while (std::fgets(line.data(), line.size(), output.get())) {
        const std::string text = line.data();
        REQUIRE(text.find("xmllint: not found") == std::string::npos);
        REQUIRE(text.find("failed to compile") == std::string::npos);
        if (text.ends_with(ending)) accepted.insert(text.substr(0, text.size() - ending.size()));
    }
    return accepted;
}

// The rows that excuse a schema for accepting what the reader refuses with `faults`; empty where it is not excused.
std::set<std::string> excuses(const FaultList& faults, const std::string& kind)
{
    std::set<std::string> rows;
    for (const Fault& fault : faults) {
        const auto excused = [&](const Exception& row) {
            return std::string(row.kinds).find(kind) != std::string::npos && std::regex_search(line_of(fault), std::regex(row.message));
        };
        const auto row = std::find_if(exceptions.begin(), exceptions.end(), excused);
        if (row == exceptions.end()) return {};
        rows.insert(row->rule);
    }
    return rows;
}

// Compares the two verdicts on each file of `bytes_of_file`; gives the exceptions that were needed.
std::set<std::string> compare(const std::map<std::string, std::string>& files, const std::string& kind)
{
    const shaftcut::test::Folder at;
    for (const auto& [name, bytes] : files) std::ofstream(at.file(name), std::ios::binary) << bytes;
    const std::set<std::string> accepted = accepted_by_schema(at.path(), kind);
    REQUIRE(!accepted.empty());
    std::set<std::string> used;
    for (const auto& [name, bytes] : files) {
        const Source source{name, bytes};
        const FaultList faults = kind == "measured" ? read_measured(source, &job_of(bytes)).faults
                                  : kind == "measures" ? read_measures(source).faults
                                  : kind == "job"    ? read_job(source, catalogue()).faults
                                  : kind == "choose" ? read_job_to_choose_for(source, catalogue()).faults
                                  : kind == "orders" ? read_orders_xml(source, catalogue()).faults
                                  : kind == "series" ? read_catalogue(source).faults
                                  : kind == "lists"  ? read_lists(source, catalogue()).faults : read_workshop(source).faults;
        const bool schema_accepts = accepted.count(name) > 0;
        if (faults.empty() == schema_accepts) continue;
        const auto rows = excuses(faults, kind);
        INFO(bytes << "\nthe reader says:\n" << lines_of(faults) << "the schema " << (schema_accepts ? "accepts" : "refuses"));
        CHECK(!rows.empty());
        used.insert(rows.begin(), rows.end());
    }
    return used;
}

XmlElement tree_of(const std::string& bytes)
{
    auto document = parse_xml({"good", bytes});
    REQUIRE(document.root);
    std::erase_if(document.root->attributes, [](const XmlAttribute& attribute) { return attribute.name.find(':') != std::string::npos; });
    return std::move(*document.root);
}

std::map<std::string, std::string> mutants_of(const std::vector<const char*>& good_files)
{
    std::map<std::string, std::string> mutants;
    for (const char* file : good_files) {
        Mutator mutator(tree_of(bytes_of(folder / "good" / file)),
                        [&](const XmlElement& root) { mutants.emplace("m" + std::to_string(mutants.size()) + ".xml", to_text(root)); });
        mutator.run();
    }
    return mutants;
}

void check_kind(const std::string& kind, const std::vector<const char*>& good_files)
{
    auto mutants = mutants_of(good_files);
    mutants.emplace("document-type.xml", "<!DOCTYPE any>" + to_text(tree_of(bytes_of(folder / "good" / good_files.front()))));
    const std::set<std::string> used = compare(mutants, kind);
    const std::string schema = bytes_of(project / "config" / (kind + ".xsd"));
    for (const Exception& row : exceptions) {
        if (std::string(row.kinds).find(kind) == std::string::npos) continue;
        INFO(kind << ": " << row.rule);
        CHECK(used.count(row.rule) == 1);
        CHECK(schema.find("\n      " + std::string(row.rule) + "\n") != std::string::npos);
    }
}

}  // namespace

TEST_CASE("job.xsd and the reader of jobs agree")
{
    check_kind("job", {"job_everything.xml", "job_geometry.xml", "job_inches_mixed.xml", "job_other_order.xml", "job_other_series.xml", "job_no_series_grooves.xml", "job_measures.xml"});
}

TEST_CASE("choose.xsd and the reader of jobs to choose for agree")
{
    check_kind("choose", {"choose_everything.xml", "choose_machine.xml"});
}

TEST_CASE("orders.xsd and the reader of orders agree")
{
    check_kind("orders", {"orders_everything.xml", "orders_geometry.xml"});
}

TEST_CASE("measured.xsd and the reader of what was measured agree")
{
    check_kind("measured", {"measured_everything.xml", "measured_one_half.xml"});
}

TEST_CASE("measures.xsd and the reader of what tells a series agree")
{
    check_kind("measures", {"measures_everything.xml", "measures_nothing.xml"});
}

TEST_CASE("series.xsd and the reader of the catalogue agree")
{
    check_kind("series", {"series_everything.xml", "series_least.xml"});
}

TEST_CASE("workshop.xsd and the reader of the workshop agree")
{
    check_kind("workshop", {"workshop_everything.xml", "workshop_other_order.xml"});
}

TEST_CASE("lists.xsd and the reader of an office's maps agree")
{
    check_kind("lists", {"lists_everything.xml", "lists_inches.xml"});
}

TEST_CASE("schemas and readers agree on every file in tests/reading")
{
    std::map<std::string, std::map<std::string, std::string>> by_kind;
    for (const char* in : {"good", "bad"})
        for (const auto& path : xml_files(folder / in)) by_kind[kind_of(bytes_of(path))][path.filename().string()] = bytes_of(path);
    for (const char* name : {"series.xml", "workshop.xml", "lists.xml"}) by_kind[kind_of(bytes_of(project / "config" / name))][name] = bytes_of(project / "config" / name);
    for (const auto& [kind, files] : by_kind) compare(files, kind);
}
