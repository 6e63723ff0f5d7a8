// What the commands that take job files share: reading each job, working it up, and handing out its documents.
#pragma once

#include <chrono>
#include <map>

#include "commands.hpp"
#include "shaftcut/commands/configuration.hpp"
#include "shaftcut/commands/options.hpp"
#include "shaftcut/documents/documents.hpp"
#include "shaftcut/documents/terminal.hpp"

namespace shaftcut {

// What one of them says of a job.
struct JobAnswers {
    const char* usage;            // for --help, before the options
    const char* default_formats;  // "pdf,json"
    const char* offered_formats;  // in words, for --help
    std::string (*formats_fault)(const std::vector<Format>&);  // empty, or which of these it does not write
    Problems (*unanswerable)(const Job&);                      // why a sound job cannot be answered; empty where it can
    bool (*refuses)(const WorkOrder&);
    std::string (*line)(const WorkOrder&);                     // for --output -
    std::string (*words)(const WorkOrder&, Colour);            // for a terminal
    Document (*document)(const WorkOrder&, Format, Paper);
};

class JobsCommand final : public Command {
public:
    explicit JobsCommand(const JobAnswers& answers);
    std::string set_up(const std::vector<std::string>& arguments) override;
    Outcome run(Console& console) override;
    std::string help() const override;

private:
    Outcome run_job(const std::string& path, const Configuration& configuration, Console& console);
    Problems why_not(const Job& job, const std::string& path);
    Outcome hand_out_or_report(const WorkOrder& order, Console& console) const;
    Outcome hand_out_order(const WorkOrder& order, Console& console) const;
    std::vector<Document> documents_of(const WorkOrder& order) const;
    void show_progress(std::size_t done, Console& console) const;

    const JobAnswers& answers_;
    CommonOptionTexts texts_;
    boost::program_options::options_description described_;
    std::vector<std::string> files_;
    CommonOptions options_;
    std::map<std::string, std::string> order_files_;  // by order_key(), each order's job file
    std::chrono::steady_clock::time_point started_ = std::chrono::steady_clock::now();
};

}  // namespace shaftcut
