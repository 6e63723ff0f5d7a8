#include "support/saw/linear_programme.hpp"
#include "support/saw/saw_cases.hpp"

#include <algorithm>
#include <functional>
#include <map>

namespace shaftcut::test {
namespace {

using State = std::vector<std::int64_t>;  // pieces of each entry of the task

std::int64_t held(const SawTask& task, const SawStock& stock)
{
    return (stock.length - task.trim_start - task.trim_end + task.kerf).um();
}

// Every way to fill the room with pieces from what is left, the empty one included.
void each_filling(const SawTask& task, const State& left, std::int64_t room, const std::function<void(const State&)>& visit)
{
    State taken(left.size(), 0);
    const std::function<void(std::size_t, std::int64_t)> choose = [&](std::size_t i, std::int64_t rest) {
        if (i == left.size()) return visit(taken);
        const std::int64_t each = (task.pieces[i].length + task.kerf).um();
        for (std::int64_t count = 0; count <= left[i] && count * each <= rest; ++count) {
            taken[i] = count;
            choose(i + 1, rest - count * each);
        }
        taken[i] = 0;
    };
    choose(0, room);
}

State all_pieces(const SawTask& task)
{
    State state;
    for (const SawPiece& piece : task.pieces) state.push_back(piece.count);
    return state;
}

std::int64_t total(const State& state)
{
    std::int64_t sum = 0;
    for (const std::int64_t count : state) sum += count;
    return sum;
}

using Costs = std::map<State, std::int64_t>;

// The states after one more bar of the kind, or none.
Costs with_one_more_bar(const SawTask& task, const SawStock& stock, const Costs& before)
{
    Costs after = before;
    for (const auto& [state, cost] : before)
        each_filling(task, state, held(task, stock), [&](const State& taken) {
            State rest = state;
            for (std::size_t i = 0; i < rest.size(); ++i) rest[i] -= taken[i];
            const auto [place, fresh] = after.emplace(rest, cost + stock.cost);
            if (!fresh) place->second = std::min(place->second, cost + stock.cost);
        });
    return after;
}

}  // namespace

std::int64_t Numbers::between(std::int64_t least, std::int64_t most)
{
    state_ += 0x9E3779B97F4A7C15U;
    std::uint64_t z = state_;
    z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9U;
    z = (z ^ (z >> 27)) * 0x94D049BB133111EBU;
    return least + static_cast<std::int64_t>((z ^ (z >> 31)) % static_cast<std::uint64_t>(most - least + 1));
}

SawTask plain_task(std::int64_t bar, const std::vector<LengthAndCount>& pieces)
{
    SawTask task;
    for (const auto& [length, count] : pieces) task.pieces.push_back({Length::millimetres(length), count, ""});
    task.stock.push_back({Length::millimetres(bar), std::nullopt, cost_unit});
    return task;
}

SawTask triplets(std::int64_t bars, std::uint64_t start)
{
    Numbers numbers(start);
    std::vector<LengthAndCount> pieces;
    for (std::int64_t b = 0; b < bars; ++b) {
        const std::int64_t first = numbers.between(380, 490);
        const std::int64_t second = numbers.between(250, (1000 - first) / 2);
        for (const std::int64_t length : {first, second, 1000 - first - second}) pieces.push_back({length, 1});
    }
    return plain_task(1000, pieces);
}

SawTask small_task(std::uint64_t start)
{
    Numbers numbers(start);
    SawTask task;
    task.kerf = Length::micrometres(numbers.between(0, 2) * 1'500);
    task.trim_start = Length::millimetres(numbers.between(0, 1) * 10);
    task.trim_end = Length::millimetres(numbers.between(0, 1) * 5);
    const std::int64_t lengths = numbers.between(2, 4);
    for (std::int64_t i = 0; i < lengths; ++i)
        task.pieces.push_back({Length::micrometres(numbers.between(300, 1600) * 500), numbers.between(1, 3), ""});
    task.stock.push_back({Length::millimetres(1000), std::nullopt, numbers.between(90, 110) * cost_unit});
    const std::int64_t rest_length = numbers.between(400, 900);
    task.stock.push_back({Length::millimetres(rest_length), numbers.between(1, 2), numbers.between(10, 80) * cost_unit});
    if (numbers.between(0, 1) == 1) task.stock.push_back({Length::millimetres(1500), numbers.between(0, 2), numbers.between(120, 160) * cost_unit});
    return task;
}

std::optional<std::int64_t> exhaustive_cost(const SawTask& task)
{
    const State all = all_pieces(task);
    Costs costs{{all, 0}};
    for (const SawStock& stock : task.stock)
        for (std::int64_t b = 0; b < std::min(stock.count.value_or(total(all)), total(all)); ++b) costs = with_one_more_bar(task, stock, costs);
    const auto done = costs.find(State(all.size(), 0));
    if (done == costs.end()) return std::nullopt;
    return done->second;
}

bool exhaustively_certifies(const SawTask& task, const SawCertificate& certificate, std::int64_t bound)
{
    const State all = all_pieces(task);
    std::map<Length, std::size_t> place;
    for (std::size_t i = 0; i < certificate.lengths.size(); ++i) place[certificate.lengths[i]] = i;
    // For each row: what each bar is worth at most, and what is needed.
    std::vector<std::vector<std::int64_t>> worth;
    std::vector<std::int64_t> needed;
    for (const auto& prices : certificate.prices) {
        const auto value = [&](const State& pieces) {
            std::int64_t sum = 0;
            for (std::size_t i = 0; i < pieces.size(); ++i) sum += pieces[i] * prices[place.at(task.pieces[i].length)];
            return sum;
        };
        needed.push_back(value(all));
        worth.emplace_back();
        for (const SawStock& stock : task.stock) {
            std::int64_t most = 0;
            each_filling(task, all, held(task, stock), [&](const State& taken) { most = std::max(most, value(taken)); });
            worth.back().push_back(most);
        }
    }
    // Every mix that costs less must be forbidden by some row.
    State mix(task.stock.size(), 0);
    const std::function<bool(std::size_t, std::int64_t)> none_allowed = [&](std::size_t k, std::int64_t cost) {
        if (cost >= bound) return true;
        if (k < mix.size()) {
            bool none = true;
            const std::int64_t most = std::min(task.stock[k].count.value_or(total(all)), total(all));
            for (mix[k] = 0; mix[k] <= most && none; ++mix[k]) none = none_allowed(k + 1, cost + mix[k] * task.stock[k].cost);
            mix[k] = 0;
            return none;
        }
        for (std::size_t r = 0; r < worth.size(); ++r) {
            std::int64_t sum = 0;
            for (std::size_t j = 0; j < mix.size(); ++j) sum += worth[r][j] * mix[j];
            if (sum < needed[r]) return true;
        }
        return false;
    };
    return none_allowed(0, 0);
}

SawWatch no_hurry()
{
    return {[] { return 1e9; }, {}, linear_programme()};
}

}  // namespace shaftcut::test
