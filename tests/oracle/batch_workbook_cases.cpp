// Writes batches' workbooks into a folder, and for changed inputs what the program itself says: cases.json.
// usage: batch_workbook_cases FOLDER
#include <fstream>
#include <iostream>
#include <nlohmann/json.hpp>
#include <random>

#include "documents/build_cases.hpp"
#include "saw_book/batch_workbook.hpp"

namespace {

using namespace shaftcut;
using namespace shaftcut::test;
using namespace shaftcut::test::papers;
using Json = nlohmann::json;

constexpr int cases_of_a_book = 40;

// One order of a batch with the inputs of its row.
struct Row {
    BuildOrder order;
    BuildInputs inputs;
    BuiltLengths now;
    bool guard = true;
    int count = 1;
};

// The program's own lengths for these inputs: of a series that states just them.
BuiltLengths lengths_for(const Row& row, Fraction step_um)
{
    Series series;
    for (const Tube tube : both_tubes) {
        SeriesHalf& half = series.halves[tube];
        half.shoulder = row.inputs.shoulder[tube];
        half.seat = row.inputs.seat[tube];
        half.guard_shoulder = row.inputs.guard_shoulder[tube];
        half.guard_seat = half.guard_seat_wide_angle = row.inputs.guard_seat[tube];
    }
    return build_lengths(series, row.order, row.inputs.closed - row.inputs.beyond, row.inputs.setback, step_um);
}

bool same_lengths(const BuiltLengths& a, const BuiltLengths& b) { return a.closed == b.closed && a.blank == b.blank && a.guard_blank == b.guard_blank; }

Json expected(const Row& row, Fraction step_um)
{
    const BuiltLengths lengths = lengths_for(row, step_um);
    Json figures{{"Closed, mm", (lengths.closed + row.inputs.beyond).mm()}};
    for (const Tube tube : both_tubes) {
        const std::string name = tube == Tube::inner ? "Inner " : "Outer ";
        figures[name + "half, mm"] = lengths.half[tube].mm();
        figures[name + "tube, mm"] = lengths.blank[tube].mm();
        if (!row.guard) continue;
        figures[name + "guard half, mm"] = lengths.guard_half[tube]->mm();
        figures[name + "guard tube, mm"] = lengths.guard_blank[tube]->mm();
    }
    // A row says "build" only of the lengths that were checked, whatever lies outside the inner crosses.
    figures["Verdict"] = same_lengths(lengths, row.now) ? "build" : "CHANGED: not checked";
    return figures;
}

class Changes {
public:
    explicit Changes(unsigned seed) : random_(seed) {}

    int below(int limit) { return static_cast<int>(random_() % static_cast<unsigned>(limit)); }
    // Another length near this one, often on a limit of the rounding.
    Length near(Length length)
    {
        static constexpr std::array offsets{0, 1, -1, 9, 10, -9, -10, 500, 1000, 991, 990, -1000, 12'345, -40'000, 250'001};
        return length + Length::micrometres(offsets[static_cast<std::size_t>(below(static_cast<int>(offsets.size())))]);
    }
    Fraction step(Fraction now)
    {
        static constexpr std::array steps{Fraction{1000, 1}, Fraction{500, 1}, Fraction{5000, 1}, Fraction{3175, 2}, Fraction{3175, 1}};
        return below(2) == 0 ? now : steps[static_cast<std::size_t>(below(static_cast<int>(steps.size())))];
    }

private:
    std::mt19937 random_;
};

// Changes one input of the row; its column's title and the new value.
Json change(Row& row, Changes& changes)
{
    const Tube tube = changes.below(2) == 0 ? Tube::inner : Tube::outer;
    const std::string side = tube == Tube::inner ? ", inner, mm" : ", outer, mm";
    const auto set = [&](const std::string& title, Length& length) {
        length = changes.near(length);
        return Json::array({row.order.order, title, length.mm()});
    };
    switch (changes.below(row.guard ? 7 : 4)) {
    case 0: return set("Shoulder" + side, row.inputs.shoulder[tube]);
    case 1: return set("Seat" + side, row.inputs.seat[tube]);
    case 2:
        row.count = 1 + changes.below(9);
        return Json::array({row.order.order, "Shafts", row.count});
    case 4: return set("Guard shoulder" + side, *row.inputs.guard_shoulder[tube]);
    case 5: return set("Guard seat" + side, *row.inputs.guard_seat[tube]);
    case 6: return set("Guard setback, mm", row.inputs.setback);
    default: return set("Closed to build to, mm", row.inputs.closed);
    }
}

Json parts_for(const Batch& batch, const std::vector<Row>& rows)
{
    Json parts = Json::object();
    std::size_t row = 0;
    for (const BatchOrder& order : batch.orders) {
        if (!order.built) continue;
        for (const PartCount& part : order.parts) parts[say(part.name, wording_of(batch))] = parts.value(say(part.name, wording_of(batch)), std::int64_t{0}) + part.count / order.count * rows[row].count;
        ++row;
    }
    return parts;
}

Json case_of(const Batch& batch, std::vector<Row> rows, Changes& changes, bool first)
{
    const Fraction step = first ? rows.front().inputs.step_um : changes.step(rows.front().inputs.step_um);
    Json set = Json::array(), answers = Json::object();
    for (Row& row : rows)
        if (!first && changes.below(3) > 0) set.push_back(change(row, changes));
    for (const Row& row : rows) answers[row.order.order] = expected(row, step);
    return {{"step", static_cast<double>(step.numerator) / static_cast<double>(step.denominator) / 1000}, {"set", set}, {"orders", answers}, {"parts", parts_for(batch, rows)}};
}

Json book_of(const std::string& folder, const std::string& file, Units units)
{
    const Batch batch = case_batch(units);
    std::vector<BuildOrder> orders;
    for (const BuildCase& one : build_cases())
        if (one.order.count < 100 && one.name != "inches" && one.name != "refused: overlap, inches") orders.push_back(one.order);
    std::vector<Row> rows;
    for (std::size_t i = 0; i < batch.orders.size(); ++i) {
        if (!batch.orders[i].built) continue;
        orders[i].order = batch.orders[i].order;
        rows.push_back({orders[i], batch.orders[i].built->inputs, batch.orders[i].built->lengths, orders[i].guard, orders[i].count});
    }
    std::ofstream(folder + "/" + file, std::ios::binary) << batch_workbook_of(batch, Paper::a4);
    Changes changes(units == Units::mm ? 1 : 2);
    Json cases = Json::array();
    for (int i = 0; i < cases_of_a_book; ++i) cases.push_back(case_of(batch, rows, changes, i == 0));
    return {{"file", file}, {"cases", cases}};
}

}  // namespace

int main(int argc, char** argv)
{
    if (argc != 2) {
        std::cerr << "usage: batch_workbook_cases FOLDER\n";
        return 2;
    }
    const Json books{book_of(argv[1], "batch-mm.xlsx", Units::mm), book_of(argv[1], "batch-in.xlsx", Units::in)};
    std::ofstream(std::string(argv[1]) + "/cases.json") << books.dump();
    return 0;
}
