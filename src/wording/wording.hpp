// How everything that a person reads is put into words: patterns with named places, and figures rounded by the rule of their quantity.
//
// A pattern is one whole sentence, so that a translator sees all of it. `{name}` is a place for a figure or a name; `{name:a|b|c}`
// chooses among words by an enumerator, in its order, or by yes and no: a|b for no|yes. Nothing is glued from parts of sentences,
// and nothing is replaced in a sentence that is finished. Checked in tests/wording/wording_test.cpp.
#pragma once

#include <concepts>
#include <initializer_list>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

#include "shaftcut/trade/data/rounding.hpp"
#include "shaftcut/words/angle.hpp"
#include "shaftcut/words/length.hpp"

namespace shaftcut {

// Gives the pattern in another language; `pattern` is the English one, which stands in the code.
using Translate = std::string (*)(std::string_view pattern);

// Whom a sentence is about: a shaft that exists, measured and cut by a job; or one that is made to order.
enum class About { shaft, new_shaft };

// What stands in a place of a pattern: a text, or a choice among the words that the pattern gives.
class Value {
public:
    Value(std::string text) : text_(std::move(text)) {}
    Value(std::string_view text) : text_(text) {}
    Value(const char* text) : text_(text) {}
    template <class Number>
        requires(std::integral<Number> && !std::same_as<Number, bool>)
    Value(Number number) : text_(std::to_string(number)) {}
    template <class Choice>
        requires(std::is_enum_v<Choice> || std::same_as<Choice, bool>)
    Value(Choice choice) : chosen_(static_cast<int>(choice)) {}

    bool is_choice() const { return chosen_ >= 0; }
    const std::string& text() const { return text_; }
    int chosen() const { return chosen_; }

private:
    std::string text_;
    int chosen_ = -1;
};

struct NamedValue {
    const char* name;
    Value value;
};

class Wording {
public:
    explicit Wording(Units units, About about = About::shaft, Translate translate = nullptr) : units_(units), about_(about), translate_(translate) {}

    Units units() const { return units_; }
    bool of_new_shaft() const { return about_ == About::new_shaft; }

    // The pattern with its places filled. std::logic_error where the pattern names a place that has no value here, or chooses among
    // fewer words than the value has.
    std::string operator()(std::string_view pattern, std::initializer_list<NamedValue> values = {}) const;

    // "742 mm", "29-3/16 in".
    std::string length(Rounded as, Length length, int decimals = 1) const { return figure_of_with_unit(as, length, units_, decimals); }
    // "742 mm", "29-3/16 in (741.3 mm)".
    std::string both(Rounded as, Length length, int decimals = 1) const { return figure_of_with_millimetres(as, length, units_, decimals); }
    // Both units of a length beside another that decides about it: to 0.1 mm where that shows which is the greater, else to 0.001 mm.
    std::string beside(Rounded as, Length one, Length other) const { return both(as, one, decimals_that_tell(as, one, other)); }
    // Both units of how far below 0 a length is, as exactly as beside() prints it.
    std::string below_zero(Rounded as, Length negative, Length other) const { return size_of_with_millimetres(as, negative, units_, decimals_that_tell(as, negative, other)); }

    // "22.5 kW", of watts: thousandths of it, as they print.
    std::string power(std::int64_t watts) const { return figure(Angle::millidegrees(watts), 3) + " kW"; }
    // "12.3 %", of thousandths of a per cent.
    std::string percent(std::int64_t thousandths) const { return figure(Angle::millidegrees(thousandths)) + " %"; }
    // "12.5°".
    std::string angle(Angle angle, int decimals = 1) const { return figure(angle, decimals) + "°"; }

    // "a", "a or b", "a, b or c"; likewise with "and".
    std::string either(const std::vector<std::string>& names) const;
    std::string all_of(const std::vector<std::string>& names) const;

private:
    Units units_;
    About about_;
    Translate translate_;  // nothing: English
};

// Sentences one behind the other.
std::string running_text(const std::vector<std::string>& sentences);

}  // namespace shaftcut
