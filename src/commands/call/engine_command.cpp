#include "call/engine_command.hpp"

#include <ostream>
#include <sstream>

#include "commands/help_words.hpp"
#include "files/load.hpp"

namespace shaftcut {

std::string EngineCommand::set_up(const std::vector<std::string>& arguments, const Wording& w)
{
    const auto parsed = parse_arguments(arguments, described(w), w);
    if (!parsed.fault.empty()) return parsed.fault;
    files_ = parsed.value;
    const auto read = checked(texts_, w);
    options_ = read.value;
    return read.fault.empty() ? check(w) : read.fault;
}

Outcome EngineCommand::run(Console& console)
{
    const EngineLoaded loaded = load_engine(options_.config, console, texts_.reads_prices);
    return loaded.engine ? answer(*loaded.engine, console) : loaded.outcome;
}

std::string EngineCommand::help(const Wording& w)
{
    std::ostringstream text;
    text << usage(texts_.command, w) << "\n\n" << described(w);
    return text.str();
}

Wishes EngineCommand::wishes(const Console& console) const
{
    const bool to_standard_output = options_.to_standard_output();
    Wishes wishes;
    wishes.units = options_.units;
    wishes.paper = options_.paper;
    wishes.colour = (to_standard_output ? console.progress : console.colour) ? Colour::ansi : Colour::none;
    wishes.json = to_standard_output ? JsonLayout::one_line : JsonLayout::indented;
    if (options_.asks_for(Format::pdf) || options_.asks_for(Format::png) || options_.asks_for(Format::svg)) wishes.fonts = load_fonts();
    return wishes;
}

void EngineCommand::show_progress(std::size_t done, std::size_t of, Counted what, const Console& console) const
{
    const bool long_call = std::chrono::steady_clock::now() - started_ > std::chrono::seconds(1);
    if (!console.progress || !long_call) return;
    console.err << "\r" << how_far(done, of, what, console.wording) << (done == of ? "\n" : "") << std::flush;
}

}  // namespace shaftcut
