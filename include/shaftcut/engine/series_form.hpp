// A new series for the catalogue, asked for figure by figure. Checked in tests/commands/catalogue_add_test.cpp.
#pragma once

#include <string>
#include <vector>

#include "shaftcut/trade/data/series_figure.hpp"
#include "shaftcut/words/length.hpp"

namespace shaftcut {

// The text of an answer of yes, whatever the language in which it was said; of a no it is empty.
inline constexpr const char* said_yes = "yes";

// `text`: as it was answered; empty: not known, or there is none.
struct SeriesAnswer {
    SeriesQuestion question;
    std::string text;
};

// Whether the question belongs to a series of which so much is answered: one without a wide-angle joint has none of its figures.
bool is_asked(const SeriesQuestion& question, const std::vector<SeriesAnswer>& answers);

// The series as series.xml would state it, in a catalogue of its own. What must be stated and has not been asked yet is put in as it can be read,
// so that whatever is wrong with it is wrong with an answer.
std::string catalogue_of(const std::vector<SeriesAnswer>& answers, Units units);

}  // namespace shaftcut
