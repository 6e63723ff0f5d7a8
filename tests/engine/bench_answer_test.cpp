// What a screen is given: the sheet's own words, faults at their boxes, a machine that moves.
#include "shaftcut/engine/bench_answer.hpp"

#include <algorithm>
#include <filesystem>
#include <nlohmann/json.hpp>
#include <pugixml.hpp>
#include <set>

#include "cut_sheet/cut_sheet.hpp"
#include "support/catch.hpp"
#include "support/engine.hpp"
#include "support/fonts.hpp"

using namespace shaftcut;
using namespace shaftcut::test;
using Json = nlohmann::ordered_json;

namespace {

const std::string samples = SHAFTCUT_SOURCE_DIR "/samples/";

Source sample(const std::string& name) { return {"job", file_of(samples + name).bytes}; }

Wishes with_fonts()
{
    Wishes wishes;
    wishes.fonts = font_files();
    return wishes;
}

Json view_of(const Answer& answer) { return Json::parse(view_json(answer, {})); }

// Without spaces and boxes, which paper draws; what is broken over lines is one.
std::string letters_of(const std::string& text)
{
    std::string out;
    for (const char letter : text)
        if ((letter >= 'a' && letter <= 'z') || (letter >= 'A' && letter <= 'Z') || (letter >= '0' && letter <= '9')) out += letter;
    return out;
}

std::string printed(const WorkOrder& order)
{
    std::string text;
    for (const Page& page : draw_cut_sheet(order, Paper::a4, font_files(), Wording(order.units)))
        for (const Mark& mark : page.marks)
            if (const auto* one = std::get_if<Text>(&mark.what)) text += letters_of(one->text);
    return text;
}

void all_printed(const std::string& sheet, const Json& texts)
{
    for (const auto& text : texts) {
        INFO(text.get<std::string>());
        CHECK(sheet.find(letters_of(text.get<std::string>())) != std::string::npos);
    }
}

template <class Check>
void each_sample(const Check& check)
{
    int seen = 0;
    for (const auto& entry : std::filesystem::directory_iterator(samples)) {
        const std::string name = entry.path().filename();
        if (entry.path().extension() != ".xml") continue;
        const Answer answer = demo_engine().answer(sample(name), {});
        if (!answer.work_order) continue;
        INFO(name);
        check(answer, view_of(answer));
        ++seen;
    }
    CHECK(seen > 20);
}

}  // namespace

TEST_CASE("the screen says nothing that the sheet does not say")
{
    each_sample([](const Answer& answer, const Json& view) {
        const WorkOrder& order = *answer.work_order;
        const std::string sheet = printed(order);
        CHECK(view["verdict"] == to_word(order.verdict));
        all_printed(sheet, Json::array({view["band"]["says"], view["band"]["title"], view["band"]["closed_now"]}));
        for (const char* list : {"warnings", "rules", "reasons", "cautions"}) all_printed(sheet, view[list]);
        for (const auto& way : view["ways_out"]) all_printed(sheet, Json::array({way["says"]}));
        for (const char* side : {"front", "back"})
            for (const auto& step : view[side]) all_printed(sheet, step["says"]);
        for (const auto& mark : view["marks"]) all_printed(sheet, Json::array({mark["name"], mark["expected_says"], mark["from_says"], mark["to_says"], mark["never_says"], mark["outside_says"]}));
        for (const auto& length : view["band"]["lengths"])
            if (length["cut"] == true) all_printed(sheet, Json::array({length["says"], length["keep_says"]}));
    });
}

TEST_CASE("every step, confirmation and letter of an answer stands on the screen, and a refused shaft has none")
{
    each_sample([](const Answer& answer, const Json& view) {
        const WorkOrder& order = *answer.work_order;
        CHECK(view["front"].size() + view["back"].size() == order.steps.size());
        CHECK(view["confirm"].size() == order.confirm.size());
        for (const auto& step : view["front"]) CHECK((order.verdict == Verdict::fits || step["number"] <= 7));
        for (const auto& step : view["back"]) CHECK(step["number"] > 7);
        std::string letters;
        for (const auto& length : view["band"]["lengths"]) letters += length["letter"];
        CHECK(std::is_sorted(letters.begin(), letters.end()));
        if (order.verdict != Verdict::refused) {
            CHECK(letters.size() >= 2);
            CHECK(view["reasons"].empty());
            return;
        }
        CHECK(letters.empty());
        CHECK(view["front"].empty());
        CHECK(view["back"].empty());
        CHECK(view["marks"].empty());
        CHECK(view["band"]["closed_after"].is_null());
        CHECK_FALSE(view["reasons"].empty());
    });
}

TEST_CASE("the screen says of each check that was not made for want of what")
{
    std::size_t said = 0;
    each_sample([&](const Answer& answer, const Json& view) {
        const WorkOrder& order = *answer.work_order;
        std::set<std::string> ids;
        for (const auto& one : view["not_checked"]) ids.insert(one["id"].get<std::string>());
        for (const Check& check : order.checks) CHECK(ids.count(to_word(check.id)) == (check.result == CheckResult::not_checked));
        if (order.verdict == Verdict::refused) return;
        const std::string sheet = printed(order);
        for (const auto& one : view["not_checked"]) all_printed(sheet, Json::array({one["says"]}));
        said += view["not_checked"].size();
    });
    CHECK(said > 20);
}

