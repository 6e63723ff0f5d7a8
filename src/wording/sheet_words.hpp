// What a sheet of paper says of itself, whatever it is about: handed to the pages, which know no sentence.
#pragma once

#include <string>

#include "wording.hpp"

namespace shaftcut {

class SheetWords {
public:
    explicit SheetWords(const Wording& wording) : w_(wording) {}

    // Names in the title block.
    std::string order() const;
    std::string sheet() const;
    std::string type() const;
    std::string by() const;

    std::string number(std::size_t sheet, std::size_t of) const;         // "2 of 3"
    std::string numbered_sheet(std::size_t sheet, std::size_t of) const; // "Sheet 2 of 3"
    std::string continued_on(std::size_t sheet) const;                   // at the foot of the one before
    std::string continued(const std::string& heading) const;             // "Notes, continued"

    // Of a text that holds a sign which cannot be drawn and is shown as `shown_as`.
    std::string with_missing_sign(const std::string& text, const std::string& shown_as) const;
    // What stands behind a text that the title block has no room for, with a blank before it; where it stands in full, its heading there
    // and its name in front of it.
    std::string in_full_behind() const;
    std::string in_full() const;
    std::string owner(const std::string& text) const;
    std::string subject(const std::string& text) const;

private:
    Wording w_;
};

}  // namespace shaftcut
