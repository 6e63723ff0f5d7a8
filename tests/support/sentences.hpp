// What checks say and why a shaft is refused, for tests of jobs in millimetres.
#pragma once

#include "build/build_words.hpp"
#include "checks/check_sentences.hpp"
#include "checks/limit_words.hpp"
#include "support/jobs.hpp"

namespace shaftcut::test {

inline std::string said(const Check& check, const Wording& w = Wording(Units::mm)) { return say(check, w); }
inline std::string basis_said(const Check& check, const Wording& w = Wording(Units::mm)) { return basis(check, w); }

inline std::vector<std::string> reasons_of(const WorkOrder& order) { return reasons_to_refuse(order.checks, wording_of(order)); }
inline std::vector<std::string> reasons_of(const BuildPlan& plan) { return say(plan.reasons, wording_of(plan)); }

}  // namespace shaftcut::test
