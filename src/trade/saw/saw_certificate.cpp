#include <algorithm>

#include "saw/saw_cases.hpp"
#include "saw/saw_check_task.hpp"

namespace shaftcut {
namespace {

bool same_lengths(const saw::Model& model, const SawCertificate& certificate)
{
    return std::equal(model.sizes.begin(), model.sizes.end(), certificate.lengths.begin(), certificate.lengths.end(),
                      [](const saw::CutSize& size, Length length) { return size.length == length; });
}

}  // namespace

bool certifies(const SawTask& task, const SawCertificate& certificate, std::int64_t lower_bound)
{
    if (lower_bound <= 0) return true;
    if (lower_bound > most_saw_pieces * most_saw_cost || saw::check_task(task)) return false;
    const saw::Model model = saw::make_model(task);
    if (model.bars.empty() || !same_lengths(model, certificate) || certificate.prices.empty()) return false;
    const SawWatch no_limit{[] { return 1.0; }, {}};
    saw::Knapsack knapsack(model, no_limit);
    std::vector<saw::PriceRow> rows;
    for (const auto& prices : certificate.prices) {
        if (!saw::well_formed(model, prices)) return false;
        rows.push_back(saw::price_row(model, knapsack, prices));
    }
    const std::int64_t limit = (lower_bound + model.cost_scale - 1) / model.cost_scale;
    if (!certificate.cases.empty()) return saw::cases_prove(model, rows, certificate.cases, limit);
    return saw::cheapest_mix(model, rows, {.limit = limit}, no_limit).bound >= limit;
}

}  // namespace shaftcut
