#include "bench/reply_words.hpp"

namespace shaftcut {

std::string say(NoReply why, const Wording& w)
{
    switch (why) {
    case NoReply::broken: return w("This request cannot be read. Load the page again.");
    case NoReply::unknown_field: return w("This address asks for something that is not known here. Load the page again.");
    case NoReply::not_paired: return w("This tablet is not paired yet. Type the code that the workshop's PC shows.");
    case NoReply::other_name: return w("This page has another address. Use the one that the workshop's PC shows.");
    case NoReply::other_page: return w("Another site's page asked for this. Nothing was done.");
    case NoReply::not_xml: return w("This is no job file. Send XML.");
    case NoReply::wrong_code: return w("This code does not hold. Look at the workshop's PC: after five wrong tries or ten minutes it shows a new one.");
    case NoReply::no_such_place: return w("There is nothing at this address.");
    case NoReply::wrong_method: return w("This address is not asked in this way. Load the page again.");
    case NoReply::too_slow: return w("The request took too long to come. Try again.");
    case NoReply::no_length: return w("The request does not say how long it is. Load the page again.");
    case NoReply::too_long: return w("The file is larger than 256 KB. A job is not.");
    case NoReply::too_often: return w("Too many requests from this tablet within a minute. Wait a minute.");
    case NoReply::long_header: return w("The request is longer than it may be. Load the page again.");
    case NoReply::fault: return w("The answer could not be made.");
    case NoReply::no_printer: return w("No printer is set up. Save the PDF, or start the bench with --printer.");
    case NoReply::not_printed: return w("The printer did not take it. Look at the printer, or save the PDF.");
    case NoReply::not_to_print: return w("This is not printed here: a cut sheet or a tag is.");
    case NoReply::busy: break;
    }
    return w("Too many are asking at once. Try again.");
}

std::string sent_to_printer(const Wording& w) { return w("Sent to the printer."); }

std::vector<std::pair<std::string, std::string>> pairing_words(const Wording& w)
{
    return {{"pair-heading", w("Pair this tablet")},
            {"pair-how", w("On the workshop's PC choose: pair a tablet. Type here the eight digits that it shows.")},
            {"pair-code", w("Code")},
            {"pair-send", w("Pair")},
            {"pair-plain", w("Anyone in this network can read along what is sent.")}};
}

}  // namespace shaftcut
