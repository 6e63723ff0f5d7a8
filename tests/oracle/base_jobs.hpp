// The jobs whose workbooks are recalculated: each takes another way through the formulas.
#pragma once

#include <string>
#include <vector>

#include "shaftcut/trade/order/work_order.hpp"

namespace shaftcut::test {

struct BaseJob {
    std::string name;
    Job job;
    Catalogue catalogue;
    Workshop workshop;
    WorkOrder issued;         // of the job as it is
    bool by_itself = false;   // every change of its results is worth trying, whatever other jobs have made of theirs
};

std::vector<BaseJob> base_jobs();

inline WorkOrder worked(const BaseJob& base, const Job& changed) { return work_up(changed, base.catalogue, base.workshop, changed.units); }

}  // namespace shaftcut::test
