#include "wording.hpp"

#include <fmt/args.h>
#include <fmt/format.h>

#include <algorithm>
#include <stdexcept>

#include "text.hpp"

namespace {

// "{name:a|b|c}": what stands behind the colon is kept by parse() and looked into by format().
struct Chosen {
    int index;
};

}  // namespace

template <>
struct fmt::formatter<Chosen> {
    std::string_view words;

    constexpr auto parse(format_parse_context& context)
    {
        const auto end = std::find(context.begin(), context.end(), '}');
        words = std::string_view(context.begin(), static_cast<std::size_t>(end - context.begin()));
        return end;
    }

    template <class Context>
    auto format(Chosen chosen, Context& context) const
    {
        std::string_view rest = words;
        for (int skipped = 0; skipped < chosen.index; ++skipped) {
            const std::size_t bar = rest.find('|');
            if (bar == std::string_view::npos) throw format_error("a choice of too few words");
            rest.remove_prefix(bar + 1);
        }
        const std::string_view word = rest.substr(0, rest.find('|'));
        return std::copy(word.begin(), word.end(), context.out());
    }
};

namespace shaftcut {

std::string Wording::operator()(std::string_view english, std::initializer_list<NamedValue> values) const
{
    const std::string translated = translate_ ? translate_(english) : std::string();
    const std::string_view pattern = translate_ ? std::string_view(translated) : english;
    fmt::dynamic_format_arg_store<fmt::format_context> store;
    store.reserve(values.size(), values.size());
    for (const NamedValue& one : values) {
        if (one.value.is_choice()) store.push_back(fmt::arg(one.name, Chosen{one.value.chosen()}));
        else store.push_back(fmt::arg(one.name, std::string_view(one.value.text())));
    }
    try {
        return fmt::vformat(fmt::string_view(pattern.data(), pattern.size()), store);
    } catch (const fmt::format_error& error) {
        throw std::logic_error(std::string(pattern) + ": " + error.what());
    }
}

std::string Wording::either(const std::vector<std::string>& names) const { return listed(names, "or"); }
std::string Wording::all_of(const std::vector<std::string>& names) const { return listed(names, "and"); }

std::string running_text(const std::vector<std::string>& sentences)
{
    std::string all;
    for (const std::string& sentence : sentences) all += (all.empty() || sentence.empty() ? "" : " ") + sentence;
    return all;
}

}  // namespace shaftcut
