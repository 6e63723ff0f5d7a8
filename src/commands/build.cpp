// shaftcut build: parts, blanks and saw plans for shafts made to order.
#include <algorithm>
#include <chrono>
#include <filesystem>
#include <ostream>
#include <sstream>

#include "batch_json.hpp"
#include "batch_saw.hpp"
#include "commands.hpp"
#include "saw_options.hpp"
#include "shaftcut/commands/configuration.hpp"
#include "shaftcut/commands/hand_out.hpp"
#include "shaftcut/commands/interrupt.hpp"
#include "shaftcut/documents/build_documents.hpp"
#include "shaftcut/documents/build_terminal.hpp"
#include "shaftcut/documents/labels_sheet.hpp"
#include "shaftcut/reading/orders_reader.hpp"
#include "shaftcut/reading/pieces.hpp"
#include "shaftcut/words/text.hpp"

namespace shaftcut {
namespace {

namespace po = boost::program_options;

CommonOptionTexts common_texts()
{
    CommonOptionTexts texts;
    texts.formats = "pdf,xlsx,json";
    texts.offered = "pdf, xlsx and json";
    texts.default_units = "an XML list's own, mm for CSV";
    texts.units_of = "what is written and of lengths in CSV lists that name none";
    return texts;
}

po::options_description build_options(CommonOptionTexts& common, SawOptionTexts& texts)
{
    po::options_description described = common_options(common);
    add_saw_options(described, texts, "bars of each profile that it names, instead of the workshop's: a file with the columns profile, length, count and cost");
    return described;
}

std::string formats_fault(const std::vector<Format>& formats)
{
    const auto written = [](Format format) { return format == Format::pdf || format == Format::xlsx || format == Format::json; };
    if (std::all_of(formats.begin(), formats.end(), written)) return {};
    return "--formats: build writes pdf, xlsx and json";
}

enum class ListKind { csv, xml };

// By the file's name, in either case.
std::optional<ListKind> kind_of(const std::string& path)
{
    std::string end = std::filesystem::path(path).extension().string();
    std::transform(end.begin(), end.end(), end.begin(), [](unsigned char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : static_cast<char>(c); });
    if (end == ".csv") return ListKind::csv;
    return end == ".xml" ? std::optional(ListKind::xml) : std::nullopt;
}

class BuildCommand final : public Command {
public:
    std::string set_up(const std::vector<std::string>& arguments) override
    {
        if (std::string fault = parse_arguments(arguments, described_, files_); !fault.empty()) return fault;
        CheckedOptions result = checked(common_texts_);
        if (!result.fault.empty()) return result.fault;
        options_ = std::move(result.options);
        if (std::string fault = formats_fault(options_.formats); !fault.empty()) return fault;
        CheckedBladeOptions blade = checked(texts_, options_.units.value_or(Units::mm));
        if (!blade.fault.empty()) return blade.fault;
        blade_ = blade.options;
        return files_fault();
    }

    Outcome run(Console& console) override
    {
        const ConfigurationRead read = read_configuration(options_.config, console);
        if (!read.configuration) return read.outcome;
        const auto source = load_or_report(files_.front(), console);
        OrderList list = source ? read_orders(*source, read.configuration->catalogue) : OrderList();
        report(list.problems, console);
        const Outcome faults = !source ? Outcome::unwritable : list.problems.empty() ? Outcome::answered : Outcome::bad_input;
        const auto stock = read_own_stock(read.configuration->workshop, console);
        if (!stock.first || list.orders.empty()) return std::max(faults, stock.second);
        if (const Outcome outcome = make_folder(options_, console); outcome != Outcome::answered) return outcome;
        if (const Outcome outcome = check_names(names_for(list), options_, console); outcome != Outcome::answered) return outcome;
        return std::max(faults, build(std::move(list), *read.configuration, *stock.first, console));
    }

    std::string help() const override
    {
        std::ostringstream text;
        text << "shaftcut build ORDERS.csv|ORDERS.xml\n\nMakes out a whole list of shafts made to order: an assembly work order of each (PDF) with\n"
                "its blanks, checks, parts and operations; for all of them together saw plans, labels (PDF), a workbook (XLSX) and the\n"
                "figures (JSON). Ctrl-C ends the search for saw plans with the best so far.\n\n"
             << described_;
        return text.str();
    }

private:
    std::string files_fault() const
    {
        if (files_.empty()) return "no list is named; give one file of orders, CSV or XML";
        if (files_.size() > 1) return shaftcut::quoted(files_[1]) + " is not expected; build takes one file of orders";
        if (std::string fault = list_name_fault(files_.front(), "orders"); !fault.empty()) return fault;
        return kind_of(files_.front()) ? "" : shaftcut::quoted(files_.front()) + " is neither .csv nor .xml; name it after what it holds";
    }

