// The steps of every command: its options are read, then the configuration is loaded, then it asks the engine and hands out the answer;
// the outcome is the worst of all steps.
#pragma once

#include <chrono>

#include "call/command.hpp"
#include "call/configuration.hpp"
#include "call/options.hpp"
#include "commands/call_words.hpp"

namespace shaftcut {

class EngineCommand : public Command {
public:
    std::string set_up(const std::vector<std::string>& arguments, const Wording& w) final;
    Outcome run(Console& console) final;
    std::string help(const Wording& w) final;

protected:
    explicit EngineCommand(CommonOptionTexts texts) : texts_(std::move(texts)) {}
    CommonOptionTexts& texts() { return texts_; }
    // The options that it takes: the common ones, where it has no others.
    virtual boost::program_options::options_description described(const Wording& w) { return common_options(texts_, w); }

    // Empty, or what is wrong with the files and options beyond the common ones.
    virtual std::string check(const Wording& w) = 0;
    virtual Outcome answer(const Engine& engine, Console& console) = 0;

    const std::vector<std::string>& files() const { return files_; }
    const CommonOptions& options() const { return options_; }
    // By the options. Fonts are loaded where a sheet or picture is asked for.
    Wishes wishes(const Console& console) const;
    // People's words go where the documents do not.
    std::ostream& words(const Console& console) const { return options_.to_standard_output() ? console.err : console.out; }
    // Once a call has taken more than a second, says on a terminal how far it is.
    void show_progress(std::size_t done, std::size_t of, Counted what, const Console& console) const;

private:
    CommonOptionTexts texts_;
    std::vector<std::string> files_;
    CommonOptions options_;
    std::chrono::steady_clock::time_point started_ = std::chrono::steady_clock::now();
};

}  // namespace shaftcut
