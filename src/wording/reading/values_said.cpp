// Of one value.
#include "reading/said.hpp"
#include "source/bounds_of.hpp"
#include "text.hpp"

namespace shaftcut {
namespace {

std::string in_mm(Length length) { return figure_with_unit(length, Units::mm, Toward::nearest, 3); }

// "closed", "longest when working": of a length that is said without its value.
std::string named(const OutsideBounds& found, const Wording& w)
{
    if (!found.stated.value.empty()) return named(found.stated);
    if (found.range) return w("longest when {range:working|turning|standing}", {{"range", *found.range}});
    return found.kind == Bounded::shortest ? "shortest" : "closed";
}

std::string_view outside(Bounded kind)
{
    switch (kind) {
    case Bounded::closed: return "{what} is {length}, and a closed length is {least} to {greatest}";
    case Bounded::shortest: return "{what} is {length}, and a shortest length is {least} to {greatest}";
    case Bounded::longest: return "{what} is {length}, and a longest length is {least} to {greatest}";
    case Bounded::shoulder: return "{what} is {length}, and a shoulder is {least} to {greatest}";
    case Bounded::spacing: return "{what} is {length}, and the crosses of a wide-angle joint are apart by {least} to {greatest}";
    case Bounded::kerf: return "{what} is {length}, and a blade turns to chips at most {greatest}";
    case Bounded::plus_minus: break;
    }
    return "{what} is {length}, and a length may be off by at most {greatest}";
}

std::string why_outside(Length length, UnitSlip slip, const Wording& w)
{
    switch (slip) {
    case UnitSlip::inches_read_as_millimetres:
        return w("is the unit right? 25.4 times as much, {other}, could be one: so it is where inches are read as millimetres", {{"other", in_mm(fraction_of({254, 10}, length))}});
    case UnitSlip::millimetres_read_as_inches:
        return w("is the unit right? A 25.4th of that, {other}, could be one: so it is where millimetres are read as inches", {{"other", in_mm(fraction_of({10, 254}, length))}});
    case UnitSlip::none: break;
    }
    return w("measure it again");
}

}  // namespace

Said say(const UnreadableValue& found, const Wording& w)
{
    const ParseFault& fault = found.fault;
    const NamedValue what{"what", named(Stated{found.name, fault.text})}, least{"least", fault.least}, most{"most", fault.most};
    switch (fault.why) {
    case NotRead::length: return {w("{what} is not a length", {what}), w("write digits with a decimal point, such as 742, 742.5 mm, 29.25 in or 29-3/16 in")};
    case NotRead::below_zero: return {w("{what} is negative", {what}), w("this length is 0 or more")};
    case NotRead::unknown_unit: return {w("{what} has an unknown unit", {what}), w("write mm or in after the figure, or leave it out")};
    case NotRead::fraction_of_millimetre: return {w("{what} is a fraction of a millimetre", {what}), w("fractions are of inches: add in, or write decimals")};
    case NotRead::over_100_metres: return {w("{what} is over 100 m", {what}), w("check the figure and its unit")};
    case NotRead::angle: return {w("{what} is not an angle", {what}), w("write degrees as a plain number, such as 12 or 12.5")};
    case NotRead::over_180_degrees: return {w("{what} is over 180 degrees", {what}), w("write an angle of 180 or less")};
    case NotRead::fraction: return {w("{what} is not a fraction", {what}), w("write a number above 0 and at most 1, such as 1/2 or 0.5")};
    case NotRead::number: return {w("{what} is not a number from {least} to {most}", {what, least, most}), w("write a plain number, such as 10 or 2.5")};
    case NotRead::number_of_3_decimals:
        return {w("{what} is not a number from {least} to {most} with at most 3 decimals", {what, least, most}), w("write a plain number, such as 10 or 2.5")};
    case NotRead::number_of_6_decimals:
        return {w("{what} is not a number from {least} to {most} with at most 6 decimals", {what, least, most}), w("write a plain number, such as 10 or 2.5")};
    case NotRead::money:
        if (fault.least == 0) return {w("{what} is not an amount of money from 0 to {most} without decimals", {what, most}), w("write digits only, as this currency is counted")};
        return {w("{what} is not an amount of money from 0 to {most} with at most {least} decimals", {what, most, least}), w("write a plain number, such as 12.50, without the currency's sign")};
    case NotRead::whole_number: break;
    }
    return {w("{what} is not a whole number from {least} to {most}", {what, least, most}), w("write digits only")};
}

Said say(const WrongValue& found, const Wording& w)
{
    const NamedValue what{"what", named(found.stated)};
    switch (found.why) {
    case Unfit::no_length: return {w("{what} is nothing", {what}), w("this length is more than 0")};
    case Unfit::no_power: return {w("{what} is nothing", {what}), w("write kilowatts above 0, or leave it out")};
    case Unfit::no_piece: return {w("{what} is no length to cut", {what}), w("write a length above 0")};
    case Unfit::cost: return {w("{what} is not a cost", {what}), w("write a plain number from 0 to 1000000 with at most 6 decimals, or nothing")};
    case Unfit::view_angle: return {w("{what} is not below 90 degrees", {what}), w("write the angle as it is seen, or state the joint's own")};
    case Unfit::order_of_device: return {w("{what} names a device, not a file, on Windows", {what}), w("add a letter, digit, \"_\" or \"-\" before any dot")};
    case Unfit::order_number: return {w("{what} cannot name files", {what}), w("write 1 to 40 letters, digits, \".\", \"_\" or \"-\", not beginning with \".\"")};
    case Unfit::listed_order: return {w("{what} is no order number", {what}), w("write 1 to 40 characters")};
    case Unfit::date: return {w("{what} is no day of the calendar", {what}), w("write YYYY-MM-DD, such as 2026-11-24")};
    case Unfit::profile: return {w("{what} is no profile's name", {what}), w("write 1 to 60 characters, as the catalogue calls the tube")};
    case Unfit::not_ascending: return {w("{what} is not more than what stands before it", {what}), w("write lengths above 0, ascending")};
    case Unfit::pin_hole_before_seat: return {w("{what} is not beyond the seat", {what}), w("measure it, as the seat, from the inner cross")};
    case Unfit::encoding: return {w("the declared encoding is {what}", {what}), w("save the file as UTF-8 and declare that, or nothing")};
    case Unfit::version: return {w("the declared version is {what}", {what}), w("declare version=\"1.0\"")};
    case Unfit::reference: return {w("{what} stands for no character", {what}), w("write &amp; for a plain &")};
    case Unfit::tag_in_value: return {w("a \"<\" stands in the value"), w("write &lt; for it")};
    case Unfit::shortened: return {w("{what} is what a spreadsheet makes of a long number, with digits lost", {what}), w("make the column a text column there and write the number again")};
    case Unfit::error_value: return {w("the cell shows the error {what}", {what}), w("mend its formula, or write the value")};
    case Unfit::formula_without_value: return {w("the cell holds the formula {what} without its value", {what}), w("open the workbook in a spreadsheet program and save it again, or write the value")};
    case Unfit::cell_number: return {w("the cell holds {what}, which is no number or day that can be read", {what}), w("write a number of at most 15 digits that is not below 0, or a day from 1900-03-01")};
    case Unfit::currency: return {w("{what} is no currency", {what}), w("write its three letters by ISO 4217, such as EUR")};
    case Unfit::not_above_spacers: return {w("{what} is no more than its spacers", {what}), w("write what was read over both pieces; they are deducted from it")};
    case Unfit::no_coin: return {w("{what} is no coin", {what}), w("write the smallest coin, above 0, or leave it out")};
    case Unfit::under_no_name: break;
    }
    return {w("{what} stands in a column without a name", {what}), w("name the column in the first line, or empty it")};
}

Said say(const NumberInDoubt& found, const Wording& w)
{
    const NamedValue what{"what", named(found.stated)}, whole{"whole", found.whole};
    if (found.decimals.empty()) return {w("{what} has its digits in groups", {what}), w("write {whole}", {whole})};
    return {w("{what} can be read in two ways", {what}), w("write {whole} or {decimals}, whichever it is", {whole, {"decimals", found.decimals}})};
}

Said say(const DateInDoubt& found, const Wording& w)
{
    return {w("{what} is no day that is clear to everybody", {{"what", named(found.stated)}}), w("write {days}", {{"days", w.either(found.days)}})};
}

Said say(const OutsideBounds& found, const Wording& w)
{
    const Bounds& bounds = bounds_of(found.kind);
    return {w(outside(found.kind), {{"what", named(found, w)}, {"length", in_mm(found.length)}, {"least", in_mm(bounds.least)}, {"greatest", in_mm(bounds.greatest)}}),
            why_outside(found.length, unit_slip(found.length, bounds), w)};
}

Said say(const UnknownWord& found, const Wording& w)
{
    const NamedValue words{"words", w.either(found.words)};
    return {w("{what} is not known", {{"what", named(found.stated)}}),
            found.nearest.empty() ? w("write {words}", {words}) : w("did you mean {nearest}? write {words}", {{"nearest", found.nearest}, words})};
}

Said say(const UnknownName& found, const Wording& w)
{
    const NamedValue which{"which", found.list};
    const std::string wrong = w("{what} is not in {which:the|this} catalogue", {{"what", named(found.stated)}, which});
    if (!found.nearest.empty()) return {wrong, w("did you mean {nearest}?", {{"nearest", quoted(found.nearest)}})};
    if (found.first.empty()) return {wrong, w("{which:the|this} catalogue holds none", {which})};
    std::vector<std::string> first;
    for (const std::string& name : found.first) first.push_back(quoted(name));
    const NamedValue names{"names", w.all_of(first)};
    if (found.more == 0) return {wrong, w("{which:the|this} catalogue holds {names}", {which, names})};
    return {wrong, w("{which:the|this} catalogue holds {names}, and {more} more", {which, names, {"more", found.more}})};
}

Said say(const Empty& found, const Wording& w)
{
    const std::string wrong = w("{name} is empty", {{"name", found.name}});
    switch (found.what) {
    case EmptyOf::whole_numbers: return {wrong, w("write one or more whole numbers, or leave it out")};
    case EmptyOf::name: return {wrong, w("write a name")};
    case EmptyOf::lengths: return {wrong, w("write lengths between its tags, or leave it out")};
    case EmptyOf::series: return {wrong, w("write the name of a series of the catalogue")};
    case EmptyOf::shortest: return {wrong, w("write the shortest length, beside longest_turning")};
    case EmptyOf::longest_turning: return {wrong, w("write the longest length with the PTO turning, beside shortest")};
    case EmptyOf::word: break;
    }
    return {wrong, w("write {words}", {{"words", w.either(found.words)}})};
}

Said say(const TooLong& found, const Wording& w)
{
    const NamedValue name{"name", found.stated.name}, most{"most", found.most};
    switch (found.what) {
    case TextOf::attribute: return {w("{name} has {characters} characters", {name, {"characters", found.characters}}), w("at most {most} fit", {most})};
    case TextOf::column: return {w("{name} is longer than {most} characters", {name, most}), w("write less")};
    case TextOf::label: break;
    }
    return {w("{what} is too long for a label", {{"what", named(found.stated)}}), w("write at most {most} characters", {most})};
}

Said say(const NamedTwice& found, const Wording& w)
{
    return {w("{name} names {word} twice", {{"name", found.stated.name}, {"word", found.stated.value}}), w("name it once")};
}

Said say(const Hidden& found, const Wording& w)
{
    const NamedValue control{"control", is_control(found.point)}, code{"code", code_of(found.point)};
    const bool breaks_line = found.point == '\t' || found.point == '\n' || found.point == '\r';
    const std::string out_with_it = breaks_line ? w("write it on one line, without tabs") : w("take it out: what is read would not be what you see");
    switch (found.where) {
    case HiddenIn::attribute:
        return {w("{attribute} holds the {control:invisible|control} character {code}", {{"attribute", printable(found.attribute)}, control, code}), out_with_it};
    case HiddenIn::text: return {w("the text holds the {control:invisible|control} character {code}", {control, code}), out_with_it};
    case HiddenIn::line:
        return {w("the line holds the {control:invisible|control} character {code}", {control, code}), out_with_it};
    case HiddenIn::file: break;
    }
    return {w("the file holds the {control:invisible|control} character {code}", {control, code}), w("take it out")};
}

}  // namespace shaftcut
