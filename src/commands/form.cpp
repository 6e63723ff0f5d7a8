// shaftcut form: a blank measuring form to take to the tractor.
#include <ostream>

#include "call/engine_command.hpp"
#include "call/hand_out.hpp"
#include "commands.hpp"
#include "commands/usage_faults.hpp"

namespace shaftcut {
namespace {

CommonOptionTexts form_texts()
{
    CommonOptionTexts texts;
    texts.command = CommandName::form;
    texts.units_text = UnitsText::of_listing;
    texts.offered = offered_formats(Question::form);
    texts.formats = "pdf";
    texts.json_to_standard_output = false;
    return texts;
}

class Form final : public EngineCommand {
public:
    Form() : EngineCommand(form_texts()) {}

private:
    boost::program_options::options_description described(const Wording& w) override
    {
        auto options = common_options(texts(), w);
        options.add_options()("series", boost::program_options::value(&series_)->value_name("NAME"), say(OptionText::series, w).c_str())(
            "machine", boost::program_options::value(&machine_)->value_name("KIND"), say(OptionText::machine, w).c_str())(
            "identify", boost::program_options::bool_switch(&identify_), say(OptionText::identify, w).c_str());
        return options;
    }

    std::string check(const Wording& w) override
    {
        if (!files().empty()) return not_expected(CommandName::form, files().front(), w);
        if (identify_ && !(series_.empty() && machine_.empty())) return identify_form_takes_neither(w);
        if (!machine_.empty() && !from_word<OnMachine>(machine_)) return unknown_machine(machine_, w);
        const bool written = std::all_of(options().formats.begin(), options().formats.end(), [](Format format) { return comes_as(Question::form, format); });
        return written ? "" : formats_fault(CommandName::form, texts().offered, w);
    }

    Outcome answer(const Engine& engine, Console& console) override
    {
        const Wishes wished = wishes(console);
        const FormAnswer answer = identify_ ? engine.identify_form(wished) : engine.form(series_, wished, from_word<OnMachine>(machine_).value_or(OnMachine::lengths));
        if (!answer.form) {
            console.err << "shaftcut: " << answer.why_not << "\n";
            return Outcome::bad_input;
        }
        const std::vector<Document> forms = documents(*answer.form, options().formats, wished);
        if (const Outcome outcome = make_folder(options(), console); outcome != Outcome::answered) return outcome;
        return hand_out(forms, "", options(), console, WroteLine::alone);
    }

    std::string series_, machine_;
    bool identify_ = false;
};

}  // namespace

std::unique_ptr<Command> make_form() { return std::make_unique<Form>(); }

}  // namespace shaftcut
