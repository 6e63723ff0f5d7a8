// Every way to mistype one length of a job file, and what became of each.
#pragma once

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "support/drawn/true_shafts.hpp"

namespace shaftcut::test {

// A length as it stands in a file: which kind of figure it is, and its text from `begin` on.
struct TypedLength {
    std::string kind;
    std::size_t begin = 0;
    std::string text;
};

// Those of a job file's text, outside its comments, in their order.
std::vector<TypedLength> typed_lengths(const std::string& xml);

// Each digit replaced by each other, dropped, doubled or exchanged with its neighbour, and the decimal point moved by one place.
std::vector<std::string> mistypings(const std::string& text);

// What became of a kind's mistypings. Each counts once, in the first of these that holds.
struct Fate {
    int all = 0;
    int refused = 0;    // as bad input, or by a check
    int unchanged = 0;  // every cut and kept length is what it was
    int asked = 0;      // what is confirmed before sawing shows it
    int warned = 0;     // a check warns that did not, or more is confirmed
    int silent = 0;
    int dangerous = 0;  // of the silent: a tube stays longer than it should be by more than the closing clearance
    Um too_long = 0;    // the most by which a tube stays longer than it should be in silence
    Fate& operator+=(const Fate& other);
};

struct Mistyped {
    std::map<std::string, Fate> of_kind;    // in samples that are cut or fit
    int in_refused = 0, now_answered = 0;   // in samples that are refused
    std::vector<std::string> dangerous;     // "FILE: what was typed for what"
};

// What is seen of an answer: of a sample as it stands its figures are taken to be the truth.
struct Seen {
    Promise promise;
    std::vector<CheckResult> results;
    TrueShaft shaft;
    Um clearance = 0;  // that it must close with
};
Seen seen_of(const WorkOrder& order);

// What becomes of a slip in a job whose true answer is a cut or that it fits; nothing: bad input.
Fate fate_of(const Seen& truth, const std::optional<Seen>& now);

// Of one file, every so manieth mistyping; `answer` gives what is seen of its bytes, or nothing where they are bad input.
void mistype_all(Mistyped& found, const std::string& name, const std::string& xml, std::size_t every,
                 const std::function<std::optional<Seen>(const std::string&)>& answer);

}  // namespace shaftcut::test
