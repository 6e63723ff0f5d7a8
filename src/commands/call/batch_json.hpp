// The JSON of a batch, written while its orders are planned: to standard output, to its file, or nowhere where it is not asked for.
#pragma once

#include <optional>

#include "call/command.hpp"
#include "call/options.hpp"
#include "files/output.hpp"
#include "shaftcut/engine/answer.hpp"

namespace shaftcut {

class BatchJsonOutput {
public:
    // `name`: of the list.
    BatchJsonOutput(const CommonOptions& options, const std::string& name, Console& console);
    void add(const BuildPlan& plan);
    // The file gets its name, which is said, or the fault is.
    Outcome finish(const std::vector<ProfilePlan>& plans);

private:
    void write(const std::string& text);

    const CommonOptions& options_;
    std::string file_;  // its name
    Console& console_;
    BatchJson json_;
    std::optional<DocumentWriter> writer_;
};

}  // namespace shaftcut
