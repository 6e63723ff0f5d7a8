// Of elements, attributes and columns, and of a file's form.
#include "reading/said.hpp"
#include "text.hpp"

namespace shaftcut {
namespace {

std::string known_or_nothing(const std::vector<std::string>& known, const Wording& w) { return known.empty() ? w("nothing") : w.all_of(known); }

}  // namespace

Said say(const MissingAttribute& found, const Wording& w)
{
    const NamedValue attribute{"attribute", found.attribute};
    return {w("{element} has no {attribute}", {{"element", found.element}, attribute}), w("add {attribute}=\"...\"", {attribute})};
}

Said say(const MissingElement& found, const Wording& w) { return {w("{element} holds no {child}", {{"element", found.element}, {"child", found.child}}), w("add one")}; }

Said say(const MissingEnd& found, const Wording& w) { return {w("shaft holds no end with side {side}", {{"side", to_word(found.side)}}), w("add one")}; }

Said say(const Unknown& found, const Wording& w)
{
    const NamedValue name{"name", quoted(found.name)}, element{"element", found.element}, known{"known", known_or_nothing(found.known, w)};
    if (found.kind == UnknownKind::attribute) return {w("unknown attribute {name}", {name}), w("{element} takes {known}", {element, known})};
    return {w("unknown element {name}", {name}), w("{element} holds {known}", {element, known})};
}

Said say(const SecondAttribute& found, const Wording& w)
{
    return {w("a second {name}={value}", {{"name", printable(found.stated.name)}, {"value", quoted(found.stated.value)}}),
            w("the first stands in line {line}, column {column}: leave one of them out", {{"line", found.first.line}, {"column", found.first.column}})};
}

Said say(const SecondElement& found, const Wording& w)
{
    return {w("a second {child}", {{"child", found.child}}),
            w("{element} holds one; the first stands in line {line}, column {column}", {{"element", found.element}, {"line", found.first.line}, {"column", found.first.column}})};
}

Said say(const SecondOfWord& found, const Wording& w)
{
    const NamedValue element{"element", found.element}, word{"word", found.word};
    if (found.attribute == "when") return {w("a second {element} when {word}", {element, word}), w("leave one of them out")};
    return {w("a second {element} with {attribute} {word}", {element, {"attribute", found.attribute}, word}), w("leave one of them out")};
}

Said say(const SecondNamed& found, const Wording& w)
{
    const NamedValue name{"name", found.name}, in_quotes{"name", quoted(found.name)};
    switch (found.what) {
    case SecondOf::connection: return {w("a second connection {name}", {in_quotes}), w("give each its own name")};
    case SecondOf::series: return {w("a second series {name}", {in_quotes}), w("give each its own name")};
    case SecondOf::yoke: return {w("a second yoke for {name}", {in_quotes}), w("write one yoke, or one for each kind of joint")};
    case SecondOf::rating: return {w("a second rating at speed {name}", {name}), w("leave one of them out")};
    case SecondOf::part: return {w("a second part for {name} in the same place", {name}), w("leave one of them out, or state where they differ")};
    case SecondOf::list: return {w("a second list {name}", {in_quotes}), w("give each its own name")};
    case SecondOf::heading: return {w("the heading {name} stands there twice", {in_quotes}), w("name each heading once")};
    case SecondOf::value: return {w("the value {name} of this column stands there twice", {in_quotes}), w("leave one of them out")};
    case SecondOf::article: return {w("a second article {name}", {in_quotes}), w("give each its own number")};
    case SecondOf::price: return {w("a second price for {name}", {in_quotes}), w("leave one of them out")};
    case SecondOf::operation: return {w("a second operation {name}", {in_quotes}), w("leave one of them out")};
    case SecondOf::column: break;
    }
    return {w("the column {name} stands there twice", {name}), w("name each column once")};
}

Said say(const SecondOrder& found, const Wording& w)
{
    const NamedValue order{"order", quoted(found.order)}, line{"line", found.line};
    const std::string right = w("give each its own number; until then neither is built");
    if (found.order == found.earlier) return {w("order {order} stands in line {line} too", {order, line}), right};
    return {w("order {order} stands in line {line} as {earlier}, which names the same files on many disks", {order, line, {"earlier", quoted(found.earlier)}}), right};
}

Said say(const Misplaced& found, const Wording& w)
{
    const NamedValue what{"what", quoted(found.found)};
    switch (found.what) {
    case Misplacement::other_root: return {w("the file holds {what}", {what}), w("this file holds {root}", {{"root", found.beside}})};
    case Misplacement::second_root: return {w("a second element {what} stands beside {first}", {what, {"first", quoted(found.beside)}}), w("a file holds one element and all else inside it")};
    case Misplacement::text: break;
    }
    return {w("text {what} in {element}", {what, {"element", found.beside}}), w("all values are written in attributes")};
}

Said say(const TooMany& found, const Wording& w)
{
    const NamedValue most{"most", found.most};
    switch (found.what) {
    case ManyOf::fits: return {w("more than {most} fits", {most}), w("leave out those that others outdo, or divide the file")};
    case ManyOf::other_tractors: return {w("for holds more than {most} other-tractors", {most}), w("name the rest in one of them")};
    case ManyOf::crosses: return {w("end holds more than {most} crosses", {most}), w("no joint has more; a cross that is read again has a second cap or span")};
    case ManyOf::tubes: return {w("tubes holds more than {most} tubes", {most}), w("a tube that is read again has a second width or wall")};
    case ManyOf::readings: return {w("more than {most} readings of one figure, the {element}", {most, {"element", found.name}}), w("keep {most} of them", {most})};
    case ManyOf::orders: return {w("the list holds more than {most} orders", {most}), w("split it")};
    case ManyOf::bars: return {w("the list holds more than {most} bars", {most}), w("split it")};
    case ManyOf::piece_lines: return {w("the list holds more than {most} lines of pieces", {most}), w("split it")};
    case ManyOf::lines: return {w("the list holds more than {most} lines", {most}), w("split it")};
    case ManyOf::fields: return {w("the line has more than {most} fields", {most}), w("write one for each column")};
    case ManyOf::marks: return {w("the file holds more than {most} elements and attributes", {most}), w("divide it")};
    case ManyOf::nested: return {w("{element} is nested more than {most} deep", {{"element", quoted(found.name)}, most}), w("close the elements around it first")};
    case ManyOf::faults: break;
    }
    return {w("{most} more faults are not listed", {most}), w("mend those above first")};
}

Said say(const UnknownColumn& found, const Wording& w)
{
    const NamedValue columns{"columns", w.all_of(found.columns)};
    return {w("unknown column {name}", {{"name", quoted(found.name)}}),
            found.nearest.empty() ? w("the columns are {columns}", {columns}) : w("did you mean {nearest}? the columns are {columns}", {{"nearest", found.nearest}, columns})};
}

Said say(const MissingColumns& found, const Wording& w)
{
    const NamedValue names{"names", w.all_of(found.names)};
    return {found.names.size() == 1 ? w("the column {names} is missing", {names}) : w("the columns {names} are missing", {names}), w("the first line names the columns {columns}", {{"columns", w.all_of(found.columns)}})};
}

Said say(const OtherUnits& found, const Wording& w)
{
    const NamedValue units{"units", found.units};
    return {w("this file is in other units than the catalogue, which is in {units:mm|in}", {units}), w("write units=\"{units:mm|in}\", and behind each length in the other unit that unit", {units})};
}

Said say(const UnknownArticle& found, const Wording& w)
{
    const NamedValue map{"map", quoted(found.map)};
    return {w("{what} is no article of the list map {map}", {{"what", named(found.stated)}, map}),
            found.nearest.empty() ? w("add it to that map in lists.xml") : w("did you mean {nearest}? else add it to that map in lists.xml", {{"nearest", quoted(found.nearest)}})};
}

Said say(const OtherThanArticle& found, const Wording& w)
{
    return {w("{what}, but article {article} is {states}", {{"what", named(found.stated)}, {"article", quoted(found.article)}, {"states", quoted(found.states)}}),
            w("leave one of them out, or write the same")};
}

Said say(const NoHeader& found, const Wording& w) { return {w("the file is empty"), w("the first line names the columns {columns}", {{"columns", w.all_of(found.columns)}})}; }

Said say(const FieldCount& found, const Wording& w)
{
    return {w("the line has {fields} fields", {{"fields", found.fields}}), w("write {fields}, as the first line names", {{"fields", found.of_header}})};
}

Said say(FormFault fault, const Wording& w)
{
    switch (fault) {
    case FormFault::xml_empty: return {w("the file is empty"), w("it holds one XML element")};
    case FormFault::xml_too_large: return {w("the file is larger than 16 MB"), w("divide it")};
    case FormFault::no_element: return {w("the file holds no element"), w("it holds one XML element")};
    case FormFault::not_closed: return {w("this is not well-formed XML: an element is not closed where it must be"), w("close every element, the inner ones first")};
    case FormFault::broken_attribute: return {w("this is not well-formed XML: an attribute is broken here"), w("write name=\"value\" with a blank before it")};
    case FormFault::broken_instruction: return {w("this is not well-formed XML: an instruction is broken or stands where it must not"), w("leave it out")};
    case FormFault::endless_comment: return {w("this is not well-formed XML: a comment does not end"), w("end it with -->")};
    case FormFault::document_type: return {w("a document type stands here"), w("leave it out")};
    case FormFault::broken: return {w("this is not well-formed XML: the element or text here cannot be read"), w("compare it with the example in the manual")};
    case FormFault::declaration: return {w("an XML declaration stands here"), w("it is the very first thing in a file, or left out")};
    case FormFault::text_outside: return {w("text stands outside the file's element"), w("take it out")};
    case FormFault::utf16: return {w("the file is in UTF-16"), w("save it as UTF-8")};
    case FormFault::nul: return {w("the file holds a NUL byte"), w("save it as XML text in UTF-8")};
    case FormFault::xml_not_utf8: return {w("the file is not UTF-8 text"), w("save it as UTF-8")};
    case FormFault::csv_too_large: return {w("the file is larger than 16 MB"), w("split it")};
    case FormFault::csv_not_utf8: return {w("the line is not UTF-8 text"), w("save the file as UTF-8")};
    case FormFault::csv_not_utf16: return {w("the file breaks off, or is no text in UTF-16"), w("save it as UTF-8")};
    case FormFault::quote_inside: return {w("a quote inside a field"), w("put the whole field in quotes and write \"\" for a quote in it")};
    case FormFault::quote_open: return {w("a quote is not closed on its line"), w("end the field with a quote")};
    case FormFault::no_workbook: return {w("the file is no sound .xlsx workbook"), w("save it as .xlsx again, or as CSV")};
    case FormFault::workbook_locked: return {w("the workbook needs a password"), w("save it without one")};
    case FormFault::workbook_too_large: return {w("the workbook is larger than 16 MB, as it is or unpacked"), w("split it, or save its first sheet alone")};
    case FormFault::text_after_quote: break;
    }
    return {w("text follows a closing quote"), w("write what separates the fields, or end the line there")};
}

}  // namespace shaftcut
