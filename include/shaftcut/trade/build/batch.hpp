// A list of orders as one batch: what to fetch for all of them, and what to saw out of which bars.
//
// Orders are added one by one and only what the batch's documents print is kept of each. Checked in batch_test: parts summed
// over the batch are the sum of the orders', and every piece of every order stands in a plan.
#pragma once

#include <functional>
#include <map>

#include "shaftcut/trade/build/build_inputs.hpp"
#include "shaftcut/trade/build/build_plan.hpp"
#include "shaftcut/trade/saw/saw_order.hpp"

namespace shaftcut {

// The lengths of one shaft of an order, for a table.
struct BatchLengths {
    BuildInputs inputs;
    BuiltLengths lengths;
    Length closed;                     // at `reference`
    Reference reference = Reference::inner_cross;
    bool has_wide_angle = false;
    UseRange use;
};

struct BatchOrder {
    std::string order, customer, machine, due;
    ShaftTitle shaft_title;
    int count = 1;
    BuildVerdict verdict = BuildVerdict::refused;
    std::vector<BuildReason> reasons;
    std::vector<OpenPoint> open;
    std::optional<BatchLengths> built;  // empty when refused or held
    std::vector<PartCount> parts;       // of all its shafts
    std::optional<std::int64_t> mass;   // of all its drive tubes, in grams
};

// Equal pieces of one order.
struct BatchPiece {
    std::string order;
    ShaftTube part;
    End end = End::tractor;  // of its half
    std::string profile;  // what it is sawn from
    Length length;
    std::int64_t count = 0;
    std::optional<Length> pin_hole;  // from the piece's inner end
    bool sawn = true;     // false: the series forbids shortening it; it is fetched made to its length
};

// One profile's pieces across the batch and the bars to saw them from. Guard tubes have bars only where the workshop states some
// for them.
struct ProfileTask {
    std::string profile;
    SawTask task;
};

// Why no plan could be made.
struct ProfileRefusal {
    SawRefusal why;
    std::vector<std::string> labels;  // of the pieces concerned
};

// What became of it.
struct ProfilePlan {
    std::string profile;
    std::optional<SawOrder> order;
    std::optional<ProfileRefusal> refusal;  // nothing where there is a plan
};

struct Batch {
    std::string name;   // of the list, on documents and in file names
    std::string owner;  // may be empty
    Units units = Units::mm;
    std::vector<BatchOrder> orders;   // in the list's order
    std::vector<PartCount> parts;     // of all orders that can be built, in the order in which each first stands
    std::vector<BatchPiece> pieces;   // in the list's order
    std::vector<ProfilePlan> plans;   // in the order of the pieces' profiles
    std::vector<std::string> unplanned;  // profiles with pieces and no bars: no plan was asked of them
};

class BatchBuilder {
public:
    BatchBuilder(std::string name, std::string owner, Units units);
    void add(const BuildPlan& plan, const Series& series);
    // What has been added; plans are still missing.
    Batch take();

private:
    Batch batch_;
    std::map<PartName, std::size_t> part_at_;
};

// What blade and bars the plans are made for.
struct BatchSaw {
    Length kerf, trim_start, trim_end, reusable;
    std::vector<SawStock> stock;               // for every profile of drive tubes that has none of its own; only bars without a count,
                                               // for a counted bar is of one profile
    std::vector<ProfileStock> profile_stock;
};

// What is written on a piece.
using PieceLabel = std::function<std::string(const BatchPiece&)>;

// One task for each profile that has pieces to saw and bars, in the order of the pieces.
std::vector<ProfileTask> saw_tasks(const Batch& batch, const BatchSaw& saw, const PieceLabel& label);

// A profile whose pieces stand in no plan.
struct NotPlanned {
    std::string profile;
    std::optional<ProfileRefusal> refusal;  // nothing: no bars are stated for it
    std::vector<BatchPiece> pieces;
};

// Of a batch with its plans, in the order of the plans, then of those without bars.
std::vector<NotPlanned> not_planned(const Batch& batch);

// The profiles that saw_tasks() leaves out for want of bars.
std::vector<std::string> profiles_without_bars(const Batch& batch, const BatchSaw& saw);

}  // namespace shaftcut
