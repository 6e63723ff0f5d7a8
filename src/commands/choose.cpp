// shaftcut choose: which shafts of the catalogue would serve.
#include <algorithm>
#include <ostream>

#include "call/engine_command.hpp"
#include "call/hand_out.hpp"
#include "commands.hpp"
#include "commands/usage_faults.hpp"
#include "files/load.hpp"
#include "files/order_files.hpp"

namespace shaftcut {
namespace {

CommonOptionTexts choose_texts()
{
    CommonOptionTexts texts;
    texts.command = CommandName::choose;
    texts.formats = "json";
    texts.offered = offered_formats(Question::choose);
    return texts;
}

class ChooseCommand final : public EngineCommand {
public:
    ChooseCommand() : EngineCommand(choose_texts()) {}

private:
    std::string check(const Wording& w) override
    {
        const auto comes = [](Format format) { return comes_as(Question::choose, format); };
        if (!std::all_of(options().formats.begin(), options().formats.end(), comes)) return formats_fault(CommandName::choose, texts().offered, w);
        return files().empty() ? no_file(CommandName::choose, w) : "";
    }

    Outcome answer(const Engine& engine, Console& console) override
    {
        Outcome outcome = make_folder(options(), console);
        if (outcome != Outcome::answered) return outcome;
        for (const std::string& path : files()) outcome = std::max(outcome, run_job(path, engine, console));
        return outcome;
    }

    Outcome run_job(const std::string& path, const Engine& engine, Console& console)
    {
        const auto source = load_or_report(path, console);
        if (!source) return Outcome::unwritable;
        const Wishes wished = wishes(console);
        const ChooseAnswer answer = engine.choose(*source, wished, [&](std::size_t done, std::size_t of) { show_progress(done, of, Counted::series, console); });
        if (const Outcome faults = report(order_files_.problems_of(answer, path, console.wording), console); faults != Outcome::answered) return faults;
        const Outcome handed_out = or_report(order_named(answer.order, console.wording), console, [&] { return hand_out_answer(answer, wished, console); });
        return std::max(refuses(answer) ? Outcome::refused : Outcome::answered, handed_out);
    }

    Outcome hand_out_answer(const ChooseAnswer& answer, const Wishes& wishes, Console& console) const
    {
        const std::string text = documents(answer, {Format::terminal}, wishes).front().bytes;
        const std::vector<Document> made = documents(answer, options().formats, wishes);
        if (!options().to_standard_output()) return hand_out(made, text, options(), console);
        console.err << text;
        return hand_out_json(made.front().bytes, console);
    }

    OrderFiles order_files_;
};

}  // namespace

std::unique_ptr<Command> make_choose() { return std::make_unique<ChooseCommand>(); }

}  // namespace shaftcut
