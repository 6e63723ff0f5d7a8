// shaftcut saw: a saw plan for any list of pieces on any stock.
#include <fmt/format.h>

#include <chrono>
#include <filesystem>
#include <ostream>
#include <sstream>

#include "commands.hpp"
#include "saw_options.hpp"
#include "saw_progress.hpp"
#include "shaftcut/commands/configuration.hpp"
#include "shaftcut/commands/hand_out.hpp"
#include "shaftcut/commands/interrupt.hpp"
#include "shaftcut/documents/json.hpp"
#include "shaftcut/documents/terminal.hpp"
#include "shaftcut/reading/pieces.hpp"
#include "shaftcut/words/text.hpp"

namespace shaftcut {
namespace {

namespace po = boost::program_options;

// Pieces on bars to be cut differently: what one sheet or workbook is asked to hold.
constexpr std::size_t most_rows_on_paper = 20'000;

CommonOptionTexts common_texts()
{
    CommonOptionTexts texts;
    texts.default_units = "mm";
    texts.units_of = "what is written and of lengths in the lists that name none";
    return texts;
}

po::options_description saw_options(CommonOptionTexts& common, SawOptionTexts& texts)
{
    po::options_description described = common_options(common);
    add_saw_options(described, texts, "bars: a file with the columns length, count and cost (default: the workshop's stock)");
    return described;
}

struct SawOptions : BladeOptions {
    CommonOptions common;
    Units units() const { return common.units.value_or(Units::mm); }
};

// A list of the call, read; or the outcome to end with, its reasons said.
template <class List>
struct ListRead {
    std::optional<List> list;
    Outcome outcome = Outcome::answered;
};

template <class List>
ListRead<List> read_list(const std::string& path, Units units, std::variant<List, Problems> (*read)(std::string_view, const std::string&, Units), Console& console)
{
    const auto source = load_or_report(path, console);
    if (!source) return {std::nullopt, Outcome::unwritable};
    auto result = read(source->bytes, path, units);
    if (const auto* problems = std::get_if<Problems>(&result)) {
        report(*problems, console);
        return {std::nullopt, Outcome::bad_input};
    }
    return {std::get<List>(std::move(result)), Outcome::answered};
}

std::size_t rows_on_paper(const SawOrder& order)
{
    std::size_t rows = 0;
    for (const BarLayout& bar : order.bars) rows += bar.pieces.size();
    return rows;
}

class SawCommand final : public Command {
public:
    std::string set_up(const std::vector<std::string>& arguments) override
    {
        if (std::string fault = parse_arguments(arguments, described_, files_); !fault.empty()) return fault;
        CheckedOptions result = checked(common_texts_);
        if (!result.fault.empty()) return result.fault;
        options_.common = std::move(result.options);
        const CheckedBladeOptions blade = checked(texts_, options_.units());
        if (!blade.fault.empty()) return blade.fault;
        static_cast<BladeOptions&>(options_) = blade.options;
        if (files_.empty()) return "no list is named; give one file of pieces";
        if (std::string fault = list_name_fault(files_.front(), "pieces"); !fault.empty()) return fault;
        return files_.size() > 1 ? shaftcut::quoted(files_[1]) + " is not expected; saw takes one file of pieces" : "";
    }

    Outcome run(Console& console) override
    {
        const ConfigurationRead read = read_configuration(options_.common.config, console);
        if (!read.configuration) return read.outcome;
        const Workshop& workshop = read.configuration->workshop;
        const auto pieces = read_list(files_.front(), options_.units(), read_pieces, console);
        auto stock = read_stock_of(workshop, console);
        if (const Outcome outcome = std::max(pieces.outcome, stock.outcome); outcome != Outcome::answered) return outcome;
        if (const Outcome outcome = make_folder(options_.common, console); outcome != Outcome::answered) return outcome;
        if (const Outcome outcome = check_names(names(), options_.common, console); outcome != Outcome::answered) return outcome;
        return plan(*pieces.list, std::move(*stock.list), workshop, console);
    }

