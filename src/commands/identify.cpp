// shaftcut identify: which series a measured shaft can be.
#include <algorithm>
#include <map>
#include <ostream>

#include "call/engine_command.hpp"
#include "call/hand_out.hpp"
#include "commands.hpp"
#include "commands/usage_faults.hpp"
#include "files/load.hpp"

namespace shaftcut {
namespace {

CommonOptionTexts identify_texts()
{
    CommonOptionTexts texts;
    texts.command = CommandName::identify;
    texts.formats = "pdf,json";
    texts.offered = offered_formats(Question::identify);
    return texts;
}

class IdentifyCommand final : public EngineCommand {
public:
    IdentifyCommand() : EngineCommand(identify_texts()) {}

private:
    boost::program_options::options_description described(const Wording& w) override
    {
        auto options = common_options(texts(), w);
        options.add_options()("job", boost::program_options::bool_switch(&job_), say(OptionText::job, w).c_str());
        return options;
    }

    std::string check(const Wording& w) override
    {
        const auto comes = [](Format format) { return comes_as(Question::identify, format); };
        if (!std::all_of(options().formats.begin(), options().formats.end(), comes)) return formats_fault(CommandName::identify, texts().offered, w);
        if (job_ && options().to_standard_output()) return job_beside_standard_output(w);
        return files().empty() ? no_file(CommandName::identify, w) : "";
    }

    Outcome answer(const Engine& engine, Console& console) override
    {
        Outcome outcome = make_folder(options(), console);
        if (outcome != Outcome::answered) return outcome;
        const Wishes wished = wishes(console);
        for (const std::string& path : files()) outcome = std::max(outcome, run_shaft(path, engine, wished, console));
        return outcome;
    }

    Outcome run_shaft(const std::string& path, const Engine& engine, const Wishes& wished, Console& console)
    {
        const auto source = load_or_report(path, console);
        if (!source) return Outcome::unwritable;
        const IdentifyAnswer answer = engine.identify(*source, wished);
        if (const Outcome faults = report(problems_of(answer, path, console.wording), console); faults != Outcome::answered) return faults;
        report(answer.warnings, console);
        const Outcome handed_out = or_report(shaft_named(answer.order, console.wording), console, [&] { return hand_out_answer(answer, wished, console); });
        return std::max(undecided(answer) ? Outcome::refused : Outcome::answered, handed_out);
    }

    // Its own, or that an earlier file's shaft is called so: documents are named after it.
    Problems problems_of(const IdentifyAnswer& answer, const std::string& path, const Wording& w)
    {
        if (answer.order.empty() || !answer.problems.empty()) return answer.problems;
        const auto [earlier, added] = shafts_.emplace(answer.key, path);
        if (added) return {};
        const Said again = shaft_again(answer.order, earlier->second, w);
        return {{answer.place, again.wrong, again.right}};
    }

    Outcome hand_out_answer(const IdentifyAnswer& answer, const Wishes& wishes, Console& console) const
    {
        const std::string text = documents(answer, {Format::terminal}, wishes).front().bytes;
        std::vector<Document> made = documents(answer, options().formats, wishes);
        if (options().to_standard_output()) {
            console.err << text;
            return hand_out_json(made.front().bytes, console);
        }
        if (job_) made.push_back(job_of(answer));
        return hand_out(made, text, options(), console);
    }

    bool job_ = false;
    std::map<std::string, std::string> shafts_;  // the files by their shafts' keys
};

}  // namespace

std::unique_ptr<Command> make_identify() { return std::make_unique<IdentifyCommand>(); }

}  // namespace shaftcut
