// What is confirmed before anything is sawn.
#include "cut_sheet/front_words.hpp"

namespace shaftcut::cut_sheet {

std::string confirm_outside(Verdict verdict, const Wording& w)
{
    // Of what is neither measured nor right: nothing is done to the shaft by this sheet.
    return verdict == Verdict::cut ? w("Outside its ±, or a no: nothing is sawn. The figures go back for a new sheet.")
                                   : w("Outside its ±, or a no: it is not fitted. The figures go back for a new sheet.");
}

}  // namespace shaftcut::cut_sheet
