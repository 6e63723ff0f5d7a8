// What is answered: the commands' own answers, byte for byte.
#include <filesystem>
#include <nlohmann/json.hpp>

#include "bench/bench_house.hpp"
#include "commands/program.hpp"
#include "page_files.hpp"
#include "support/catch.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

namespace fs = std::filesystem;

std::vector<std::string> files_in(const std::string& folder)
{
    std::vector<std::string> files;
    for (const auto& entry : fs::directory_iterator(source_folder + "/" + folder))
        if (entry.path().extension() == ".xml") files.push_back(entry.path().string());
    REQUIRE(files.size() >= 2);
    return files;
}

struct Server {
    World world{};
    Bench bench{desk_in(world), house_in(world, false)};
    Reply ask(const std::string& target, const std::string& body) { return bench.respond(post(target, body)); }
};

// A file that is called as the bench calls it, so that sentences that name a place in it are the same.
struct JobFile {
    explicit JobFile(const std::string& bytes) { write_all(path(), bytes); }
    std::string path() const { return folder.file("job"); }
    Folder folder{};
};

Run command(const std::string& name, const std::string& file, const std::vector<std::string>& more)
{
    std::vector<std::string> arguments{name, "--config", config_folder, file};
    arguments.insert(arguments.end(), more.begin(), more.end());
    return run(arguments);
}

// The only file there.
std::string written_in(const Folder& folder)
{
    REQUIRE(folder.count() == 1);
    return read_all(fs::directory_iterator(folder.path())->path().string());
}

}  // namespace

TEST_CASE("bench: the answer to every sample is cut's, byte for byte")
{
    Server server;
    for (const std::string& path : files_in("samples")) {
        INFO(path);
        const JobFile job(read_all(path));
        const Reply reply = server.ask("/answer", read_all(path));
        CHECK(reply.status == 200);
        CHECK(reply.type == "application/json");
        CHECK(reply.body == command("cut", job.path(), {"--formats", "json", "--output", "-"}).out);
    }
}

TEST_CASE("bench: the papers of every sample are cut's, byte for byte, under their names")
{
    Server server;
    for (const std::string& path : files_in("samples")) {
        INFO(path);
        const JobFile job(read_all(path));
        const Folder papers;
        command("cut", job.path(), {"--output", papers.path(), "--formats", "pdf,xlsx", "--tag"});
        for (const auto& [target, end] : {std::pair("/cut-sheet", "-cut-sheet.pdf"), std::pair("/work-order", "-work-order.xlsx"), std::pair("/tag", "-tag.pdf")}) {
            const Reply reply = server.ask(target, read_all(path));
            const std::string name = nlohmann::json::parse(server.ask("/answer", read_all(path)).body)["order"].get<std::string>() + end;
            INFO(name);
            if (!fs::exists(papers.file(name))) {
                CHECK(reply.status == 422);
                CHECK(nlohmann::json::parse(reply.body)["says"].get<std::string>().starts_with("no tag for "));
                continue;
            }
            CHECK(reply.status == 200);
            CHECK(reply.file_name == name);
            CHECK(header_of(reply, "content-disposition") == "attachment; filename=\"" + name + "\"");
            CHECK(reply.body == read_all(papers.file(name)));
        }
    }
}

TEST_CASE("bench: units and paper are those asked for")
{
    Server server;
    const std::string bytes = read_all(sample("plain-cut"));
    const JobFile job(bytes);
    CHECK(server.ask("/answer?units=in", bytes).body == command("cut", job.path(), {"--formats", "json", "--output", "-", "--units", "in"}).out);
    const Folder papers;
    command("cut", job.path(), {"--output", papers.path(), "--formats", "pdf", "--units", "in", "--paper", "letter"});
    CHECK(server.ask("/cut-sheet?units=in&paper=letter", bytes).body == written_in(papers));
    for (const char* target : {"/answer?units=cm", "/answer?paper=a4", "/cut-sheet?paper=a5", "/answer?units=mm&units=in", "/answer?units", "/answer?a=b", "/answer?,=mm", "/cut-sheet?units,paper=a4", "/answer?=mm"}) {
        INFO(target);
        CHECK(server.ask(target, bytes).status == (std::string(target) == "/answer?units" ? 200 : 400));
    }
}

