// Counts and alternatives in the terminal's lines.
#include "support/catch.hpp"
#include "terminal/terminal_words.hpp"

using namespace shaftcut;
using namespace shaftcut::terminal;

TEST_CASE("the terminal counts one and several")
{
    const Wording w(Units::mm);
    CHECK(list_line("list", {1, 1, 1, 0}, {}, w) == "list: 1 shaft of 1 order, 1 order held");
    CHECK(list_line("list", {4, 2, 2, 1}, {"<", "[", "(", ")"}, w) == "list: <4 shafts of 2 orders), [2 orders held), (1 order refused)");
    CHECK(list_line("list", {4, 2, 0, 3}, {}, w) == "list: 4 shafts of 2 orders, 3 orders refused");
    CHECK(list_line("list", {}, {}, w) == "list: 0 shafts of 0 orders");
    CHECK(bars_for_pieces(1, 2, w) == "1 BAR FOR 2 PIECES");
    CHECK(bars_for_pieces(3, 1, w) == "3 BARS FOR 1 PIECE");
}

TEST_CASE("the terminal says what is kept, or that it is to be confirmed")
{
    const Wording w(Units::mm);
    CHECK(left_as_it_is(std::nullopt, w) == "leave as it is, not measured: confirm");
    CHECK(left_as_it_is(Length::millimetres(574), w) == "leave as it is, keep 574 mm");
    CHECK(cut_and_kept(Length::millimetres(94), Length::millimetres(1), std::nullopt, w) == "cut 94 mm ±1 mm, not measured: confirm");
    CHECK(cut_and_kept(Length::millimetres(94), Length::millimetres(1), Length::millimetres(574), w) == "cut 94 mm ±1 mm, keep 574 mm");
    CHECK(guard_not_used(GuardUse::none, w) == "none: fit a new one");
    CHECK(guard_not_used(GuardUse::damaged, w) == "damaged, not used again: fit a new one");
    CHECK(result_name(CheckResult::not_checked, w) == "not-checked");
}
