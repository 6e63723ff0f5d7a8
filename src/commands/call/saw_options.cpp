#include "call/saw_options.hpp"

#include "commands/usage_faults.hpp"

namespace shaftcut {
namespace {

namespace po = boost::program_options;

constexpr std::int64_t most_seconds = 86'400;

template <class T>
Checked<T> checked(const std::string& option, const Parsed<T>& parsed, const Wording& w)
{
    if (const auto* fault = std::get_if<ParseFault>(&parsed)) return {{}, say_option(option, *fault, w)};
    return {std::get<T>(parsed)};
}

}  // namespace

void add_saw_options(po::options_description& described, SawOptionTexts& texts, OptionText stock, const Wording& w)
{
    described.add_options()
        ("stock", po::value(&texts.stock)->value_name("FILE"), say(stock, w).c_str())
        ("kerf", po::value(&texts.kerf)->value_name("LENGTH"), say(OptionText::kerf, w).c_str())
        ("trim-start", po::value(&texts.trim_start)->value_name("LENGTH"), say(OptionText::trim_start, w).c_str())
        ("trim-end", po::value(&texts.trim_end)->value_name("LENGTH"), say(OptionText::trim_end, w).c_str())
        ("seconds", po::value(&texts.seconds)->value_name("N"), say(OptionText::seconds, w).c_str());
}

Checked<SawWishes> checked(const SawOptionTexts& texts, Units units, const Wording& w)
{
    const auto length = [&](const char* option, const std::string& text) { return checked(option, parse_length(text, units), w); };
    const bool own_kerf = !texts.kerf.empty();
    const auto kerf = own_kerf ? length("--kerf", texts.kerf) : Checked<Length>();
    const auto trim_start = length("--trim-start", texts.trim_start), trim_end = length("--trim-end", texts.trim_end);
    const auto milliseconds = checked("--seconds", parse_thousandths(texts.seconds, most_seconds), w);
    for (const std::string& fault : {kerf.fault, trim_start.fault, trim_end.fault, milliseconds.fault})
        if (!fault.empty()) return {{}, fault};
    SawWishes wishes;
    if (own_kerf) wishes.kerf = kerf.value;
    wishes.trim_start = trim_start.value;
    wishes.trim_end = trim_end.value;
    wishes.seconds = static_cast<double>(milliseconds.value) / 1000;
    return {wishes};
}

}  // namespace shaftcut
