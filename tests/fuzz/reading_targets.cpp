#include <fstream>
#include <iterator>

#include "fuzz/targets.hpp"
#include "shaftcut/reading/catalogue_reader.hpp"
#include "shaftcut/reading/job_reader.hpp"
#include "shaftcut/reading/workshop_reader.hpp"
#include "shaftcut/words/text.hpp"

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

template <class T>
std::string wrong_with(const Read<T>& read, std::string_view bytes)
{
    if (read.value.has_value() != read.problems.empty()) return "neither a value nor a problem, or both";
    int lines = 1;
    for (const char c : bytes) lines += c == '\n' || c == '\r' ? 1 : 0;
    for (const Problem& problem : read.problems)
        if (std::string wrong = wrong_with(problem, lines); !wrong.empty()) return wrong;
    return {};
}

bool names_a_file(const std::string& order)
{
    return !order.empty() && order.size() <= 40 && order.front() != '.'
           && order.find_first_not_of("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789._-") == std::string::npos;
}

Source source_of(std::string_view bytes) { return {"f.xml", std::string(bytes)}; }

const Catalogue& demo_catalogue()
{
    static const auto read = [] {
        std::ifstream file(SHAFTCUT_SOURCE_DIR "/config/series.xml", std::ios::binary);
        return read_catalogue({"series.xml", {std::istreambuf_iterator<char>(file), {}}});
    }();
    return read.value.value();
}

}  // namespace

std::string try_job(std::string_view bytes)
{
    const auto read = read_job(source_of(bytes), demo_catalogue());
    if (read.value && !names_a_file(read.value->order)) return "an order that cannot name files was read: " + read.value->order;
    if (read.value)
        for (const std::string& text : {read.value->customer, read.value->machine, read.value->tractor, read.value->circumstances.hitch, read.value->shaft.number})
            if (first_hidden(text)) return "a text with a character that nobody sees was read: " + text;
    return wrong_with(read, bytes);
}

std::string try_catalogue(std::string_view bytes) { return wrong_with(read_catalogue(source_of(bytes)), bytes); }

std::string try_workshop(std::string_view bytes) { return wrong_with(read_workshop(source_of(bytes)), bytes); }

}  // namespace shaftcut::fuzz
