// One series tried for what is wanted: each closed length that it lists, and a shaft made to order. Private to its room.
#pragma once

#include "choose/machine_memory.hpp"
#include "shaftcut/trade/choose/choose.hpp"

namespace shaftcut {

// What all series are tried for.
struct Wanted {
    const JobToChooseFor& job;
    const Catalogue& catalogue;
    const Workshop& workshop;
    Units units;
};

struct SeriesTries {
    std::vector<Choice> choices;  // one a closed length, in their order
    std::optional<ChoiceToOrder> to_order;
};

SeriesTries try_series(const Wanted& wanted, const Series& series, MachineMemory& memory);

// Whether the one is to be offered before the other; of two alike neither.
bool ranks_before(const Choice& one, const Choice& other);
bool ranks_before(const ChoiceToOrder& one, const ChoiceToOrder& other);

}  // namespace shaftcut
