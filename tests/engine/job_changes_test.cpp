// Each way out that is a change of the job: put into its file, it is no longer refused for what the way mends.
#include <algorithm>
#include <filesystem>
#include <map>
#include <set>

#include "job_changes.hpp"
#include "support/catch.hpp"
#include "support/changed_job.hpp"
#include "support/engine.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

const std::string samples = SHAFTCUT_SOURCE_DIR "/samples/";

std::set<CheckId> failing(const WorkOrder& order)
{
    std::set<CheckId> failed;
    for (const Check& check : order.checks)
        if (check.result == CheckResult::fail) failed.insert(check.id);
    return failed;
}

WorkOrder answered(const std::string& xml)
{
    const Answer answer = demo_engine().answer({"job", xml}, {});
    for (const Problem& problem : answer.problems) UNSCOPED_INFO(to_string(problem));
    return answer.work_order.value();
}

// The checks that a way mends by itself: a longest that of its range, a turn or a lift what follows the machine in its range.
bool mended_by(const WayOut& way, CheckId check)
{
    if (const auto* longest = std::get_if<LongestServed>(&way)) return check == overlap_check_id(longest->range);
    if (std::holds_alternative<TurnServed>(way) || std::holds_alternative<PitchServed>(way) || std::holds_alternative<LiftRangeServed>(way) || std::holds_alternative<PinMoveServed>(way))
        return check == CheckId::overlap_working || check == CheckId::overlap_turning || check == CheckId::overlap_standing || check == CheckId::joint_angle_tractor || check == CheckId::joint_angle_implement;
    if (const auto* remedy = std::get_if<Remedy>(&way)) {
        if (*remedy == Remedy::measure_contradictions) return check == CheckId::consistency;
        return check == (*remedy == Remedy::fit_unexposed_locks ? CheckId::locking : CheckId::overload_device);
    }
    if (std::holds_alternative<MatchConnection>(way)) return check == CheckId::connection;
    return check != CheckId::rating && check != CheckId::locking && check != CheckId::connection && check != CheckId::condition;
}

// How many choices there were; each is tried, and must fail nothing new.
int try_all(const std::string& xml)
{
    const WorkOrder refused = answered(xml);
    const std::set<CheckId> before = failing(refused);
    int tried = 0;
    for (std::size_t i = 0; i < refused.ways_out.size(); ++i)
        for (const JobChoice& choice : choices_of(refused, {i}, Units::mm)) {
            const std::set<CheckId> after = failing(answered(changed(xml, choice.changes)));
            for (const Change& change : choice.changes) UNSCOPED_INFO(change.path << " = " << change.value.value_or("(taken away)"));
            for (const CheckId check : before) {
                UNSCOPED_INFO("still refused for " << to_word(check));
                CHECK((!mended_by(refused.ways_out[i], check) || !after.contains(check)));
            }
            for (const CheckId check : after) {
                UNSCOPED_INFO("now refused for " << to_word(check));
                CHECK(before.contains(check));
            }
            ++tried;
        }
    return tried;
}

std::string sample(const std::string& name) { return file_of(samples + name).bytes; }

void replace(std::string& text, const std::string& what, const std::string& by)
{
    const std::size_t at = text.find(what);
    REQUIRE(at != std::string::npos);
    text.replace(at, what.size(), by);
}

}  // namespace

TEST_CASE("each sample's ways out that are changes of its file mend what they say")
{
    std::map<std::string, int> tried;
    for (const auto& entry : std::filesystem::directory_iterator(samples)) {
        const std::string name = entry.path().filename();
        if (entry.path().extension() != ".xml" || !name.starts_with("refused-")) continue;
        INFO(name);
        tried[name] = try_all(sample(name));
    }
    CHECK(tried == std::map<std::string, int>{{"refused-exchanged-halves.xml", 1},
                                              {"refused-exposed-lock.xml", 0},
                                              {"refused-joint-angle.xml", 2},
                                              {"refused-lubrication-hole.xml", 3},
                                              {"refused-other-cross.xml", 1},
                                              {"refused-overlap.xml", 3},
                                              {"refused-rating.xml", 0},
                                              {"refused-transport-height.xml", 1}});
}

