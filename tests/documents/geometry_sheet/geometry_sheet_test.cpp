// The sheet with a machine's geometry, on machines that make its labels crowd.

#include <algorithm>

#include "cut_sheet/refusal_words.hpp"
#include "data/machine_dimensions.hpp"
#include "documents/page/page_checks.hpp"
#include "hitch/geometry_figures.hpp"
#include "page/font.hpp"
#include "support/catch.hpp"
#include "support/machine_jobs.hpp"
#include "support/sentences.hpp"
#include "terminal/lengths_terminal.hpp"
#include "support/papers.hpp"

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
            for (const auto& pages : {geometry_sheet_of(one.order, paper), cut_sheet_of(one.order, paper)})
                for (std::size_t i = 0; i < pages.size(); ++i) {
                    INFO(one.name << (paper == Paper::a4 ? ", A4" : ", Letter") << ", sheet " << i + 1 << " of " << pages.size());
                    look(pages[i]);
                }
}

bool says(const Page& page, const std::string& words)
{
    const auto texts = texts_of(page);
    return std::any_of(texts.begin(), texts.end(), [&](const Text& text) { return text.text == words; });
}

// What stands in a dimension's box, in the order in which it is drawn.
std::string boxed(const WorkOrder& order, const StatedDimension& dimension, const std::string& before)
{
    const auto with_minus = [](const std::string& figure) { return figure.front() == '-' ? "−" + figure.substr(1) : figure; };
    const std::string start = dimension.name + (dimension.lies ? say(*dimension.lies, Wording(Units::mm)) : "");
    if (const auto* angle = std::get_if<AngleDimension>(&dimension.stated)) return start + before + with_minus(figure(angle->value)) + "°";
    const Length length = std::get<Dimension>(dimension.stated).value;
    return start + (order.units == Units::in ? with_minus(figure_with_unit(length, Units::mm)) : "") + with_minus(figure_with_unit(length, order.units));
}

// All that the papers and the terminal say of an order, blanks and all.
std::string everything_said(const WorkOrder& order)
{
    std::string all = lengths_text(order, Colour::none, Wording(order.units)) + terminal_text_of(order);
    for (const auto& pages : {geometry_sheet_of(order, Paper::a4), cut_sheet_of(order, Paper::a4)})
        for (const Page& page : pages)
            for (const Text& text : texts_of(page)) all += "\n" + text.text;
    for (const Check& check : order.checks) all += "\n" + said(check, wording_of(order)) + basis_said(check, wording_of(order));
    return all;
}

bool says_figure(const std::string& said, const std::string& figure)
{
    for (std::size_t at = said.find(figure); at != std::string::npos; at = said.find(figure, at + 1))
        if (at == 0 || std::string("0123456789.").find(said[at - 1]) == std::string::npos) return true;
    return false;
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
        const std::vector<Page> pages = geometry_sheet_of(one.order, Paper::a4);
        for (const MachineView& view : one.order.machines)
            for (const MachineScene& scene : view.scenes) {
                CHECK(contains(pages, name_of(scene, wording_of(one.order))));
                for (const End end : both_ends) CHECK(contains(pages, figure(scene.angles[end]) + "°"));
            }
        CHECK(contains(pages, figure_with_unit(one.order.extremes.shortest->length, one.order.units, Toward::down)));
        for (const Range range : all_ranges)
            if (const auto& longest = one.order.extremes.longest[range])
                CHECK(contains(pages, figure_with_unit(longest->length, one.order.units, Toward::up)));
    }
}

TEST_CASE("every dimension that the job gave stands in a box of its own on both papers, with its sign and tolerance")
{
    for (const Case& one : cases())
        for (const auto& pages : {geometry_sheet_of(one.order, Paper::a4), cut_sheet_of(one.order, Paper::a4)})
            for (const FitReading& fit : one.order.fits) {
                INFO(one.name);
                const Machine& machine = fit.geometry->machine;
                for (const StatedDimension& dimension : dimensions_of(machine)) CHECK(contains(pages, boxed(one.order, dimension, "")));
                for (const Range range : all_ranges)
                    for (const StatedDimension& movement : movements_of(machine, range)) CHECK(contains(pages, boxed(one.order, movement, "± ")));
                CHECK(contains(pages, "plus-minus the workshop's"));
            }
    Mounted stated = lifted_machine();
    stated.pto_height.plus_minus = mm(1);
    const auto pages = geometry_sheet_of(worked_in(machine_job(stated), Units::mm), Paper::a4);
    CHECK(contains(pages, "plus-minus stated 1 mm"));
    CHECK(contains(pages, "lower-pivot-behind in front −100 mm"));
}

