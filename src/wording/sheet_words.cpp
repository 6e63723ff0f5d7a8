#include "sheet_words.hpp"

namespace shaftcut {

std::string SheetWords::order() const { return w_("Order"); }
std::string SheetWords::sheet() const { return w_("Sheet"); }
std::string SheetWords::type() const { return w_("Type"); }
std::string SheetWords::by() const { return w_("By"); }

std::string SheetWords::number(std::size_t sheet, std::size_t of) const { return w_("{sheet} of {of}", {{"sheet", sheet}, {"of", of}}); }
std::string SheetWords::numbered_sheet(std::size_t sheet, std::size_t of) const { return w_("Sheet {sheet} of {of}", {{"sheet", sheet}, {"of", of}}); }
std::string SheetWords::continued_on(std::size_t sheet) const { return w_("continued on sheet {sheet} →", {{"sheet", sheet}}); }
std::string SheetWords::continued(const std::string& heading) const { return w_("{heading}, continued", {{"heading", heading}}); }

std::string SheetWords::with_missing_sign(const std::string& text, const std::string& shown_as) const
{
    return w_("{text} ({sign}: sign missing in the font)", {{"text", text}, {"sign", shown_as}});
}

std::string SheetWords::in_full_behind() const { return w_(" … in full after the checks"); }
std::string SheetWords::in_full() const { return w_("Too long for the title block, in full"); }
std::string SheetWords::owner(const std::string& text) const { return w_("Owner: {owner}", {{"owner", text}}); }
std::string SheetWords::subject(const std::string& text) const { return w_("Subject: {subject}", {{"subject", text}}); }

}  // namespace shaftcut
