#include "support/drawn/mistypings.hpp"

#include <algorithm>
#include <regex>
#include <set>


namespace shaftcut::test {
namespace {

bool is_digit(char c) { return c >= '0' && c <= '9'; }

// Comments keep their length, so that places stay.
std::string without_comments(std::string xml)
{
    for (std::size_t at = xml.find("<!--"); at != std::string::npos; at = xml.find("<!--", at + 1)) {
        const std::size_t end = std::min(xml.find("-->", at), xml.size());
        std::fill(xml.begin() + static_cast<std::ptrdiff_t>(at), xml.begin() + static_cast<std::ptrdiff_t>(end), ' ');
    }
    return xml;
}

std::string kind_of(const std::string& element, const std::string& attribute, const std::string& tag)
{
    static const std::set<std::string> angles{"turn", "pitch", "roll", "input-tilt"};
    static const std::set<std::string> half{"shoulder", "stop-depth"};
    if (attribute == "plus-minus") return "its own ±";
    if (element == "closed" && attribute == "length") return "closed length";
    if (element == "half" && attribute == "length") return "half";
    if (element == "half" && attribute == "guard") return "guard half";
    if (element == "half" && half.count(attribute)) return "shoulder, stop depth";
    if (element == "half" && attribute == "lubrication-hole") return "lubrication hole";
    if (element == "shortest" && attribute == "length") return "shortest";
    if (element == "longest" && attribute == "length") {
        for (const char* when : {"working", "turning", "standing"})
            if (tag.find(std::string("when=\"") + when) != std::string::npos) return std::string("longest, ") + when;
    }
    if ((element == "end" || element == "shaft") && (attribute == "spacing" || attribute == "cross-to-groove")) return "spacing, groove";
    if (element == "limits") return attribute == "closing-clearance" ? "closing clearance" : "";
    const bool machine = element == "trailed" || element == "mounted" || attribute == "lowest" || attribute == "highest";
    return machine && !angles.count(attribute) ? "machine's geometry" : "";
}

std::string with_point_moved(const std::string& text, int places)
{
    const std::size_t point = std::min(text.find('.'), text.size());
    std::string digits = text;
    digits.erase(std::remove(digits.begin(), digits.end(), '.'), digits.end());
    const auto at = static_cast<std::ptrdiff_t>(point) + places;
    if (at < 1) return "";
    if (at >= static_cast<std::ptrdiff_t>(digits.size())) return digits + std::string(static_cast<std::size_t>(at) - digits.size(), '0');
    return digits.insert(static_cast<std::size_t>(at), ".");
}

// By how much the worst tube stays longer than it should be.
Um too_long(const Seen& truth, const Promise& now)
{
    Um most = 0;
    for (std::size_t i = 0; i < 2; ++i) {
        const Um left = now.cut[i] > 0 ? std::max(truth.shaft.half[i] - now.cut[i], now.kept[i]) : truth.shaft.half[i];
        most = std::max(most, left - truth.promise.kept[i]);
        if (!truth.promise.guard_kept[i]) continue;
        const Um guard = now.guard_cut[i] > 0 ? std::max(truth.shaft.guard[i] - now.guard_cut[i], now.guard_kept[i].value_or(0)) : truth.shaft.guard[i];
        most = std::max(most, guard - *truth.promise.guard_kept[i]);
    }
    return most;
}

bool same_cuts(const Promise& one, const Promise& other)
{
    for (std::size_t i = 0; i < 2; ++i) {
        if (one.cut[i] != other.cut[i] || one.guard_cut[i] != other.guard_cut[i]) return false;
        if (one.cut[i] > 0 && one.kept[i] != other.kept[i]) return false;
        if (one.guard_cut[i] > 0 && one.guard_kept[i] != other.guard_kept[i]) return false;
    }
    return true;
}

bool newly_warned(const Seen& before, const Seen& now)
{
    for (std::size_t i = 0; i < now.results.size(); ++i)
        if (now.results[i] == CheckResult::warn && before.results[i] != CheckResult::warn) return true;
    return now.promise.confirm.size() > before.promise.confirm.size();
}

}  // namespace

Fate fate_of(const Seen& truth, const std::optional<Seen>& now)
{
    Fate found;
    found.all = 1;
    if (!now || now->promise.verdict == Verdict::refused) found.refused = 1;
    else if (same_cuts(now->promise, truth.promise)) found.unchanged = 1;
    else if (confirmation_stops(truth.shaft, now->promise)) found.asked = 1;
    else if (newly_warned(truth, *now)) found.warned = 1;
    else found.silent = 1;
    if (found.silent) found.too_long = too_long(truth, now->promise);
    if (found.too_long > truth.clearance) found.dangerous = 1;
    return found;
}

std::vector<TypedLength> typed_lengths(const std::string& xml)
{
    const std::string text = without_comments(xml);
    static const std::regex tags("<([a-z-]+)((?:\\s+[a-z-]+=\"[^\"]*\")*)\\s*/?>");
    static const std::regex attributes("([a-z-]+)=\"([^\"]*)\"");
    std::vector<TypedLength> found;
    for (std::sregex_iterator tag(text.begin(), text.end(), tags), end; tag != end; ++tag) {
        const std::string inside = (*tag)[2];
        for (std::sregex_iterator attribute(inside.begin(), inside.end(), attributes); attribute != end; ++attribute) {
            const std::string value = (*attribute)[2];
            const std::string kind = kind_of((*tag)[1], (*attribute)[1], inside);
            if (kind.empty() || std::none_of(value.begin(), value.end(), is_digit)) continue;
            found.push_back({kind, static_cast<std::size_t>(tag->position(2) + attribute->position(2)), value});
        }
    }
    return found;
}

std::vector<std::string> mistypings(const std::string& text)
{
    std::set<std::string> found;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (!is_digit(text[i])) continue;
        for (char digit = '0'; digit <= '9'; ++digit) {
            std::string typed = text;
            typed[i] = digit;
            found.insert(typed);
        }
        found.insert(text.substr(0, i) + text.substr(i + 1));
        found.insert(text.substr(0, i + 1) + text.substr(i));
        if (i + 1 == text.size() || !is_digit(text[i + 1])) continue;
        std::string typed = text;
        std::swap(typed[i], typed[i + 1]);
        found.insert(typed);
    }
    if (text.find_first_not_of("0123456789.") == std::string::npos)
        for (const int places : {-1, 1}) found.insert(with_point_moved(text, places));
    found.erase(text);
    return {found.begin(), found.end()};
}

