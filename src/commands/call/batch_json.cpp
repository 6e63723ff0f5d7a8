#include "call/batch_json.hpp"

#include <filesystem>
#include <ostream>

#include "call/hand_out.hpp"
#include "commands/call_words.hpp"

namespace shaftcut {

BatchJsonOutput::BatchJsonOutput(const CommonOptions& options, const std::string& name, Console& console)
    : options_(options), file_(batch_document_names(name, {Format::json}).front()), console_(console), json_(options.to_standard_output() ? JsonLayout::one_line : JsonLayout::indented)
{
    if (options.asks_for(Format::json) && !options.to_standard_output()) writer_.emplace(options.output, file_);
    write(json_.begin());
}

void BatchJsonOutput::write(const std::string& text)
{
    if (writer_) writer_->add(text);
    else if (options_.to_standard_output()) console_.out << text;
}

void BatchJsonOutput::add(const BuildPlan& plan)
{
    if (writer_ || options_.to_standard_output()) write(json_.next(plan));
}

Outcome BatchJsonOutput::finish(const std::vector<ProfilePlan>& plans)
{
    write(json_.end(plans));
    if (options_.to_standard_output()) return console_.out ? Outcome::answered : Outcome::unwritable;
    if (!writer_) return Outcome::answered;
    const std::optional<Unwritable> fault = writer_->finish(options_.replace ? Existing::replace : Existing::keep);
    writer_.reset();  // signals need not wait any longer
    if (fault) return report(*fault, console_);
    console_.out << wrote(WroteLine::below, (std::filesystem::path(options_.output) / file_).string(), console_.wording) << "\n";
    return Outcome::answered;
}

}  // namespace shaftcut
