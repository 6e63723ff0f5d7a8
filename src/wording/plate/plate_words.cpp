#include "plate/plate_words.hpp"

namespace shaftcut {

std::string plates_bear_no_mark(const Wording& w)
{
    return w("A plate of this program bears no mark of conformity, and with it no declaration is made: whoever puts the shaft on the market answers for both.");
}

namespace plate {

std::string document_title(const std::string& order, const Wording& w) { return w("Plate {order}", {{"order", order}}); }
std::string document_subject(const Wording& w) { return w("What stands on the plate of a new shaft"); }

std::string whose(const BuildPlan& plan, const Wording& w)
{
    return w("Order {order}: {count} {one:plates|plate}, one for each shaft.", {{"order", plan.order}, {"count", plan.count}, {"one", plan.count == 1}});
}

std::string more_sheets(int times, const Wording& w) { return w("Print this sheet {times} times.", {{"times", times}}); }

std::string say(Caption caption, const Wording& w)
{
    switch (caption) {
    case Caption::made_by: return w("Made by");
    case Caption::serial_number: return w("Serial number");
    case Caption::year: return w("Year built");
    case Caption::speed_unknown: return w("Greatest speed");
    case Caption::mass: return w("Mass, kg");
    case Caption::weigh: return w("weigh it");
    case Caption::how_to: return w("Write in serial number, year and mass before the shaft leaves; the serial number also in the assembly work order.");
    case Caption::read_the_book: break;
    }
    return w("Read the instruction book before first use.");
}

std::string series(const std::string& name, const Wording& w) { return w("PTO drive shaft {series}", {{"series", name}}); }
std::string greatest_speed(int per_minute, const Wording& w) { return w("Greatest speed {speed} min⁻¹", {{"speed", per_minute}}); }

std::string rating(std::int64_t watts, std::int64_t newton_metres, const Wording& w)
{
    return w("At most {power}, {torque} N m at that speed", {{"power", w.power(watts)}, {"torque", newton_metres}});
}

}  // namespace plate
}  // namespace shaftcut
