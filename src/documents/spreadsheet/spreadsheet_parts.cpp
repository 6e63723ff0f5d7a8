#include "spreadsheet/spreadsheet_parts.hpp"

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <utility>

#include <unistd.h>

#include "text.hpp"
#include "workbook_faults.hpp"

namespace shaftcut {
namespace {

bool is_letter(char c) { return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z'); }
bool is_digit(char c) { return c >= '0' && c <= '9'; }

}  // namespace

time_t moment_of(const std::string& date)
{
    constexpr time_t fixed = 946728000;  // 2000-01-01 12:00 UTC
    int parts[3] = {0, 0, 0};
    if (date.size() != 10) return fixed;
    const std::pair<std::size_t, std::size_t> places[3] = {{0, 4}, {5, 2}, {8, 2}};
    for (int i = 0; i < 3; ++i)
        for (const char digit : date.substr(places[i].first, places[i].second)) {
            if (digit < '0' || digit > '9') return fixed;
            parts[i] = parts[i] * 10 + (digit - '0');
        }
    using namespace std::chrono;
    const year_month_day day{year{parts[0]}, month{static_cast<unsigned>(parts[1])}, std::chrono::day{static_cast<unsigned>(parts[2])}};
    if (!day.ok()) return fixed;
    return system_clock::to_time_t(sys_days{day} + 12h);
}

bool is_plain_name(const std::string& name)
{
    const auto is_plain = [](char c) { return is_letter(c) || is_digit(c) || c == '_'; };
    if (name.size() < 2 || !is_letter(name.front()) || !std::all_of(name.begin(), name.end(), is_plain)) return false;
    return name.find('_') != std::string::npos || std::none_of(name.begin(), name.end(), is_digit);
}

std::string fit_for_xml(const std::string& text, std::size_t most)
{
    std::string out;
    std::size_t count = 0;
    for (const char byte : text) {
        const auto value = static_cast<unsigned char>(byte);
        const bool starts_a_point = (value & 0xC0) != 0x80;
        if (starts_a_point && count++ == most) break;
        const bool control = value < 0x20 && value != '\n' && value != '\t';
        out += control ? ' ' : byte;
    }
    return is_utf8(out) ? out : "?";
}

TemporaryFolder::TemporaryFolder()
{
    std::string pattern = (std::filesystem::temp_directory_path() / "shaftcut-XXXXXX").string();
    if (!mkdtemp(pattern.data())) throw WorkbookFault(WorkbookFault::At::folder);
    path_ = pattern;
}

TemporaryFolder::~TemporaryFolder()
{
    // Not remove_all(), which opens the folder and so fails where too many files are open.
    ::unlink(file().c_str());
    ::rmdir(path_.c_str());
}

}  // namespace shaftcut
