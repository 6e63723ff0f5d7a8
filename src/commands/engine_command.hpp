// The steps of every command: its options are read, then the configuration is loaded, then it asks the engine and hands out the answer;
// the outcome is the worst of all steps.
#pragma once

#include <chrono>

#include "commands.hpp"
#include "configuration.hpp"
#include "options.hpp"

namespace shaftcut {

class EngineCommand : public Command {
public:
    std::string set_up(const std::vector<std::string>& arguments) final;
    Outcome run(Console& console) final;
    std::string help() const final;

protected:
    // `usage`: for --help, before the options.
    EngineCommand(const char* usage, CommonOptionTexts texts) : usage_(usage), texts_(std::move(texts)) {}
    // To be called once, before any other: with the common options, or those of a command that writes no documents.
    void describe(const boost::program_options::options_description& options) { described_.emplace(options); }
    CommonOptionTexts& texts() { return texts_; }

    // Empty, or what is wrong with the files and options beyond the common ones.
    virtual std::string check() = 0;
    virtual Outcome answer(const Engine& engine, Console& console) = 0;

    const std::vector<std::string>& files() const { return files_; }
    const CommonOptions& options() const { return options_; }
    // By the options. Fonts are loaded where a sheet or picture is asked for.
    Wishes wishes(const Console& console) const;
    // People's words go where the documents do not.
    std::ostream& words(const Console& console) const { return options_.to_standard_output() ? console.err : console.out; }
    // Once a call has taken more than a second, says on a terminal how far it is.
    void show_progress(std::size_t done, std::size_t of, const char* what, const Console& console) const;

private:
    const char* usage_;
    CommonOptionTexts texts_;
    std::optional<boost::program_options::options_description> described_;
    std::vector<std::string> files_;
    CommonOptions options_;
    std::chrono::steady_clock::time_point started_ = std::chrono::steady_clock::now();
};

}  // namespace shaftcut
