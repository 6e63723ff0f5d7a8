#include "engine_command.hpp"

#include <ostream>
#include <sstream>

#include "load.hpp"

namespace shaftcut {

std::string EngineCommand::set_up(const std::vector<std::string>& arguments)
{
    const auto parsed = parse_arguments(arguments, *described_);
    if (!parsed.fault.empty()) return parsed.fault;
    files_ = parsed.value;
    const auto read = checked(texts_);
    options_ = read.value;
    return read.fault.empty() ? check() : read.fault;
}

Outcome EngineCommand::run(Console& console)
{
    const EngineLoaded loaded = load_engine(options_.config, console);
    return loaded.engine ? answer(*loaded.engine, console) : loaded.outcome;
}

std::string EngineCommand::help() const
{
    std::ostringstream text;
    text << usage_ << "\n\n" << *described_;
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

void EngineCommand::show_progress(std::size_t done, std::size_t of, const char* what, const Console& console) const
{
    const bool long_call = std::chrono::steady_clock::now() - started_ > std::chrono::seconds(1);
    if (!console.progress || !long_call) return;
    console.err << "\r" << done << " of " << of << " " << what << (done == of ? "\n" : "") << std::flush;
}

}  // namespace shaftcut
