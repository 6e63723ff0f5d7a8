#include "tablets.hpp"

#include <algorithm>
#include <charconv>
#include <limits>

#include "day.hpp"
#include "secrets.hpp"

namespace shaftcut {
namespace {

constexpr std::string_view first_line = "shaftcut-bench-tablets-1";
constexpr std::int64_t most_seconds = 253'402'300'799;  // the end of the year 9999

std::vector<std::string_view> split(std::string_view text, char at)
{
    std::vector<std::string_view> parts;
    for (std::size_t begin = 0; begin <= text.size();) {
        const std::size_t end = std::min(text.find(at, begin), text.size());
        parts.push_back(text.substr(begin, end - begin));
        begin = end + 1;
    }
    return parts;
}

bool is_hash(std::string_view text) { return text.size() == 64 && text.find_first_not_of("0123456789abcdef") == std::string_view::npos; }

// The words' strict reader of whole numbers is for those of files, up to a thousand millions: seconds are more.
template <class Number>
std::optional<Number> whole(std::string_view text, Number least, Number most)
{
    Number value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size() || value < least || value > most) return std::nullopt;
    return value;
}

std::optional<Tablet> read_tablet(std::string_view line)
{
    const auto words = split(line, ' ');
    if (words.size() != 4 || !is_hash(words[1])) return std::nullopt;
    const auto number = whole<int>(words[0], 1, std::numeric_limits<int>::max() - 1);
    const auto paired = whole<std::int64_t>(words[2], 0, most_seconds);
    if (!number || !paired) return std::nullopt;
    return Tablet{*number, std::string(words[1]), *paired, std::string(words[3])};
}

bool is_paired(const Tablet& tablet, std::int64_t now) { return now - tablet.paired < paired_for_seconds; }

}  // namespace

std::string tablets_text(const std::vector<Tablet>& tablets)
{
    std::string text = std::string(first_line) + "\n";
    for (const Tablet& tablet : tablets) text += std::to_string(tablet.number) + " " + tablet.token_hash + " " + std::to_string(tablet.paired) + " " + tablet.client + "\n";
    return text;
}

std::vector<Tablet> read_tablets(std::string_view text)
{
    const auto lines = split(text, '\n');
    std::vector<Tablet> tablets;
    if (lines.front() != first_line) return tablets;
    for (const std::string_view line : lines)
        if (auto tablet = read_tablet(line)) tablets.push_back(std::move(*tablet));
    return tablets;
}

std::optional<Tablet> tablet_of(const std::vector<Tablet>& tablets, std::string_view token, std::int64_t now)
{
    const std::string hash = sha256(token);
    std::optional<Tablet> found;
    for (const Tablet& tablet : tablets)
        if (same_secret(tablet.token_hash, hash) && is_paired(tablet, now)) found = tablet;
    return found;
}

std::vector<Tablet> with_tablet(std::vector<Tablet> tablets, std::string token_hash, std::int64_t now, const std::string& client)
{
    int last = 0;
    for (const Tablet& tablet : tablets) last = std::max(last, tablet.number);
    std::erase_if(tablets, [&](const Tablet& tablet) { return !is_paired(tablet, now); });
    tablets.push_back({last + 1, std::move(token_hash), now, client});
    return tablets;
}

std::string day_of(std::int64_t seconds)
{
    constexpr std::int64_t day = std::int64_t{24} * 60 * 60;
    return day_text(later({1970, 1, 1}, static_cast<int>(std::clamp<std::int64_t>(seconds, 0, most_seconds) / day)));
}

}  // namespace shaftcut