Fate& Fate::operator+=(const Fate& other)
{
    all += other.all;
    refused += other.refused;
    unchanged += other.unchanged;
    asked += other.asked;
    warned += other.warned;
    silent += other.silent;
    dangerous += other.dangerous;
    too_long = std::max(too_long, other.too_long);
    return *this;
}

Seen seen_of(const WorkOrder& order)
{
    Seen found{promise_of(order), {}, {}, order.limits.length(Limit::closing_clearance).um()};
    for (const Check& check : order.checks) found.results.push_back(check.result);
    for (const Tube tube : both_tubes) {
        const std::size_t i = static_cast<std::size_t>(tube);
        const auto& half = order.reading.shaft.halves[tube];
        if (half.length) found.shaft.half[i] = half.length->value.um();
        if (half.guard) found.shaft.guard[i] = half.guard->value.um();
        if (order.stops) found.shaft.shoulder[i] = order.stops->shoulder[tube].um();
    }
    return found;
}

void mistype_all(Mistyped& found, const std::string& name, const std::string& xml, std::size_t every,
                 const std::function<std::optional<Seen>(const std::string&)>& answer)
{
    const Seen truth = answer(xml).value();
    std::size_t number = 0;
    for (const TypedLength& one : typed_lengths(xml)) {
        for (const std::string& typed : mistypings(one.text)) {
            if (number++ % every != 0) continue;
            const auto now = answer(std::string(xml).replace(one.begin, one.text.size(), typed));
            if (truth.promise.verdict == Verdict::refused) {
                ++found.in_refused;
                found.now_answered += now && now->promise.verdict != Verdict::refused ? 1 : 0;
                continue;
            }
            const Fate fate = fate_of(truth, now);
            found.of_kind[one.kind] += fate;
            if (fate.dangerous) found.dangerous.push_back(name + ": " + one.kind + " " + one.text + " as " + typed);
        }
    }
}

}  // namespace shaftcut::test
