#include "shaftcut/engine/saw_run.hpp"

#include "engine/said.hpp"
#include "lists/pieces.hpp"
#include "reading/said.hpp"
#include "saw/saw_words.hpp"
#include "saw_in_time.hpp"
#include "saw_state.hpp"
#include "shaftcut/engine/engine.hpp"
#include "source/faults.hpp"

namespace shaftcut {

struct SawRun::State {
    std::shared_ptr<const Known> known;
    std::string file, name;
    PieceList pieces;
    SawTask task;
    Units units = Units::mm;
    double seconds = 0;
};

namespace {

template <class List>
Problems problems_in(const std::variant<List, FaultList>& read)
{
    const auto* faults = std::get_if<FaultList>(&read);
    return faults ? problems_of(*faults) : Problems();
}

std::variant<std::vector<SawStock>, FaultList> stock_for(const Workshop& workshop, const SawWishes& saw, Units units)
{
    if (!saw.stock) return workshop.stock;
    return read_stock(saw.stock->bytes, saw.stock->name, units);
}

// Each piece concerned with its place, or the list as a whole.
SawAnswer refusal_of(const SawRefusal& refusal, const SawRun::State& state)
{
    const Wording w(state.units);
    if (refusal.pieces.empty()) return {std::nullopt, {}, say(refusal.found, w)};
    Faults faults(state.file);
    for (const std::size_t piece : refusal.pieces) {
        SawFinding found = refusal.found;
        if (auto* too_long = std::get_if<PieceFitsNoBar>(&found)) too_long->piece = state.pieces.pieces[piece].length;
        faults.add({state.pieces.spots[piece], path_of_cell(piece + 1, "length")}, OfSaw{found, state.units});
    }
    return {std::nullopt, problems_of(faults.listed()), {}};
}

}  // namespace

Problems Engine::stock_problems(Question question, const Wishes& wishes, const SawWishes& saw)
{
    if (!saw.stock) return {};
    const Units units = wishes.units.value_or(Units::mm);
    if (question == Question::build) return problems_in(read_profile_stock(saw.stock->bytes, saw.stock->name, units));
    return problems_in(read_stock(saw.stock->bytes, saw.stock->name, units));
}

SawStart start_saw(const std::shared_ptr<const Known>& known, const Source& pieces, const Wishes& wishes, const SawWishes& saw)
{
    const Units units = wishes.units.value_or(Units::mm);
    const Workshop& workshop = known->workshop;
    auto read = read_pieces(pieces.bytes, pieces.name, units);
    auto stock = stock_for(workshop, saw, units);
    SawStart start{std::nullopt, problems_in(read), !saw.stock && workshop.stock.empty()};
    for (Problem& problem : problems_in(stock)) start.problems.push_back(std::move(problem));
    if (!start.problems.empty() || start.no_stock) return start;
    PieceList list = std::get<PieceList>(std::move(read));
    SawTask task{list.pieces, std::get<std::vector<SawStock>>(std::move(stock)), saw.kerf.value_or(workshop.saw.kerf), saw.trim_start, saw.trim_end, workshop.saw.reusable_leftover.value_or(Length())};
    start.run.emplace(std::make_unique<SawRun::State>(SawRun::State{known, pieces.name, list_name(pieces.name), std::move(list), std::move(task), units, saw.seconds}));
    return start;
}

SawRun::SawRun(std::unique_ptr<State> state) : state_(std::move(state)) {}
SawRun::SawRun(SawRun&&) noexcept = default;
SawRun& SawRun::operator=(SawRun&&) noexcept = default;
SawRun::~SawRun() = default;

const std::string& SawRun::name() const { return state_->name; }

SawAnswer SawRun::plan(const SawMeans& means)
{
    SawnInTime sawn = plan_in_time(state_->task, state_->seconds, means);
    if (const auto* refusal = std::get_if<SawRefusal>(&sawn.outcome)) return refusal_of(*refusal, *state_);
    const Workshop& workshop = state_->known->workshop;
    const SawHeading heading{state_->name, workshop.name, state_->units, workshop.saw.reusable_leftover, workshop.saw.least_cut, workshop.saw.plus_minus};
    return {lay_out(heading, std::move(state_->task), std::get<SawPlan>(std::move(sawn.outcome)), sawn.end, sawn.seconds), {}, {}};
}

}  // namespace shaftcut
