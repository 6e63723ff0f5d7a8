// A second implementation of building to order, written from the method's description and sharing nothing with the program but
// the structs of orders and catalogue: lengths by its own arithmetic, checks by plain_method on the job that measures what was
// built, and by its own rules where a new shaft's differ.
#pragma once

#include "shaftcut/trade/data/build_order.hpp"
#include "support/plain/plain_method.hpp"

namespace shaftcut::test::plain {

struct PlainBuilt {
    std::array<Um, 2> half{}, blank{};              // inner, outer
    std::array<Maybe, 2> guard_half{}, guard_blank{};
    Um closed = 0;                                  // between the inner crosses
    std::array<Maybe, 3> pulled{};                  // how far it may be pulled: working, turning, standing
};

struct PlainBuildAnswer {
    std::optional<PlainBuilt> built;                // empty: refused or held
    bool held = false;                              // could be built, but not all is known
    std::optional<std::array<PlainCheck, check_count>> checks;  // of an order by a fit whose lengths could be computed
};

PlainBuildAnswer build_answer(const BuildOrder& order, const Catalogue& catalogue, const Workshop& workshop, Units units);

}  // namespace shaftcut::test::plain
