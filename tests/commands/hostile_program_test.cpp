// Hostile files given to the real program: refused with a message in under a second of processor time and 200 MB.
#include <functional>

#include "commands/process.hpp"
#include "files/load.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

std::string repeated(const std::string& text, std::size_t count)
{
    std::string out;
    out.reserve(text.size() * count);
    for (std::size_t i = 0; i < count; ++i) out += text;
    return out;
}

constexpr std::size_t million = 1'000'000;

struct Hostile {
    const char* what;
    int exit;             // 2: read and refused; 3: not read at all
    const char* message;  // a part of it
    std::function<std::string(const std::string& root)> bytes;
};

const std::vector<Hostile> hostiles{
    {"nothing", 2, "the file is empty", [](const std::string&) { return std::string(); }},
    {"no XML", 2, "not well-formed", [](const std::string&) { return "\x7F" "ELF" + repeated("<", 300'000); }},
    {"noise", 2, "", [](const std::string&) { return repeated("\xC3\x28\xA0\xFF", million); }},
    {"a long word", 2, "", [](const std::string&) { return std::string(most_source_bytes, 'x'); }},
    {"NUL bytes", 2, "NUL", [](const std::string& root) { return "<" + root + " units=\"mm\">" + std::string(million, '\0'); }},
    {"an entity bomb", 2, "document type", [](const std::string& root) {
         std::string bomb = "<!DOCTYPE " + root + " [<!ENTITY a0 \"" + std::string(1000, 'x') + "\">";
         for (int i = 1; i < 30; ++i) bomb += "<!ENTITY a" + std::to_string(i) + " \"" + repeated("&a" + std::to_string(i - 1) + ";", 10) + "\">";
         return bomb + "]><" + root + " order=\"&a29;\"/>";
     }},
    {"an outside entity", 2, "document type", [](const std::string& root) {
         return "<!DOCTYPE " + root + " [<!ENTITY a SYSTEM \"file:///etc/passwd\">]><" + root + " order=\"&a;\"/>";
     }},
    {"deep nesting", 2, "more than 400000", [](const std::string&) { return repeated("<a>", million) + repeated("</a>", million); }},
    {"deep nesting, as deep as is parsed", 2, "nested more than 32 deep", [](const std::string& root) {
         return "<" + root + " units=\"mm\">" + repeated("<a>", 199'000) + repeated("</a>", 199'000) + "</" + root + ">";
     }},
    {"a million attributes", 2, "more than 400000", [](const std::string& root) { return "<" + root + repeated(" a=\"\"", million) + "/>"; }},
    {"doubled attributes", 2, "a second units", [](const std::string& root) { return "<" + root + repeated(" units=\"mm\"", 390'000) + "/>"; }},
    {"a million elements", 2, "more than 400000", [](const std::string& root) { return "<" + root + ">" + repeated("<a/>", million) + "</" + root + ">"; }},
    {"as many elements as are parsed", 2, "unknown element", [](const std::string& root) {
         return "<" + root + " units=\"mm\">" + repeated("<a/>", 390'000) + "</" + root + ">";
     }},
    {"a value of 16 MB", 2, "", [](const std::string& root) { return "<" + root + " order=\"" + std::string(most_source_bytes - 100, 'x') + "\"/>"; }},
    {"16 MB of references", 2, "", [](const std::string& root) { return "<" + root + " order=\"" + repeated("&lt;", most_source_bytes / 4 - 100) + "\"/>"; }},
    {"16 MB of text", 2, "", [](const std::string& root) {
         return "<" + root + " units=\"mm\">" + std::string(most_source_bytes - 100, 'x') + "</" + root + ">";
     }},
    {"more than 16 MB", 3, "larger than 16 MB", [](const std::string& root) { return "<" + root + "/>" + std::string(most_source_bytes, ' '); }},
};

void check_refused(const Hostile& hostile, const std::string& file, const Ended& ended)
{
    INFO(hostile.what << " as " << file << ": " << ended.err.substr(0, 300));
    CHECK(ended.exit == hostile.exit);
    CHECK(has(ended.err, file));
    CHECK(has(ended.err, hostile.message));
    CHECK(ended.err.size() < 100'000);
    CHECK(ended.seconds < (sanitized ? 15 : 1));
    CHECK(ended.kilobytes > 0);
    if (!sanitized) CHECK(ended.kilobytes < 200 * 1000);
}

std::string with_order(const std::string& order)
{
    std::string job = read_all(sample("plain-cut"));
    return job.replace(job.find("P-101"), 5, order);
}

}  // namespace

TEST_CASE("hostile jobs are refused in a second and 200 MB")
{
    const Folder folder, out;
    for (const Hostile& hostile : hostiles) {
        write_all(folder.file("job.xml"), hostile.bytes("job"));
        check_refused(hostile, folder.file("job.xml"), run_process({cut_into(out, folder.file("job.xml"))}));
    }
    CHECK(out.count() == 0);
}

TEST_CASE("a job with thousands of machines is refused in a second")
{
    std::string job = read_all(sample("trailed-wide-angle"));
    const std::size_t start = job.find("<fit>"), end = job.find("</fit>") + 6;
    const std::string fit = job.substr(start, end - start);
    const Folder folder, out;
    write_all(folder.file("most.xml"), std::string(job).replace(start, fit.size(), repeated(fit, 3)));
    CHECK(run_process({cut_into(out, folder.file("most.xml"), {"--formats", "json", "--replace"})}).exit == 0);
    write_all(folder.file("job.xml"), job.replace(start, fit.size(), repeated(fit, 10'000)));
    const Ended ended = run_process({cut_into(out, folder.file("job.xml"), {"--formats", "json", "--replace"})});
    check_refused({"thousands of machines", 2, "more than 100 fits", {}}, folder.file("job.xml"), ended);
    CHECK(std::count(ended.err.begin(), ended.err.end(), '\n') == 1);
}

TEST_CASE("without memory the call ends with 3 and a sentence, and no sound file is called broken")
{
    if (sanitized) return;  // a sanitizer needs terabytes of addresses
    std::string job = read_all(sample("plain-cut"));
    const std::size_t start = job.find("<fit>"), end = job.find("</fit>") + 6;
    const std::string fit = job.substr(start, end - start);
    const Folder folder, out;
    write_all(folder.file("job.xml"), job.replace(start, fit.size(), repeated(fit, 5'000)));
    write_all(folder.file("list.csv"), "length,count\n" + repeated("10,1\n", million));
    for (const bool saw : {false, true}) {
        std::size_t without = 0;
        for (rlim_t megabytes = 30; megabytes <= 90; megabytes += 5) {
            const std::vector<std::string> list{"saw", "--config", config_folder, "--formats", "json", "--seconds", "0", "--replace", "--output", out.path(), folder.file("list.csv")};
            const Ended ended = run_process({saw ? list : cut_into(out, folder.file("job.xml"), {"--formats", "json", "--replace"}), "count 0", "", [megabytes] {
                                                 const rlimit limit{megabytes << 20, megabytes << 20};
                                                 ::setrlimit(RLIMIT_AS, &limit);
                                             }});
            INFO(megabytes << " MB: " << ended.err);
            CHECK(ended.signal == 0);
            CHECK_FALSE(has(ended.err, "bad_alloc"));
            CHECK_FALSE(has(ended.err, "not well-formed"));
            if (!has(ended.err, "there is not enough memory")) continue;
            CHECK(ended.exit == 3);
            ++without;
        }
        CHECK(without > 0);
    }
}

TEST_CASE("hostile configurations are refused in a second and 200 MB")
{
    for (const auto& [name, root] : {std::pair("series.xml", "catalogue"), std::pair("workshop.xml", "workshop")}) {
        const Folder folder;
        for (const char* file : {"series.xml", "workshop.xml"}) write_all(folder.file(file), read_all(config_folder + "/" + file));
        // Both are parsed by the same code: every third is enough of the second.
        const std::size_t step = std::string(root) == "catalogue" ? 1 : 3;
        for (std::size_t i = 0; i < hostiles.size(); i += step) {
            const Hostile& hostile = hostiles[i];
            write_all(folder.file(name), hostile.bytes(root));
            check_refused(hostile, folder.file(name), run_process({{"catalogue", "--config", folder.path()}}));
        }
    }
}

TEST_CASE("hostile lists are refused in a second and 200 MB")
{
    const std::string orders = read_all(source_folder + "/samples/orders.csv"), header = orders.substr(0, orders.find('\n') + 1);
    const std::string pieces = "length,count,label\n";
    struct HostileList {
        const char* what;
        const char* message;
        std::string of_orders, of_pieces;
    };
    const std::size_t most = most_source_bytes - 1000;
    const std::vector<HostileList> lists{
        {"millions of columns", "more than 100 fields", repeated("a,", most / 2), repeated("a,", most / 2)},
        {"millions of fields in a line", "more than 100 fields", header + repeated("1,", most / 2), pieces + repeated("1,", most / 2)},
        {"a hundred long fields in a line", "more than 100 fields", header + repeated(std::string(150'000, '9') + ",", 100), pieces + repeated(std::string(150'000, '9') + ",", 100)},
        {"millions of short lines", "split it", header + repeated("a\n", most / 2), pieces + repeated("1\n", most / 2)},
        {"as many lines as are let in, all wrong", "more lines too", header + repeated("a\n", 20'000), "length,count\n" + repeated("x,0\n", million)},
        {"millions of lines of empty fields", "write one a line under its header", header + repeated(std::string(25, ',') + "\n", most / 26), pieces + repeated(",,\n", most / 3)},
        {"an open quote", "not closed", header + "\"" + std::string(most, 'x'), pieces + "\"" + repeated("\"\"", most / 2)},
        {"noise", "not UTF-8", header + repeated("\xC3\x28\xA0\xFF\n", million), repeated("\xC3\x28\xA0\xFF\n", million)},
        {"NUL bytes", "control character", header + std::string(million, '\0'), pieces + std::string(million, '\0')},
    };
    const Folder folder, out;
    for (const HostileList& list : lists) {
        for (const bool build : {true, false}) {
            const std::string file = folder.file("list.csv");
            write_all(file, build ? list.of_orders : list.of_pieces);
            const Hostile hostile{list.what, 2, list.message, {}};
            check_refused(hostile, file, run_process({{build ? "build" : "saw", "--config", config_folder, "--output", out.path(), file}}));
        }
    }
    write_all(folder.file("stock.csv"), "profile,length\n" + repeated("x,1\n", most / 4));
    const Ended ended = run_process({{"build", "--config", config_folder, "--output", out.path(), "--stock", folder.file("stock.csv"), source_folder + "/samples/orders.csv"}});
    check_refused({"millions of bars", 2, "more than 20000 bars", {}}, folder.file("stock.csv"), ended);
    CHECK(out.count() == 0);
}

TEST_CASE("what is not a file is refused as a job and as a configuration")
{
    const Folder folder;
    for (const std::string& job : {folder.path(), folder.file("missing.xml"), std::string("/dev/zero"), std::string("/proc/self/mem"), std::string(5000, 'x'), std::string()}) {
        INFO(job);
        const Ended ended = run_process({cut_into(folder, job)});
        CHECK(ended.exit == 3);
        CHECK(std::count(ended.err.begin(), ended.err.end(), '\n') == 1);
        CHECK(run_process({{"catalogue", "--config", job.empty() ? "/dev/null" : job}}).exit == 3);
    }
}

TEST_CASE("orders that cannot name files are refused with a message")
{
    const Folder folder, out;
    const std::string longest(40, 'x');
    for (const std::string& order : {std::string("../x"), std::string("/x"), std::string("a/b"), std::string("a\\b"), std::string(".x"), std::string(".."), std::string(),
                                     longest + "x", std::string("K 1"), std::string("K\n1"), std::string("K&#10;1"), std::string("K&#0;1"), std::string("K\0" "1", 3),
                                     std::string("Kö"), std::string("K\xFF"), std::string("K&#x202E;1"), std::string("K:1"), std::string("K*"), std::string("$(K)"),
                                     std::string("CON"), std::string("nul"), std::string("Aux.1"), std::string("prn"), std::string("COM1"), std::string("lpt9.x.y")}) {
        write_all(folder.file("job.xml"), with_order(order));
        const Ended ended = run_process({cut_into(out, folder.file("job.xml"), {"--formats", "json"})});
        INFO(order);
        CHECK(ended.exit == 2);
        CHECK(ended.err.rfind(folder.file("job.xml") + ":", 0) == 0);
    }
    CHECK(contents(out).empty());
    for (const std::string& order : {longest, std::string("CONE"), std::string("COM10"), std::string("-"), std::string("--replace"), std::string("K.CON"), std::string("_")}) {
        write_all(folder.file("job.xml"), with_order(order));
        INFO(order);
        CHECK(run_process({cut_into(out, folder.file("job.xml"), {"--formats", "json"})}).exit == 0);
        CHECK(std::filesystem::exists(out.file(order + ".json")));
    }
}

TEST_CASE("unusual options do what they say or are refused")
{
    const Folder folder;
    const auto cut = [&](const std::vector<std::string>& options) {
        std::vector<std::string> arguments{"cut"};
        arguments.insert(arguments.end(), options.begin(), options.end());
        arguments.push_back(sample("plain-cut"));
        return run_process({arguments, "count 0", "", [&folder] { if (::chdir(folder.path().c_str()) != 0) ::_exit(125); }});
    };
    const auto written_to = [&](const std::string& output) {
        const Ended ended = cut({"--config", config_folder, "--formats", "json", "--output", output});
        return ended.exit == 0 && std::filesystem::exists(std::filesystem::path(folder.path()) / output / "P-101.json");
    };
    CHECK(written_to("a/b/../c"));
    CHECK(written_to("./-"));
    CHECK(written_to("with blank\nand line"));
    CHECK(written_to("größe %s %n $(x)"));
    CHECK(written_to("\xFF\xFE"));
    CHECK(written_to("."));
    CHECK(cut({"--config", config_folder, "--output", ""}).exit == 2);
    CHECK(cut({"--config", config_folder, "--output", std::string(5000, 'x')}).exit == 3);
    CHECK(cut({"--config", config_folder, "--output", "x/" + std::string(300, 'x')}).exit == 3);
    CHECK(cut({"--config", config_folder, "--output", "a", "--output", "b"}).exit == 2);
    CHECK(cut({"--config", config_folder, "--formats", ""}).exit == 2);
    CHECK(cut({"--config", config_folder, "--formats", ",json"}).exit == 2);
    CHECK(cut({"--config", config_folder, "--units", ""}).exit == 2);
    CHECK(cut({"--config", config_folder, "--paper", ""}).exit == 2);
    CHECK(cut({"--config", ""}).exit == 2);
    CHECK(cut({"--config", "/nowhere"}).exit == 3);
    CHECK(cut({"--config", config_folder + "/series.xml"}).exit == 3);
    CHECK(cut({"--config"}).exit != 0);
}
