// shaftcut form: a blank measuring form to take to the tractor.
#include <ostream>

#include "engine_command.hpp"
#include "hand_out.hpp"
#include "text.hpp"

namespace shaftcut {
namespace {

constexpr const char* usage = "shaftcut form\n\nWrites a blank measuring form (PDF) to take to the tractor: it asks for what a job file holds. No other format is written.";

CommonOptionTexts form_texts()
{
    CommonOptionTexts texts;
    texts.formats = "pdf";
    texts.default_units = "mm";
    texts.no_standard_output = "form writes no JSON to standard output; name a folder in --output";
    return texts;
}

class Form final : public EngineCommand {
public:
    Form() : EngineCommand(usage, form_texts())
    {
        auto described = common_options(texts());
        described.add_options()("series", boost::program_options::value(&series_)->value_name("NAME"), "draw where this series of the catalogue is measured from");
        describe(described);
    }

private:
    std::string check() override
    {
        if (!files().empty()) return shaftcut::quoted(files().front()) + " is not expected; form takes options only";
        const bool written = std::all_of(options().formats.begin(), options().formats.end(), [](Format format) { return comes_as(Question::form, format); });
        return written ? "" : "form writes PDF only; leave --formats out, or write --formats pdf";
    }

    Outcome answer(const Engine& engine, Console& console) override
    {
        const Wishes wished = wishes(console);
        const FormAnswer answer = engine.form(series_, wished);
        if (!answer.form) {
            console.err << "shaftcut: " << answer.why_not << "\n";
            return Outcome::bad_input;
        }
        const std::vector<Document> forms = documents(*answer.form, options().formats, wished);
        if (const Outcome outcome = make_folder(options(), console); outcome != Outcome::answered) return outcome;
        return hand_out(forms, "", options(), console, "wrote ");
    }

    std::string series_;
};

}  // namespace

std::unique_ptr<Command> make_form() { return std::make_unique<Form>(); }

}  // namespace shaftcut
