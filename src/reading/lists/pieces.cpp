#include "lists/pieces.hpp"

#include "lists/list_reader.hpp"
#include "parse.hpp"
#include "text.hpp"

namespace shaftcut {
namespace {

constexpr std::size_t most_label_characters = 100;
constexpr std::size_t most_profile_characters = 60;

// Reads cells, and collects what is wrong with them.
class Reader {
public:
    Reader(Units units, Faults& faults) : units_(units), faults_(faults) {}

    Length length(const TableCell& cell)
    {
        const Length length = taken(cell, parse_length(cell.text, units_));
        if (length == Length() && !failed_) fault(cell, WrongValue{Unfit::no_piece, {"", cell.text}});
        return length;
    }

    std::int64_t whole(const TableCell& cell, std::int64_t least) { return taken(cell, parse_whole(cell.text, least, most_saw_pieces)); }

    std::int64_t cost(const TableCell& cell)
    {
        const auto millionths = parse_millionths(cell.text, most_saw_cost / cost_unit);
        if (const auto* cost = std::get_if<std::int64_t>(&millionths)) return *cost;
        if (!cell.in_doubt) fault(cell, WrongValue{Unfit::cost, {"", cell.text}});
        return 0;
    }

    std::string label(const TableCell& cell)
    {
        const std::size_t characters = code_points(cell.text).size();
        if (characters > most_label_characters) fault(cell, TooLong{TextOf::label, {"", cell.text}, characters, most_label_characters});
        return cell.text;
    }

    std::string profile(const TableCell& cell)
    {
        const std::size_t characters = code_points(cell.text).size();
        if (characters == 0 || characters > most_profile_characters)
            fault(cell, WrongValue{Unfit::profile, {"", cell.text}});
        return cell.text;
    }

    SawStock bar(const TableCell& length_cell, const TableCell& count, const TableCell& cost_cell)
    {
        SawStock stock;
        stock.length = length(length_cell);
        if (!count.text.empty()) stock.count = whole(count, 0);
        stock.cost = cost_cell.text.empty() ? stock.length.um() * cost_of_a_micrometre : cost(cost_cell);
        return stock;
    }

private:
    void fault(const TableCell& cell, FaultFinding what) { faults_.add(where(cell), std::move(what)); }

    template <class T>
    T taken(const TableCell& cell, const Parsed<T>& parsed)
    {
        const auto* value = std::get_if<T>(&parsed);
        failed_ = value == nullptr;
        if (!failed_) return *value;
        if (!cell.in_doubt) fault(cell, UnreadableValue{"", std::get<ParseFault>(parsed)});
        return T();
    }

    Units units_;
    Faults& faults_;
    bool failed_ = false;
};

const std::vector<TableColumn>& piece_columns()
{
    static const std::vector<TableColumn> columns{{"length", true, Holds::length}, {"count", true, Holds::whole}, {"label", false}};
    return columns;
}

const std::vector<TableColumn>& stock_columns()
{
    static const std::vector<TableColumn> columns{{"length", true, Holds::length}, {"count", false, Holds::whole}, {"cost", false, Holds::number}};
    return columns;
}

const std::vector<TableColumn>& profile_stock_columns()
{
    static const std::vector<TableColumn> columns{{"profile", true}, {"length", true, Holds::length}, {"count", false, Holds::whole}, {"cost", false, Holds::number}};
    return columns;
}

const TableLimit& stock_limit()
{
    static const TableLimit limit{most_stock_lines, ManyOf::bars};
    return limit;
}

// What was read, or all that is wrong with it.
template <class List>
std::variant<List, FaultList> list_or(List list, const Faults& faults)
{
    if (!faults.none()) return faults.listed();
    return list;
}

}  // namespace

std::variant<PieceList, FaultList> read_pieces(std::string_view text, const std::string& file, Units units)
{
    PieceList list;
    Faults faults = read_list(text, file, piece_columns(), {most_piece_lines, ManyOf::piece_lines},
                                   [&](const TableRow& row, Faults& found) {
                                       Reader reader(units, found);
                                       list.pieces.push_back({reader.length(row[0]), reader.whole(row[1], 1), reader.label(row[2])});
                                       list.spots.push_back(row[0].spot);
                                   });
    if (list.pieces.empty() && faults.none()) faults.add(Spot{}, Contradiction::no_piece_in_list);
    return list_or(std::move(list), faults);
}

std::variant<std::vector<SawStock>, FaultList> read_stock(std::string_view text, const std::string& file, Units units)
{
    std::vector<SawStock> stock;
    const Faults faults = read_list(text, file, stock_columns(), stock_limit(),
                                   [&](const TableRow& row, Faults& found) { stock.push_back(Reader(units, found).bar(row[0], row[1], row[2])); });
    return list_or(std::move(stock), faults);
}

std::variant<std::vector<ProfileStock>, FaultList> read_profile_stock(std::string_view text, const std::string& file, Units units)
{
    std::vector<ProfileStock> stock;
    const Faults faults = read_list(text, file, profile_stock_columns(), stock_limit(),
                                   [&](const TableRow& row, Faults& found) {
                                       Reader reader(units, found);
                                       std::string profile = reader.profile(row[0]);
                                       stock.push_back({std::move(profile), reader.bar(row[1], row[2], row[3])});
                                   });
    return list_or(std::move(stock), faults);
}

}  // namespace shaftcut
