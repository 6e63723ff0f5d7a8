#include "workbook_faults.hpp"

#include "text.hpp"

namespace shaftcut {

std::string say(const WorkbookFault& fault, const Wording& w)
{
    using At = WorkbookFault::At;
    switch (fault.at) {
    case At::start: return w("the workbook could not be started");
    case At::name: return w("the workbook cannot have the name {name}", {{"name", quoted(fault.what_of)}});
    case At::sheet: return w("the workbook could not be written (sheet {sheet})", {{"sheet", fault.what_of}});
    case At::chart: return w("the workbook could not be written (chart)");
    case At::series: return w("the workbook could not be written (series {series})", {{"series", fault.what_of}});
    case At::writing: return w("the workbook could not be written: {fault}", {{"fault", fault.what_of}});
    case At::part: return w("the workbook could not be written: no room among the temporary files for {part}", {{"part", fault.what_of}});
    case At::file: return w("the workbook could not be written: no room among the temporary files");
    case At::folder: break;
    }
    return w("no temporary folder could be made for the workbook");
}

}  // namespace shaftcut
