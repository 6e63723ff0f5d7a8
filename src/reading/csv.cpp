#include "shaftcut/reading/csv.hpp"

#include <algorithm>

#include "shaftcut/words/text.hpp"

namespace shaftcut {
namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

struct Line {
    std::string_view text;
    int number = 1;
};

struct Fields {
    std::vector<CsvCell> cells;
    Problems problems;
};

int characters(std::string_view text)
{
    return static_cast<int>(std::count_if(text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

std::vector<Line> lines_of(std::string_view text)
{
    std::vector<Line> lines;
    for (int number = 1; !text.empty(); ++number) {
        const std::size_t end = text.find('\n');
        std::string_view line = text.substr(0, end);
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
        if (!line.empty() && line.back() == '\r') line.remove_suffix(1);
        if (line.find_first_not_of(' ') != std::string_view::npos) lines.push_back({line, number});
    }
    return lines;
}

std::string_view trimmed(std::string_view text)
{
    const std::size_t first = text.find_first_not_of(' ');
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(' ') - first + 1);
}

bool has_control(std::string_view text)
{
    return std::any_of(text.begin(), text.end(), [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7F; });
}

// Splits one line into fields.
class Splitter {
public:
    Splitter(Line line, const std::string& file) : line_(line), file_(file) {}

    Fields run()
    {
        if (has_control(line_.text)) fault(0, "the line holds a control character", "write plain text, fields separated by commas");
        while (fields_.problems.empty()) {
            at_ = std::min(line_.text.find_first_not_of(' ', at_), line_.text.size());
            const bool is_quoted = at_ < line_.text.size() && line_.text[at_] == '"';
            if (is_quoted ? !quoted_field() : !plain_field()) break;
        }
        return std::move(fields_);
    }

private:
    void fault(std::size_t at, std::string wrong, std::string right)
    {
        fields_.problems.push_back({place(at), std::move(wrong), std::move(right)});
    }

    Place place(std::size_t at) const { return {file_, line_.number, 1 + characters(line_.text.substr(0, at))}; }

    // Both return whether another field follows.
    bool plain_field()
    {
        const std::size_t end = std::min(line_.text.find(',', at_), line_.text.size());
        const std::string_view text = trimmed(line_.text.substr(at_, end - at_));
        if (text.find('"') != std::string_view::npos)
            fault(at_ + text.find('"'), "a quote inside a field", "put the whole field in quotes and write \"\" for a quote in it");
        fields_.cells.push_back({std::string(text), place(at_)});
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
        fields_.cells.push_back({std::move(text), place(start)});
        at_ = std::min(line_.text.find_first_not_of(' ', at_ + 1), line_.text.size());
        if (at_ == line_.text.size()) return false;
        if (line_.text[at_] != ',') fault(at_, "text follows a closing quote", "write a comma or end the line there");
        ++at_;
        return true;
    }

    Line line_;
    const std::string& file_;
    std::size_t at_ = 0;
    Fields fields_;
};

std::vector<std::string> names_of(const std::vector<CsvColumn>& columns)
{
    std::vector<std::string> names;
    for (const CsvColumn& column : columns) names.push_back(column.name);
    return names;
}

Problem unknown_column(const CsvCell& cell, const std::vector<std::string>& names)
{
    const std::string nearest = nearest_name(cell.text, names);
    if (cell.text.find_first_of(";\t") != std::string::npos) return {cell.place, quoted(cell.text) + " is one field", "separate the fields by commas"};
    return {cell.place, "unknown column " + quoted(cell.text),
            (nearest.empty() ? "" : "did you mean " + nearest + "? ") + "the columns are " + listed(names, "and")};
}

// What stands in the header.
class Header {
public:
    Header(const Fields& fields, const std::vector<CsvColumn>& columns, const Place& start) : problems(fields.problems), fields_(fields.cells.size())
    {
        if (!problems.empty()) return;
        const std::vector<std::string> names = names_of(columns);
        for (const CsvColumn& column : columns) {
            const auto is_it = [&](const CsvCell& cell) { return cell.text == column.name; };
            const auto first = std::find_if(fields.cells.begin(), fields.cells.end(), is_it);
            if (first == fields.cells.end() && column.required)
                problems.push_back({start, "the column " + column.name + " is missing", "the first line names the columns " + listed(names, "and")});
            if (std::count_if(fields.cells.begin(), fields.cells.end(), is_it) > 1)
                problems.push_back({first->place, "the column " + column.name + " stands there twice", "name each column once"});
            positions_.push_back(first == fields.cells.end() ? std::nullopt : std::optional(static_cast<std::size_t>(first - fields.cells.begin())));
        }
        for (const CsvCell& cell : fields.cells)
            if (std::find(names.begin(), names.end(), cell.text) == names.end()) problems.push_back(unknown_column(cell, names));
    }

    std::size_t fields() const { return fields_; }

    // The cells in the order of the columns asked for.
    std::vector<CsvCell> sorted(const std::vector<CsvCell>& cells) const
    {
        std::vector<CsvCell> row;
        for (const auto& position : positions_) row.push_back(position ? cells[*position] : CsvCell{"", cells.front().place});
        return row;
    }

    Problems problems;

private:
    std::size_t fields_;
    std::vector<std::optional<std::size_t>> positions_;
};

Problems one_problem(Place place, std::string wrong, std::string right)
{
    Problems problems;
    problems.push_back({std::move(place), std::move(wrong), std::move(right)});
    return problems;
}

Problems unreadable(std::string_view text, const std::string& file)
{
    if (text.size() > most_csv_bytes) return one_problem({file, 1, 1}, "the file is larger than 16 MB", "split it");
    if (is_utf8(text)) return {};
    Place place{file, 1, 1};
    for (std::size_t end = text.find('\n'); end != std::string_view::npos && is_utf8(text.substr(0, end)); end = text.find('\n')) {
        text.remove_prefix(end + 1);
        ++place.line;
    }
    return one_problem(place, "the line is not UTF-8 text", "save the file as UTF-8");
}

CsvReading failed(const std::string& file, const Problems& problems)
{
    CsvReading reading{{}, Faults(file)};
    for (const Problem& problem : problems) reading.faults.add({problem.place.line, problem.place.column}, problem.wrong, problem.right);
    return reading;
}

}  // namespace

CsvReading read_sound_lines(std::string_view text, const std::string& file, const std::vector<CsvColumn>& columns)
{
    if (const Problems problems = unreadable(text, file); !problems.empty()) return failed(file, problems);
    if (text.starts_with(byte_order_mark)) text.remove_prefix(byte_order_mark.size());
    const std::vector<Line> lines = lines_of(text);
    if (lines.empty())
        return failed(file, one_problem({file, 1, 1}, "the file is empty", "the first line names the columns " + listed(names_of(columns), "and")));
    const Header header(Splitter(lines[0], file).run(), columns, {file, lines[0].number, 1});
    CsvReading reading = failed(file, header.problems);
    for (std::size_t i = 1; i < lines.size() && header.problems.empty(); ++i) {
        Fields fields = Splitter(lines[i], file).run();
        if (fields.problems.empty() && fields.cells.size() != header.fields())
            fields.problems = one_problem({file, lines[i].number, 1}, "the line has " + std::to_string(fields.cells.size()) + " fields",
                                          "write " + std::to_string(header.fields()) + ", as the first line names");
        if (fields.problems.empty()) reading.rows.push_back(header.sorted(fields.cells));
        for (const Problem& problem : fields.problems) reading.faults.add({problem.place.line, problem.place.column}, problem.wrong, problem.right);
    }
    return reading;
}

std::variant<CsvRows, Problems> read_csv(std::string_view text, const std::string& file, const std::vector<CsvColumn>& columns)
{
    CsvReading reading = read_sound_lines(text, file, columns);
    if (!reading.faults.none()) return reading.faults.listed();
    return std::move(reading.rows);
}

}  // namespace shaftcut
