// shaftcut build: parts, blanks and saw plans for shafts made to order.
#include <algorithm>
#include <ostream>

#include "call/batch_json.hpp"
#include "call/engine_command.hpp"
#include "call/hand_out.hpp"
#include "call/learn.hpp"
#include "call/saw_options.hpp"
#include "call/saw_progress.hpp"
#include "commands.hpp"
#include "commands/usage_faults.hpp"
#include "plate/plate_words.hpp"

namespace shaftcut {
namespace {

CommonOptionTexts build_texts()
{
    CommonOptionTexts texts;
    texts.command = CommandName::build;
    texts.units_text = UnitsText::of_orders;
    texts.offered = offered_formats(Question::build);
    return texts;
}

class BuildCommand final : public EngineCommand {
public:
    BuildCommand() : EngineCommand(build_texts()) {}

private:
    boost::program_options::options_description described(const Wording& w) override
    {
        auto options = common_options(texts(), w);
        add_saw_options(options, saw_texts_, OptionText::stock_of_orders, w);
        options.add_options()("list", boost::program_options::value(&list_)->value_name("NAME"), say(OptionText::list, w).c_str())(
            "learn", boost::program_options::bool_switch(&learn_), say(OptionText::learn, w).c_str())(
            "plate", boost::program_options::bool_switch(&plate_), say(OptionText::plate, w).c_str());
        return options;
    }

    std::string check(const Wording& w) override
    {
        const auto comes = [](Format format) { return comes_as(Question::build, format); };
        if (!std::all_of(options().formats.begin(), options().formats.end(), comes)) return formats_fault(CommandName::build, texts().offered, w);
        if (plate_ && !options().asks_for(Format::pdf)) return plate_without_pdf(w);
        const auto read = checked(saw_texts_, options().units.value_or(Units::mm), w);
        if (!read.fault.empty()) return read.fault;
        saw_ = read.value;
        return files_fault(w);
    }

    std::string files_fault(const Wording& w) const
    {
        if (files().empty()) return no_file(CommandName::build, w);
        if (files().size() > 1) return not_expected(CommandName::build, files()[1], w);
        if (std::string fault = list_name_fault(Question::build, files().front(), w); !fault.empty()) return fault;
        if (!names_list_of_orders(files().front())) return no_list_suffix(files().front(), w);
        if (learn_ && list_.empty()) return learn_without_list(w);
        return (learn_ || !list_.empty()) && !has_headings(files().front()) ? list_of_xml(w) : "";
    }

    Outcome answer(const Engine& engine, Console& console) override
    {
        const auto list = load_or_report(files().front(), console);
        if (learn_) return list ? learn(engine, *list, {options().config, list_, options().units}, console) : Outcome::unwritable;
        const bool own_stock = !saw_texts_.stock.empty();
        if (own_stock) saw_.stock = load_or_report(saw_texts_.stock, console);
        wishes_ = wishes(console);
        wishes_.list = list_;
        wishes_.plate = plate_;
        if (!list) return std::max(Outcome::unwritable, report(Engine::stock_problems(Question::build, wishes_, saw_), console));
        wishes_.labels_drawn = [&](std::size_t sheets, std::size_t of) { show_progress(sheets, of, Counted::label_sheets, console); };
        BuildStart start = engine.build(*list, wishes_, saw_);
        if (!start.why_not.empty()) {
            console.err << "shaftcut: " << start.why_not << "\n";
            return Outcome::bad_input;
        }
        const Outcome faults = report(start.problems, console);
        if (own_stock && !saw_.stock) return Outcome::unwritable;
        if (!start.run) return faults;
        if (const Outcome outcome = make_folder(options(), console); outcome != Outcome::answered) return outcome;
        if (const Outcome outcome = check_names(start.run->document_names(options().formats, plate_), options(), console); outcome != Outcome::answered) return outcome;
        return std::max(faults, build(*start.run, console));
    }

