// A list of shafts made to order, answered one order after the other, so that none need be kept.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "shaftcut/engine/answer.hpp"

namespace shaftcut {

class BuildRun {
public:
    struct State;
    explicit BuildRun(std::unique_ptr<State> state);
    BuildRun(BuildRun&&) noexcept;
    BuildRun& operator=(BuildRun&&) noexcept;
    ~BuildRun();

    const std::string& name() const;  // of the list: its file's, without folder and last suffix
    // Those that files of these formats may have, of every order still to be answered and of the batch.
    std::vector<std::string> document_names(const std::vector<Format>& formats, bool with_plates = false) const;
    std::size_t left() const;         // orders still to be answered
    BuildPlan next();                 // answers one, of which the run lets go. left() must not be 0
    // The batch of all that were answered, with its saw plans; to be asked once.
    Batch finish(const SawMeans& means);

private:
    std::unique_ptr<State> state_;
};

// A run, where any order can be read and the stock is sound; and the problems of the list and of the stock. `why_not`: a sentence where the
// configuration has no such map as is wished.
struct BuildStart {
    std::optional<BuildRun> run;
    Problems problems;
    std::string why_not = {};
};

// Whether lists are read from files of this name: those that end with .csv, .xlsx or .xml, in either case.
bool names_list_of_orders(const std::string& file);
// Whether such a list has headings, which a map of the configuration can name: one in XML has none.
bool has_headings(const std::string& file);

}  // namespace shaftcut