TEST_CASE("bench: what was measured after the cut, and what would serve, are answered as by the commands")
{
    Server server;
    for (const std::string& path : files_in("samples/after-cut")) {
        INFO(path);
        const std::string bytes = read_all(sample(fs::path(path).stem().string()));
        const JobFile job(bytes);
        const Folder folder;
        run({"after-cut", "--config", config_folder, "--output", folder.path(), job.path(), path});
        CHECK(server.ask("/after-cut?job-bytes=" + std::to_string(bytes.size()), bytes + read_all(path)).body == written_in(folder));
    }
    for (const std::string& path : files_in("samples/choose")) {
        INFO(path);
        const JobFile job(read_all(path));
        const Folder folder;
        command("choose", job.path(), {"--output", folder.path()});
        CHECK(server.ask("/choose", read_all(path)).body == written_in(folder));
    }
    const std::string bytes = read_all(sample("plain-cut"));
    for (const char* count : {"", "x", "-1", "1000000"}) CHECK(server.ask("/after-cut?job-bytes=" + std::string(count), bytes).status == 400);
}

TEST_CASE("bench: which shaft it is, is answered as by identify")
{
    Server server;
    for (const std::string& path : files_in("samples/identify")) {
        INFO(path);
        const Folder in, out;
        write_all(in.file("measures"), read_all(path));
        run({"identify", "--config", config_folder, "--job", "--output", out.path(), in.file("measures")});
        CHECK(out.count() == 3);
        for (const auto& [target, end] : {std::pair("/identify", "-identify.json"), std::pair("/identify-sheet", "-identify.pdf"), std::pair("/identify-job", "-job.xml")}) {
            const Reply reply = server.ask(target, read_all(path));
            INFO(target);
            CHECK(reply.status == 200);
            for (const auto& entry : fs::directory_iterator(out.path()))
                if (entry.path().string().ends_with(end)) CHECK(reply.body == read_all(entry.path().string()));
        }
        CHECK(server.ask("/identify-job", read_all(path)).file_name.ends_with("-job.xml"));
    }
    const Reply refused = server.ask("/identify", "<measures/>");
    CHECK(refused.status == 422);
    CHECK(nlohmann::json::parse(refused.body)["faults"][0]["file"] == "measures");
}

TEST_CASE("bench: a quote is the command's, with the discount and services asked for")
{
    Server server;
    for (const char* name : {"plain-cut", "refused-transport-height"}) {
        INFO(name);
        const std::string bytes = read_all(sample(name));
        const JobFile job(bytes);
        for (const auto& [target, format] : {std::pair("/quote", "json"), std::pair("/quote-sheet", "pdf"), std::pair("/quote-book", "xlsx")}) {
            const Folder folder;
            command("quote", job.path(), {"--output", folder.path(), "--formats", format, "--discount", "5%", "--alternatives"});
            CHECK(server.ask(std::string(target) + "?discount=5%25&alternatives=yes", bytes).body == written_in(folder));
        }
    }
    const Reply refused = server.ask("/quote?service=nothing+such", read_all(sample("plain-cut")));
    CHECK(refused.status == 422);
    CHECK(nlohmann::json::parse(refused.body)["faults"].empty());
    CHECK(nlohmann::json::parse(refused.body)["says"].get<std::string>().find("\"nothing such\"") != std::string::npos);
}

TEST_CASE("bench: a file with faults is answered with each of them at its place")
{
    Server server;
    for (const char* target : {"/answer", "/view", "/machine", "/choose", "/after-cut?job-bytes=0", "/cut-sheet", "/work-order", "/tag", "/quote", "/quote-sheet", "/quote-book"})
        for (const char* body : {"", "no XML", "<shaft/>", "<job/>"}) {
            INFO(target << " " << body);
            const Reply reply = server.ask(target, body);
            CHECK(reply.status == 422);
            const auto faults = nlohmann::json::parse(reply.body)["faults"];
            REQUIRE(!faults.empty());
            CHECK(faults[0]["line"].get<int>() == 1);
            CHECK((faults[0]["file"] == "job" || faults[0]["file"] == "measured"));
            CHECK(!faults[0]["says"].get<std::string>().empty());
        }
}

