#include "lists/price_list.hpp"

#include "lists/list_reader.hpp"
#include "parse.hpp"
#include "prices_reader.hpp"
#include "text.hpp"

namespace shaftcut {
namespace {

// A line of prices.csv.
struct ListedPrice {
    std::string part;
    bool per_metre = false;
    Price price;
};

class LineReader {
public:
    LineReader(const TableRow& row, const Currency& currency, Faults& faults) : row_(row), currency_(currency), faults_(faults) {}

    ListedPrice read()
    {
        ListedPrice line;
        line.part = name();
        line.per_metre = !row_[2].text.empty();
        if (line.per_metre != row_[1].text.empty()) fault(row_[1], Contradiction::column_price);
        else line.price.each = taken(row_[line.per_metre ? 2 : 1], parse_money(row_[line.per_metre ? 2 : 1].text, currency_));
        if (!row_[3].text.empty()) line.price.lead_days = static_cast<int>(taken(row_[3], parse_whole(row_[3].text, 0, most_lead_days)));
        return line;
    }

private:
    std::string name()
    {
        const std::string& text = row_[0].text;
        const std::size_t characters = code_points(text).size();
        if (text.empty()) fault(row_[0], Empty{EmptyOf::name, "part"});
        if (characters > most_text_characters) fault(row_[0], TooLong{TextOf::column, {"part", text}, characters, most_text_characters});
        return text;
    }

    void fault(const TableCell& cell, FaultFinding what)
    {
        if (!cell.in_doubt) faults_.add(where(cell), std::move(what));
    }

    template <class T>
    T taken(const TableCell& cell, const Parsed<T>& parsed)
    {
        if (const auto* value = std::get_if<T>(&parsed)) return *value;
        fault(cell, UnreadableValue{std::string(cell.column), std::get<ParseFault>(parsed)});
        return T();
    }

    const TableRow& row_;
    const Currency& currency_;
    Faults& faults_;
};

const std::vector<TableColumn>& price_columns()
{
    static const std::vector<TableColumn> columns{{"part", true}, {"each", false, Holds::number}, {"per_metre", false, Holds::number}, {"lead_days", false, Holds::whole}};
    return columns;
}

}  // namespace

FaultList add_price_list(const Source& source, Prices& prices)
{
    std::map<std::string, Price> parts, profiles;
    const Faults faults = read_list(source.bytes, source.name, price_columns(), {most_price_lines, ManyOf::lines}, [&](const TableRow& row, Faults& found) {
        const ListedPrice line = LineReader(row, prices.currency, found).read();
        if (!(line.per_metre ? profiles : parts).emplace(line.part, line.price).second && !line.part.empty()) found.add(where(row[0]), SecondNamed{SecondOf::price, line.part});
    });
    if (!faults.none()) return faults.listed();
    prices.parts.merge(parts);
    prices.profiles.merge(profiles);
    return {};
}

}  // namespace shaftcut
