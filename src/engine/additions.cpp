// What is added to the configuration's files.
#include <algorithm>
#include <map>

#include "catalogue_reader.hpp"
#include "known.hpp"
#include "lists/list_questions.hpp"
#include "lists/lists_reader.hpp"
#include "reading/said.hpp"
#include "shaftcut/engine/engine.hpp"
#include "xml/insertion.hpp"
#include "xml/xml.hpp"

namespace shaftcut {
namespace {

ListMap with_learnt(ListMap map, const Learnt& learnt)
{
    for (const LearntHeading& heading : learnt.headings) map.headings.push_back({heading.heading, from_word<OrderColumn>(heading.is).value()});
    for (const LearntValue& value : learnt.values) map.values.push_back({from_word<OrderColumn>(value.column).value(), value.text, value.means});
    for (const LearntArticle& article : learnt.articles) map.articles.push_back({article.number, {}});
    if (learnt.units) map.units = learnt.units;
    if (const auto dates = from_word<DateOrder>(learnt.dates)) map.dates = dates;
    return map;
}

// What an article states in this column, as an attribute called so; nothing where it states nothing.
std::string stated(const LearntArticle& article, OrderColumn column, const char* name)
{
    const auto found = std::find_if(article.states.begin(), article.states.end(), [&](const LearntStatement& one) { return one.column == to_word(column); });
    return found == article.states.end() ? "" : xml_attribute(name, found->text);
}

std::string end_of(const LearntArticle& article, End end)
{
    const bool tractor = end == End::tractor;
    const std::string attributes = stated(article, tractor ? OrderColumn::tractor_joint : OrderColumn::implement_joint, "joint") +
                                   stated(article, tractor ? OrderColumn::tractor_connection : OrderColumn::implement_connection, "connection") +
                                   stated(article, tractor ? OrderColumn::tractor_lock : OrderColumn::implement_lock, "lock") +
                                   stated(article, tractor ? OrderColumn::tractor_device : OrderColumn::implement_device, "device");
    return attributes.empty() ? "" : "      <end" + xml_attribute("side", to_word(end)) + attributes + "/>\n";
}

std::string lines_of(const LearntArticle& article)
{
    const std::string closed = stated(article, OrderColumn::closed, "length");
    std::string children = closed.empty() ? "" : "      <closed" + closed + stated(article, OrderColumn::closed_reference, "reference") + "/>\n";
    for (const End end : both_ends) children += end_of(article, end);
    const std::string attributes = xml_attribute("number", article.number) + stated(article, OrderColumn::series, "series") + stated(article, OrderColumn::role, "role") +
                                   stated(article, OrderColumn::speed, "speed") + stated(article, OrderColumn::inner_tube, "inner-tube") + stated(article, OrderColumn::guard, "guard");
    return "    <article" + attributes + (children.empty() ? "/>\n" : ">\n" + children + "    </article>\n");
}

// Lengths of articles with their unit: the file may have another.
Learnt with_units(Learnt learnt, Units units)
{
    for (LearntArticle& article : learnt.articles)
        for (LearntStatement& one : article.states)
            if (one.column == to_word(OrderColumn::closed) && one.text.find_first_of("mi") == std::string::npos) one.text += std::string(" ") + unit_word(units);
    return learnt;
}

std::string lines_of(const Learnt& learnt)
{
    std::string lines;
    for (const LearntHeading& heading : learnt.headings) lines += "    <column" + xml_attribute("heading", heading.heading) + xml_attribute("is", heading.is) + "/>\n";
    for (const LearntValue& value : learnt.values)
        lines += "    <value" + xml_attribute("column", value.column) + xml_attribute("text", value.text) + xml_attribute("means", value.means) + "/>\n";
    for (const LearntArticle& article : learnt.articles) lines += lines_of(article);
    return lines;
}

// What of its own a map says of units and days, as far as it does not say so already.
std::string attributes_of(const ListMap& before, std::optional<Units> units, const std::string& dates)
{
    return (units && !before.units ? xml_attribute("units", unit_word(*units)) : "") + (dates.empty() || before.dates ? "" : xml_attribute("dates", dates));
}

std::string list_of(const std::string& name, const std::string& attributes, const std::string& lines)
{
    return "  <list" + xml_attribute("name", name) + attributes + ">\n" + lines + "  </list>\n";
}

// Its number among the children of the file's element.
std::optional<std::size_t> list_called(const std::string& name, const std::vector<XmlElement>& lists)
{
    const auto has_it = [&](const XmlElement& list) {
        return std::any_of(list.attributes.begin(), list.attributes.end(), [&](const XmlAttribute& attribute) { return attribute.name == "name" && attribute.value == name; });
    };
    const auto found = std::find_if(lists.begin(), lists.end(), has_it);
    return found == lists.end() ? std::nullopt : std::optional(static_cast<std::size_t>(found - lists.begin()));
}

Units units_of(const XmlElement& root)
{
    const auto inches = [](const XmlAttribute& attribute) { return attribute.name == "units" && attribute.value == unit_word(Units::in); };
    return std::any_of(root.attributes.begin(), root.attributes.end(), inches) ? Units::in : Units::mm;
}

std::string empty_lists()
{
    return "<?xml" + xml_attribute("version", "1.0") + xml_attribute("encoding", "UTF-8") + "?>\n<lists" + xml_attribute("units", unit_word(Units::mm)) + ">\n</lists>\n";
}

// A connection of a catalogue: what was added without a fault says the same of one of that name.
bool stands_in(const Catalogue& catalogue, const XmlElement& element)
{
    if (element.name != "connection") return false;
    return std::any_of(element.attributes.begin(), element.attributes.end(), [&](const XmlAttribute& one) { return one.name == "name" && find_connection(catalogue, one.value); });
}

Addition refused(const FaultList& faults) { return {std::nullopt, problems_of(faults), {}, Units::mm}; }

}  // namespace

ListQuestions Engine::unknown_in(const Source& orders, const Wishes& wishes, const Learnt& learnt) const
{
    const ListMap* const map = find_list_map(*known_, wishes.list);
    const ListMap read_by = with_learnt(map ? *map : ListMap(), learnt);
    UnknownInList unknown = shaftcut::unknown_in(orders, known_->catalogue, read_by);
    ListQuestions asked{{}, {}, words_of<OrderColumn>(), problems_of(unknown.faults), unknown.lengths_without_unit && !read_by.units && !wishes.units, std::move(unknown.days_in_doubt),
                        words_of<DateOrder>(), std::move(unknown.articles), {}};
    for (const OrderColumn column : unknown.said_nowhere) asked.article_fields.push_back({to_word(column), taken_by_column(column, known_->catalogue)});
    for (UnknownHeading& heading : unknown.headings) asked.headings.push_back({std::move(heading.heading), std::move(heading.first_values), std::move(heading.nearest)});
    for (UnknownMeaning& value : unknown.values) asked.values.push_back({to_word(value.column), std::move(value.text), std::move(value.known), std::move(value.nearest)});
    return asked;
}

Addition Engine::lists_with(const Source& lists, const std::string& name, std::optional<Units> units, const Learnt& learnt) const
{
    const Source before{lists.name, lists.bytes.empty() ? empty_lists() : lists.bytes};
    const auto maps = read_lists(before, known_->catalogue);
    if (!maps.value) return refused(maps.faults);
    const auto at = list_called(name, parse_xml(before).root.value().children);
    const ListMap own = at ? maps.value->at(*at) : ListMap();
    const std::string lines = lines_of(with_units(learnt, own.units.value_or(learnt.units.value_or(units.value_or(Units::mm)))));
    Addition added{with_inserted(before.bytes, at, at ? lines : list_of(name, attributes_of(own, learnt.units ? learnt.units : units, learnt.dates), lines)), {}, {}};
    // Of a map that is there only what was asked: the call's units are the call's.
    if (at) added.bytes = with_attributes(*added.bytes, *at, attributes_of(own, learnt.units, learnt.dates));
    if (const auto read = read_lists({lists.name, *added.bytes}, known_->catalogue); !read.value) return refused(read.faults);
    return added;
}

Addition Engine::catalogue_with(const Source& catalogue, const Source& added)
{
    const auto before = read_catalogue(catalogue);
    if (!before.value) return refused(before.faults);
    const Units units = units_of(parse_xml(catalogue).root.value());
    Addition addition{std::nullopt, problems_of(faults_of_added(added, *before.value, units)), {}, units};
    if (!addition.problems.empty()) return addition;
    std::string lines;
    const auto texts = children_in(added.bytes);
    const auto elements = parse_xml(added).root.value().children;
    for (std::size_t i = 0; i < texts.size(); ++i)
        if (!stands_in(*before.value, elements.at(i))) lines += "  " + std::string(texts[i]) + "\n";
    addition.bytes = with_inserted(catalogue.bytes, std::nullopt, lines);
    const auto after = read_catalogue({catalogue.name, *addition.bytes});
    if (!after.value) return refused(after.faults);
    for (std::size_t i = before.value->series.size(); i < after.value->series.size(); ++i) addition.names.push_back(after.value->series[i].name);
    return addition;
}

}  // namespace shaftcut
