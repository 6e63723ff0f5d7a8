#include "csv/csv.hpp"

#include <algorithm>
#include <optional>

#include "source/hidden_text.hpp"
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

// Splits one line into fields; what is wrong with it goes to the faults.
class Splitter {
public:
    Splitter(Line line, Faults& faults) : line_(line), faults_(faults) {}

    // Nothing where the line is at fault.
    std::optional<std::vector<CsvCell>> run()
    {
        find_hidden();
        while (sound_) {
            at_ = std::min(line_.text.find_first_not_of(' ', at_), line_.text.size());
            const bool is_quoted = at_ < line_.text.size() && line_.text[at_] == '"';
            if (is_quoted ? !quoted_field() : !plain_field()) break;
            if (cells_.size() == most_csv_fields) fault(0, "the line has more than " + std::to_string(most_csv_fields) + " fields", "write one for each column");
        }
        return sound_ ? std::optional(std::move(cells_)) : std::nullopt;
    }

private:
    void fault(std::size_t at, std::string wrong, std::string right)
    {
        faults_.add(spot(at), std::move(wrong), std::move(right));
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
                const ParseFault wrong = hidden_fault(point);
                fault(at, "the line " + wrong.wrong, point == '\t' ? "separate the fields by commas" : wrong.right);
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
            fault(line_.text.find('"', at_), "a quote inside a field", "put the whole field in quotes and write \"\" for a quote in it");
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
            fault(start, "a quote is not closed on its line", "end the field with a quote");
            return false;
        }
        cells_.push_back({with_plain_blanks(text), spot(start)});
        at_ = std::min(line_.text.find_first_not_of(' ', at_ + 1), line_.text.size());
        if (at_ == line_.text.size()) return false;
        if (line_.text[at_] != ',') fault(at_, "text follows a closing quote", "write a comma or end the line there");
        ++at_;
        return true;
    }

    Line line_;
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
        faults.add(cell.spot, quoted(cell.text) + " is one field", "separate the fields by commas");
        return;
    }
    const std::string nearest = nearest_name(cell.text, names);
    faults.add(cell.spot, "unknown column " + quoted(cell.text), (nearest.empty() ? "" : "did you mean " + nearest + "? ") + "the columns are " + listed(names, "and"));
}

// What stands in the header.
class Header {
public:
    Header(const std::vector<CsvCell>& cells, const std::vector<CsvColumn>& columns, Spot start, Faults& faults) : fields_(cells.size())
    {
        const std::vector<std::string> names = names_of(columns);
        for (const CsvColumn& column : columns) {
            const auto is_it = [&](const CsvCell& cell) { return cell.text == column.name; };
            const auto first = std::find_if(cells.begin(), cells.end(), is_it);
            if (first == cells.end() && column.required)
                faults.add(start, "the column " + column.name + " is missing", "the first line names the columns " + listed(names, "and"));
            if (std::count_if(cells.begin(), cells.end(), is_it) > 1)
                faults.add(first->spot, "the column " + column.name + " stands there twice", "name each column once");
            positions_.push_back(first == cells.end() ? std::nullopt : std::optional(static_cast<std::size_t>(first - cells.begin())));
        }
        for (const CsvCell& cell : cells)
            if (std::find(names.begin(), names.end(), cell.text) == names.end()) add_unknown_column(faults, cell, names);
    }

    std::size_t fields() const { return fields_; }

    // The cells in the order of the columns asked for.
    CsvRow sorted(const std::vector<CsvCell>& cells) const
    {
        CsvRow row;
        for (const auto& position : positions_) row.push_back(position ? cells[*position] : CsvCell{"", cells.front().spot});
        return row;
    }

private:
    std::size_t fields_;
    std::vector<std::optional<std::size_t>> positions_;
};

// Of the file as a whole.
void add_unreadable(Faults& faults, std::string_view text)
{
    if (text.size() > most_csv_bytes) faults.add({1, 1}, "the file is larger than 16 MB", "split it");
    if (!faults.none() || is_utf8(text)) return;
    int line = 1;
    for (std::size_t end = text.find('\n'); end != std::string_view::npos && is_utf8(text.substr(0, end)); end = text.find('\n')) {
        text.remove_prefix(end + 1);
        ++line;
    }
    faults.add({line, 1}, "the line is not UTF-8 text", "save the file as UTF-8");
}

void read_line(const Line& line, const Header& header, Faults& faults, const std::function<void(const CsvRow&, Faults&)>& take)
{
    const auto cells = Splitter(line, faults).run();
    if (!cells) return;
    if (cells->size() == header.fields()) take(header.sorted(*cells), faults);
    else faults.add({line.number, 1}, "the line has " + std::to_string(cells->size()) + " fields", "write " + std::to_string(header.fields()) + ", as the first line names");
}

}  // namespace

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
        faults.add({1, 1}, "the file is empty", "the first line names the columns " + listed(names_of(columns), "and"));
        return faults;
    }
    const auto names = Splitter(*first, faults).run();
    if (!names) return faults;
    const Header header(*names, columns, {first->number, 1}, faults);
    if (lines.more_than(limit.most)) faults.add({1, 1}, "the list holds more than " + std::to_string(limit.most) + " " + limit.what, "split it");
    if (!faults.none()) return faults;
    while (const auto line = lines.next()) read_line(*line, header, faults, take);
    return faults;
}

}  // namespace shaftcut
