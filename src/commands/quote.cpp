// shaftcut quote: what the job costs.
#include <algorithm>
#include <cstdlib>
#include <ostream>

#include "call/engine_command.hpp"
#include "call/hand_out.hpp"
#include "commands.hpp"
#include "commands/usage_faults.hpp"
#include "day.hpp"
#include "files/load.hpp"
#include "files/order_files.hpp"

namespace shaftcut {
namespace {

namespace po = boost::program_options;

CommonOptionTexts quote_texts()
{
    CommonOptionTexts texts;
    texts.command = CommandName::quote;
    texts.offered = offered_formats(Question::quote);
    texts.reads_prices = true;
    return texts;
}

// The day on which a build that is to come out the same again was made; nothing where it is not set.
std::string day_of_source_date()
{
    const char* const seconds = std::getenv("SOURCE_DATE_EPOCH");
    if (!seconds) return {};
    const auto parsed = parse_whole(seconds, 0, 253'402'300'799);  // the end of the year 9999
    const auto* read = std::get_if<std::int64_t>(&parsed);
    if (!read) return {};
    return day_text(later({1970, 1, 1}, static_cast<int>(*read / (24 * 60 * 60))));
}

class QuoteCommand final : public EngineCommand {
public:
    QuoteCommand() : EngineCommand(quote_texts()) {}

private:
    po::options_description described(const Wording& w) override
    {
        auto options = common_options(texts(), w);
        options.add_options()("issued", po::value(&wishes_.issued)->value_name("DATE"), say(OptionText::issued, w).c_str())
            ("discount", po::value(&wishes_.discount)->value_name("P%|AMOUNT"), say(OptionText::discount, w).c_str())
            ("service", po::value(&wishes_.services)->value_name("NAME")->composing(), say(OptionText::service, w).c_str())
            ("alternatives", po::bool_switch(&wishes_.alternatives), say(OptionText::alternatives, w).c_str())
            ("before-measuring", po::bool_switch(&wishes_.before_measuring), say(OptionText::before_measuring, w).c_str())
            ("list", po::value(&list_)->value_name("NAME"), say(OptionText::list, w).c_str());
        return options;
    }

    std::string check(const Wording& w) override
    {
        const auto comes = [](Format format) { return comes_as(Question::quote, format); };
        if (!std::all_of(options().formats.begin(), options().formats.end(), comes)) return formats_fault(CommandName::quote, texts().offered, w);
        if (!wishes_.issued.empty() && !parse_day(wishes_.issued)) return no_day("--issued", wishes_.issued, w);
        if (wishes_.before_measuring && (wishes_.alternatives || !wishes_.discount.empty())) return estimate_takes_neither(w);
        if (wishes_.issued.empty()) wishes_.issued = day_of_source_date();
        return files().empty() ? no_file(CommandName::quote, w) : "";
    }

    Outcome answer(const Engine& engine, Console& console) override
    {
        Outcome outcome = make_folder(options(), console);
        if (outcome != Outcome::answered) return outcome;
        wishes_.quoted = [&](std::size_t done, std::size_t of) { show_progress(done, of, Counted::orders, console); };
        for (std::size_t i = 0; i < files().size(); ++i) {
            outcome = std::max(outcome, quote_file(files()[i], engine, console));
            if (files().size() > 1) show_progress(i + 1, files().size(), Counted::jobs, console);
        }
        return outcome;
    }

    Outcome quote_file(const std::string& path, const Engine& engine, Console& console)
    {
        const auto source = load_or_report(path, console);
        if (!source) return Outcome::unwritable;
        Wishes wished = wishes(console);
        wished.list = list_;
        const QuoteAnswer answer = engine.quote(*source, wished, wishes_);
        if (!answer.why_not.empty()) {
            console.err << "shaftcut: " << answer.why_not << "\n";
            return Outcome::bad_input;
        }
        Outcome outcome = report(order_files_.problems_of(answer, path, console.wording), console);
        if (outcome != Outcome::answered) return outcome;
        for (const QuotePaper& paper : answer.papers) {
            outcome = std::max(outcome, is_open(paper.quote) ? Outcome::refused : Outcome::answered);
            outcome = std::max(outcome, or_report(order_named(paper.quote.number, console.wording), console, [&] { return hand_out_paper(paper, wished, console); }));
        }
        return outcome;
    }

    Outcome hand_out_paper(const QuotePaper& paper, const Wishes& wishes, Console& console) const
    {
        const std::string text = documents(paper, {Format::terminal}, wishes).front().bytes;
        const std::vector<Document> made = documents(paper, options().formats, wishes);
        if (options().to_standard_output()) {
            console.err << text;
            return hand_out_json(made.front().bytes, console);
        }
        const Outcome outcome = hand_out(made, text, options(), console);
        if (outcome != Outcome::answered) return outcome;
        // An earlier offer of another form would lie beside this one as if it held still.
        return supersede_others(quote_document_names(paper, file_formats()), made, options(), console);
    }

    QuoteWishes wishes_;
    std::string list_;
    OrderFiles order_files_;
};

}  // namespace

std::unique_ptr<Command> make_quote() { return std::make_unique<QuoteCommand>(); }

}  // namespace shaftcut
