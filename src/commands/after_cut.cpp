// shaftcut after-cut: the shaft as it was cut.
#include <algorithm>
#include <ostream>

#include "call/engine_command.hpp"
#include "call/hand_out.hpp"
#include "commands.hpp"
#include "commands/usage_faults.hpp"
#include "files/load.hpp"

namespace shaftcut {
namespace {

CommonOptionTexts after_cut_texts()
{
    CommonOptionTexts texts;
    texts.command = CommandName::after_cut;
    texts.formats = "json";
    texts.offered = offered_formats(Question::after_cut);
    return texts;
}

class AfterCutCommand final : public EngineCommand {
public:
    AfterCutCommand() : EngineCommand(after_cut_texts()) {}

private:
    std::string check(const Wording& w) override
    {
        const bool written = std::all_of(options().formats.begin(), options().formats.end(), [](Format format) { return comes_as(Question::after_cut, format); });
        if (!written) return formats_fault(CommandName::after_cut, texts().offered, w);
        if (files().size() == 2) return "";
        return not_two_files(files().size(), w);
    }

    Outcome answer(const Engine& engine, Console& console) override
    {
        const auto job = load_or_report(files()[0], console), measured = load_or_report(files()[1], console);
        if (!job || !measured) return Outcome::unwritable;
        const Wishes wished = wishes(console);
        const AfterCutAnswer answer = engine.after_cut(*job, *measured, wished);
        if (const Outcome faults = report(answer.problems, console); faults != Outcome::answered) return faults;
        if (const Outcome outcome = make_folder(options(), console); outcome != Outcome::answered) return outcome;
        const std::string& order = answer.shaft->order.order;
        return std::max(refuses(answer) ? Outcome::refused : Outcome::answered, or_report(order_named(order, console.wording), console, [&] { return hand_out_answer(answer, wished, console); }));
    }

    Outcome hand_out_answer(const AfterCutAnswer& answer, const Wishes& wishes, Console& console) const
    {
        const std::string text = documents(answer, {Format::terminal}, wishes).front().bytes;
        const std::vector<Document> made = documents(answer, options().formats, wishes);
        if (!options().to_standard_output()) return hand_out(made, text, options(), console);
        console.err << text;
        return hand_out_json(made.front().bytes, console);
    }
};

}  // namespace

std::unique_ptr<Command> make_after_cut() { return std::make_unique<AfterCutCommand>(); }

}  // namespace shaftcut
