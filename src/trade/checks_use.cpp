// What the shaft is used for, and the state it came in.
#include "check_parts.hpp"

namespace shaftcut {

Check check_rating(const CheckInput&)
{
    return not_checked(CheckId::rating, "the power taken at the PTO is not stated");
}

Check check_condition(const CheckInput&)
{
    return not_checked(CheckId::condition, "nothing is said of the shaft as it came in");
}

}  // namespace shaftcut
