// A step's name, for a screen that shows one at a time.
#include "order/step_words.hpp"

namespace shaftcut {

std::string step_heading(int number, const Wording& w)
{
    switch (number) {
    case 1: return w("As it came in");
    case 2: return w("Together");
    case 3: return w("Strokes, and part it");
    case 4: return w("Guards off");
    case 5: return w("Mark");
    case 6: return w("Try it on the machine, side by side");
    case 7: return w("Saw");
    case 8: return w("Deburr");
    case 9: return w("Close it dry");
    case 10: return w("Kept lengths");
    case 11: return w("Grease, guards on");
    case 12: return w("Together, two rings");
    case 13: return w("Couple it");
    case 14: return w("Shortest position");
    case 15: return w("Longest positions");
    default: return w("Chains, one round, tag");
    }
}

}  // namespace shaftcut
