#include "csv/csv.hpp"

#include <algorithm>
#include <optional>

#include "text.hpp"

namespace shaftcut {
namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

struct Line {
    std::string_view text;
    int number = 1;
};

int characters(std::string_view text)
{
    return static_cast<int>(std::count_if(text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

// Takes the next line that is not blank off the text; nothing at its end.
class Lines {
public:
    explicit Lines(std::string_view text) : text_(text) {}

    std::optional<Line> next()
    {
        while (!text_.empty()) {
            const std::size_t end = text_.find('\n');
            std::string_view line = text_.substr(0, end);
            text_.remove_prefix(end == std::string_view::npos ? text_.size() : end + 1);
            if (!line.empty() && line.back() == '\r') line.remove_suffix(1);
            ++number_;
            if (line.find_first_not_of(' ') != std::string_view::npos) return Line{line, number_};
        }
        return std::nullopt;
    }

    // Whether more than `most` are left.
    bool more_than(std::size_t most) const
    {
        Lines rest = *this;
        for (std::size_t count = 0; count <= most; ++count)
            if (!rest.next()) return false;
        return true;
    }

private:
    std::string_view text_;
    int number_ = 0;
};

std::string_view trimmed(std::string_view text)
{
    const std::size_t first = text.find_first_not_of(' ');
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(' ') - first + 1);
}

// "header", "row[3]".
std::string path_of_row(std::size_t row) { return row == 0 ? "header" : "row[" + std::to_string(row) + "]"; }

// Splits one line into fields; what is wrong with it goes to the faults.
class Splitter {
public:
    Splitter(Line line, std::size_t row, Faults& faults) : line_(line), row_(row), faults_(faults) {}

    // Nothing where the line is at fault.
    std::optional<std::vector<CsvCell>> run()
    {
        find_hidden();
        while (sound_) {
            at_ = std::min(line_.text.find_first_not_of(' ', at_), line_.text.size());
            const bool is_quoted = at_ < line_.text.size() && line_.text[at_] == '"';
            if (is_quoted ? !quoted_field() : !plain_field()) break;
            if (cells_.size() == most_csv_fields) fault(0, TooMany{ManyOf::fields, most_csv_fields});
        }
        return sound_ ? std::optional(std::move(cells_)) : std::nullopt;
    }

private:
    void fault(std::size_t at, FaultFinding what)
    {
        faults_.add({spot(at), path_of_row(row_)}, std::move(what));
        sound_ = false;
    }

    // Each such character once, where it stands first.
    void find_hidden()
    {
        if (!first_hidden(line_.text)) return;
        std::u32string met = U"\u00AD";  // a soft hyphen is left out of its field
        std::size_t at = 0;
        for (const char32_t point : code_points(line_.text)) {
            if (is_hidden(point) && met.find(point) == std::u32string::npos) {
                fault(at, Hidden{HiddenIn::line, "", point});
                met += point;
            }
            at += utf8(point).size();
        }
    }

    // Counted on from the place that was asked for last: a line may be long and have many fields.
    Spot spot(std::size_t at)
    {
        if (at < counted_) counted_ = 0, column_ = 1;
        column_ += characters(line_.text.substr(counted_, at - counted_));
        counted_ = at;
        return {line_.number, column_};
    }

    // Both return whether another field follows.
    bool plain_field()
    {
        const std::size_t end = std::min(line_.text.find(',', at_), line_.text.size());
        const std::string plain = with_plain_blanks(line_.text.substr(at_, end - at_));
        const std::string_view text = trimmed(plain);
        cells_.push_back({std::string(text), spot(at_)});
        if (text.find('"') != std::string_view::npos)
            fault(line_.text.find('"', at_), FormFault::quote_inside);
        at_ = end + 1;
        return end < line_.text.size();
    }

    bool quoted_field()
    {
        const std::size_t start = at_++;
        std::string text;
        for (; at_ < line_.text.size(); ++at_) {
            if (line_.text[at_] != '"') text += line_.text[at_];
            else if (line_.text.substr(at_, 2) == "\"\"") text += line_.text[at_++];
            else break;
        }
        if (at_ >= line_.text.size()) {
            fault(start, FormFault::quote_open);
            return false;
        }
        cells_.push_back({with_plain_blanks(text), spot(start)});
        at_ = std::min(line_.text.find_first_not_of(' ', at_ + 1), line_.text.size());
        if (at_ == line_.text.size()) return false;
        if (line_.text[at_] != ',') fault(at_, FormFault::text_after_quote);
        ++at_;
        return true;
    }

    Line line_;
    std::size_t row_;
    Faults& faults_;
    std::size_t at_ = 0;
    std::size_t counted_ = 0;
    int column_ = 1;
    bool sound_ = true;
    std::vector<CsvCell> cells_;
};

std::vector<std::string> names_of(const std::vector<CsvColumn>& columns)
{
    std::vector<std::string> names;
    for (const CsvColumn& column : columns) names.push_back(column.name);
    return names;
}

void add_unknown_column(Faults& faults, const CsvCell& cell, const std::vector<std::string>& names)
{
    if (cell.text.find_first_of(";\t") != std::string::npos) {
        faults.add({cell.spot, path_of_row(0)}, WrongValue{Unfit::no_commas, {"", cell.text}});
        return;
    }
    faults.add({cell.spot, path_of_row(0)}, UnknownColumn{cell.text, nearest_name(cell.text, names), names});
}

// What stands in the header.
class Header {
public:
    Header(const std::vector<CsvCell>& cells, const std::vector<CsvColumn>& columns, Spot start, Faults& faults) : columns_(columns), fields_(cells.size())
    {
        const std::vector<std::string> names = names_of(columns);
        for (const CsvColumn& column : columns) {
            const auto is_it = [&](const CsvCell& cell) { return cell.text == column.name; };
            const auto first = std::find_if(cells.begin(), cells.end(), is_it);
            if (first == cells.end() && column.required)
                faults.add({start, path_of_row(0)}, MissingColumn{column.name, names});
            if (std::count_if(cells.begin(), cells.end(), is_it) > 1)
                faults.add({first->spot, path_of_row(0)}, SecondNamed{SecondOf::column, column.name});
            positions_.push_back(first == cells.end() ? std::nullopt : std::optional(static_cast<std::size_t>(first - cells.begin())));
        }
        for (const CsvCell& cell : cells)
            if (std::find(names.begin(), names.end(), cell.text) == names.end()) add_unknown_column(faults, cell, names);
    }

    std::size_t fields() const { return fields_; }

    // The cells in the order of the columns asked for.
    CsvRow sorted(const std::vector<CsvCell>& cells, std::size_t number) const
    {
        CsvRow row;
        for (std::size_t i = 0; i < positions_.size(); ++i) {
            row.push_back(positions_[i] ? cells[*positions_[i]] : CsvCell{"", cells.front().spot});
            row.back().row = number;
            row.back().column = columns_[i].name;
        }
        return row;
    }

private:
    const std::vector<CsvColumn>& columns_;
    std::size_t fields_;
    std::vector<std::optional<std::size_t>> positions_;
};

// Of the file as a whole.
void add_unreadable(Faults& faults, std::string_view text)
{
    if (text.size() > most_csv_bytes) faults.add(Spot{}, FormFault::csv_too_large);
    if (!faults.none() || is_utf8(text)) return;
    int line = 1;
    for (std::size_t end = text.find('\n'); end != std::string_view::npos && is_utf8(text.substr(0, end)); end = text.find('\n')) {
        text.remove_prefix(end + 1);
        ++line;
    }
    faults.add(Spot{line, 1}, FormFault::csv_not_utf8);
}

void read_line(const Line& line, std::size_t row, const Header& header, Faults& faults, const std::function<void(const CsvRow&, Faults&)>& take)
{
    const auto cells = Splitter(line, row, faults).run();
    if (!cells) return;
    if (cells->size() == header.fields()) take(header.sorted(*cells, row), faults);
    else faults.add({{line.number, 1}, path_of_row(row)}, FieldCount{cells->size(), header.fields()});
}

}  // namespace

std::string path_of_cell(std::size_t row, std::string_view column) { return path_of_row(row) + "@" + std::string(column); }

Whereabouts where(const CsvCell& cell) { return {cell.spot, path_of_cell(cell.row, cell.column)}; }

Faults read_csv(std::string_view text, const std::string& file, const std::vector<CsvColumn>& columns, const CsvLimit& limit,
                const std::function<void(const CsvRow&, Faults&)>& take)
{
    Faults faults(file);
    add_unreadable(faults, text);
    if (!faults.none()) return faults;
    if (text.starts_with(byte_order_mark)) text.remove_prefix(byte_order_mark.size());
    Lines lines(text);
    const auto first = lines.next();
    if (!first) {
        faults.add(Spot{}, NoHeader{names_of(columns)});
        return faults;
    }
    const auto names = Splitter(*first, 0, faults).run();
    if (!names) return faults;
    const Header header(*names, columns, {first->number, 1}, faults);
    if (lines.more_than(limit.most)) faults.add(Spot{}, TooMany{limit.what, limit.most});
    if (!faults.none()) return faults;
    std::size_t row = 0;
    while (const auto line = lines.next()) read_line(*line, ++row, header, faults, take);
    return faults;
}

}  // namespace shaftcut
