#include "jobs_command.hpp"

#include <algorithm>
#include <filesystem>
#include <future>
#include <ostream>
#include <sstream>

#include "shaftcut/commands/hand_out.hpp"
#include "shaftcut/reading/job_reader.hpp"
#include "shaftcut/reading/order_number.hpp"
#include "shaftcut/words/text.hpp"

namespace shaftcut {
namespace {

CommonOptionTexts texts_for(const JobAnswers& answers)
{
    CommonOptionTexts texts;
    texts.formats = answers.default_formats;
    texts.offered = answers.offered_formats;
    return texts;
}

}  // namespace

JobsCommand::JobsCommand(const JobAnswers& answers) : answers_(answers), texts_(texts_for(answers)), described_(common_options(texts_)) {}

std::string JobsCommand::set_up(const std::vector<std::string>& arguments)
{
    if (std::string fault = parse_arguments(arguments, described_, files_); !fault.empty()) return fault;
    const CheckedOptions result = checked(texts_);
    options_ = result.options;
    if (!result.fault.empty()) return result.fault;
    if (std::string fault = answers_.formats_fault(options_.formats); !fault.empty()) return fault;
    return files_.empty() ? "no job is named; give one or more job files" : "";
}

Outcome JobsCommand::run(Console& console)
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

std::string JobsCommand::help() const
{
    std::ostringstream text;
    text << answers_.usage << "\n\n" << described_;
    return text.str();
}

Problems JobsCommand::why_not(const Job& job, const std::string& path)
{
    const auto [earlier, added] = order_files_.emplace(order_key(job.order), path);
    if (added) return answers_.unanswerable(job);
    return {{job.place, "order " + shaftcut::quoted(job.order) + " is also the order of " + earlier->second, "give each job of a call its own order number; capitals alone do not tell files apart on many disks"}};
}

Outcome JobsCommand::run_job(const std::string& path, const Configuration& configuration, Console& console)
{
    const auto source = load_or_report(path, console);
    if (!source) return Outcome::unwritable;
    const Read<Job> read = read_job(*source, configuration.catalogue);
    report(read.problems, console);
    if (!read.value) return Outcome::bad_input;
    if (const Problems problems = why_not(*read.value, path); !problems.empty()) {
        report(problems, console);
        return Outcome::bad_input;
    }
    const WorkOrder order = work_up(*read.value, configuration.catalogue, configuration.workshop, options_.units.value_or(read.value->units));
    const Outcome answer = answers_.refuses(order) ? Outcome::refused : Outcome::answered;
    return std::max(answer, hand_out_or_report(order, console));
}

// Where documents cannot be made (no memory, no font, no room for temporary files) the other jobs are still done.
Outcome JobsCommand::hand_out_or_report(const WorkOrder& order, Console& console) const
{
    try {
        return hand_out_order(order, console);
    } catch (const std::exception& fault) {
        console.err << "order " << order.order << ": " << sentence_of(fault) << "\n";
        return Outcome::unwritable;
    }
}

Outcome JobsCommand::hand_out_order(const WorkOrder& order, Console& console) const
{
    if (options_.to_standard_output()) {
        console.err << answers_.words(order, console.progress ? Colour::ansi : Colour::none);
        return hand_out_json(answers_.line(order), console);
    }
    return hand_out(documents_of(order), answers_.words(order, console.colour ? Colour::ansi : Colour::none), options_, console);
}

// The first in this thread and each other in one of its own: a sheet and a workbook take about as long.
std::vector<Document> JobsCommand::documents_of(const WorkOrder& order) const
{
    const auto document = [&](Format format) { return answers_.document(order, format, options_.paper); };
    std::vector<std::future<Document>> others;
    for (std::size_t i = 1; i < options_.formats.size(); ++i) others.push_back(std::async(document, options_.formats[i]));
    std::vector<Document> documents{document(options_.formats.front())};
    for (std::future<Document>& other : others) documents.push_back(other.get());
    return documents;
}

// Once a call has taken more than a second, says how far it is.
void JobsCommand::show_progress(std::size_t done, Console& console) const
{
    const bool long_call = std::chrono::steady_clock::now() - started_ > std::chrono::seconds(1);
    if (!console.progress || !long_call || files_.size() < 2) return;
    console.err << "\r" << done << " of " << files_.size() << " jobs" << (done == files_.size() ? "\n" : "") << std::flush;
}

}  // namespace shaftcut
