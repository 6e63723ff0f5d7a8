// The program's answer to a job beside that of the second implementation.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "shaftcut/trade/hitch/hitch.hpp"
#include "support/plain/plain_method.hpp"
#include "support/drawn/random_jobs.hpp"

namespace shaftcut::test {

// What a machine's geometry gives, as the second implementation takes it.
plain::PlainMachine plain_machine(const OperatingLengths& lengths);

// Every figure and verdict in which the two differ, a line each; empty where they agree.
std::string differences(const World& world, const std::vector<std::optional<plain::PlainMachine>>& machines = {});

}  // namespace shaftcut::test
