#include "shaftcut/reading/pieces.hpp"

#include "shaftcut/words/parse.hpp"
#include "shaftcut/words/text.hpp"

namespace shaftcut {
namespace {

constexpr std::size_t most_label_characters = 100;
constexpr std::size_t most_profile_characters = 60;

// Collects what was read and what was wrong.
class Reader {
public:
    explicit Reader(Units units) : units_(units) {}

    Problems problems;

    Length length(const CsvCell& cell)
    {
        const Length length = taken(cell, parse_length(cell.text, units_));
        if (length == Length() && !failed_) fault(cell, quoted(cell.text) + " is no length to cut", "write a length above 0");
        return length;
    }

    std::int64_t whole(const CsvCell& cell, std::int64_t least) { return taken(cell, parse_whole(cell.text, least, most_saw_pieces)); }

    std::int64_t cost(const CsvCell& cell)
    {
        const auto millionths = parse_millionths(cell.text, most_saw_cost / cost_unit);
        if (const auto* cost = std::get_if<std::int64_t>(&millionths)) return *cost;
        fault(cell, quoted(cell.text) + " is not a cost", "write a plain number from 0 to 1000000 with at most 6 decimals, or nothing");
        return 0;
    }

    std::string label(const CsvCell& cell)
    {
        if (code_points(cell.text).size() > most_label_characters)
            fault(cell, quoted(cell.text) + " is too long for a label", "write at most " + std::to_string(most_label_characters) + " characters");
        return cell.text;
    }

    std::string profile(const CsvCell& cell)
    {
        const std::size_t characters = code_points(cell.text).size();
        if (characters == 0 || characters > most_profile_characters)
            fault(cell, quoted(cell.text) + " is no profile's name", "write 1 to " + std::to_string(most_profile_characters) + " characters, as the catalogue calls the tube");
        return cell.text;
    }

    SawStock bar(const CsvCell& length_cell, const CsvCell& count, const CsvCell& cost_cell)
    {
        SawStock stock;
        stock.length = length(length_cell);
        if (!count.text.empty()) stock.count = whole(count, 0);
        stock.cost = cost_cell.text.empty() ? stock.length.um() * cost_of_a_micrometre : cost(cost_cell);
        return stock;
    }

private:
    void fault(const CsvCell& cell, std::string wrong, std::string right)
    {
        if (problems.size() < most_problems) problems.push_back({cell.place, std::move(wrong), std::move(right)});
    }

    template <class T>
    T taken(const CsvCell& cell, const Parsed<T>& parsed)
    {
        const auto* value = std::get_if<T>(&parsed);
        failed_ = value == nullptr;
        if (!failed_) return *value;
        const ParseFault& parse_fault = std::get<ParseFault>(parsed);
        fault(cell, parse_fault.wrong, parse_fault.right);
        return T();
    }

    Units units_;
    bool failed_ = false;
};

}  // namespace

std::variant<PieceList, Problems> read_pieces(std::string_view text, const std::string& file, Units units)
{
    const auto rows = read_csv(text, file, {{"length", true}, {"count", true}, {"label", false}});
    if (const auto* problems = std::get_if<Problems>(&rows)) return *problems;
    PieceList list;
    Reader reader(units);
    for (const auto& row : std::get<CsvRows>(rows)) {
        list.pieces.push_back({reader.length(row[0]), reader.whole(row[1], 1), reader.label(row[2])});
        list.places.push_back(row[0].place);
    }
    if (!reader.problems.empty()) return std::move(reader.problems);
    return list;
}

std::variant<StockList, Problems> read_stock(std::string_view text, const std::string& file, Units units)
{
    const auto rows = read_csv(text, file, {{"length", true}, {"count", false}, {"cost", false}});
    if (const auto* problems = std::get_if<Problems>(&rows)) return *problems;
    StockList list;
    Reader reader(units);
    for (const auto& row : std::get<CsvRows>(rows)) {
        list.stock.push_back(reader.bar(row[0], row[1], row[2]));
        list.places.push_back(row[0].place);
    }
    if (!reader.problems.empty()) return std::move(reader.problems);
    return list;
}

std::variant<std::vector<ProfileStock>, Problems> read_profile_stock(std::string_view text, const std::string& file, Units units)
{
    const auto rows = read_csv(text, file, {{"profile", true}, {"length", true}, {"count", false}, {"cost", false}});
    if (const auto* problems = std::get_if<Problems>(&rows)) return *problems;
    std::vector<ProfileStock> stock;
    Reader reader(units);
    for (const auto& row : std::get<CsvRows>(rows)) {
        std::string profile = reader.profile(row[0]);
        stock.push_back({std::move(profile), reader.bar(row[1], row[2], row[3])});
    }
    if (!reader.problems.empty()) return std::move(reader.problems);
    return stock;
}

}  // namespace shaftcut
