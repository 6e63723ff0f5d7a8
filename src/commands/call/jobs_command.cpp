#include "call/jobs_command.hpp"

#include <algorithm>
#include <ostream>

#include "call/hand_out.hpp"
#include "commands/usage_faults.hpp"

namespace shaftcut {
namespace {

CommonOptionTexts texts_for(const JobAnswers& answers)
{
    CommonOptionTexts texts;
    texts.command = answers.command;
    texts.formats = answers.default_formats;
    texts.offered = offered_formats(answers.question);
    return texts;
}

}  // namespace

JobsCommand::JobsCommand(const JobAnswers& answers) : EngineCommand(texts_for(answers)), answers_(answers) {}

boost::program_options::options_description JobsCommand::described(const Wording& w)
{
    auto options = common_options(texts(), w);
    if (answers_.may_have_tag) options.add_options()("tag", boost::program_options::bool_switch(&tag_), say(OptionText::tag, w).c_str());
    return options;
}

std::string JobsCommand::check(const Wording& w)
{
    const auto comes = [&](Format format) { return comes_as(answers_.question, format); };
    if (!std::all_of(options().formats.begin(), options().formats.end(), comes)) return formats_fault(answers_.command, texts().offered, w);
    if (tag_ && !options().asks_for(Format::pdf)) return tag_without_pdf(w);
    return files().empty() ? no_file(answers_.command, w) : "";
}

Outcome JobsCommand::answer(const Engine& engine, Console& console)
{
    Outcome outcome = make_folder(options(), console);
    if (outcome != Outcome::answered) return outcome;
    Wishes wished = wishes(console);
    wished.tag = tag_;
    for (std::size_t i = 0; i < files().size(); ++i) {
        outcome = std::max(outcome, run_job(files()[i], engine, wished, console));
        if (files().size() > 1) show_progress(i + 1, files().size(), Counted::jobs, console);
    }
    return outcome;
}

Outcome JobsCommand::run_job(const std::string& path, const Engine& engine, const Wishes& wishes, Console& console)
{
    const auto source = load_or_report(path, console);
    if (!source) return Outcome::unwritable;
    const Answer answer = (engine.*answers_.ask)(*source, wishes);
    if (const Outcome faults = report(order_files_.problems_of(answer, path, console.wording), console); faults != Outcome::answered) return faults;
    return std::max(refuses(answer) ? Outcome::refused : Outcome::answered, hand_out_or_report(answer, wishes, console));
}

// Where documents cannot be made (no memory, no font, no room for temporary files) the other jobs are still done.
Outcome JobsCommand::hand_out_or_report(const Answer& answer, const Wishes& wishes, Console& console) const
{
    return or_report(order_named(answer.order, console.wording), console, [&] { return hand_out_answer(answer, wishes, console); });
}

Outcome JobsCommand::hand_out_answer(const Answer& answer, const Wishes& wishes, Console& console) const
{
    const std::string text = documents(answer, {Format::terminal}, wishes).front().bytes;
    const std::vector<Document> made = documents(answer, options().formats, wishes);
    if (options().to_standard_output()) {
        console.err << text;
        return hand_out_json(made.front().bytes, console);
    }
    const Outcome outcome = hand_out(made, text, options(), console);
    if (outcome != Outcome::answered) return outcome;
    say_why_no_tag(answer, console);
    // A tag is worth what its answer is: one of an earlier answer goes out of use with it.
    std::vector<std::string> names = answers_.may_have_tag ? tag_document_names(answer) : std::vector<std::string>();
    if (refuses(answer))
        for (const std::string& name : document_names(answer, file_formats())) names.push_back(name);
    return supersede_others(names, made, options(), console);
}

void JobsCommand::say_why_no_tag(const Answer& answer, Console& console) const
{
    const std::string why = tag_ ? why_no_tag(answer) : "";
    if (!why.empty()) words(console) << "  " << why << "\n";
}

}  // namespace shaftcut
