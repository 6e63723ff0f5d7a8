// How each quantity is rounded on paper: once, and in one direction wherever it is printed, so that no paper has two figures for it and
// none says more than there is.
//
// The direction is the project's own choice, to the side on which a fitter who works by the figure is safe: what comes off up, what is
// kept down. A limit is rounded as what is held against it: then a value that meets its limit never reads as if it did not. What was
// measured stays as it was written. Millimetres to a tenth, inches to 1/16.
// Checked by rounding_test, and by reading every paper of every sample back (figures_test).
#pragma once

#include <string>

#include "shaftcut/words/length.hpp"

namespace shaftcut {

enum class Rounded {
    measured,       // a closed, half, guard or machine's length as it was stated, and what is worked out in its place
    cut,            // what comes off
    kept,           // what is left of a half
    closed_after,   // the new closed length
    overlap,        // of tubes and of guards
    clearance,      // what is left to close, of tubes and of guards
    shortest,       // a fit's, as stated and as read
    longest,        // likewise
    setback,        // how far a tube stands out of its guard: a greatest
    doubt,          // a tolerance as what may be wrong
    allowed,        // a tolerance as what is still good
    at_most,        // the greatest that would serve
    at_least        // the least that would serve
};

constexpr Toward toward_of(Rounded as)
{
    switch (as) {
    case Rounded::cut:
    case Rounded::closed_after:
    case Rounded::longest:
    case Rounded::setback:
    case Rounded::doubt:
    case Rounded::at_least: return Toward::up;
    case Rounded::kept:
    case Rounded::overlap:
    case Rounded::clearance:
    case Rounded::shortest:
    case Rounded::allowed:
    case Rounded::at_most: return Toward::down;
    case Rounded::measured: break;
    }
    return Toward::nearest;
}

// "742", "29-3/16".
std::string figure_of(Rounded as, Length length, Units units, int decimals = 1);
// "742 mm", "29-3/16 in".
std::string figure_of_with_unit(Rounded as, Length length, Units units, int decimals = 1);
// "742 mm", "29-3/16 in (741.3 mm)".
std::string figure_of_with_millimetres(Rounded as, Length length, Units units, int decimals = 1);

// How far below 0 a length is, rounded as the length itself: of an overlap of −3.04 mm, printed as −3.1, "3.1 mm" apart.
std::string size_of_with_millimetres(Rounded as, Length negative, Units units, int decimals = 1);

// The decimals of millimetres that show which of two unlike lengths is the greater: 1 where tenths do, else 3.
int decimals_that_tell(Rounded as, Length one, Length other);

}  // namespace shaftcut
