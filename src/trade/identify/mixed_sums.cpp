#include "identify/mixed_sums.hpp"

#include <numeric>

namespace shaftcut::identifying {
namespace {

// Of the two parts that are alike: their likelihood by each series and by none.
struct Others {
    std::vector<double> of_series;
    double none = 0;
};

Others others_of(const Parts& parts, IdentifiedPart odd)
{
    std::array<IdentifiedPart, 2> two{};
    std::size_t count = 0;
    for (const IdentifiedPart part : identified_parts)
        if (part != odd) two[count++] = part;
    const PartLikelihood &a = parts.likelihood[two[0]], &b = parts.likelihood[two[1]];
    Others others{a.of_series, odd == IdentifiedPart::tubes ? parts.both_ends_none : a.none * b.none};
    for (std::size_t k = 0; k < others.of_series.size(); ++k) others.of_series[k] *= b.of_series[k];
    return others;
}

// U(m) = weight of the two like parts of m; O(o) of the odd part of o, O(0) of none with its prior; `each`: P(o | m) of one series o.
class Sums {
public:
    Sums(const Parts& parts, const Writing& writing, IdentifiedPart odd)
        : writing_(writing), law_(writing.mixed(odd)), odd_(parts.likelihood[odd].of_series), weight_(1 / static_cast<double>(odd_.size()))
    {
        const Others others = others_of(parts, odd);
        const double head = prior_mixed * each_part_odd;
        others_ = others.of_series;
        for (double& one : others_) one *= head * (1 - others_of_none) * weight_;
        others_none_ = head * others_of_none * others.none;
        const bool alone = odd_.size() == 1;
        odd_none_ = (alone ? 1 : odd_of_none) * parts.likelihood[odd].none;
        each_ = alone ? 0 : (1 - odd_of_none) * weight_ / (1 - weight_);
        sum_odd_ = parts.likelihood[odd].sum;
        for (std::size_t k = 0; k < others_.size(); ++k) {
            sum_others_ += others_[k];
            sum_wrong_ += others_[k] * wrong(k);
        }
    }

    MixedSums all() const
    {
        MixedSums sums;
        for (std::size_t k = 0; k < odd_.size(); ++k) {
            sums.others.push_back(of_others(k));
            sums.odd.push_back(of_odd(k));
        }
        sums.others_none = of_others_none();
        sums.odd_none = of_odd_none();
        sums.total = std::accumulate(sums.others.begin(), sums.others.end(), sums.others_none);
        return sums;
    }

private:
    double wrong(std::size_t series) const { return law_.wrong * writing_.wrong(series); }
    double wrong_of_none() const { return law_.wrong * writing_.wrong_of_none(); }
    bool named(std::size_t series) const { return writing_.series() == series; }
    bool named_other_than(std::size_t series) const { return writing_.series() && !named(series); }

    // The two like parts are of k: the writing is wrong or k's, whatever the odd part is; or it is the odd part's.
    double of_others(std::size_t k) const
    {
        const double any_odd = odd_none_ + each_ * (sum_odd_ - odd_[k]);
        double named_odd = writing_.names_none() ? odd_none_ : 0;
        if (named_other_than(k)) named_odd = each_ * odd_[*writing_.series()];
        return others_[k] * ((wrong(k) + (named(k) ? law_.others : 0)) * any_odd + law_.odd * named_odd);
    }

    // The odd part is of k: the writing is wrong, or k's, whatever the others are; or it is the others'.
    double of_odd(std::size_t k) const
    {
        const double any_others = each_ * (sum_others_ - others_[k]) + others_none_ * weight_;
        const double wrong_others = each_ * (sum_wrong_ - others_[k] * wrong(k)) + others_none_ * weight_ * wrong_of_none();
        double named_others = writing_.names_none() ? others_none_ * weight_ : 0;
        if (named_other_than(k)) named_others = each_ * others_[*writing_.series()];
        return odd_[k] * (wrong_others + (named(k) ? law_.odd * any_others : 0) + law_.others * named_others);
    }

    double of_others_none() const
    {
        const double right = wrong_of_none() + (writing_.names_none() ? law_.others : 0);
        return others_none_ * weight_ * (right * sum_odd_ + (writing_.series() ? law_.odd * odd_[*writing_.series()] : 0));
    }

    double of_odd_none() const
    {
        return odd_none_ * (sum_wrong_ + (writing_.names_none() ? law_.odd * sum_others_ : 0) + (writing_.series() ? law_.others * others_[*writing_.series()] : 0));
    }

    const Writing& writing_;
    Writing::Mixed law_;
    const std::vector<double>& odd_;
    double weight_;
    std::vector<double> others_;
    double others_none_ = 0, odd_none_ = 0, each_ = 0, sum_odd_ = 0, sum_others_ = 0, sum_wrong_ = 0;
};

}  // namespace

MixedSums mixed_sums(const Parts& parts, const Writing& writing, IdentifiedPart odd) { return Sums(parts, writing, odd).all(); }

}  // namespace shaftcut::identifying
