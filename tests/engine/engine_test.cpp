// The engine's door: bytes in, answers and documents out.
#include "shaftcut/engine/engine.hpp"

#include <set>
#include <thread>

#include "commands/program.hpp"
#include "support/catch.hpp"
#include "support/engine.hpp"
#include "support/fonts.hpp"
#include "support/saw/linear_programme.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

Wishes with_fonts()
{
    Wishes wishes;
    wishes.fonts = font_files();
    return wishes;
}

const std::vector<Format>& every_format()
{
    static const std::vector<Format> all{Format::pdf, Format::xlsx, Format::json, Format::png, Format::svg, Format::terminal};
    return all;
}

std::vector<std::string> names_of(const std::vector<Document>& documents)
{
    std::vector<std::string> names;
    for (const Document& document : documents) names.push_back(document.name);
    return names;
}

// A clock that goes on by a millisecond each time it is asked.
SawMeans means_of(double& clock)
{
    SawMeans means;
    means.seconds = [&clock] { return clock += 0.001; };
    means.linear_programme = linear_programme();
    return means;
}

}  // namespace

TEST_CASE("the engine's answer to each sample is what the commands write, byte for byte")
{
    int compared = 0;
    for (const auto& entry : std::filesystem::directory_iterator(source_folder + "/samples")) {
        if (entry.path().extension() != ".xml") continue;
        for (const char* command : {"cut", "lengths"}) {
            INFO(command << " " << entry.path().string());
            const Folder folder;
            const Run by_command = run({command, "--config", config_folder, "--formats", "pdf,json", "--output", folder.path(), entry.path().string()});
            const Source job = file_of(entry.path().string());
            const Answer answer = std::string(command) == "cut" ? demo_engine().answer(job, {}) : demo_engine().lengths(job, {});
            CHECK(answer.work_order.has_value() == (by_command.exit < 2));
            CHECK(refuses(answer) == (by_command.exit == 1));
            if (!answer.work_order) continue;
            for (const Document& document : documents(answer, {Format::pdf, Format::json}, with_fonts())) {
                CHECK(document.bytes == read_all(folder.file(document.name)));
                ++compared;
            }
        }
    }
    CHECK(compared >= 50);
}

TEST_CASE("which documents belong to an answer, and how each can be written")
{
    const Answer cut = demo_engine().answer(file_of(sample("plain-cut")), {});
    CHECK(names_of(documents(cut, every_format(), with_fonts()))
          == std::vector<std::string>{"P-101-cut-sheet.pdf", "P-101-work-order.xlsx", "P-101.json", "P-101-cut-sheet.png", "P-101-cut-sheet.svg", "P-101.txt"});
    CHECK(document_names(cut, every_format()) == names_of(documents(cut, every_format(), with_fonts())));
    const Answer lengths = demo_engine().lengths(file_of(sample("mounted-lift")), {});
    const std::string order = lengths.order;
    CHECK(names_of(documents(lengths, every_format(), with_fonts()))
          == std::vector<std::string>{order + "-lengths.pdf", order + "-lengths.json", order + "-lengths.png", order + "-lengths.svg", order + "-lengths.txt"});
    const auto formats_of = [](Question question) {
        std::vector<Format> found;
        for (const Format format : every_format())
            if (comes_as(question, format)) found.push_back(format);
        return found;
    };
    CHECK(formats_of(Question::cut) == every_format());
    CHECK(formats_of(Question::saw) == every_format());
    CHECK(formats_of(Question::lengths) == std::vector{Format::pdf, Format::json, Format::png, Format::svg, Format::terminal});
    CHECK(formats_of(Question::after_cut) == std::vector{Format::json, Format::terminal});
    CHECK(formats_of(Question::build) == std::vector{Format::pdf, Format::xlsx, Format::json, Format::terminal});
    CHECK(formats_of(Question::form) == std::vector{Format::pdf});
}

TEST_CASE("a configuration is found by name, and what it lacks is named")
{
    Configuration configuration = demo_configuration();
    std::swap(configuration.files[0], configuration.files[1]);
    CHECK(Engine::load(configuration).engine);
    configuration.files.pop_back();
    const Loaded half = Engine::load(configuration);
    CHECK_FALSE(half.engine);
    CHECK(half.problems.empty());
    CHECK(half.missing == std::vector<std::string>{"series.xml"});
    const Loaded faulty = Engine::load({{{"a/series.xml", "<catalogue"}, {"workshop.xml", ""}}});
    CHECK_FALSE(faulty.engine);
    CHECK(faulty.missing.empty());
    REQUIRE(faulty.problems.size() == 2);
    CHECK(faulty.problems[0].place.file == "a/series.xml");
    CHECK(faulty.problems[1].place.file == "workshop.xml");
}

TEST_CASE("a job with faults is answered by all its problems and no work order")
{
    const Answer answer = demo_engine().answer({"memory", "<job order='A 1'/>"}, {});
    CHECK_FALSE(answer.work_order);
    CHECK_FALSE(refuses(answer));
    CHECK(answer.problems.size() > 1);
    for (const Problem& problem : answer.problems) CHECK(problem.place.file == "memory");
}

