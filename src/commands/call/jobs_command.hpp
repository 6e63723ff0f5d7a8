// What the commands that take job files share: reading each job, asking the engine, and handing out its documents.
#pragma once

#include "call/engine_command.hpp"
#include "files/order_files.hpp"

namespace shaftcut {

// What one of them asks.
struct JobAnswers {
    CommandName command;
    const char* default_formats;  // "pdf,json"
    Answer (Engine::*ask)(const Source& job, const Wishes& wishes) const;
    Question question;
    bool may_have_tag;              // whether --tag is taken
};

class JobsCommand final : public EngineCommand {
public:
    explicit JobsCommand(const JobAnswers& answers);

private:
    boost::program_options::options_description described(const Wording& w) override;
    std::string check(const Wording& w) override;
    Outcome answer(const Engine& engine, Console& console) override;
    Outcome run_job(const std::string& path, const Engine& engine, const Wishes& wishes, Console& console);
    Outcome hand_out_or_report(const Answer& answer, const Wishes& wishes, Console& console) const;
    void say_why_no_tag(const Answer& answer, Console& console) const;
    Outcome hand_out_answer(const Answer& answer, const Wishes& wishes, Console& console) const;

    const JobAnswers& answers_;
    bool tag_ = false;
    OrderFiles order_files_;
};

}  // namespace shaftcut
