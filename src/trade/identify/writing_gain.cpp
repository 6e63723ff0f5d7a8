#include "identify/writing_gain.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "identify/neighbours.hpp"

namespace shaftcut::identifying {
namespace {

constexpr double wrong = 1 - writing_right;

// One outcome: what each hypothesis holds of it.
class NameSum {
public:
    // `alone`: that one hypothesis by itself has the outcome, and is so probable; `together`: of several that predict the same.
    void add(double together, double greatest, double chance)
    {
        if (together <= 0 || chance <= 0) return;
        total_ += together * chance;
        weighted_logs_ += together * chance * std::log2(chance);
        best_ = std::max(best_, greatest * chance);
    }

    Gain gain() const
    {
        if (total_ <= 0) return {};
        return {weighted_logs_ - total_ * std::log2(total_), best_, best_ >= certain * total_ ? total_ : 0};
    }

private:
    double total_ = 0, weighted_logs_ = 0, best_ = 0;
};

class Names {
public:
    Names(const Catalogue& catalogue, const Posterior& posterior)
        : posterior_(posterior), near_(neighbours(catalogue)), count_(static_cast<double>(near_.size())), near_to_(near_.size()), by_probability_(near_.size())
    {
        for (std::size_t k = 0; k < near_.size(); ++k)
            for (const std::size_t name : near_[k]) near_to_[name].push_back(k);
        std::iota(by_probability_.begin(), by_probability_.end(), 0U);
        std::sort(by_probability_.begin(), by_probability_.end(), [&](std::size_t a, std::size_t b) { return posterior.one[a] > posterior.one[b]; });
    }

    // The name of series `name`.
    Gain inside(std::size_t name) const
    {
        NameSum sum;
        double rest = posterior_.one_series;
        const auto stands_out = [&](std::size_t k, double chance) {
            sum.add(posterior_.one[k], posterior_.one[k], chance);
            rest -= posterior_.one[k];
        };
        stands_out(name, writing_right + far());
        for (const std::size_t k : near_to_[name]) stands_out(k, far() + wrong * wrong_known * wrong_near / static_cast<double>(near_[k].size()));
        sum.add(std::max(rest, 0.0), greatest_but(name), far());
        sum.add(posterior_.mixed, posterior_.mixed, of_mixed(name));
        sum.add(posterior_.none, posterior_.none, wrong * wrong_known / count_);
        return sum.gain();
    }

    Gain outside() const
    {
        constexpr double unknown = wrong * (1 - wrong_known);
        NameSum sum;
        sum.add(posterior_.one_series, posterior_.one[by_probability_.front()], unknown);
        double mixed = 1;
        for (std::size_t k = 0; k < near_.size(); ++k) mixed -= of_mixed(k);
        sum.add(posterior_.mixed, posterior_.mixed, std::max(mixed, 1e-9));
        sum.add(posterior_.none, posterior_.none, writing_right + unknown);
        return sum.gain();
    }

private:
    // A wrong name that is none of the neighbours'. A series that is alone has none.
    double far() const { return wrong * wrong_known * (near_.size() > 1 ? 1 - wrong_near : 1) / count_; }

    // A mixed shaft's right writing names what one of its parts is of, any of the three.
    double of_mixed(std::size_t name) const
    {
        double parts = 0;
        for (const IdentifiedPart part : identified_parts) parts += posterior_.mixed_part[part][name];
        return writing_right * parts / static_cast<double>(identified_parts.size()) / posterior_.mixed + wrong * wrong_known / count_;
    }

    // Of the series that neither have this name nor are near to it.
    double greatest_but(std::size_t name) const
    {
        const auto alike = [&](std::size_t k) { return k != name && std::find(near_[k].begin(), near_[k].end(), name) == near_[k].end(); };
        const auto found = std::find_if(by_probability_.begin(), by_probability_.end(), alike);
        return found == by_probability_.end() ? 0 : posterior_.one[*found];
    }

    const Posterior& posterior_;
    std::vector<std::vector<std::size_t>> near_;
    double count_;
    std::vector<std::vector<std::size_t>> near_to_;
    std::vector<std::size_t> by_probability_;
};

}  // namespace

Gain writing_gain(const Catalogue& catalogue, const Posterior& posterior)
{
    const Names names(catalogue, posterior);
    Gain all = names.outside();
    for (std::size_t name = 0; name < catalogue.series.size(); ++name) {
        const Gain one = names.inside(name);
        all.bits += one.bits;
        all.best += one.best;
        all.settles += one.settles;
    }
    return all;
}

}  // namespace shaftcut::identifying
