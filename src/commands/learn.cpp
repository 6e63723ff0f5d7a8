#include "learn.hpp"

#include <algorithm>
#include <ostream>

#include "answers.hpp"
#include "commands/question_words.hpp"
#include "text.hpp"

namespace shaftcut {
namespace {

constexpr const char* left_out = "left-out";

// The one of `known` that the answer names, by itself or by its number from 1.
std::optional<std::string> chosen(const std::string& answer, const std::vector<std::string>& known)
{
    if (std::find(known.begin(), known.end(), answer) != known.end()) return answer;
    for (std::size_t i = 0; i < known.size(); ++i)
        if (answer == std::to_string(i + 1)) return known[i];
    return std::nullopt;
}

class Lesson {
public:
    Lesson(const Engine& engine, const Source& list, const LearnWishes& wishes, Console& console) : engine_(engine), list_(list), wishes_(wishes), console_(console)
    {
        reading_.list = wishes.name;
        reading_.units = wishes.units;
    }

    Outcome run()
    {
        const ListQuestions asked = unknown();
        if (!asked.problems.empty()) return report(asked.problems, console_);
        if (const Outcome outcome = check_map(); outcome != Outcome::answered) return outcome;
        if (!asked.headings.empty()) console_.out << columns_offered(asked.columns, w());
        for (const HeadingAsked& heading : asked.headings)
            if (!learn_heading(heading, asked.columns)) return answers_ended(console_);
        for (const ValueAsked& value : unknown().values)
            if (!learn_value(value)) return answers_ended(console_);
        if (learnt_.headings.empty() && learnt_.values.empty()) {
            console_.out << nothing_to_learn(list_.name, w()) << "\n";
            return Outcome::answered;
        }
        return write();
    }

private:
    const Wording& w() const { return console_.wording; }
    ListQuestions unknown() const { return engine_.unknown_in(list_, reading_, learnt_); }
    std::string path() const { return wishes_.folder + "/lists.xml"; }

    // Before anybody has answered for nothing: the file can take a map of this name.
    Outcome check_map() const
    {
        const auto file = load_if_there(path(), console_);
        return file ? report(engine_.lists_with(*file, wishes_.name, wishes_.units, {}).problems, console_) : Outcome::unwritable;
    }

    // False where no answer came.
    bool learn_heading(const HeadingAsked& heading, const std::vector<std::string>& columns)
    {
        while (true) {
            const auto answer = answer_to(heading_question(heading.heading, heading.first_values, heading.nearest, w()), console_);
            if (!answer) return false;
            const auto is = answer->empty() ? std::optional<std::string>(left_out) : chosen(*answer, columns);
            if (!is) {
                console_.out << no_such_column(*answer, nearest_name(*answer, columns), w()) << "\n";
                continue;
            }
            learnt_.headings.push_back({heading.heading, *is});
            const Problems problems = unknown().problems;  // the column stands there already
            if (problems.empty()) return true;
            learnt_.headings.pop_back();
            for (const Problem& problem : problems) console_.out << problem.wrong << "; " << problem.right << "\n";
        }
    }

    bool learn_value(const ValueAsked& value)
    {
        while (true) {
            const auto answer = answer_to(value_question(value.column, value.text, value.known, value.nearest, w()), console_);
            if (!answer) return false;
            if (answer->empty()) return true;
            if (const auto means = chosen(*answer, value.known)) {
                learnt_.values.push_back({value.column, value.text, *means});
                return true;
            }
            console_.out << no_such_word(*answer, nearest_name(*answer, value.known), w()) << "\n";
        }
    }

    Outcome write() const
    {
        const auto file = load_if_there(path(), console_);
        if (!file) return Outcome::unwritable;
        const Addition added = engine_.lists_with(*file, wishes_.name, wishes_.units, learnt_);
        if (!added.bytes) return report(added.problems, console_);
        const Outcome outcome = write_configuration(wishes_.folder, "lists.xml", *added.bytes, console_);
        if (outcome == Outcome::answered) console_.out << map_written(wishes_.name, path(), list_.name, w()) << "\n";
        return outcome;
    }

    const Engine& engine_;
    const Source& list_;
    const LearnWishes& wishes_;
    Console& console_;
    Wishes reading_;
    Learnt learnt_;
};

}  // namespace

Outcome learn(const Engine& engine, const Source& list, const LearnWishes& wishes, Console& console) { return Lesson(engine, list, wishes, console).run(); }

}  // namespace shaftcut