    OrderList read_orders(const Source& source, const Catalogue& catalogue) const
    {
        return kind_of(files_.front()) == ListKind::csv ? read_orders_csv(source, catalogue, options_.units.value_or(Units::mm)) : read_orders_xml(source, catalogue);
    }

    std::string list_name() const { return std::filesystem::path(files_.front()).stem().string(); }

    std::vector<std::string> names_for(const OrderList& list) const
    {
        std::vector<std::string> names;
        if (writes_papers())
            for (const BuildOrder& order : list.orders) names.push_back(assembly_document_name(order.order));
        for (const Format format : options_.formats)
            for (std::string& name : batch_document_names(list_name(), format)) names.push_back(std::move(name));
        return names;
    }

    // The bars to saw from, those of the stock file for the profiles that it names; or the outcome to end with, its reasons said.
    std::pair<std::optional<BatchSaw>, Outcome> read_own_stock(const Workshop& workshop, Console& console) const
    {
        BatchSaw saw{blade_.kerf.value_or(workshop.saw.kerf), blade_.trim_start, blade_.trim_end, workshop.saw.reusable_leftover.value_or(Length()),
                     workshop.stock, workshop.profile_stock};
        if (texts_.stock.empty()) return {std::move(saw), Outcome::answered};
        const auto source = load_or_report(texts_.stock, console);
        if (!source) return {std::nullopt, Outcome::unwritable};
        const auto read = read_profile_stock(source->bytes, texts_.stock, options_.units.value_or(Units::mm));
        if (const auto* problems = std::get_if<Problems>(&read)) {
            report(*problems, console);
            return {std::nullopt, Outcome::bad_input};
        }
        const auto& own = std::get<std::vector<ProfileStock>>(read);
        std::erase_if(saw.profile_stock, [&](const ProfileStock& bars) {
            return std::any_of(own.begin(), own.end(), [&](const ProfileStock& one) { return one.profile == bars.profile; });
        });
        saw.profile_stock.insert(saw.profile_stock.end(), own.begin(), own.end());
        return {std::move(saw), Outcome::answered};
    }

    Outcome build(OrderList list, const Configuration& configuration, const BatchSaw& saw, Console& console) const
    {
        Workshop workshop = configuration.workshop;
        workshop.profile_stock = saw.profile_stock;  // what no bar of these is long enough for is refused
        const Units units = options_.units.value_or(list.units);
        BatchBuilder builder(list_name(), configuration.workshop.name, units);
        BatchJsonOutput json(options_, list_name(), console);
        Outcome outcome = Outcome::answered;
        const std::size_t count = list.orders.size();
        Batch batch;
        {
            const InterruptWatch interrupt;  // so that what was begun is taken away or made whole
            for (; !list.orders.empty(); list.orders.pop_front()) {
                if (interrupt.came()) return stopped(count - list.orders.size(), count, console);
                const BuildOrder& order = list.orders.front();
                const BuildPlan plan = plan_build(order, configuration.catalogue, workshop, units);
                if (!plan.built) outcome = std::max(outcome, Outcome::refused);
                builder.add(plan, *find_series(configuration.catalogue, *order.shaft.series));
                json.add(plan);
                outcome = std::max(outcome, or_report("order " + plan.order, console, [&] { return hand_out_order(plan, console); }));
                show_progress(count - list.orders.size() + 1, count, "orders", console);
            }
            batch = plan_batch(builder.take(), saw, {blade_.seconds, workshop.saw.reusable_leftover, workshop.saw.least_cut, workshop.saw.plus_minus}, console);
            if (told_to_end()) return stopped(count, count, console);
        }
        if (std::any_of(batch.plans.begin(), batch.plans.end(), [](const ProfilePlan& plan) { return !plan.order; })) outcome = std::max(outcome, Outcome::refused);
        words(console) << terminal_text(batch, colour(console));
        // First, for until its file has its name the process cannot be ended at once, and labels may take long.
        outcome = std::max(outcome, json.finish(batch.plans));
        return std::max(outcome, hand_out_batch(batch, console));
    }

