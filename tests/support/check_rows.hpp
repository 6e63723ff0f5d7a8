// Rows that hold one check to its limits: what is changed in the drawn example, and what the check must then say.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "support/catch.hpp"
#include "support/jobs.hpp"
#include "support/sentences.hpp"

namespace shaftcut::test {

// A job with the configuration that it is worked up by; a row changes what it needs.
struct Setting {
    Job job = test::job();
    Catalogue catalogue = test::catalogue();
    Workshop workshop = test::workshop();
    JobFit& fit() { return job.fits[0]; }
    JobHalf& half(Tube tube) { return job.shaft.halves[tube]; }
    SeriesHalf& series_half(Tube tube) { return catalogue.series[0].halves[tube]; }
};

using Change = std::function<void(Setting&)>;

struct CheckRow {
    std::string what;
    Change change;
    CheckResult result;
    // In mm, degrees or per cent, as the check has it.
    std::optional<double> value, worst, limit;
};

inline WorkOrder worked(const Setting& setting) { return work_up(setting.job, setting.catalogue, setting.workshop, setting.job.units); }

inline std::optional<std::int64_t> thousandths(std::optional<double> figure)
{
    return figure ? std::optional(std::llround(*figure * 1000)) : std::nullopt;
}

inline void hold(const Check& check, const CheckRow& row)
{
    INFO(row.what << ": " << said(check) << " [" << basis_said(check) << "]");
    CHECK(std::string(to_word(check.result)) == to_word(row.result));
    CHECK((check.value == thousandths(row.value)));
    CHECK((check.worst == thousandths(row.worst)));
    CHECK((check.limit == thousandths(row.limit)));
    CHECK_FALSE(said(check).empty());
    CHECK_FALSE(basis_said(check).empty());
}

inline void hold_all(CheckId id, const std::vector<CheckRow>& rows)
{
    for (const CheckRow& row : rows) {
        Setting setting;
        row.change(setting);
        hold(check(worked(setting), id), row);
    }
}

// Sets one longest, and the others so that none contradicts it.
inline void set_longest(Setting& setting, Range range, double millimetres)
{
    auto& longest = setting.fit().longest;
    const Length length = mm(millimetres);
    longest[range] = measured(millimetres);
    if (range == Range::standing) longest[Range::turning]->length = std::min(longest[Range::turning]->length, length);
    if (range == Range::working) longest[Range::turning]->length = std::max(longest[Range::turning]->length, length);
    longest[Range::working]->length = std::min(longest[Range::working]->length, longest[Range::turning]->length);
    longest[Range::standing]->length = std::max(longest[Range::standing]->length, longest[Range::turning]->length);
}

}  // namespace shaftcut::test