    std::string help() const override
    {
        std::ostringstream text;
        text << "shaftcut saw PIECES.csv\n\nPlans how to saw a list of pieces out of stock bars at the least cost: a saw sheet (PDF), a workbook (XLSX) and the\n"
                "figures (JSON). The file has the columns length, count and label. Ctrl-C ends the search with the best plan so far.\n\n"
             << described_;
        return text.str();
    }

private:
    ListRead<std::vector<SawStock>> read_stock_of(const Workshop& workshop, Console& console) const
    {
        if (!texts_.stock.empty()) return read_list(texts_.stock, options_.units(), read_stock, console);
        if (!workshop.stock.empty()) return {workshop.stock, Outcome::answered};
        console.err << options_.common.config << "/workshop.xml holds no stock; give --stock FILE, or add stock to it\n";
        return {std::nullopt, Outcome::bad_input};
    }

    std::string list_name() const { return std::filesystem::path(files_.front()).stem().string(); }

    std::vector<std::string> names() const
    {
        std::vector<std::string> names;
        for (const Format format : options_.common.formats) names.push_back(saw_document_name(list_name(), format));
        return names;
    }

    SawTask task_of(const PieceList& pieces, std::vector<SawStock> stock, const Workshop& workshop) const
    {
        return {pieces.pieces, std::move(stock), options_.kerf.value_or(workshop.saw.kerf), options_.trim_start, options_.trim_end,
                workshop.saw.reusable_leftover.value_or(Length())};
    }

    Outcome plan(const PieceList& pieces, std::vector<SawStock> stock, const Workshop& workshop, Console& console) const
    {
        SawTask task = task_of(pieces, std::move(stock), workshop);
        SawEnd end = SawEnd::finished;
        SawClock clock(options_.seconds, console);
        SawOutcome outcome;
        {
            const InterruptWatch interrupt;
            const auto left = [&] { return interrupt.came() ? 0.0 : clock.seconds_left(); };
            outcome = plan_saw(task, {left, [&](std::int64_t cost, std::int64_t bound) { clock.news(cost, bound); }});
            if (interrupt.came()) end = SawEnd::interrupted;
            else if (clock.seconds_left() <= 0) end = SawEnd::time_was_up;
        }
        clock.clear();
        if (const auto* refusal = std::get_if<SawRefusal>(&outcome)) return refuse(*refusal, pieces, console);
        const SawHeading heading{list_name(), workshop.name, options_.units(), workshop.saw.reusable_leftover, workshop.saw.least_cut, workshop.saw.plus_minus};
        return hand_out_plan(lay_out(heading, std::move(task), std::get<SawPlan>(std::move(outcome)), end, clock.seconds_taken()), console);
    }

    // Each piece concerned with its place, or the list as a whole.
    Outcome refuse(const SawRefusal& refusal, const PieceList& pieces, Console& console) const
    {
        if (refusal.pieces.empty()) console.err << files_.front() << ": " << refusal.wrong << "; " << refusal.right << "\n";
        Faults faults(files_.front());
        for (const std::size_t piece : refusal.pieces) {
            const std::string wrong = refusal.reason == SawRefusal::Reason::piece_fits_no_bar
                                          ? saw_figure_with_unit(pieces.pieces[piece].length, options_.units()) + " is longer than every bar" : refusal.wrong;
            faults.add(pieces.spots[piece], wrong, refusal.right);
        }
        report(faults.listed(), console);
        return Outcome::refused;
    }

    Outcome hand_out_plan(const SawOrder& order, Console& console) const
    {
        if (options_.common.to_standard_output()) {
            console.err << terminal_text(order, console.progress ? Colour::ansi : Colour::none);
            return hand_out_json(json_of(order, JsonLayout::one_line), console);
        }
        const bool json_only = options_.common.formats == std::vector{Format::json};
        if (const std::size_t rows = rows_on_paper(order); rows > most_rows_on_paper && !json_only) {
            console.err << fmt::format("{}: the plan has {} pieces on bars that are cut differently, more than the {} that a sheet or workbook holds; "
                                       "ask for --formats json, or split the list\n", files_.front(), rows, most_rows_on_paper);
            return Outcome::refused;
        }
        std::vector<Document> documents;
        for (const Format format : options_.common.formats) documents.push_back(document_of(order, format, options_.common.paper));
        return hand_out(documents, terminal_text(order, console.colour ? Colour::ansi : Colour::none), options_.common, console);
    }

    CommonOptionTexts common_texts_ = common_texts();
    SawOptionTexts texts_;
    po::options_description described_ = saw_options(common_texts_, texts_);
    std::vector<std::string> files_;
    SawOptions options_;
};

}  // namespace

std::unique_ptr<Command> make_saw() { return std::make_unique<SawCommand>(); }

}  // namespace shaftcut