    Outcome stopped(std::size_t done, std::size_t of, Console& console) const
    {
        console.err << files_.front() << ": " << (told_to_end() ? "told to end" : "stopped by Ctrl-C") << " after " << done << " of " << of << " orders; run it again for the others and for the list's own documents\n";
        return Outcome::unwritable;
    }

    // Each order's paper is written at once: none is kept.
    Outcome hand_out_order(const BuildPlan& plan, Console& console) const
    {
        const std::string text = terminal_text(plan, colour(console));
        if (!options_.to_standard_output() && writes_papers()) return hand_out({assembly_document(plan, options_.paper)}, text, options_, console);
        words(console) << text;
        return Outcome::answered;
    }

    // One format's documents at a time: not all are held.
    Outcome hand_out_batch(const Batch& batch, Console& console) const
    {
        if (options_.to_standard_output()) return Outcome::answered;
        Outcome outcome = labels_outcome(batch, console);
        for (const Format format : options_.formats)
            outcome = std::max(outcome, or_report(files_.front(), console, [&] { return hand_out_format(batch, format, console); }));
        return outcome;
    }

    Outcome hand_out_format(const Batch& batch, Format format, Console& console) const
    {
        const auto drawn = [&](std::size_t sheets, std::size_t of) { show_progress(sheets, of, "sheets of labels", console); };
        const auto documents = batch_documents(batch, format, options_.paper, drawn);
        const Outcome outcome = documents.empty() ? Outcome::answered : hand_out(documents, "", options_, console);
        return std::max(outcome, take_away_old(documents, format, console));
    }

    // What an earlier list gave, and this one does not give again, would lie beside the new documents as if it belonged to them: pieces
    // to saw of an order that is refused by now.
    Outcome take_away_old(const std::vector<Document>& made, Format format, Console& console) const
    {
        if (!options_.replace || format == Format::json) return Outcome::answered;
        std::vector<std::string> old = batch_document_names(list_name(), format);
        std::erase_if(old, [&](const std::string& name) { return std::any_of(made.begin(), made.end(), [&](const Document& document) { return document.name == name; }); });
        return remove_documents(old, options_, console);
    }

    // Where documents cannot be made (no memory, no font, no room for temporary files) the others are still made.
    template <class HandOut>
    static Outcome or_report(const std::string& whose, Console& console, const HandOut& hand_out)
    {
        try {
            return hand_out();
        } catch (const std::exception& fault) {
            console.err << whose << ": " << sentence_of(fault) << "\n";
            return Outcome::unwritable;
        }
    }

    Outcome labels_outcome(const Batch& batch, Console& console) const
    {
        if (!writes_papers() || count_labels(batch) <= most_labels) return Outcome::answered;
        console.err << files_.front() << ": " << count_labels(batch) << " labels are more than the " << most_labels << " of one file, so none are made; split the list\n";
        return Outcome::refused;
    }

    bool writes_papers() const { return std::find(options_.formats.begin(), options_.formats.end(), Format::pdf) != options_.formats.end(); }

    // People's words go where the documents do not.
    std::ostream& words(const Console& console) const { return options_.to_standard_output() ? console.err : console.out; }
    Colour colour(const Console& console) const
    {
        const bool terminal = options_.to_standard_output() ? console.progress : console.colour;
        return terminal ? Colour::ansi : Colour::none;
    }

    // Once a call has taken more than a second, says how far it is.
    void show_progress(std::size_t done, std::size_t of, const char* what, Console& console) const
    {
        const bool long_call = std::chrono::steady_clock::now() - started_ > std::chrono::seconds(1);
        if (!console.progress || !long_call) return;
        console.err << "\r" << done << " of " << of << " " << what << (done == of ? "\n" : "") << std::flush;
    }

    CommonOptionTexts common_texts_ = common_texts();
    SawOptionTexts texts_;
    po::options_description described_ = build_options(common_texts_, texts_);
    std::vector<std::string> files_;
    CommonOptions options_;
    BladeOptions blade_;
    std::chrono::steady_clock::time_point started_ = std::chrono::steady_clock::now();
};

}  // namespace

std::unique_ptr<Command> make_build() { return std::make_unique<BuildCommand>(); }

}  // namespace shaftcut