TEST_CASE("the extremes stand on the first sheet of lengths in figures of 3.5 mm, before the machine is drawn")
{
    for (const Case& one : cases()) {
        INFO(one.name);
        const Page first = geometry_sheet_of(one.order, Paper::letter).front();
        const std::string shortest = figure_with_unit(one.order.extremes.shortest->length, one.order.units, Toward::down);
        bool found = false;
        for (const Text& text : texts_of(first)) found = found || (text.text == shortest && text.cap_height >= 3.5);
        CHECK(found);
        CHECK(contains({machine_picture_of(one.order, Paper::letter)}, "The machine and its shaft, to scale"));
    }
}

TEST_CASE("an extreme has one figure on every paper, drawing and line: the shortest rounded down, a longest up")
{
    int told_apart = 0;
    for (const Case& one : cases()) {
        // One that does not move has its shortest for its longest, and each is rounded its own way.
        if (one.order.units != Units::mm || one.name == "does not move") continue;
        INFO(one.name);
        const std::string said = everything_said(one.order);
        const auto one_figure = [&](Length length, Toward right, Toward wrong) {
            CHECK(says_figure(said, figure_with_unit(length, Units::mm, right)));
            if (figure(length, Units::mm, right) == figure(length, Units::mm, Toward::nearest)) return;
            ++told_apart;
            CHECK_FALSE(says_figure(said, figure_with_unit(length, Units::mm, wrong)));
        };
        one_figure(one.order.extremes.shortest->length, Toward::down, Toward::up);
        for (const Range range : all_ranges)
            if (const auto& longest = one.order.extremes.longest[range]) one_figure(longest->length, Toward::up, Toward::down);
    }
    CHECK(told_apart >= 5);
}

TEST_CASE("what is said of lengths is to 0.1 mm and of angles to 0.1 degree, and to more only where that decides")
{
    for (const Case& one : cases())
        for (const Check& check : one.order.checks) {
            if (check.result == CheckResult::not_checked || !check.value || !check.limit || one.order.units != Units::mm) continue;
            INFO(one.name << ": " << said(check));
            const std::string exact = figure(Length::micrometres(*check.value), Units::mm, Toward::nearest, 3), tenth = figure(Length::micrometres(*check.value), Units::mm);
            if (exact != tenth && std::abs(*check.value - *check.limit) > 200) CHECK_FALSE(says_figure(said(check), exact));
        }
}

TEST_CASE("a refused machine's sheet shows no overlap and no limit of a cut")
{
    for (const Case& one : cases()) {
        const bool refused = one.order.verdict == Verdict::refused;
        INFO(one.name);
        CHECK(refused == one.name.ends_with("refused"));
        const std::vector<Page> pages = geometry_sheet_of(one.order, Paper::a4);
        CHECK(contains(pages, "overlap after the cut") == !refused);
        CHECK(contains(pages, "least allowed") == !refused);
        for (const Page& page : pages) CHECK(says(page, "DO NOT CUT") == refused);
        for (const std::string& reason : cut_sheet::refusal_reasons(one.order, wording_of(one.order))) CHECK(contains(pages, reason));
    }
}

TEST_CASE("a machine's plot names every limit and every extreme")
{
    for (const Case& one : cases())
        for (const Paper paper : {Paper::a4, Paper::letter}) {
            INFO(one.name);
            const std::vector<Page> pages = geometry_sheet_of(one.order, paper);
            for (const Range range : all_ranges)
                if (one.order.cut && one.order.fit.longest[range]) CHECK(contains(pages, std::string("longest allowed, ") + to_word(range)));
            const std::string unit = std::string(", ") + unit_word(one.order.units);
            CHECK(contains(pages, "telescoping length" + unit));
            for (const MachineView& view : one.order.machines)
                for (const MachineScene& scene : view.scenes) {
                    const bool down = scene.of == SceneOf::shortest, up = scene.of == SceneOf::longest;
                    if (down || up) CHECK(contains(pages, name_of(scene, wording_of(one.order)) + " " + figure_with_unit(scene.length, one.order.units, down ? Toward::down : Toward::up)));
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
    const std::vector<Page> pages = geometry_sheet_of(order, Paper::a4);
    const std::string figure = figure_with_unit(view.scenes[1].length, Units::mm, Toward::down);
    CHECK(contains(pages, "Shortest " + figure));
    CHECK(contains(pages, "Lowest " + figure));
}

TEST_CASE("a cut sheet shows its machines, and one of measured lengths shows none")
{
    const WorkOrder order = worked_in(machine_job(lifted_machine()), Units::mm);
    CHECK(contains(cut_sheet_of(order, Paper::a4), "The machine and its shaft, to scale"));
    CHECK_FALSE(contains(cut_sheet_of(worked(job()), Paper::a4), "The machine and its shaft, to scale"));
}
