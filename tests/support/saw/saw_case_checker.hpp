// Verifies a saw plan's proof by cases by enumeration. Shares no code with the solver.
#pragma once

#include "shaftcut/trade/saw/saw.hpp"

namespace shaftcut::test {

// Whether the certificate's rows and cases prove that no plan takes fewer than `bars` bars, for a task with one kind of bar without trims and kerf
// whose pieces differ in length, entry by entry. For small tasks.
bool cases_enumerated(const SawTask& task, const SawCertificate& certificate, std::int64_t bars);

}  // namespace shaftcut::test
