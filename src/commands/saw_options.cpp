#include "saw_options.hpp"

#include "parse.hpp"
#include "text.hpp"

namespace shaftcut {
namespace {

namespace po = boost::program_options;

constexpr std::int64_t most_seconds = 86'400;

template <class T>
Checked<T> checked(const std::string& option, const Parsed<T>& parsed)
{
    if (const auto* fault = std::get_if<ParseFault>(&parsed)) return {{}, option + " " + fault->wrong + "; " + fault->right};
    return {std::get<T>(parsed)};
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

Checked<SawWishes> checked(const SawOptionTexts& texts, Units units)
{
    const auto length = [&](const char* option, const std::string& text) { return checked(option, parse_length(text, units)); };
    const bool own_kerf = !texts.kerf.empty();
    const auto kerf = own_kerf ? length("--kerf", texts.kerf) : Checked<Length>();
    const auto trim_start = length("--trim-start", texts.trim_start), trim_end = length("--trim-end", texts.trim_end);
    const auto milliseconds = checked("--seconds", parse_thousandths(texts.seconds, most_seconds));
    for (const std::string& fault : {kerf.fault, trim_start.fault, trim_end.fault, milliseconds.fault})
        if (!fault.empty()) return {{}, fault};
    SawWishes wishes;
    if (own_kerf) wishes.kerf = kerf.value;
    wishes.trim_start = trim_start.value;
    wishes.trim_end = trim_end.value;
    wishes.seconds = static_cast<double>(milliseconds.value) / 1000;
    return {wishes};
}

std::string list_name_fault(const std::string& path, const std::string& what)
{
    const auto hidden = first_hidden(path);
    const std::string fault = !is_utf8(path) ? "is not UTF-8 text" : hidden ? "holds " + hidden_named(*hidden) : "";
    return fault.empty() ? fault : "the name of the file of " + what + " " + fault + ", and the documents are named after it; rename it";
}

}  // namespace shaftcut
