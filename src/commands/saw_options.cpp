#include "saw_options.hpp"

#include "shaftcut/words/parse.hpp"
#include "shaftcut/words/text.hpp"

namespace shaftcut {
namespace {

namespace po = boost::program_options;

constexpr std::int64_t most_seconds = 86'400;

// Stores what `text` says with `store`; empty, or the fault in words.
template <class T, class Store>
std::string taken(const std::string& option, const Parsed<T>& parsed, const Store& store)
{
    if (const auto* fault = std::get_if<ParseFault>(&parsed)) return option + " " + fault->wrong + "; " + fault->right;
    store(std::get<T>(parsed));
    return {};
}

}  // namespace

void add_saw_options(po::options_description& described, SawOptionTexts& texts, const char* stock_help)
{
    described.add_options()
        ("stock", po::value(&texts.stock)->value_name("FILE"), stock_help)
        ("kerf", po::value(&texts.kerf)->value_name("LENGTH"), "what the blade takes (default: the workshop's saw)")
        ("trim-start", po::value(&texts.trim_start)->value_name("LENGTH"), "waste at a bar's starting end, kerf included (default: 0)")
        ("trim-end", po::value(&texts.trim_end)->value_name("LENGTH"), "waste at a bar's other end (default: 0)")
        ("seconds", po::value(&texts.seconds)->value_name("N"), "time allowed for the plan (default: 10)");
}

CheckedBladeOptions checked(const SawOptionTexts& texts, Units units)
{
    CheckedBladeOptions result;
    BladeOptions& options = result.options;
    const auto length = [&](const std::string& text) { return parse_length(text, units); };
    for (const std::string& fault :
         {texts.kerf.empty() ? std::string() : taken("--kerf", length(texts.kerf), [&](Length kerf) { options.kerf = kerf; }),
          taken("--trim-start", length(texts.trim_start), [&](Length trim) { options.trim_start = trim; }),
          taken("--trim-end", length(texts.trim_end), [&](Length trim) { options.trim_end = trim; }),
          taken("--seconds", parse_thousandths(texts.seconds, most_seconds), [&](std::int64_t ms) { options.seconds = static_cast<double>(ms) / 1000; })})
        if (!fault.empty() && result.fault.empty()) result.fault = fault;
    return result;
}

std::string list_name_fault(const std::string& path, const std::string& what)
{
    const auto hidden = first_hidden(path);
    const std::string fault = !is_utf8(path) ? "is not UTF-8 text" : hidden ? "holds " + hidden_named(*hidden) : "";
    return fault.empty() ? fault : "the name of the file of " + what + " " + fault + ", and the documents are named after it; rename it";
}

}  // namespace shaftcut
