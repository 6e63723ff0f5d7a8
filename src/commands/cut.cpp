// shaftcut cut: cut sheets and work orders for shafts that exist.
#include <algorithm>
#include <chrono>
#include <map>
#include <sstream>
#include <ostream>

#include "commands.hpp"
#include "shaftcut/commands/configuration.hpp"
#include "shaftcut/commands/hand_out.hpp"
#include "shaftcut/commands/options.hpp"
#include "shaftcut/documents/json.hpp"
#include "shaftcut/documents/terminal.hpp"
#include "shaftcut/reading/job_reader.hpp"
#include "shaftcut/words/text.hpp"

namespace shaftcut {
namespace {

class Cut final : public Command {
public:
    std::string set_up(const std::vector<std::string>& arguments) override
    {
        if (const std::string fault = parse_arguments(arguments, described_, files_); !fault.empty()) return fault;
        const CheckedOptions result = checked(texts_);
        options_ = result.options;
        if (!result.fault.empty()) return result.fault;
        return files_.empty() ? "no job is named; give one or more job files" : "";
    }

    Outcome run(Console& console) override
    {
        const ConfigurationRead read = read_configuration(options_.config, console);
        if (!read.configuration) return read.outcome;
        Outcome outcome = make_folder(options_, console);
        if (outcome != Outcome::answered) return outcome;
        for (std::size_t i = 0; i < files_.size(); ++i) {
            outcome = std::max(outcome, run_job(files_[i], *read.configuration, console));
            show_progress(i + 1, console);
        }
        return outcome;
    }

    std::string help() const override
    {
        std::ostringstream text;
        text << "shaftcut cut JOB.xml...\n\nWrites a cut sheet (PDF), a work order (XLSX) and the figures (JSON) for each job.\n\n" << described_;
        return text.str();
    }

private:
    Outcome run_job(const std::string& path, const Configuration& configuration, Console& console)
    {
        const auto source = load_or_report(path, console);
        if (!source) return Outcome::unwritable;
        const Read<Job> read = read_job(*source, configuration.catalogue);
        report(read.problems, console);
        if (!read.value) return Outcome::bad_input;
        if (const auto [earlier, added] = order_files_.emplace(read.value->order, path); !added) {
            report({{read.value->place, "order " + shaftcut::quoted(read.value->order) + " is also the order of " + earlier->second,
                     "give each job of a call its own order number"}}, console);
            return Outcome::bad_input;
        }
        const WorkOrder order = work_up(*read.value, configuration.catalogue, configuration.workshop, options_.units.value_or(read.value->units));
        const Outcome answer = order.verdict == Verdict::refused ? Outcome::refused : Outcome::answered;
        return std::max(answer, hand_out_or_report(order, console));
    }

    // Where documents cannot be made (no memory, no font, no room for temporary files) the other jobs are still done.
    Outcome hand_out_or_report(const WorkOrder& order, Console& console) const
    {
        try {
            return hand_out_order(order, console);
        } catch (const std::exception& fault) {
            console.err << "order " << order.order << ": " << fault.what() << "\n";
            return Outcome::unwritable;
        }
    }

    Outcome hand_out_order(const WorkOrder& order, Console& console) const
    {
        if (options_.to_standard_output()) return hand_out_json(json_of(order, JsonLayout::one_line), console);
        std::vector<Document> documents;
        for (const Format format : options_.formats) documents.push_back(document_of(order, format, options_.paper));
        return hand_out(documents, terminal_text(order, console.colour ? Colour::ansi : Colour::none), options_, console);
    }

    // Once a call has taken more than a second, says how far it is.
    void show_progress(std::size_t done, Console& console) const
    {
        const bool long_call = std::chrono::steady_clock::now() - started_ > std::chrono::seconds(1);
        if (!console.progress || !long_call || files_.size() < 2) return;
        console.err << "\r" << done << " of " << files_.size() << " jobs" << (done == files_.size() ? "\n" : "") << std::flush;
    }

    CommonOptionTexts texts_;
    boost::program_options::options_description described_ = common_options(texts_);
    std::vector<std::string> files_;
    CommonOptions options_;
    std::map<std::string, std::string> order_files_;  // each order's job file
    std::chrono::steady_clock::time_point started_ = std::chrono::steady_clock::now();
};

}  // namespace

std::unique_ptr<Command> make_cut() { return std::make_unique<Cut>(); }

}  // namespace shaftcut
