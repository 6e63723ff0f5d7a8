#include "csv/csv.hpp"

#include <algorithm>
#include <array>
#include <optional>

#include "csv/utf16.hpp"
#include "text.hpp"

namespace shaftcut {
namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
constexpr std::string_view separators = ",;\t";
constexpr std::string_view nothing = " ,;\t";  // a line of these is an empty row

struct Line {
    std::string_view text;
    int number = 1;
};

int characters(std::string_view text)
{
    return static_cast<int>(std::count_if(text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

// Takes the next line that is no empty row off the text; nothing at its end.
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
            if (line.find_first_not_of(nothing) != std::string_view::npos) return Line{line, number_};
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
    Splitter(Line line, char separator, std::size_t row, Faults& faults) : line_(line), separator_(separator), row_(row), faults_(faults) {}

    // Nothing where the line is at fault.
    std::optional<std::vector<TableCell>> run()
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
        if (separator_ == '\t') met += U'\t';
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
        const std::size_t end = std::min(line_.text.find(separator_, at_), line_.text.size());
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
        if (line_.text[at_] != separator_) fault(at_, FormFault::text_after_quote);
        ++at_;
        return true;
    }

    Line line_;
    char separator_;
    std::size_t row_;
    Faults& faults_;
    std::size_t at_ = 0;
    std::size_t counted_ = 0;
    int column_ = 1;
    bool sound_ = true;
    std::vector<TableCell> cells_;
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

// "sep=;" is for spreadsheet programs, which write and read it so.
std::optional<char> named_separator(const Line& line)
{
    constexpr std::string_view start = "sep=";
    if (line.text.size() != start.size() + 1 || !line.text.starts_with(start)) return std::nullopt;
    const char separator = line.text.back();
    return separators.find(separator) == std::string_view::npos ? std::nullopt : std::optional(separator);
}

// The one of which most stand in the heading line outside quotes; a comma where there is none.
char separator_in(std::string_view heading)
{
    std::array<std::size_t, separators.size()> counts{};
    bool in_quotes = false;
    for (const char c : heading) {
        if (c == '"') in_quotes = !in_quotes;
        const std::size_t which = separators.find(c);
        if (!in_quotes && which != std::string_view::npos) ++counts[which];
    }
    return separators[static_cast<std::size_t>(std::max_element(counts.begin(), counts.end()) - counts.begin())];
}

void read_lines(Lines lines, const Line& heading, char separator, const std::vector<TableColumn>& columns, const TableLimit& limit, const TakeRow& take, Faults& faults)
{
    TableReader table(columns, separator == ',' ? DecimalMark::point : DecimalMark::comma, take, faults);
    const auto names = Splitter(heading, separator, 0, faults).run();
    if (!names) return;
    table.heading(*names, {heading.number, 1});
    if (lines.more_than(limit.most)) faults.add(Spot{}, TooMany{limit.what, limit.most});
    if (!faults.none()) return;
    while (const auto line = lines.next()) {
        auto cells = Splitter(*line, separator, table.next_row(), faults).run();
        if (cells) table.line(std::move(*cells), {line->number, 1});
        else table.skip_line();
    }
}

Faults read_utf8(std::string_view text, const std::string& file, const std::vector<TableColumn>& columns, const TableLimit& limit, const TakeRow& take)
{
    Faults faults(file);
    add_unreadable(faults, text);
    if (!faults.none()) return faults;
    if (text.starts_with(byte_order_mark)) text.remove_prefix(byte_order_mark.size());
    Lines lines(text);
    auto heading = lines.next();
    std::optional<char> separator = heading ? named_separator(*heading) : std::nullopt;
    if (separator) heading = lines.next();
    if (heading) read_lines(lines, *heading, separator.value_or(separator_in(heading->text)), columns, limit, take, faults);
    else faults.add(Spot{}, NoHeader{names_of(columns)});
    return faults;
}

}  // namespace

Faults read_csv(std::string_view text, const std::string& file, const std::vector<TableColumn>& columns, const TableLimit& limit, const TakeRow& take)
{
    const std::optional<Utf16> order = text.size() <= most_csv_bytes ? utf16_in(text) : std::nullopt;
    if (!order) return read_utf8(text, file, columns, limit, take);
    const auto utf8 = utf8_of(text, *order);
    if (utf8) return read_utf8(*utf8, file, columns, limit, take);
    Faults faults(file);
    faults.add(Spot{}, FormFault::csv_not_utf16);
    return faults;
}

}  // namespace shaftcut
