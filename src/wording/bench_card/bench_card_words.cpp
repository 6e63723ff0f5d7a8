#include "bench_card/bench_card_words.hpp"

namespace shaftcut::bench_card {

std::string document_title(const Wording& w) { return w("The bench page's address"); }
std::string document_subject(const Wording& w) { return w("Where a shaft is typed in beside the saw"); }

std::string say(CardCaption caption, const Wording& w)
{
    switch (caption) {
    case CardCaption::heading: return w("Cut a shaft by tablet");
    case CardCaption::scan: return w("1. Tablet in the workshop's network: point its camera at the code, or type the address.");
    case CardCaption::pair: return w("2. On the workshop's PC choose: pair a tablet. Type its eight digits on the tablet.");
    case CardCaption::once: return w("Step 2 is done once: the tablet stays paired for 180 days.");
    case CardCaption::same_network: return w("No page comes up? The tablet is in another network, or the PC is off.");
    case CardCaption::read_along: break;
    }
    return w("Anyone in this network can read along what is typed and answered.");
}

}  // namespace shaftcut::bench_card
