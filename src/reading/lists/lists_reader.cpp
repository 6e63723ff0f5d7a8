#include "lists/lists_reader.hpp"

#include <algorithm>
#include <set>
#include <tuple>

#include "shaftcut/trade/data/build_order.hpp"
#include "xml/each_once.hpp"
#include "xml/element.hpp"

namespace shaftcut {
namespace {

struct Known {
    KnownNames series, connections;
};

// What a value may belong to: a column of words or of names.
bool takes_values(OrderColumn column)
{
    const bool of_names = column == OrderColumn::series || column == OrderColumn::tractor_connection || column == OrderColumn::implement_connection;
    return of_names || !words_of_column(column).empty();
}

std::vector<std::string> columns_with_values()
{
    std::vector<std::string> names;
    for (const std::string& word : words_of<OrderColumn>())
        if (takes_values(*from_word<OrderColumn>(word))) names.push_back(word);
    return names;
}

class MapReader {
public:
    MapReader(Element& element, const Known& known) : element_(element), known_(known) {}

    ListMap read(std::set<std::string>& met)
    {
        const Attribute name = element_.required("name");
        map_.name = name.name().value_or("");
        if (!map_.name.empty() && !met.insert(map_.name).second) name.fault(SecondNamed{SecondOf::list, map_.name});
        map_.units = element_.optional("units").word<Units>();
        map_.dates = element_.optional("dates").word<DateOrder>();
        element_.each("column", [&](Element& child) { read_column(child); });
        element_.each("value", [&](Element& child) { read_value(child); });
        element_.each("article", [&](Element& child) { read_article(child); });
        return std::move(map_);
    }

private:
    // The text, or nothing where it is missing, wrong, or was met before with this `key` in front.
    std::optional<std::string> take(const Attribute& attribute, SecondOf what, const std::string& key = {})
    {
        auto text = attribute.stated_text();
        if (!text || met_.insert({what, key, *text}).second) return text;
        attribute.fault(SecondNamed{what, *text});
        return std::nullopt;
    }

    void read_column(Element& child)
    {
        const auto heading = take(child.required("heading"), SecondOf::heading);
        const auto is = child.required("is").word<OrderColumn>();
        if (heading && is) map_.headings.push_back({*heading, *is});
    }

    void read_value(Element& child)
    {
        const Attribute stated = child.required("column");
        const Attribute text = child.required("text"), means = child.required("means");
        auto column = stated.word<OrderColumn>();
        if (column && !takes_values(*column)) {
            stated.fault(UnknownWord{{stated.called(), stated.value()}, columns_with_values()});
            column.reset();
        }
        const auto found = take(text, SecondOf::value, column ? to_word(*column) : stated.given() ? stated.value() : "");
        const auto meant = column ? value_of(*column, means) : means.stated_text();
        if (column && found && meant) map_.values.push_back({*column, *found, *meant});
    }

    std::optional<std::string> value_of(OrderColumn column, const Attribute& means) const
    {
        if (column == OrderColumn::series) return means.one_of(known_.series);
        const std::vector<std::string> words = words_of_column(column);
        if (words.empty()) return means.one_of(known_.connections);
        if (!means.given() || std::find(words.begin(), words.end(), means.value()) != words.end()) return means.given() ? std::optional(means.value()) : std::nullopt;
        means.fault(UnknownWord{{means.called(), means.value()}, words});
        return std::nullopt;
    }

    void read_article(Element& child)
    {
        Article article;
        const auto number = take(child.required("number"), SecondOf::article);
        state(article, OrderColumn::series, child.optional("series").one_of(known_.series));
        state(article, OrderColumn::role, child.optional("role").word<Role>());
        const Attribute speed = child.optional("speed");
        if (speed.whole(1, most_speed)) article.states[OrderColumn::speed] = speed.value();
        state(article, OrderColumn::inner_tube, child.optional("inner-tube").word<End>());
        state(article, OrderColumn::guard, child.optional("guard").word<Guarded>());
        child.at_most_one("closed", [&](Element& closed) { read_closed(closed, article); });
        EachOnce<End> sides;
        child.each("end", [&](Element& end) { read_end(end, sides, article); });
        if (!number) return;
        article.number = *number;
        map_.articles.push_back(std::move(article));
    }

    // With its unit: a list may have another.
    void read_closed(Element& closed, Article& article) const
    {
        const Attribute length = closed.required("length");
        const bool has_unit = length.given() && length.value().find_first_of("mi") != std::string::npos;
        if (length.length_within(Bounded::closed)) article.states[OrderColumn::closed] = has_unit ? length.value() : length.value() + " " + to_word(closed.units());
        state(article, OrderColumn::closed_reference, closed.optional("reference").word<Reference>());
    }

    void read_end(Element& end, EachOnce<End>& sides, Article& article) const
    {
        const auto side = sides.take(end.required("side"), "end");
        const bool at_tractor = side != End::implement;
        Article read;
        state(read, at_tractor ? OrderColumn::tractor_joint : OrderColumn::implement_joint, end.optional("joint").word<JointKind>());
        state(read, at_tractor ? OrderColumn::tractor_connection : OrderColumn::implement_connection, end.optional("connection").one_of(known_.connections));
        state(read, at_tractor ? OrderColumn::tractor_lock : OrderColumn::implement_lock, end.optional("lock").word<Lock>());
        state(read, at_tractor ? OrderColumn::tractor_device : OrderColumn::implement_device, end.optional("device").word<Device>());
        if (side) article.states.merge(read.states);
    }

    template <class E>
    static void state(Article& article, OrderColumn column, const std::optional<E>& word)
    {
        if constexpr (std::is_enum_v<E>) {
            if (word) article.states[column] = to_word(*word);
        } else if (word) article.states[column] = *word;
    }

    Element& element_;
    const Known& known_;
    ListMap map_;
    std::set<std::tuple<SecondOf, std::string, std::string>> met_;
};

}  // namespace

Read<std::vector<ListMap>> read_lists(const Source& source, const Catalogue& catalogue)
{
    Read<std::vector<ListMap>> read;
    std::vector<ListMap> maps;
    const Known known{names_in(catalogue.series, NamesOf::the_catalogue), names_in(catalogue.connections, NamesOf::the_catalogue)};
    std::set<std::string> met;
    read.faults = read_document(source, "lists", [&](Element& element) {
        element.each("list", [&](Element& list) { maps.push_back(MapReader(list, known).read(met)); });
    });
    if (read.faults.empty()) read.value = std::move(maps);
    return read;
}

}  // namespace shaftcut