TEST_CASE("without a font only what is drawn cannot be made, and its message names the file")
{
    const Answer answer = demo_engine().answer(file_of(sample("plain-cut")), {});
    Wishes wishes;
    CHECK(documents(answer, {Format::xlsx, Format::json, Format::terminal}, wishes).size() == 3);
    wishes.fonts.regular.name = "a/font.ttf";
    CHECK_THROWS_WITH(documents(answer, {Format::json, Format::pdf}, wishes), "the font file a/font.ttf cannot be read");
    wishes.fonts.regular.bytes = std::make_shared<const std::string>("no font");
    CHECK_THROWS_WITH(documents(answer, {Format::svg}, wishes), "the font file a/font.ttf cannot be read");
}

TEST_CASE("one engine answers several threads as it answers one")
{
    const Source job = file_of(sample("wide-angle-outer-cross"));
    const auto answered = [&] { return documents(demo_engine().answer(job, {}), {Format::pdf, Format::json}, with_fonts()); };
    const std::vector<Document> alone = answered();
    std::vector<std::vector<Document>> together(4);
    std::vector<std::thread> threads;
    for (std::vector<Document>& documents : together) threads.emplace_back([&] { documents = answered(); });
    for (std::thread& thread : threads) thread.join();
    for (const std::vector<Document>& documents : together) {
        REQUIRE(documents.size() == 2);
        CHECK(documents[0].bytes == alone[0].bytes);
        CHECK(documents[1].bytes == alone[1].bytes);
    }
}

TEST_CASE("a saw plan knows the time and the library that are handed in, and no other")
{
    double clock = 0;
    int planned = 0;
    SawMeans means = means_of(clock);
    double last_taken = 0;
    means.news = [&](const SawNews& news) { last_taken = news.seconds_taken; };
    means.planned = [&] { ++planned; };
    SawWishes wishes;
    wishes.stock = {"rack", "length,count,cost\n3000,,\n"};
    wishes.seconds = 1e6;
    SawStart start = demo_engine().saw({"list.csv", "length,count\n700,40\n930,17\n"}, {}, wishes);
    REQUIRE(start.run);
    CHECK(start.run->name() == "list");
    const SawAnswer answer = start.run->plan(means);
    REQUIRE(answer.order);
    CHECK(answer.order->end == SawEnd::finished);
    CHECK(answer.order->seconds > 0);
    CHECK(answer.order->seconds <= clock);
    CHECK(last_taken > 0);
    CHECK(planned == 1);

    means.stop = [] { return true; };
    // Too many lengths for a proof at once.
    std::string lengths = "length,count\n";
    for (int i = 0; i < 60; ++i) lengths += std::to_string(211 + 37 * i) + ",7\n";
    SawStart again = demo_engine().saw({"list.csv", lengths}, {}, wishes);
    REQUIRE(again.run);
    const SawAnswer stopped = again.run->plan(means);
    REQUIRE(stopped.order);
    CHECK(stopped.order->end == SawEnd::interrupted);

    means.stop = {};
    means.linear_programme = [](const char* name) -> void* { throw std::runtime_error(std::string("no ") + name); };
    SawStart without = demo_engine().saw({"list.csv", "length,count\n700,40\n930,17\n"}, {}, wishes);
    REQUIRE(without.run);
    CHECK_THROWS_WITH(without.run->plan(means), "no Clp_newModel");
}

TEST_CASE("a list of orders is answered one after the other, under names that are known before")
{
    double clock = 0;
    BuildStart start = demo_engine().build(file_of(source_folder + "/samples/orders.csv"), {}, {});
    REQUIRE(start.run);
    CHECK(start.problems.empty());
    const std::vector<std::string> said = start.run->document_names({Format::pdf, Format::xlsx, Format::json});
    std::set<std::string> names(said.begin(), said.end());
    CHECK(names.count("orders.json") == 1);
    std::size_t orders = 0;
    for (const std::size_t all = start.run->left(); start.run->left() > 0; ++orders) {
        CHECK(start.run->left() == all - orders);
        for (const Document& document : documents(start.run->next(), {Format::pdf}, with_fonts())) CHECK(names.erase(document.name) == 1);
    }
    const Batch batch = start.run->finish(means_of(clock));
    CHECK(batch.orders.size() == orders);
    std::size_t labels = 0;
    Wishes wishes = with_fonts();
    wishes.labels_drawn = [&](std::size_t drawn, std::size_t of) { labels = drawn == of ? drawn : labels; };
    for (const Document& document : documents(batch, {Format::pdf, Format::xlsx}, wishes)) CHECK(names.erase(document.name) == 1);
    CHECK(names == std::set<std::string>{"orders.json"});
    CHECK(labels > 0);
}

TEST_CASE("a form is for a series of the catalogue or for any, and says what the catalogue holds instead")
{
    CHECK(demo_engine().form("", {}).form);
    const FormAnswer own = demo_engine().form("Alder 2", {});
    REQUIRE(own.form);
    CHECK(names_of(documents(*own.form, {Format::pdf}, with_fonts())) == std::vector<std::string>{"measuring-form-Alder-2.pdf"});
    const FormAnswer none = demo_engine().form("Alder 3", {});
    CHECK_FALSE(none.form);
    CHECK(none.why_not.find("Alder 2") != std::string::npos);
}
