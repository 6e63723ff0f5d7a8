// Files that nobody writes by mistake: each is refused, soon, without much memory, and with few words.
#include <ctime>

#include "reading/support.hpp"
#include "xml/xml.hpp"

using namespace reading_test;
using namespace shaftcut;

namespace {

std::string repeated(const std::string& piece, std::size_t count)
{
    std::string out;
    out.reserve(piece.size() * count);
    for (std::size_t i = 0; i < count; ++i) out += piece;
    return out;
}

std::string numbered(const std::string& before, const std::string& after, std::size_t count)
{
    std::string out;
    for (std::size_t i = 0; i < count; ++i) out += before + std::to_string(i) + after;
    return out;
}

// The faults of a text that is refused within ten seconds of the processor, whatever else the machine does: a hundred times
// what the slowest takes, because a sanitizer is slow; what is quadratic takes minutes.
FaultList refused(const std::string& text)
{
    const std::clock_t start = std::clock();
    const FaultList faults = faults_of(Source{"f.xml", text});
    CHECK(std::clock() - start < 10 * CLOCKS_PER_SEC);
    CHECK_FALSE(faults.empty());
    CHECK(faults.size() <= Faults::most_listed + 1);
    for (const Fault& fault : faults) CHECK(line_of(fault).size() < 1000);
    return faults;
}

std::string only(const FaultList& faults)
{
    REQUIRE(faults.size() == 1);
    return line_of(faults.front());
}

const std::string open = "<job order=\"x\" units=\"mm\">";

}  // namespace

TEST_CASE("entities are never expanded")
{
    const std::string bomb = "<!DOCTYPE job [<!ENTITY a0 \"ha\">" + numbered("<!ENTITY b", " \"&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;\">", 1000) + "]>" + open + "&b999;</job>";
    CHECK(only(refused(bomb)) == "f.xml:1:1: a document type stands here; leave it out");
    CHECK(only(refused("<!DOCTYPE job SYSTEM \"file:///etc/passwd\"><job/>")) == "f.xml:1:1: a document type stands here; leave it out");
    refused(open + repeated("&a;", 1'000'000) + "</job>");
}

TEST_CASE("what is not UTF-8 text is refused where it begins")
{
    CHECK(only(refused("<job order=\"a\n\xE4\"/>")) == "f.xml:2:1: the file is not UTF-8 text; save it as UTF-8");
    for (const char* bad : {"\xC0\x80", "\xED\xA0\x80", "\xF4\x90\x80\x80", "\xE2\x82", "\x80", "\xFF"})
        CHECK(only(refused("<job x=\"\u00e4" + std::string(bad) + "\"/>")) == "f.xml:1:10: the file is not UTF-8 text; save it as UTF-8");
    CHECK(only(refused(std::string("<job/>\n\0<job/>", 14))) == "f.xml:2:1: the file holds a NUL byte; save it as XML text in UTF-8");
    CHECK(only(refused(std::string("<job order=\"a\0b\"/>", 18))) == "f.xml:1:14: the file holds a NUL byte; save it as XML text in UTF-8");
    CHECK(only(refused("<job order=\"\x01\"/>")) == "f.xml:1:13: the file holds the control character U+0001; take it out");
    CHECK(only(refused("<job order=\"\uFFFF\"/>")) == "f.xml:1:13: the file holds the invisible character U+FFFF; take it out");
    CHECK(only(refused(std::string("\xFF\xFE<\0j\0", 6))) == "f.xml:1:1: the file is in UTF-16; save it as UTF-8");
    CHECK(only(refused(std::string("\xFE\xFF\0<\0j", 6))) == "f.xml:1:1: the file is in UTF-16; save it as UTF-8");
    CHECK(only(refused(std::string("<\0j\0o\0", 6))) == "f.xml:1:2: the file holds a NUL byte; save it as XML text in UTF-8");
}

