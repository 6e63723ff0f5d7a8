// Compares with hitch_oracle.py, an independent optimiser on Debian's numpy and scipy. It fails where they are not installed.
#include <fmt/format.h>

#include <cstdlib>
#include <fstream>
#include <sstream>
#include <string>

#include "shaftcut/trade/hitch/hitch.hpp"
#include "support/catch.hpp"
#include "support/folder.hpp"
#include "support/machines.hpp"

using namespace shaftcut;

namespace {

constexpr int machines_of_each_kind = 50;

std::string word(const char* name, double value)
{
    return fmt::format(" {}={:.6f}", name, value);
}

std::string words(const Trailed& m)
{
    return "kind=trailed" + word("pto-height", m.pto_height.value.mm()) + word("pin-behind", m.pin_behind.value.mm()) +
           word("pin-height", m.pin_height.value.mm()) + word("input-behind", m.input_behind.value.mm()) +
           word("input-height", m.input_height.value.mm()) + word("input-left", m.input_left.value.mm()) +
           word("input-tilt", m.input_tilt.value.degrees());
}

std::string words(const Mounted& m)
{
    return "kind=mounted" + word("pto-height", m.pto_height.value.mm()) + word("lower-pivot-behind", m.lower_pivot_behind.value.mm()) +
           word("lower-pivot-height", m.lower_pivot_height.value.mm()) + word("lower-link", m.lower_link.value.mm()) +
           word("top-pivot-behind", m.top_pivot_behind.value.mm()) + word("top-pivot-height", m.top_pivot_height.value.mm()) +
           word("top-link", m.top_link.value.mm()) + word("mast", m.mast.value.mm()) + word("input-behind", m.input_behind.value.mm()) +
           word("input-above", m.input_above.value.mm()) + word("input-tilt", m.input_tilt.value.degrees());
}

std::string words(const std::string& name, const TrailedRange& range)
{
    return word((name + "-turn").c_str(), range.turn.value.degrees()) + word((name + "-pitch").c_str(), range.pitch.value.degrees()) +
           word((name + "-roll").c_str(), range.roll.value.degrees());
}

std::string words(const std::string& name, const MountedRange& range)
{
    return word((name + "-lowest").c_str(), range.lowest.value.mm()) + word((name + "-highest").c_str(), range.highest.value.mm());
}

std::string words(const HitchShaft& shaft)
{
    return word("tractor-yoke", shaft.tractor.cross_to_groove.mm()) + word("tractor-spacing", shaft.tractor.spacing.mm()) +
           word("implement-yoke", shaft.implement.cross_to_groove.mm()) + word("implement-spacing", shaft.implement.spacing.mm()) +
           word("phase-step", shaft.phase_step.degrees());
}

std::string line_of(const support::MachineAndShaft& one)
{
    const auto all = [](const auto& machine) {
        return words(machine) + words("working", *machine.ranges.working) + words("turning", *machine.ranges.turning) +
               words("standing", *machine.ranges.standing);
    };
    return std::visit(all, one.machine) + words(one.shaft) + "\n";
}

// What the oracle prints for the text given to it.
std::string asked(const std::string& text)
{
    const shaftcut::test::Folder folder;
    std::ofstream(folder.file("machines")) << text;
    const std::string command = fmt::format("/usr/bin/python3 '{}/tests/oracle/hitch_oracle.py' < '{}' > '{}'", SHAFTCUT_SOURCE_DIR,
                                            folder.file("machines"), folder.file("answers"));
    REQUIRE(std::system(command.c_str()) == 0);
    std::ifstream file(folder.file("answers"));
    std::stringstream answers;
    answers << file.rdbuf();
    return answers.str();
}

std::vector<support::MachineAndShaft> machines()
{
    support::Dice dice(7);
    std::vector<support::MachineAndShaft> all;
    for (int i = 0; i < machines_of_each_kind; ++i) {
        all.push_back(support::random_trailed(dice));
        all.push_back(support::random_mounted(dice));
    }
    return all;
}

// Reads one range's row. Tolerances: 0.01 mm and 0.01 degrees, what the method promises.
void compare(std::istream& row, const RangeExtremes& range)
{
    double shortest = 0, longest = 0, tractor = 0, implement = 0;
    REQUIRE(row >> shortest >> longest >> tractor >> implement);
    CHECK(range.shortest.length.mm() == Approx(shortest).epsilon(0).margin(0.01));
    CHECK(range.longest.length.mm() == Approx(longest).epsilon(0).margin(0.01));
    CHECK(range.tractor.angle.degrees() == Approx(tractor).epsilon(0).margin(0.01));
    CHECK(range.implement.angle.degrees() == Approx(implement).epsilon(0).margin(0.01));
}

// Within 0.01 of a per cent, or a thousandth of it: the oracle takes slopes at half degrees.
void compare_irregularity(std::istream& row, const OperatingLengths& lengths)
{
    double in_phase = 0, out_of_phase = 0;
    REQUIRE(row >> in_phase >> out_of_phase);
    CHECK(lengths.irregularity->percent.value() == Approx(in_phase).epsilon(0.001).margin(0.01));
    CHECK(lengths.irregularity_out_of_phase->percent.value() == Approx(out_of_phase).epsilon(0.001).margin(0.01));
}

void compare(std::istream& row, const OperatingLengths& lengths)
{
    std::string name;
    REQUIRE(row >> name);
    INFO(name);
    if (name == "irregularity") compare_irregularity(row, lengths);
    else if (name == "working") compare(row, *lengths.ranges.working);
    else if (name == "turning") compare(row, *lengths.ranges.turning);
    else compare(row, *lengths.ranges.standing);
}

}  // namespace

TEST_CASE("an independent optimiser finds the same operating lengths")
{
    const auto all = machines();
    std::string text;
    std::vector<OperatingLengths> lengths;
    for (const auto& one : all) {
        text += line_of(one);
        const auto result = operating_lengths(one.machine, one.shaft, Length::millimetres(2));
        REQUIRE(std::holds_alternative<OperatingLengths>(result));
        lengths.push_back(std::get<OperatingLengths>(result));
    }
    std::istringstream answers(asked(text));
    std::size_t rows = 0;
    for (std::string line; std::getline(answers, line); ++rows) {
        std::istringstream row(line);
        std::size_t index = 0;
        REQUIRE(row >> index);
        INFO(line_of(all.at(index)) << line);
        compare(row, lengths.at(index));
    }
    CHECK(rows == 4 * all.size());
}
