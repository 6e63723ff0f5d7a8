#include "fuzz/targets.hpp"
#include "support/engine.hpp"
#include "text.hpp"

namespace shaftcut::fuzz {
namespace {

bool shows_as_it_is(const std::string& text)
{
    return !text.empty() && is_utf8(text) && !first_hidden(text);
}

std::string wrong_with(const Problem& problem, int lines)
{
    if (problem.place.line < 1 || problem.place.column < 1 || problem.place.line > lines) return "a problem stands outside the file: " + to_string(problem);
    if (!shows_as_it_is(problem.wrong) || !shows_as_it_is(problem.right)) return "a problem is not fit for a terminal: " + to_string(problem);
    return {};
}

std::string wrong_with(bool answered, const Problems& problems, std::string_view bytes)
{
    if (answered != problems.empty()) return "neither a value nor a problem, or both";
    int lines = 1;
    for (const char c : bytes) lines += c == '\n' || c == '\r' ? 1 : 0;
    for (const Problem& problem : problems)
        if (std::string wrong = wrong_with(problem, lines); !wrong.empty()) return wrong;
    return {};
}

bool names_a_file(const std::string& order)
{
    return !order.empty() && order.size() <= 40 && order.front() != '.'
           && order.find_first_not_of("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789._-") == std::string::npos;
}

Source source_of(const char* name, std::string_view bytes) { return {name, std::string(bytes)}; }

std::string wrong_with(const Configuration& configuration, std::string_view bytes)
{
    const Loaded loaded = Engine::load(configuration);
    return wrong_with(loaded.engine.has_value(), loaded.problems, bytes);
}

}  // namespace

std::string try_job(std::string_view bytes)
{
    const Answer answer = test::demo_engine().answer(source_of("f.xml", bytes), {});
    if (answer.work_order && !names_a_file(answer.order)) return "an order that cannot name files was read: " + answer.order;
    if (const auto& order = answer.work_order)
        for (const std::string& text : {order->customer, order->machine, order->tractor, order->circumstances.hitch, order->shaft.number})
            if (first_hidden(text)) return "a text with a character that nobody sees was read: " + text;
    return wrong_with(answer.work_order.has_value(), answer.problems, bytes);
}

std::string try_measured(std::string_view bytes)
{
    static const Source job = test::file_of(SHAFTCUT_SOURCE_DIR "/samples/wide-angle-outer-cross.xml");
    const AfterCutAnswer answer = test::demo_engine().after_cut(job, source_of("f.xml", bytes), {});
    if (answer.shaft) {
        const auto& checks = answer.shaft->found.checks;
        if (checks.size() != Words<CheckId>::all.size()) return "a check is missing";
        for (const Document& document : documents(answer, {Format::json, Format::terminal}, {}))
            if (!shows_as_it_is(document.bytes.substr(0, document.bytes.find('\n')))) return "a document is not fit for a terminal";
    }
    return wrong_with(answer.shaft.has_value(), answer.problems, bytes);
}

std::string try_choose(std::string_view bytes)
{
    const ChooseAnswer answer = test::demo_engine().choose(source_of("f.xml", bytes), {});
    if (answer.choices) {
        if (!names_a_file(answer.order)) return "an order that cannot name files was read: " + answer.order;
        for (const Document& document : documents(answer, {Format::json, Format::terminal}, {}))
            if (!shows_as_it_is(document.bytes.substr(0, document.bytes.find('\n')))) return "a document is not fit for a terminal";
    }
    return wrong_with(answer.choices.has_value(), answer.problems, bytes);
}

std::string try_measures(std::string_view bytes)
{
    const IdentifyAnswer answer = test::demo_engine().identify(source_of("f.xml", bytes), {});
    if (answer.shaft) {
        if (!names_a_file(answer.order)) return "a shaft whose name cannot name files was read: " + answer.order;
        for (const Document& document : documents(answer, {Format::json, Format::terminal}, {}))
            if (!shows_as_it_is(document.bytes.substr(0, document.bytes.find('\n')))) return "a document is not fit for a terminal";
        for (const Problem& problem : test::demo_engine().answer({"job.xml", job_of(answer).bytes}, {}).problems)
            if (problem.wrong.find("is still open") == std::string::npos) return "the job that it begins has a fault of its own: " + to_string(problem);
    }
    return wrong_with(answer.shaft.has_value(), answer.problems, bytes);
}

std::string try_catalogue(std::string_view bytes)
{
    Configuration configuration = test::demo_configuration();
    configuration.files[0] = source_of("series.xml", bytes);
    return wrong_with(configuration, bytes);
}

std::string try_workshop(std::string_view bytes)
{
    Configuration configuration = test::demo_configuration();
    configuration.files[1] = source_of("workshop.xml", bytes);
    return wrong_with(configuration, bytes);
}

}  // namespace shaftcut::fuzz
