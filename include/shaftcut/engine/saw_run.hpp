// A saw plan for a list of pieces: read first, so that its documents' names are known, then planned.
#pragma once

#include <memory>
#include <optional>
#include <string>

#include "shaftcut/engine/answer.hpp"

namespace shaftcut {

// A plan, or why there is none: the pieces concerned each with its place, or one sentence about them all.
struct SawAnswer {
    std::optional<SawOrder> order;
    Problems problems;
    std::string why_not;
};

class SawRun {
public:
    struct State;
    explicit SawRun(std::unique_ptr<State> state);
    SawRun(SawRun&&) noexcept;
    SawRun& operator=(SawRun&&) noexcept;
    ~SawRun();

    const std::string& name() const;  // of the list: its file's, without folder and last suffix
    SawAnswer plan(const SawMeans& means);  // to be asked once

private:
    std::unique_ptr<State> state_;
};

// A run, or why there is none: the problems of both lists, or that neither the wishes nor the workshop name any stock.
struct SawStart {
    std::optional<SawRun> run;
    Problems problems;
    bool no_stock = false;
};

}  // namespace shaftcut
