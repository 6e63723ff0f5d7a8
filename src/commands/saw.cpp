// shaftcut saw: a saw plan for any list of pieces on any stock.
#include <ostream>

#include "call/engine_command.hpp"
#include "call/hand_out.hpp"
#include "call/saw_options.hpp"
#include "call/saw_progress.hpp"
#include "commands.hpp"
#include "commands/usage_faults.hpp"

namespace shaftcut {
namespace {

CommonOptionTexts saw_texts()
{
    CommonOptionTexts texts;
    texts.command = CommandName::saw;
    texts.units_text = UnitsText::of_pieces;
    texts.offered = offered_formats(Question::saw);
    return texts;
}

class SawCommand final : public EngineCommand {
public:
    SawCommand() : EngineCommand(saw_texts()) {}

private:
    boost::program_options::options_description described(const Wording& w) override
    {
        auto options = common_options(texts(), w);
        add_saw_options(options, saw_texts_, OptionText::stock_of_pieces, w);
        return options;
    }

    std::string check(const Wording& w) override
    {
        const auto read = checked(saw_texts_, options().units.value_or(Units::mm), w);
        if (!read.fault.empty()) return read.fault;
        saw_ = read.value;
        if (files().empty()) return no_file(CommandName::saw, w);
        if (std::string fault = list_name_fault(Question::saw, files().front(), w); !fault.empty()) return fault;
        return files().size() > 1 ? not_expected(CommandName::saw, files()[1], w) : "";
    }

    Outcome answer(const Engine& engine, Console& console) override
    {
        const auto pieces = load_or_report(files().front(), console);
        const bool own_stock = !saw_texts_.stock.empty();
        if (own_stock) saw_.stock = load_or_report(saw_texts_.stock, console);
        const Wishes wished = wishes(console);
        if (!pieces) return std::max(Outcome::unwritable, report(Engine::stock_problems(Question::saw, wished, saw_), console));
        SawStart start = engine.saw(*pieces, wished, saw_);
        const Outcome outcome = report(start.problems, console);
        if (own_stock && !saw_.stock) return Outcome::unwritable;
        if (start.no_stock) {
            console.err << no_stock(options().config, console.wording) << "\n";
            return Outcome::bad_input;
        }
        if (!start.run) return outcome;
        if (const Outcome made = make_folder(options(), console); made != Outcome::answered) return made;
        if (const Outcome free = check_names(saw_document_names(start.run->name(), options().formats), options(), console); free != Outcome::answered) return free;
        return plan(*start.run, wished, console);
    }

    Outcome plan(SawRun& run, const Wishes& wished, Console& console) const
    {
        const SawAnswer answer = planned(run, console);
        if (answer.order) return hand_out_plan(*answer.order, wished, console);
        if (!answer.why_not.empty()) console.err << files().front() << ": " << answer.why_not << "\n";
        report(answer.problems, console);
        return refused(run.name(), console);
    }

    Outcome refused(const std::string& list, Console& console) const
    {
        return std::max(Outcome::refused, supersede_others(saw_document_names(list, file_formats()), {}, options(), console));
    }

    static SawAnswer planned(SawRun& run, Console& console)
    {
        SawProgress progress(console);
        const InterruptWatch interrupt;
        return run.plan(progress.means(interrupt));
    }

    Outcome hand_out_plan(const SawOrder& order, const Wishes& wished, Console& console) const
    {
        const std::string text = documents(order, {Format::terminal}, wished).front().bytes;
        if (options().to_standard_output()) {
            console.err << text;
            return hand_out_json(documents(order, options().formats, wished).front().bytes, console);
        }
        const bool json_only = options().formats == std::vector{Format::json};
        if (const std::string why = why_no_sheet(order); !why.empty() && !json_only) {
            console.err << files().front() << ": " << no_sheet(why, console.wording) << "\n";
            return refused(order.name, console);
        }
        return hand_out(documents(order, options().formats, wished), text, options(), console);
    }

    SawOptionTexts saw_texts_;
    SawWishes saw_;
};

}  // namespace

std::unique_ptr<Command> make_saw() { return std::make_unique<SawCommand>(); }

}  // namespace shaftcut
