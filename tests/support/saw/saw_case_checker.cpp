#include "support/saw/saw_case_checker.hpp"

#include <algorithm>
#include <functional>
#include <set>

namespace shaftcut::test {
namespace {

// Pieces of one sort in a case: of the task, or joined.
struct Sort {
    std::int64_t length = 0;
    std::int64_t count = 0;
    std::set<std::size_t> apart = {};  // sorts never in one bar with it; itself: one in a bar
};

using Sorts = std::vector<Sort>;

// The greatest worth of any filling: every choice is tried.
std::int64_t greatest_worth(const Sorts& sorts, const std::vector<std::int64_t>& prices, std::int64_t bar)
{
    std::vector<std::int64_t> taken(sorts.size(), 0);
    const std::function<std::int64_t(std::size_t, std::int64_t)> best = [&](std::size_t i, std::int64_t room) -> std::int64_t {
        if (i == sorts.size()) return 0;
        std::int64_t most = best(i + 1, room);
        const bool barred = std::any_of(sorts[i].apart.begin(), sorts[i].apart.end(), [&](std::size_t other) { return other < i && taken[other] > 0; });
        const std::int64_t allowed = barred ? 0 : sorts[i].apart.count(i) > 0 ? std::min<std::int64_t>(1, sorts[i].count) : sorts[i].count;
        for (taken[i] = 1; taken[i] <= allowed && taken[i] * sorts[i].length <= room; ++taken[i])
            most = std::max(most, taken[i] * prices[i] + best(i + 1, room - taken[i] * sorts[i].length));
        taken[i] = 0;
        return most;
    };
    return best(0, bar);
}

struct Walk {
    const SawCertificate& certificate;
    std::int64_t bar;
    std::int64_t bars;
    std::size_t next = 0;

    // Whether the prices show that bars − 1 bars do not hold the pieces.
    bool refutes(const Sorts& sorts, const std::vector<std::int64_t>& prices) const
    {
        if (prices.size() != sorts.size()) return false;
        std::int64_t needed = 0;
        for (std::size_t i = 0; i < sorts.size(); ++i) needed += prices[i] * sorts[i].count;
        return greatest_worth(sorts, prices, bar) * (bars - 1) < needed;
    }

    bool closed(const Sorts& sorts, bool above)
    {
        if (next == certificate.cases.size()) return false;
        const SawProofNode& node = certificate.cases[next++];
        const bool here = above || std::any_of(node.prices.begin(), node.prices.end(), [&](const auto& prices) { return refutes(sorts, prices); });
        if (!node.halves) return here;
        const auto [a, b] = *node.halves;
        Sorts joint = sorts;
        joint.push_back({sorts[a].length + sorts[b].length, 1});
        --joint[a].count;
        --joint[b].count;
        if (joint[a].count < 0 || joint[b].count < 0) return false;
        for (const std::size_t part : {a, b})
            for (const std::size_t other : sorts[part].apart) {
                joint.back().apart.insert(other);
                joint[other].apart.insert(sorts.size());
            }
        Sorts apart = sorts;
        apart[a].apart.insert(b);
        apart[b].apart.insert(a);
        return closed(joint, here) && closed(apart, here);
    }
};

}  // namespace

bool cases_enumerated(const SawTask& task, const SawCertificate& certificate, std::int64_t bars)
{
    Sorts sorts;
    for (const Length length : certificate.lengths)
        for (const SawPiece& piece : task.pieces)
            if (piece.length == length) sorts.push_back({length.um(), piece.count});
    Walk walk{certificate, task.stock[0].length.um(), bars};
    const bool rows = std::any_of(certificate.prices.begin(), certificate.prices.end(), [&](const auto& prices) { return walk.refutes(sorts, prices); });
    return certificate.cases.empty() ? rows : walk.closed(sorts, rows) && walk.next == certificate.cases.size();
}

}  // namespace shaftcut::test
