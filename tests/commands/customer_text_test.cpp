// Whatever a customer, machine or tractor is called stays text in every document and breaks none.
#include <nlohmann/json.hpp>

#include "commands/process.hpp"
#include "spreadsheet/zip.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

std::string escaped(const std::string& text)
{
    std::string out;
    for (const char c : text) out += c == '&' ? "&amp;" : c == '<' ? "&lt;" : c == '"' ? "&quot;" : std::string(1, c);
    return out;
}

std::string repeated(const std::string& text, std::size_t count)
{
    std::string out;
    for (std::size_t i = 0; i < count; ++i) out += text;
    return out;
}

std::string job_for(const std::string& customer)
{
    const std::string job = read_all(sample("plain-cut"));
    const std::size_t at = job.find("<for "), end = job.find("/>", at);
    return job.substr(0, at) + "<for customer=\"" + escaped(customer) + "\" machine=\"" + escaped(customer) + "\" tractor=\"" + escaped(customer) + "\"" + job.substr(end);
}

const std::vector<std::string> names{
    "=HYPERLINK(\"http://example.invalid\",\"x\")", "@SUM(1)", "\t=1", "a\nb", "+1", "-1", "=1+1", "'=1", "=cmd|' /C calc'!A0", "{=1}",
    "<b>&amp;</b>", "]]>", "&P&D&F &\"Arial\"", "%s%n%d{}{0}", "\\(x\\) endstream endobj", "\u05E9\u05DC\u05D5\u05DD", "\u0645\u0631\u062D\u0628\u0627",
    "\u6F22\u5B57", "\U0001F69C", "e\u0301\u0302\u0303\u0304\u0305", "\u00A0\u00AD", " ", "\uFFFD", std::string(200, 'W'), std::string(200, 'i'),
    repeated("\u20AC", 200), repeated("word ", 40), repeated("\U0001F69C", 200)};

// The formulas of all sheets.
std::vector<std::string> formulas_of(const std::map<std::string, std::string>& parts)
{
    std::vector<std::string> formulas;
    for (const auto& [name, xml] : parts) {
        if (name.rfind("xl/worksheets/", 0) != 0) continue;
        for (std::size_t at = xml.find("<f>"); at != std::string::npos; at = xml.find("<f>", at + 3)) formulas.push_back(xml.substr(at, xml.find("</f>", at) - at));
    }
    return formulas;
}

}  // namespace

TEST_CASE("a customer's name stays text in every document")
{
    const Folder folder, out;
    write_all(folder.file("job.xml"), job_for("Plain"));
    const std::vector<std::string> replace{"--replace", "--formats", "pdf,xlsx,json"};
    REQUIRE(run(cut_into(out, folder.file("job.xml"), replace)).exit == 0);
    const auto plain = formulas_of(parts_of(read_all(out.file("P-101-work-order.xlsx"))));
    REQUIRE(plain.size() > 50);
    for (const std::string& name : names) {
        INFO(name);
        write_all(folder.file("job.xml"), job_for(name));
        const Run ended = run(cut_into(out, folder.file("job.xml"), replace));
        CHECK(ended.exit == 0);
        CHECK(ended.err == "");
        const auto parts = parts_of(read_all(out.file("P-101-work-order.xlsx")));
        CHECK(formulas_of(parts) == plain);
        for (const auto& [part, xml] : parts) CHECK_FALSE(has(xml, "<hyperlink"));
        CHECK(nlohmann::json::parse(read_all(out.file("P-101.json")))["verdict"] == "cut");
        CHECK(read_all(out.file("P-101-cut-sheet.pdf")).rfind("%PDF-", 0) == 0);
        for (const char c : ended.out) CHECK((static_cast<unsigned char>(c) >= 0x20 || c == '\n'));
    }
}

TEST_CASE("control and invisible characters and longer names are refused")
{
    const Folder folder;
    for (const std::string& name : {std::string("\u0085"), std::string("a\u007Fb"), std::string("\u202Eesrever"), std::string("\uFEFF"), std::string("\u2028"), std::string(201, 'i'), std::string(5000, 'i')}) {
        INFO(name);
        write_all(folder.file("job.xml"), job_for(name));
        CHECK(run(cut_into(folder, folder.file("job.xml"))).exit == 2);
        CHECK(folder.count() == 1);
    }
}

TEST_CASE("the PDFs of such customers are whole")
{
    const Folder folder, out;
    for (std::size_t i = 0; i < names.size(); i += 3) {
        INFO(names[i]);
        write_all(folder.file("job.xml"), job_for(names[i]));
        REQUIRE(run(cut_into(out, folder.file("job.xml"), {"--replace", "--formats", "pdf"})).exit == 0);
        const std::string command = "pdftotext '" + out.file("P-101-cut-sheet.pdf") + "' - 2>&1 | grep -c 'P-101\\|Syntax Error'";
        CHECK(std::system((command + " >'" + folder.file("lines") + "'").c_str()) == 0);
        CHECK(std::system(("pdftotext '" + out.file("P-101-cut-sheet.pdf") + "' - 2>&1 >/dev/null | grep -q .").c_str()) != 0);
    }
}
