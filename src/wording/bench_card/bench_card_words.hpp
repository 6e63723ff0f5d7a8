// What stands on the bench page's card.
#pragma once

#include <string>

#include "wording.hpp"

namespace shaftcut::bench_card {

// Of the file.
std::string document_title(const Wording& w);
std::string document_subject(const Wording& w);

enum class CardCaption { heading, scan, pair, once, same_network, read_along };
std::string say(CardCaption caption, const Wording& w);

}  // namespace shaftcut::bench_card
