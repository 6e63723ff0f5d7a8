// One measured size: how probable its readings are where a series states it, and where nothing is known of it.
#pragma once

#include <cstdint>
#include <optional>
#include <unordered_map>
#include <vector>

#include "identify/densities.hpp"
#include "identify/priors.hpp"
#include "shaftcut/trade/data/measures.hpp"

namespace shaftcut::identifying {

// Of several readings any may be slips. The good ones enter as their mean with the least ± (wear and tolerance are common to them), times the density of their
// differences. All likelihoods of one figure are in terms of the greatest that it can have, so that products of many do not run out of range.
class Figure {
public:
    // At least one reading. `kind`: a width's as the inner tube's.
    Figure(SizeKind kind, SizeReadings readings);

    // Where the series states `size`; nothing: it does not.
    double like(SizeKind as, std::optional<Length> size) const;
    double like(std::optional<Length> size) const { return like(kind_, size); }
    // Where the size itself is spread by `density`.
    template <class Density>
    double over(const Density& density) const
    {
        double sum = all_slips_;
        for (const Good& good : good_) sum += good.weight * density(good.mean);
        return sum;
    }
    // Where nothing is known of the size.
    double unknown() const { return unknown_; }
    // That all readings are slips, given that the series states `size`.
    double slipped(SizeKind as, std::optional<Length> size) const { return all_slips_ / like(as, size); }

    SizeKind kind() const { return kind_; }
    double mean() const { return mean_; }
    const SizeReadings& readings() const { return readings_; }
    double first_plus_minus() const { return plus_minus(readings_.front()); }

private:
    // One choice of readings that are no slips.
    struct Good {
        double weight, mean, plus_minus;
    };
    double plus_minus(const SizeReading& reading) const;
    void add(unsigned chosen);
    double compute(SizeKind as, double size) const;

    SizeKind kind_;
    SizeReadings readings_;
    double mean_ = 0, all_slips_ = 0, unknown_ = 0;
    std::vector<Good> good_;
    // Series share sizes: each is computed once. Of the inner and of the outer tube apart.
    mutable PerEach<Tube, std::unordered_map<std::int64_t, double>> known_;
};

}  // namespace shaftcut::identifying