TEST_CASE("bench: a screen's view and a machine that moves")
{
    Server server;
    for (const std::string& path : files_in("samples")) {
        INFO(path);
        const auto view = nlohmann::json::parse(server.ask("/view", read_all(path)).body), answer = nlohmann::json::parse(server.ask("/answer", read_all(path)).body);
        CHECK(view["verdict"] == answer["verdict"]);
    }
    const Reply machine = server.ask("/machine", read_all(sample("trailed-wide-angle")));
    CHECK(machine.status == 200);
    CHECK(!nlohmann::json::parse(machine.body)["fits"].empty());
}

TEST_CASE("bench: another method is told which would be right")
{
    Server server;
    Request request = post("/answer", "");
    request.method = Method::other;
    CHECK(server.bench.respond(request).status == 405);
    CHECK(header_of(server.bench.respond(get("/answer")), "allow") == "POST");
    CHECK(header_of(server.ask("/catalogue", ""), "allow") == "GET");
}

TEST_CASE("bench: services and quantities may be asked for more than once, nothing else")
{
    Server server;
    const std::string job = read_all(sample("plain-cut"));
    // What is wrong with a quantity is said in words, not refused as an address.
    CHECK(server.ask("/quote?quantity=a:1&quantity=b:2", job).status != 400);
    CHECK(server.ask("/quote?service=a&service=b", job).status != 400);
    CHECK(server.ask("/quote?discount=1%25&discount=2%25", job).status == 400);
}

TEST_CASE("bench: the page is told on which paper the workshop prints")
{
    World world;
    Desk desk = desk_in(world);
    CHECK(nlohmann::json::parse(Bench(desk, house_in(world, false)).respond(get("/catalogue")).body)["paper"] == "a4");
    desk.paper = Paper::letter;
    CHECK(nlohmann::json::parse(Bench(desk, house_in(world, false)).respond(get("/catalogue")).body)["paper"] == "letter");
}

TEST_CASE("bench: only what is printed waits for another program")
{
    World world;
    Bench bench(desk_in(world, false, true), house_in(world, false));
    const std::string job = read_all(sample("plain-cut"));
    CHECK(std::get<ReplyWork>(bench.admit(post("/print?what=tag", job))).waits);
    CHECK_FALSE(std::get<ReplyWork>(bench.admit(post("/tag", job))).waits);
}

TEST_CASE("bench: the printer gets the paper, and what it does not take is said")
{
    World world;
    Bench bench(desk_in(world, false, true), house_in(world, false));
    const std::string job = read_all(sample("plain-cut"));
    CHECK(nlohmann::json::parse(bench.respond(get("/catalogue")).body)["printer"] == true);
    CHECK(bench.respond(post("/print?what=cut-sheet", job)).status == 200);
    CHECK(bench.respond(post("/print?what=tag", job)).status == 200);
    REQUIRE(world.printed.size() == 2);
    CHECK(world.printed[0].name == "P-101-cut-sheet.pdf");
    CHECK(world.printed[0].bytes == bench.respond(post("/cut-sheet", job)).body);
    CHECK(world.printed[1].bytes == bench.respond(post("/tag", job)).body);
    CHECK(bench.respond(post("/print?what=work-order", job)).status == 400);
    CHECK(bench.respond(post("/print?what=cut-sheet", "<job/>")).status == 422);
    world.printer_takes = false;
    CHECK(bench.respond(post("/print?what=cut-sheet", job)).status == 500);
    Server without_printer;
    CHECK(without_printer.ask("/print?what=cut-sheet", job).status == 404);
}

TEST_CASE("bench: what a paper cannot be made for is a sentence")
{
    World world;
    Desk desk = desk_in(world);
    desk.fonts = {};
    Bench bench(std::move(desk), house_in(world, false));
    const Reply reply = bench.respond(post("/cut-sheet", read_all(sample("plain-cut"))));
    CHECK(reply.status == 500);
    CHECK(nlohmann::json::parse(reply.body)["says"].get<std::string>().size() > 10);
}

TEST_CASE("bench: text is JSON whatever it holds")
{
    for (const std::string& text : {std::string("a\"b\\c\n\t\x01 ä 漢 \U0001F527"), std::string()}) CHECK(nlohmann::json::parse(json_text(text)) == text);
    CHECK(nlohmann::json::parse(json_text("\xff\xfe")).is_string());
}
