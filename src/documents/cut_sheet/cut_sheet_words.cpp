// The sheet's title.
#include "cut_sheet/cut_sheet_parts.hpp"
#include "order/verdict_words.hpp"

namespace shaftcut::cut_sheet {

Heading heading_of(const WorkOrder& order, TitleCaption type, const Wording& w)
{
    return {SheetWords(w), order.order, order.owner, say(type, w), subject(order.shaft.number, w), heading_fields(order, w),
            {say(TitleCaption::date, w), order.date}, {say(TitleCaption::approved, w), ""}, "", order.verdict == Verdict::refused ? verdict_words(order, w) : ""};
}

}  // namespace shaftcut::cut_sheet
