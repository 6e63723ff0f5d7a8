#include "call/learn.hpp"

#include <algorithm>
#include <ostream>

#include "call/answers.hpp"
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

bool is_nothing(const Learnt& learnt)
{
    return learnt.headings.empty() && learnt.values.empty() && learnt.articles.empty() && !learnt.units && learnt.dates.empty();
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
        const ListQuestions open = unknown();
        if (open.units && !learn_units()) return answers_ended(console_);
        if (!open.days.empty() && !learn_dates(open)) return answers_ended(console_);
        for (const ValueAsked& value : open.values)
            if (!learn_value(value)) return answers_ended(console_);
        for (const std::string& number : open.articles)
            if (!learn_article(number, open.article_fields)) return answers_ended(console_);
        if (is_nothing(learnt_)) {
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

    // One of these, by itself or its number; empty: left open. Nothing where no answer came.
    std::optional<std::string> one_of(const std::string& question, const std::vector<std::string>& known)
    {
        while (true) {
            const auto answer = answer_to(question, console_);
            if (!answer || answer->empty()) return answer;
            if (const auto means = chosen(*answer, known)) return means;
            console_.out << no_such_word(*answer, nearest_name(*answer, known), w()) << "\n";
        }
    }

    bool learn_units()
    {
        const auto answer = one_of(units_question(w()), {unit_word(Units::mm), unit_word(Units::in)});
        if (answer && !answer->empty()) learnt_.units = *answer == unit_word(Units::in) ? Units::in : Units::mm;
        return answer.has_value();
    }

    bool learn_dates(const ListQuestions& asked)
    {
        const auto answer = one_of(dates_question(asked.days, asked.date_orders, w()), asked.date_orders);
        if (answer) learnt_.dates = *answer;
        return answer.has_value();
    }

    bool learn_article(const std::string& number, const std::vector<FieldAsked>& fields)
    {
        console_.out << article_begins(number, w()) << "\n";
        learnt_.articles.push_back({number});
        bool has_closed = false;
        for (const FieldAsked& field : fields) {
            if (field.column == "closed_reference" && !has_closed) continue;
            if (!learn_field(field)) return false;
            const auto& states = learnt_.articles.back().states;
            has_closed = has_closed || (!states.empty() && states.back().column == "closed");
        }
        return true;
    }

    // Until the map could hold the answer. False where none came.
    bool learn_field(const FieldAsked& field)
    {
        const std::string question = field_question(field.column, field.known, w());
        while (true) {
            const auto answer = field.known.empty() ? answer_to(question, console_) : one_of(question, field.known);
            if (!answer) return false;
            if (answer->empty()) return true;
            auto& states = learnt_.articles.back().states;
            states.push_back({field.column, *answer});
            const Problems problems = problems_now();
            if (problems.empty()) return true;
            states.pop_back();
            for (const Problem& problem : problems) console_.out << problem.wrong << "; " << problem.right << "\n";
        }
    }

    // Of the file with what is learnt so far. One that cannot be read is said when it is written.
    Problems problems_now() const
    {
        const auto file = load_if_there(path(), console_);
        return file ? engine_.lists_with(*file, wishes_.name, wishes_.units, learnt_).problems : Problems();
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