    Outcome build(BuildRun& run, Console& console) const
    {
        BatchJsonOutput json(options(), run.name(), console);
        Outcome outcome = Outcome::answered;
        const std::size_t count = run.left();
        Batch batch;
        {
            const InterruptWatch interrupt;  // so that what was begun is taken away or made whole
            while (run.left() > 0) {
                if (interrupt.came()) return ended(count - run.left(), count, console);
                const BuildPlan plan = run.next();
                if (!plan.built) outcome = std::max(outcome, Outcome::refused);
                json.add(plan);
                outcome = std::max(outcome, or_report(order_named(plan.order, console.wording), console, [&] { return hand_out_order(plan, console); }));
                show_progress(count - run.left(), count, Counted::orders, console);
            }
            SawProgress progress(console);
            batch = run.finish(progress.means(interrupt));
            if (told_to_end()) return ended(count, count, console);
        }
        if (std::any_of(batch.plans.begin(), batch.plans.end(), [](const ProfilePlan& plan) { return !plan.order; })) outcome = std::max(outcome, Outcome::refused);
        const bool refused = outcome == Outcome::refused;
        words(console) << documents(batch, {Format::terminal}, wishes_).front().bytes;
        if (plate_) words(console) << plates_bear_no_mark(console.wording) << "\n";
        // First, for until its file has its name the process cannot be ended at once, and labels may take long.
        outcome = std::max(outcome, json.finish(batch.plans));
        return std::max(outcome, hand_out_batch(batch, refused, console));
    }

    Outcome ended(std::size_t done, std::size_t of, Console& console) const
    {
        const StoppedBy by = told_to_end() ? StoppedBy::end : StoppedBy::interrupt;
        console.err << files().front() << ": " << stopped(by, done, of, console.wording) << "\n";
        return Outcome::unwritable;
    }

    // Each order's paper is written at once: none is kept.
    Outcome hand_out_order(const BuildPlan& plan, Console& console) const
    {
        const std::string text = documents(plan, {Format::terminal}, wishes_).front().bytes;
        if (options().to_standard_output() || !options().asks_for(Format::pdf)) words(console) << text;
        const std::vector<Document> papers = documents(plan, options().formats, wishes_);
        const Outcome outcome = papers.empty() ? Outcome::answered : hand_out(papers, text, options(), console);
        if (outcome != Outcome::answered || plan.built) return outcome;
        std::vector<std::string> names = assembly_document_names(plan.order, file_formats());
        for (std::string& name : plate_document_names(plan.order)) names.push_back(std::move(name));
        return supersede_others(names, papers, options(), console);
    }

    // One format's documents at a time: not all are held.
    Outcome hand_out_batch(const Batch& batch, bool refused, Console& console) const
    {
        if (options().to_standard_output()) return Outcome::answered;
        Outcome outcome = labels_outcome(batch, console);
        for (const Format format : file_formats())
            if (options().asks_for(format)) outcome = std::max(outcome, or_report(files().front(), console, [&] { return hand_out_format(batch, format, console); }));
            else if (refused) outcome = std::max(outcome, supersede_others(batch_document_names(batch.name, {format}), {}, options(), console));
        return outcome;
    }

    // What an earlier list gave, and this one does not give again, would be of orders that are refused by now: pieces to saw for nobody.
    Outcome hand_out_format(const Batch& batch, Format format, Console& console) const
    {
        if (format == Format::json) return Outcome::answered;  // it is written piece by piece
        const std::vector<Document> made = documents(batch, {format}, wishes_);
        const Outcome outcome = made.empty() ? Outcome::answered : hand_out(made, "", options(), console);
        return std::max(outcome, supersede_others(batch_document_names(batch.name, {format}), made, options(), console));
    }

    Outcome labels_outcome(const Batch& batch, Console& console) const
    {
        const std::string why = options().asks_for(Format::pdf) ? why_no_labels(batch) : "";
        if (why.empty()) return Outcome::answered;
        console.err << files().front() << ": " << why << "\n";
        return Outcome::refused;
    }

    SawOptionTexts saw_texts_;
    std::string list_;    // of --list
    bool learn_ = false;
    bool plate_ = false;
    SawWishes saw_;
    Wishes wishes_;
};

}  // namespace

std::unique_ptr<Command> make_build() { return std::make_unique<BuildCommand>(); }

}  // namespace shaftcut