TEST_CASE("16 MB are refused or read in one pass")
{
    const std::size_t size = most_source_bytes;
    CHECK(only(refused(std::string(size + 1, ' ') + open)) == "f.xml:1:1: the file is larger than 16 MB; divide it");
    CHECK(only(refused(std::string(size, ' '))) == "f.xml:1:1: the file is empty; it holds one XML element");
    refused(open + std::string(size - 100, 'x') + "</job>");
    refused(open + std::string(size - 100, '\n') + "</job>");
    refused("<job order=\"" + std::string(size - 100, 'x') + "\"/>");
    refused("<job " + std::string(size - 100, 'x') + "=\"1\"/>");
    refused("<" + std::string(size - 100, 'x') + "/>");
    refused("<job order=\"" + repeated("&amp;", size / 5 - 100) + "\"/>");
    refused("<job order=\"" + std::string(size - 100, '&') + "\"/>");
    refused("<!--" + std::string(size - 100, '-') + "--><job/>");
}

TEST_CASE("a million of anything is refused")
{
    const std::string many = "f.xml:1:1: the file holds more than 400000 elements and attributes; divide it";
    CHECK(only(refused("<job " + repeated("a=\"\" ", 1'000'000) + "/>")) == many);
    CHECK(only(refused("<job>" + repeated("<a>", 1'000'000))) == many);
    CHECK(only(refused(repeated("<a>", 1'000'000) + repeated("</a>", 1'000'000))) == many);
    CHECK(only(refused(repeated("<job/>", 1'000'000))) == many);
}

TEST_CASE("as much as is let in is read in proportion to its length")
{
    refused("<job " + numbered("a", "=\"\" ", 390'000) + "/>");
    refused("<job " + repeated("order=\"\" ", 390'000) + "/>");
    refused(open + repeated("<a/>", 390'000) + "</job>");
    refused(open + repeated("<shaft/>", 390'000) + "</job>");
    refused(open + repeated("<fit><longest/></fit>", 95'000) + "</job>");
    refused(repeated("<a>", 190'000) + repeated("</a>", 190'000));
    refused(open + repeated("x<a/>", 390'000) + "</job>");
    refused(open + "<shaft>" + numbered("<end connection=\"c", "\"/>", 190'000) + "</shaft></job>");
    const std::string connections = numbered("<connection name=\"c", "\"/>", 90'000);
    refused("<catalogue units=\"mm\">" + connections + "<series name=\"s\" shape=\"star\">" + numbered("<yoke connection=\"d", "\"/>", 90'000) + "</series></catalogue>");
    refused("<catalogue units=\"mm\">" + connections + "<series name=\"s\" shape=\"star\">" + numbered("<yoke connection=\"c", "\"/>", 90'000) + "</series></catalogue>");
    refused("<catalogue units=\"mm\"><series name=\"s\" shape=\"star\"><closed-lengths>" + repeated("5 ", 4'000'000) + "</closed-lengths></series></catalogue>");
}

TEST_CASE("elements are nested 32 deep at most")
{
    const auto nested = [](std::size_t depth) { return repeated("<a>", depth) + repeated("</a>", depth); };
    CHECK(parse_xml({"f.xml", nested(32)}).root);
    const XmlDocument deep = parse_xml({"f.xml", nested(33)});
    CHECK_FALSE(deep.root);
    CHECK(only(deep.faults.listed()) == "f.xml:1:97: \"a\" is nested more than 32 deep; close the elements around it first");
}

TEST_CASE("only so many faults are listed, in the order of their places, and the rest is counted")
{
    const FaultList faults = refused(open + repeated("\n<a/>", 5000) + "\n</job>");
    REQUIRE(faults.size() == Faults::most_listed + 1);
    CHECK(line_of(faults[0]) == "f.xml:1:1: job holds no shaft; add one");
    CHECK(line_of(faults[2]) == "f.xml:2:1: unknown element \"a\"; job holds for, measured-by, shaft, fit and limits");
    CHECK(line_of(faults[199]) == "f.xml:199:1: unknown element \"a\"; job holds for, measured-by, shaft, fit and limits");
    CHECK(line_of(faults[200]) == "f.xml:199:1: 4802 more faults are not listed; mend those above first");
}
