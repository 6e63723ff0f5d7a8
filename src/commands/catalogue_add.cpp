// shaftcut catalogue add: a new series, asked for or out of a file, written into the configuration.
#include <ostream>

#include "call/answers.hpp"
#include "call/engine_command.hpp"
#include "commands.hpp"
#include "commands/series_words.hpp"
#include "commands/usage_faults.hpp"

namespace shaftcut {
namespace {

CommonOptionTexts adding_texts()
{
    CommonOptionTexts texts;
    texts.command = CommandName::catalogue_add;
    texts.units_text = UnitsText::of_listing;
    return texts;
}

class CatalogueAdd final : public EngineCommand {
public:
    CatalogueAdd() : EngineCommand(adding_texts()) {}

private:
    boost::program_options::options_description described(const Wording& w) override { return adding_options(texts(), w); }

    std::string check(const Wording& w) override { return files().size() < 2 ? "" : not_expected(CommandName::catalogue_add, files()[1], w); }

    Outcome answer(const Engine& engine, Console& console) override
    {
        const auto catalogue = load_or_report(path(), console);
        if (!catalogue) return Outcome::unwritable;
        if (files().empty()) return ask(engine, *catalogue, console);
        const auto added = load_or_report(files().front(), console);
        return added ? write(*added, console) : Outcome::unwritable;
    }

    std::string path() const { return options().config + "/series.xml"; }

    Outcome ask(const Engine& engine, const Source& catalogue, Console& console) const
    {
        const Units units = Engine::catalogue_with(catalogue, {}).units;
        console.out << series_begins(path(), units, console.wording);
        std::vector<SeriesAnswer> answers;
        for (const SeriesQuestion& question : engine.series_questions())
            if (is_asked(question, answers) && !ask_for(question, units, catalogue, answers, console)) return answers_ended(console);
        const std::string series = catalogue_of(answers, units);
        const auto agreed = answer_to(series_to_write(series, console.wording), console);
        if (!agreed) return answers_ended(console);
        if (is_yes(*agreed, console.wording)) return write({"-", series}, console);
        console.out << series_dropped(console.wording) << "\n";
        return Outcome::answered;
    }

    static bool is_yes_or_no(const SeriesQuestion& question) { return question.figure == SeriesFigure::own_parts || question.figure == SeriesFigure::own_limits; }

    // Until the catalogue could hold the answer. False where none came.
    static bool ask_for(const SeriesQuestion& question, Units units, const Source& catalogue, std::vector<SeriesAnswer>& answers, Console& console)
    {
        while (true) {
            auto answer = answer_to(say(question, console.wording), console);
            if (!answer) return false;
            if (is_yes_or_no(question)) *answer = is_yes(*answer, console.wording) ? said_yes : "";
            answers.push_back({question, std::move(*answer)});
            const Problems problems = Engine::catalogue_with(catalogue, {"-", catalogue_of(answers, units)}).problems;
            if (problems.empty()) return true;
            answers.pop_back();
            for (const Problem& problem : problems) console.out << "  " << problem.wrong << "; " << problem.right << "\n";
        }
    }

    // Into the catalogue as it is now: somebody may have written into it meanwhile.
    Outcome write(const Source& added, Console& console) const
    {
        const auto catalogue = load_or_report(path(), console);
        if (!catalogue) return Outcome::unwritable;
        const Addition addition = Engine::catalogue_with(*catalogue, added);
        if (!addition.bytes) return report(addition.problems, console);
        const Outcome outcome = write_configuration(options().config, "series.xml", *addition.bytes, console);
        if (outcome == Outcome::answered) console.out << series_written(addition.names, path(), console.wording) << "\n";
        return outcome;
    }
};

}  // namespace

std::unique_ptr<Command> make_catalogue_add() { return std::make_unique<CatalogueAdd>(); }

}  // namespace shaftcut
