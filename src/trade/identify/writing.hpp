// What the writing on a guard says of the series.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "identify/priors.hpp"
#include "shaftcut/trade/data/catalogue.hpp"
#include "shaftcut/trade/identify/identify.hpp"

namespace shaftcut::identifying {

// The series whose name it is, without regard to case (of the Latin alphabet) and doubled blanks. Of several such the one that is written exactly so, else the first by name.
std::optional<std::size_t> named_series(const Catalogue& catalogue, const std::string& writing);

// How probable the writing is by what the shaft is. Where nothing is written, 1 whatever it is.
class Writing {
public:
    Writing(const Catalogue& catalogue, const std::optional<std::string>& writing);

    double of_one(std::size_t series) const;
    double of_none() const;
    // A shaft of three kinds.
    double of_all_different() const { return wrong_of_none_; }

    // Of a mixed shaft it names the two like parts' series (others), or the odd part's (odd), or is wrong, by the two like parts' series.
    struct Mixed {
        double others = 0, odd = 0, wrong = 1;
    };
    Mixed mixed(IdentifiedPart odd) const;
    double wrong(std::size_t series) const { return wrong_.empty() ? 1 : wrong_[series]; }
    double wrong_of_none() const { return wrong_of_none_; }

    std::optional<std::size_t> series() const { return series_; }
    bool names_none() const { return written_ && !series_; }

private:
    bool written_ = false;
    std::optional<std::size_t> series_;
    std::vector<double> wrong_;  // e(j|s) of each series
    double wrong_of_none_ = 1;
};

}  // namespace shaftcut::identifying
