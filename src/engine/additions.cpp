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
    return map;
}

std::string lines_of(const Learnt& learnt)
{
    std::string lines;
    for (const LearntHeading& heading : learnt.headings) lines += "    <column" + xml_attribute("heading", heading.heading) + xml_attribute("is", heading.is) + "/>\n";
    for (const LearntValue& value : learnt.values)
        lines += "    <value" + xml_attribute("column", value.column) + xml_attribute("text", value.text) + xml_attribute("means", value.means) + "/>\n";
    return lines;
}

std::string list_of(const std::string& name, std::optional<Units> units, const std::string& lines)
{
    return "  <list" + xml_attribute("name", name) + (units ? xml_attribute("units", unit_word(*units)) : "") + ">\n" + lines + "  </list>\n";
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

Addition refused(const FaultList& faults) { return {std::nullopt, problems_of(faults), {}, Units::mm}; }

}  // namespace

ListQuestions Engine::unknown_in(const Source& orders, const Wishes& wishes, const Learnt& learnt) const
{
    const ListMap* const map = find_list_map(*known_, wishes.list);
    UnknownInList unknown = shaftcut::unknown_in(orders, known_->catalogue, with_learnt(map ? *map : ListMap(), learnt));
    ListQuestions asked{{}, {}, words_of<OrderColumn>(), problems_of(unknown.faults)};
    for (UnknownHeading& heading : unknown.headings) asked.headings.push_back({std::move(heading.heading), std::move(heading.first_values), std::move(heading.nearest)});
    for (UnknownMeaning& value : unknown.values) asked.values.push_back({to_word(value.column), std::move(value.text), std::move(value.known), std::move(value.nearest)});
    return asked;
}

Addition Engine::lists_with(const Source& lists, const std::string& name, std::optional<Units> units, const Learnt& learnt) const
{
    const Source before{lists.name, lists.bytes.empty() ? empty_lists() : lists.bytes};
    if (const auto read = read_lists(before, known_->catalogue); !read.value) return refused(read.faults);
    const auto at = list_called(name, parse_xml(before).root.value().children);
    const std::string lines = lines_of(learnt);
    Addition added{with_inserted(before.bytes, at, at ? lines : list_of(name, units, lines)), {}, {}};
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
    for (const std::string_view child : children_in(added.bytes)) lines += "  " + std::string(child) + "\n";
    addition.bytes = with_inserted(catalogue.bytes, std::nullopt, lines);
    const auto after = read_catalogue({catalogue.name, *addition.bytes});
    if (!after.value) return refused(after.faults);
    for (std::size_t i = before.value->series.size(); i < after.value->series.size(); ++i) addition.names.push_back(after.value->series[i].name);
    return addition;
}

}  // namespace shaftcut
