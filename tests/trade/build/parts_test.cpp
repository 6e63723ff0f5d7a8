// What a shaft is put together from, counted by what is bolted together: one cross a standard joint, two a wide-angle one.
#include "shaftcut/trade/build/parts.hpp"

#include <map>

#include "support/catch.hpp"
#include "support/orders.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

std::vector<ShaftPart> parts(const BuildOrder& order, const Series& series)
{
    return parts_of(series, order, build_lengths(series, order, mm(702), mm(10), {1000, 1}));
}

std::string said(const ShaftPart& part) { return say(part.name, Wording(Units::mm)); }

std::map<std::optional<PartKind>, int> kinds(const std::vector<ShaftPart>& parts)
{
    std::map<std::optional<PartKind>, int> counts;
    for (const ShaftPart& part : parts) counts[part.kind] += part.count;
    return counts;
}

const ShaftPart& first(const std::vector<ShaftPart>& parts, PartKind kind)
{
    return *std::find_if(parts.begin(), parts.end(), [&](const ShaftPart& part) { return part.kind == kind; });
}

// The series with no part named.
Series bare_series()
{
    Series series = build_catalogue().series[0];
    series.parts.clear();
    for (Cross& cross : series.crosses) cross.part.clear();
    for (Cross& cross : series.wide_angle->crosses) cross.part.clear();
    return series;
}

Series named_series()
{
    Series series = bare_series();
    series.parts = {{PartKind::tube, "lemon tube 43", 1, Tube::inner},
                    {PartKind::tube, "lemon tube 51", 1, Tube::outer},
                    {PartKind::pin, "spring pin", 2},
                    {PartKind::connection_yoke, "yoke with collar", 1, {}, {}, "1-3/8-6", Lock::covered_collar},
                    {PartKind::connection_yoke, "yoke with bolt", 1, {}, {}, "1-3/8-6", Lock::clamp_bolt},
                    {PartKind::connection_yoke, "any other yoke", 1, {}, {}, "1-3/8-6"},
                    {PartKind::guard_bearing, "small bearing", 1, {}, JointKind::standard},
                    {PartKind::guard_bearing, "large bearing", 1, {}, JointKind::wide_angle}};
    return series;
}

}  // namespace

TEST_CASE("a shaft with one wide-angle and one standard joint has three crosses and one double yoke")
{
    const auto counts = kinds(parts(build_order(), bare_series()));
    const std::map<std::optional<PartKind>, int> expected{{std::nullopt, 3},
                                                          {PartKind::double_yoke, 1},
                                                          {PartKind::connection_yoke, 2},
                                                          {PartKind::tube_yoke, 2},
                                                          {PartKind::tube, 2},
                                                          {PartKind::pin, 2},
                                                          {PartKind::guard_tube, 2},
                                                          {PartKind::guard_bearing, 2},
                                                          {PartKind::chain, 2},
                                                          {PartKind::label, 1},
                                                          {PartKind::book, 1}};
    CHECK(counts == expected);
}

TEST_CASE("two standard joints have two crosses, two wide-angle ones four")
{
    BuildOrder order = build_order();
    order.shaft.ends[End::tractor].joint = JointKind::standard;
    CHECK(kinds(parts(order, bare_series())).at(std::nullopt) == 2);
    for (const End end : both_ends) order.shaft.ends[end].joint = JointKind::wide_angle;
    const auto counts = kinds(parts(order, bare_series()));
    CHECK(counts.at(std::nullopt) == 4);
    CHECK(counts.at(PartKind::double_yoke) == 2);
}

TEST_CASE("without a guard nothing of one is listed, and a device only where one is ordered")
{
    BuildOrder order = build_order();
    order.guard = false;
    order.shaft.ends[End::implement].device = Device::slip_clutch;
    const auto counts = kinds(parts(order, bare_series()));
    for (const PartKind kind : {PartKind::guard_tube, PartKind::guard_bearing, PartKind::chain}) CHECK(counts.count(kind) == 0);
    CHECK(counts.at(PartKind::device) == 1);
    CHECK(counts.at(PartKind::label) == 1);
}

