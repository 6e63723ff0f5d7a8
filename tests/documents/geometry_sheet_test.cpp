// The sheet with a machine's geometry, on machines that make its labels crowd.
#include "shaftcut/documents/geometry_sheet.hpp"

#include "documents/page_checks.hpp"
#include "shaftcut/documents/cut_sheet.hpp"
#include "shaftcut/documents/font.hpp"
#include "support/catch.hpp"
#include "support/machine_jobs.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

struct Case {
    std::string name;
    WorkOrder order;
};

WorkOrder worked_in(const Job& job_, Units units) { return work_up(job_, catalogue(), workshop(), units); }

Job wide_angle_job(const Machine& machine)
{
    Job found = job();
    found.fits[0] = JobFit();
    found.fits[0].machine = machine;
    return found;
}

std::vector<Case> cases()
{
    std::vector<Case> all;
    Job two = machine_job(lifted_machine());
    two.fits.push_back(machine_job(turned_machine(20)).fits[0]);
    two.fits[0].tractor = "a tractor (invented)";
    two.fits[1].tractor = "another tractor with a name so long that it has to be broken over lines or set narrower (invented)";
    Trailed still = turned_machine(0);
    still.ranges.working.reset();
    still.ranges.standing.reset();
    still.ranges.turning = support::turns(0, 0, 0);
    for (const Units units : {Units::mm, Units::in}) {
        all.push_back({"mounted", worked_in(machine_job(lifted_machine()), units)});
        all.push_back({"trailed", worked_in(machine_job(turned_machine(30)), units)});
        all.push_back({"tight turn, refused", worked_in(machine_job(turned_machine(80)), units)});
        all.push_back({"wide-angle", worked_in(wide_angle_job(turned_machine(45)), units)});
        all.push_back({"does not move", worked_in(machine_job(still), units)});
        all.push_back({"two machines, refused", worked_in(two, units)});
    }
    return all;
}

template <class Look>
void on_every_page(const Look& look)
{
    for (const Case& one : cases())
        for (const Paper paper : {Paper::a4, Paper::letter})
            for (const auto& pages : {draw_geometry_sheet(one.order, paper), draw_cut_sheet(one.order, paper)})
                for (std::size_t i = 0; i < pages.size(); ++i) {
                    INFO(one.name << (paper == Paper::a4 ? ", A4" : ", Letter") << ", sheet " << i + 1 << " of " << pages.size());
                    look(pages[i]);
                }
}

}  // namespace

TEST_CASE("every text of a machine's sheet can be read, and no line leaves the sheet")
{
    on_every_page([](const Page& page) {
        check_texts(page);
        check_lines(page, 9);
    });
}

TEST_CASE("every scene has its length and its angles, and every extreme stands in the table")
{
    for (const Case& one : cases()) {
        INFO(one.name);
        const std::vector<Page> pages = draw_geometry_sheet(one.order, Paper::a4);
        for (const MachineView& view : one.order.machines)
            for (const MachineScene& scene : view.scenes) {
                CHECK(contains(pages, scene.name));
                for (const End end : both_ends) CHECK(contains(pages, figure(scene.angles[end]) + "°"));
            }
        CHECK(contains(pages, figure_with_unit(one.order.extremes.shortest->length, one.order.units, Toward::down)));
        for (const Range range : all_ranges)
            if (const auto& longest = one.order.extremes.longest[range])
                CHECK(contains(pages, figure_with_unit(longest->length, one.order.units, Toward::up)));
    }
}

TEST_CASE("a refused machine's sheet shows no overlap and no limit of a cut")
{
    for (const Case& one : cases()) {
        const bool refused = one.order.verdict == Verdict::refused;
        INFO(one.name);
        CHECK(refused == one.name.ends_with("refused"));
        const std::vector<Page> pages = draw_geometry_sheet(one.order, Paper::a4);
        CHECK(contains(pages, "overlap after the cut") == !refused);
        CHECK(contains(pages, "least allowed") == !refused);
        if (refused) CHECK(contains(pages, "DO NOT CUT"));
    }
}

TEST_CASE("a machine's plot names every limit and every extreme")
{
    for (const Case& one : cases())
        for (const Paper paper : {Paper::a4, Paper::letter}) {
            INFO(one.name);
            const std::vector<Page> pages = draw_geometry_sheet(one.order, paper);
            for (const Range range : all_ranges)
                if (one.order.cut && one.order.fit.longest[range]) CHECK(contains(pages, std::string("longest allowed, ") + to_word(range)));
            const std::string unit = std::string(", ") + unit_word(one.order.units);
            CHECK(contains(pages, "telescoping length" + unit));
            for (const MachineView& view : one.order.machines)
                for (const MachineScene& scene : view.scenes) {
                    const bool down = scene.name == "Shortest", up = scene.name.starts_with("Longest");
                    if (down || up) CHECK(contains(pages, scene.name + " " + figure_with_unit(scene.length, one.order.units, down ? Toward::down : Toward::up)));
                }
        }
}

TEST_CASE("a machine drawn with its lowest at its shortest has one figure for both")
{
    Mounted machine = lifted_machine();
    machine.ranges.working = machine.ranges.turning = machine.ranges.standing = support::heights(450, 600);
    const WorkOrder order = worked_in(machine_job(machine), Units::mm);
    const MachineView& view = order.machines.at(0);
    REQUIRE(view.scenes[0].length == view.scenes[1].length);
    const std::vector<Page> pages = draw_geometry_sheet(order, Paper::a4);
    const std::string figure = figure_with_unit(view.scenes[1].length, Units::mm, Toward::down);
    CHECK(contains(pages, "Shortest " + figure));
    CHECK(contains(pages, "Lowest " + figure));
}

TEST_CASE("a cut sheet shows its machines, and one of measured lengths shows none")
{
    const WorkOrder order = worked_in(machine_job(lifted_machine()), Units::mm);
    CHECK(contains(draw_cut_sheet(order, Paper::a4), "The machine and its shaft, to scale"));
    CHECK_FALSE(contains(draw_cut_sheet(worked(job()), Paper::a4), "The machine and its shaft, to scale"));
}