TEST_CASE("the faults of a file stand at their element and attribute")
{
    const Answer answer = demo_engine().answer({"job", "<job order=\"A\" units=\"mm\"><shaft role=\"primary\"><closed length=\"8x\"/></shaft>\n</job>"}, {});
    REQUIRE_FALSE(answer.problems.empty());
    const Json faults = Json::parse(faults_json(answer.problems))["faults"];
    REQUIRE(faults.size() == answer.problems.size());
    bool found = false;
    for (std::size_t i = 0; i < faults.size(); ++i) {
        CHECK(faults[i]["file"] == "job");
        CHECK(faults[i]["says"] == answer.problems[i].wrong + "; " + answer.problems[i].right);
        CHECK(faults[i]["line"] == answer.problems[i].place.line);
        if (faults[i]["path"] != "shaft/closed@length") continue;
        found = true;
        CHECK(faults[i]["element"] == "shaft/closed");
        CHECK(faults[i]["attribute"] == "length");
        CHECK(faults[i]["column"] == 57);
    }
    CHECK(found);
    Problem of_bytes;
    of_bytes.wrong = "\xff is no text";
    CHECK(Json::parse(faults_json({of_bytes}))["faults"][0]["element"].is_null());
}

TEST_CASE("each frame of a machine is a picture of one size, and each extreme is named")
{
    for (const auto& [name, has_top] : {std::pair{"trailed-wide-angle.xml", true}, std::pair{"mounted-lift.xml", false}}) {
        INFO(name);
        const MachineFramesAnswer answer = demo_engine().machine_frames(sample(name), {});
        REQUIRE(answer.machines.size() == 1);
        const Json fit = Json::parse(machine_frames_json(answer, with_fonts()))["fits"][0];
        CHECK(fit["frames"].size() == answer.machines[0].frames.size());
        CHECK(fit["extremes"].size() == 10);
        std::set<std::string> sizes;
        for (const char* list : {"frames", "extremes"})
            for (const auto& frame : fit[list]) {
                pugi::xml_document svg;
                CHECK(svg.load_string(frame["side"].get<std::string>().c_str()));
                sizes.insert(svg.child("svg").attribute("viewBox").value());
                CHECK(frame["top"].is_null() != has_top);
                CHECK_FALSE(frame["says"].get<std::string>().empty());
            }
        CHECK(sizes.size() == 1);
    }
}

TEST_CASE("of many machines the first few have frames, and the others say why they have none")
{
    Source job = sample("mounted-lift.xml");
    const std::size_t begin = job.bytes.find("<fit"), end = job.bytes.find("</fit>") + 6;
    REQUIRE(end > begin);
    const std::string fit = job.bytes.substr(begin, end - begin);
    std::string fits;
    for (int i = 0; i < 6; ++i) fits += "<fit tractor=\"tractor " + std::to_string(i) + "\"" + fit.substr(fit.find_first_of(" >", 4));
    job.bytes.replace(begin, end - begin, fits);
    const MachineFramesAnswer answer = demo_engine().machine_frames(job, {});
    for (const Problem& problem : answer.problems) UNSCOPED_INFO(to_string(problem));
    REQUIRE(answer.machines.size() == 6);
    const Json drawn = Json::parse(machine_frames_json(answer, with_fonts()))["fits"];
    for (std::size_t i = 0; i < 6; ++i) {
        CHECK(drawn[i]["kind"] == "mounted");
        CHECK(drawn[i]["frames"].empty() == (i >= 4));
        CHECK(drawn[i]["extremes"].empty() == (i >= 4));
        CHECK(drawn[i]["says"] == (i < 4 ? Json(nullptr) : Json("Only the first 4 machines of a job are drawn as they move.")));
    }
}

TEST_CASE("a job without a machine has no frames but a problem, and a faulty one its faults")
{
    CHECK(demo_engine().machine_frames(sample("plain-cut.xml"), {}).problems.size() == 1);
    const MachineFramesAnswer faulty = demo_engine().machine_frames({"job", "<job/>"}, {});
    CHECK(faulty.machines.empty());
    CHECK_FALSE(faulty.problems.empty());
}

TEST_CASE("what a form on a screen offers is what the configuration holds")
{
    const Json offers = Json::parse(demo_engine().bench_catalogue({}));
    const auto named = [&](const char* list, const char* key, const std::string& name) {
        return std::any_of(offers[list].begin(), offers[list].end(), [&](const Json& one) { return one[key] == name; });
    };
    CHECK(named("series", "name", "Alder 2"));
    CHECK(named("connections", "name", "1-3/8-6"));
    for (const Shape shape : {Shape::lemon, Shape::star, Shape::triangular}) CHECK(named("shapes", "word", to_word(shape)));
    CHECK(named("locks", "word", "shrouded-push-pin"));
    CHECK(offers["conditions"]["tubes"].size() == words_of<TubeState>().size());
    CHECK(offers["words"].size() > 50);
    CHECK(offers["units"] == "mm");
}
