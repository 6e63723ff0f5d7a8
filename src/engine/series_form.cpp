#include "shaftcut/engine/series_form.hpp"

#include <algorithm>

#include "known.hpp"
#include "shaftcut/engine/engine.hpp"
#include "xml/insertion.hpp"

namespace shaftcut {
namespace {

using Figure = SeriesFigure;
using Answers = std::vector<SeriesAnswer>;

// Nothing: not asked yet.
const std::string* answer_to(const SeriesQuestion& question, const Answers& answers)
{
    const auto found = std::find_if(answers.begin(), answers.end(), [&](const SeriesAnswer& answer) { return answer.question == question; });
    return found == answers.end() ? nullptr : &found->text;
}

// An attribute that may be left out.
std::string optional(const char* name, const SeriesQuestion& question, const Answers& answers)
{
    const std::string* const text = answer_to(question, answers);
    return text && !text->empty() ? xml_attribute(name, *text) : "";
}

// One that must be there; `until`: as it can be read before it is asked.
std::string required(const char* name, Figure figure, const char* until, const Answers& answers)
{
    const std::string* const text = answer_to({figure}, answers);
    return xml_attribute(name, text ? *text : until);
}

std::string cross(Figure cap, Figure span, const Answers& answers) { return "<cross" + required("cap", cap, "1", answers) + required("span", span, "1", answers) + "/>"; }

bool is_given(const SeriesQuestion& question, const Answers& answers)
{
    const std::string* const text = answer_to(question, answers);
    return text && !text->empty();
}

std::string wide_angle(const Answers& answers)
{
    if (!is_given({Figure::spacing}, answers)) return "";
    std::string crosses;
    if (is_given({Figure::inner_cap}, answers)) crosses += cross(Figure::inner_cap, Figure::inner_span, answers);
    if (is_given({Figure::outer_cap}, answers)) crosses += cross(Figure::outer_cap, Figure::outer_span, answers);
    return "    <wide-angle" + optional("spacing", {Figure::spacing}, answers) + (crosses.empty() ? "/>\n" : ">" + crosses + "</wide-angle>\n");
}

struct AskedOfHalf {
    Figure figure;
    const char* attribute;
};
constexpr std::array asked_of_halves{AskedOfHalf{Figure::shoulder, "shoulder"}, AskedOfHalf{Figure::seat, "seat"}, AskedOfHalf{Figure::least_tube, "least-tube"},
                                  AskedOfHalf{Figure::width, "width"}, AskedOfHalf{Figure::wall, "wall"}, AskedOfHalf{Figure::guard_shoulder, "guard-shoulder"},
                                  AskedOfHalf{Figure::guard_seat, "guard-seat"}, AskedOfHalf{Figure::guard_seat_wide_angle, "guard-seat-wide-angle"},
                                  AskedOfHalf{Figure::pin_hole, "pin-hole"}, AskedOfHalf{Figure::mass_per_metre, "mass-per-metre"}, AskedOfHalf{Figure::shortening, "shortening"}};

std::string half(Tube tube, const Answers& answers)
{
    std::string attributes;
    for (const AskedOfHalf& figure : asked_of_halves) attributes += optional(figure.attribute, {figure.figure, tube}, answers);
    return attributes.empty() ? "" : "    <half" + xml_attribute("tube", to_word(tube)) + attributes + "/>\n";
}

std::string yoke(const std::string& connection, std::optional<JointKind> of, const SeriesQuestion& question, const Answers& answers)
{
    return "    <yoke" + xml_attribute("connection", connection) + (of ? xml_attribute("joint", to_word(*of)) : "") + optional("cross-to-groove", question, answers) + "/>\n";
}

// One yoke for both kinds of joint where nothing is said of the wide-angle one.
std::string yokes(const SeriesAnswer& standard, const Answers& answers)
{
    SeriesQuestion wide = standard.question;
    wide.joint = JointKind::wide_angle;
    const std::string& connection = standard.question.connection;
    if (!is_given(wide, answers)) return yoke(connection, std::nullopt, standard.question, answers);
    return yoke(connection, JointKind::standard, standard.question, answers) + yoke(connection, JointKind::wide_angle, wide, answers);
}

std::string rows(const Answers& answers)
{
    std::string yoke_rows, ratings, lengths;
    for (const SeriesAnswer& answer : answers) {
        if (answer.text.empty()) continue;
        if (answer.question.figure == Figure::cross_to_groove && answer.question.joint == JointKind::standard) yoke_rows += yokes(answer, answers);
        if (answer.question.figure == Figure::power) ratings += "    <rating" + xml_attribute("speed", std::to_string(answer.question.speed)) + xml_attribute("power", answer.text) + "/>\n";
        if (answer.question.figure == Figure::closed_lengths) lengths = "    <closed-lengths>" + xml_text(answer.text) + "</closed-lengths>\n";
    }
    return yoke_rows + ratings + lengths;
}

bool is_of_wide_angle(const SeriesQuestion& question)
{
    switch (question.figure) {
    case Figure::reference:
    case Figure::inner_cap:
    case Figure::inner_span:
    case Figure::outer_cap:
    case Figure::outer_span:
    case Figure::guard_seat_wide_angle: return true;
    default: return question.joint == JointKind::wide_angle;
    }
}

// A span belongs to its cap, an outer cross to an inner one, a wide-angle joint's yoke to a connection that the series has.
bool is_given_what_it_belongs_to(const SeriesQuestion& question, const Answers& answers)
{
    SeriesQuestion standard = question;
    standard.joint = JointKind::standard;
    switch (question.figure) {
    case Figure::inner_span:
    case Figure::outer_cap: return is_given({Figure::inner_cap}, answers);
    case Figure::outer_span: return is_given({Figure::outer_cap}, answers);
    case Figure::cross_to_groove: return question.joint != JointKind::wide_angle || is_given(standard, answers);
    default: return true;
    }
}

}  // namespace

bool is_asked(const SeriesQuestion& question, const std::vector<SeriesAnswer>& answers)
{
    if (is_of_wide_angle(question) && !is_given({Figure::spacing}, answers)) return false;
    return is_given_what_it_belongs_to(question, answers);
}

std::string catalogue_of(const std::vector<SeriesAnswer>& answers, Units units)
{
    const std::string series = "<series" + required("name", Figure::name, "-", answers) + required("shape", Figure::shape, to_word(Shape::other), answers)
                               + optional("wide-angle-reference", {Figure::reference}, answers) + ">\n    " + cross(Figure::cap, Figure::span, answers) + "\n";
    return "<catalogue" + xml_attribute("units", unit_word(units)) + ">\n  " + series + wide_angle(answers) + half(Tube::inner, answers) + half(Tube::outer, answers) + rows(answers)
           + "  </series>\n</catalogue>\n";
}

std::vector<SeriesQuestion> Engine::series_questions() const
{
    std::vector<SeriesQuestion> asked;
    for (const Figure figure : {Figure::name, Figure::shape, Figure::cap, Figure::span, Figure::spacing, Figure::reference, Figure::inner_cap, Figure::inner_span, Figure::outer_cap, Figure::outer_span})
        asked.push_back({figure});
    for (const Tube tube : both_tubes)
        for (const AskedOfHalf& figure : asked_of_halves) asked.push_back({figure.figure, tube});
    for (const Connection& connection : known_->catalogue.connections)
        for (const JointKind joint : {JointKind::standard, JointKind::wide_angle}) asked.push_back({Figure::cross_to_groove, std::nullopt, connection.name, joint});
    for (const int speed : {540, 1000}) asked.push_back({Figure::power, std::nullopt, {}, std::nullopt, speed});
    asked.push_back({Figure::closed_lengths});
    return asked;
}

}  // namespace shaftcut