TEST_CASE("the longest of every range together is one way, and then nothing refuses for its overlap")
{
    const std::string xml = sample("refused-overlap.xml");
    const WorkOrder refused = answered(xml);
    std::vector<std::size_t> ways;
    for (std::size_t i = 0; i < refused.ways_out.size(); ++i)
        if (std::holds_alternative<LongestServed>(refused.ways_out[i])) ways.push_back(i);
    const auto choices = choices_of(refused, ways, Units::mm);
    REQUIRE(ways.size() == 2);
    REQUIRE(choices.size() == 1);
    CHECK(choices.front().changes == Changes{{"fit/longest[2]@length", "816"}, {"fit/longest[3]@length", "866"}});
    CHECK(failing(answered(changed(xml, choices.front().changes))).empty());
}

TEST_CASE("a longest over bent joints is put down as the tape would read it")
{
    std::string xml = sample("refused-overlap.xml");
    replace(xml, "<fit>", "<fit between=\"grooves\">");
    CHECK(try_all(xml) == 2);
}

TEST_CASE("a part that has to be fitted first is no change of the file")
{
    std::string device = sample("refused-joint-angle.xml"), connection = sample("plain-cut.xml");
    const int before = try_all(device);
    replace(device, "device=\"none\"", "device=\"slip-clutch\"");
    CHECK(failing(answered(device)).contains(CheckId::overload_device));
    CHECK(try_all(device) == before);
    replace(connection, "onto=\"1-3/8-6\"", "onto=\"1-3/8-21\"");
    const WorkOrder refused = answered(connection);
    REQUIRE(failing(refused) == std::set<CheckId>{CheckId::connection});
    CHECK(std::any_of(refused.ways_out.begin(), refused.ways_out.end(), [](const WayOut& way) { return std::holds_alternative<MatchConnection>(way); }));
    CHECK(try_all(connection) == 0);
}

TEST_CASE("no choice is a cut of a new shaft whose hole is not known, nor the shaft itself with less said of it")
{
    const std::string xml = sample("refused-lubrication-hole.xml");
    // A guard too short to cover: a new shaft of the same closed length would serve, and is listed in words.
    std::string guard = xml;
    replace(guard, " lubrication-hole=\"720\"", "");
    replace(guard, "guard=\"825\"", "guard=\"400\"");
    int listed = 0;
    for (const std::string& job : {xml, guard}) {
        const WorkOrder refused = answered(job);
        REQUIRE_FALSE(failing(refused).empty());
        const Length own = refused.reading.closed.value;
        for (std::size_t i = 0; i < refused.ways_out.size(); ++i) {
            const auto* way = std::get_if<SeriesLengths>(&refused.ways_out[i]);
            if (way) listed += static_cast<int>(std::count(way->as_is.begin(), way->as_is.end(), own) + std::count(way->after_cut.begin(), way->after_cut.end(), own));
            for (const JobChoice& choice : choices_of(refused, {i}, Units::mm))
                if (const auto* closed = std::get_if<ClosedChosen>(&choice.of)) {
                    CHECK(closed->closed != own);
                    CHECK_FALSE((closed->cut && job == xml));
                }
        }
    }
    CHECK(listed == 2);
}

TEST_CASE("a figure in the other unit is read in it")
{
    std::string inches = sample("refused-overlap.xml");
    replace(inches, "<closed length=\"830\"", "<closed length=\"32.677\"");
    const WorkOrder refused = answered(inches);
    const auto choices = choices_of(refused, {0}, Units::mm);
    REQUIRE(choices.size() == 1);
    CHECK(std::get<InOtherUnit>(choices.front().of).unit == Units::in);
    CHECK(choices.front().changes == Changes{{"shaft/closed@length", "829.995"}});
    CHECK_FALSE(failing(answered(changed(inches, choices.front().changes))).contains(CheckId::consistency));
}

TEST_CASE("a new shaft takes what was measured of the old one with it, and one of no series keeps its stops")
{
    std::string xml = sample("refused-lubrication-hole.xml");
    const WorkOrder refused = answered(xml);
    for (std::size_t i = 0; i < refused.ways_out.size(); ++i) {
        if (!std::holds_alternative<NewShaft>(refused.ways_out[i])) continue;
        const auto choices = choices_of(refused, {i}, Units::mm);
        REQUIRE(choices.size() == 1);
        const std::string renewed = changed(xml, choices.front().changes);
        CHECK(renewed.find("lubrication-hole=") == std::string::npos);
        CHECK(renewed.find("guard=") == std::string::npos);
        CHECK(renewed.find("built=") == std::string::npos);
    }
    replace(xml, "series=\"Larch 6\"", "shape=\"lemon\"");
    CHECK(try_all(xml) >= 1);
}