TEST_CASE("a part has the catalogue's own name, the first that is for its place, and its count there")
{
    const auto list = parts(build_order(), named_series());
    std::vector<std::string> names;
    for (const ShaftPart& part : list)
        if (part.in_catalogue()) names.push_back(part.name.known);
    // The inner half, at the implement, has the clamp bolt; the outer, at the tractor, a push pin and the wide-angle joint.
    CHECK(names == std::vector<std::string>{"lemon tube 43", "lemon tube 51", "spring pin", "yoke with bolt", "spring pin", "any other yoke", "small bearing", "large bearing"});
    CHECK(first(list, PartKind::pin).count == 2);
}

TEST_CASE("what the catalogue lacks is named by what it is")
{
    const auto list = parts(build_order(), bare_series());
    CHECK(list.size() == 20);
    for (const ShaftPart& part : list) {
        CHECK_FALSE(part.in_catalogue());
        CHECK(said(part).find("Alder 2 ") == 0);
    }
    CHECK(said(first(list, PartKind::connection_yoke)) == "Alder 2 connection yoke 1-3/8-6, lock clamp-bolt");
    BuildOrder unknown = build_order();
    unknown.shaft.ends[End::implement].connection.reset();
    CHECK(said(first(parts(unknown, bare_series()), PartKind::connection_yoke)).find("a connection that is not stated") != std::string::npos);
}

TEST_CASE("the crosses of a wide-angle joint are its own, the inner one first, and one that is stated stands for both")
{
    Series series = bare_series();
    series.wide_angle->crosses = {{mm(22), mm(54), "small cross"}, {mm(27), mm(70), "large cross"}};
    const auto crosses_at_tractor = [&] {
        std::vector<std::string> names;
        for (const ShaftPart& part : parts(build_order(), series))
            if (!part.kind && part.end == End::tractor) names.push_back(said(part) + " at " + place_of(part, Wording(Units::mm)));
        return names;
    };
    CHECK(crosses_at_tractor() == std::vector<std::string>{"small cross at tractor end, inner cross", "large cross at tractor end, outer cross"});
    series.wide_angle->crosses.resize(1);
    CHECK(crosses_at_tractor()[1] == "small cross at tractor end, outer cross");
    series.wide_angle->crosses.clear();
    CHECK(crosses_at_tractor()[0].find("Alder 2 cross of the wide-angle joint") == 0);
}

TEST_CASE("a device that replaces the connection yoke stands for it")
{
    Series series = bare_series();
    BuildOrder order = build_order();
    order.shaft.ends[End::implement].device = Device::slip_clutch;
    CataloguePart clutch{PartKind::device, "clutch", 1};
    for (const auto& [replaces, yokes] : {std::pair{Replaces::nothing, 2}, std::pair{Replaces::connection_yoke, 1}}) {
        clutch.replaces = replaces;
        series.parts = {clutch};
        const auto counts = kinds(parts(order, series));
        CHECK(counts.at(PartKind::connection_yoke) == yokes);
        CHECK(counts.at(PartKind::device) == 1);
    }
}

// 534 mm at 3.32 kg/m and 516 mm at 3.77 kg/m.
TEST_CASE("tubes have a mass where the catalogue states it per metre")
{
    Series series = bare_series();
    CHECK_FALSE(first(parts(build_order(), series), PartKind::tube).mass);
    series.halves[Tube::inner].mass_per_metre = 3'320;
    CHECK(first(parts(build_order(), series), PartKind::tube).mass == 1'773);
}

TEST_CASE("parts of one name are counted together, for as many shafts as are ordered")
{
    const auto counts = counted(parts(build_order(), named_series()), 3);
    const auto count_of = [&](const std::string& name) {
        return std::find_if(counts.begin(), counts.end(), [&](const PartCount& count) { return count.name.known == name; })->count;
    };
    CHECK(count_of("spring pin") == 12);
    CHECK(count_of("lemon tube 43") == 3);
    CHECK(counts[0].name.known == "lemon tube 43");
}

TEST_CASE("a profile is called as the tube's part, or else by series and tube")
{
    CHECK(profile_of(named_series(), {Tube::outer, TubeKind::drive}) == "lemon tube 51");
    CHECK(profile_of(bare_series(), {Tube::outer, TubeKind::drive}) == "Alder 2 outer tube");
    CHECK(profile_of(bare_series(), {Tube::inner, TubeKind::guard}) == "Alder 2 inner guard tube");
}
