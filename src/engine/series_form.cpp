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

std::string cross(Figure cap, Figure span, Figure part, const Answers& answers)
{
    return "<cross" + required("cap", cap, "1", answers) + required("span", span, "1", answers) + optional("part", {part}, answers) + "/>";
}

bool is_given(const SeriesQuestion& question, const Answers& answers)
{
    const std::string* const text = answer_to(question, answers);
    return text && !text->empty();
}

std::string wide_angle(const Answers& answers)
{
    if (!is_given({Figure::spacing}, answers)) return "";
    std::string crosses;
    if (is_given({Figure::inner_cap}, answers)) crosses += cross(Figure::inner_cap, Figure::inner_span, Figure::inner_part, answers);
    if (is_given({Figure::outer_cap}, answers)) crosses += cross(Figure::outer_cap, Figure::outer_span, Figure::outer_part, answers);
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

// A part for both kinds of joint where nothing is said of the wide-angle one.
std::string part(const SeriesAnswer& answer, const Answers& answers)
{
    const SeriesQuestion& asked = answer.question;
    SeriesQuestion wide = asked, replaces{Figure::replaces};
    wide.joint = JointKind::wide_angle;
    replaces.device = asked.device;
    const bool of_joint = asked.joint && (asked.joint == JointKind::wide_angle || is_given(wide, answers));
    return "    <part" + xml_attribute("for", to_word(*asked.part)) + (asked.tube ? xml_attribute("tube", to_word(*asked.tube)) : "") +
           (asked.connection.empty() ? "" : xml_attribute("connection", asked.connection)) + (of_joint ? xml_attribute("joint", to_word(*asked.joint)) : "") +
           (asked.device ? xml_attribute("device", to_word(*asked.device)) + optional("replaces", replaces, answers) : "") + xml_attribute("name", answer.text) + "/>\n";
}

std::string parts(const Answers& answers)
{
    std::string rows;
    for (const SeriesAnswer& answer : answers)
        if (answer.question.figure == Figure::part && !answer.text.empty()) rows += part(answer, answers);
    return rows;
}

std::string limits(const Answers& answers)
{
    std::string attributes;
    for (const LimitRow& row : limit_rows()) {
        SeriesQuestion question{Figure::limit};
        question.limit = row.limit;
        attributes += optional(row.name, question, answers);
    }
    return attributes.empty() ? "" : "    <limits" + attributes + "/>\n";
}

SeriesQuestion of_part(PartKind kind, std::optional<Tube> tube = {}, std::optional<JointKind> joint = {}, const std::string& connection = {})
{
    SeriesQuestion question{Figure::part, tube, connection, joint};
    question.part = kind;
    return question;
}

void add_device(std::vector<SeriesQuestion>& asked, Device device)
{
    SeriesQuestion name = of_part(PartKind::device), replaces{Figure::replaces};
    name.device = replaces.device = device;
    asked.push_back(name);
    asked.push_back(replaces);
}

// What a shaft of the series is put together from, as far as the questions can tell it apart.
void add_parts(std::vector<SeriesQuestion>& asked, const Catalogue& catalogue)
{
    for (const Figure figure : {Figure::own_parts, Figure::cross_part, Figure::inner_part, Figure::outer_part}) asked.push_back({figure});
    for (const PartKind kind : {PartKind::tube, PartKind::tube_yoke, PartKind::guard_tube})
        for (const Tube tube : both_tubes) asked.push_back(of_part(kind, tube));
    asked.push_back(of_part(PartKind::pin));
    asked.push_back(of_part(PartKind::double_yoke));
    for (const JointKind joint : {JointKind::standard, JointKind::wide_angle}) asked.push_back(of_part(PartKind::guard_bearing, {}, joint));
    for (const Connection& connection : catalogue.connections)
        for (const JointKind joint : {JointKind::standard, JointKind::wide_angle}) asked.push_back(of_part(PartKind::connection_yoke, {}, joint, connection.name));
    for (const Device device : {Device::slip_clutch, Device::overrunning_clutch, Device::shear_bolt}) add_device(asked, device);
    for (const PartKind kind : {PartKind::chain, PartKind::label, PartKind::book}) asked.push_back(of_part(kind));
}

void add_limits(std::vector<SeriesQuestion>& asked)
{
    asked.push_back({Figure::own_limits});
    for (const LimitRow& row : limit_rows()) {
        SeriesQuestion question{Figure::limit};
        question.limit = row.limit;
        asked.push_back(question);
    }
}

bool is_of_wide_angle(const SeriesQuestion& question)
{
    switch (question.figure) {
    case Figure::reference:
    case Figure::inner_cap:
    case Figure::inner_span:
    case Figure::outer_cap:
    case Figure::outer_span:
    case Figure::inner_part:
    case Figure::outer_part:
    case Figure::guard_seat_wide_angle: return true;
    default: return question.joint == JointKind::wide_angle || question.part == PartKind::double_yoke;
    }
}

bool is_yes(Figure figure, const Answers& answers)
{
    const std::string* const text = answer_to({figure}, answers);
    return text && *text == said_yes;
}

SeriesQuestion name_of_device(const SeriesQuestion& replaces)
{
    SeriesQuestion name = of_part(PartKind::device);
    name.device = replaces.device;
    return name;
}

// Of a connection whose yoke the series has.
bool has_yoke(const SeriesQuestion& question, const Answers& answers)
{
    return question.connection.empty() || is_given({Figure::cross_to_groove, std::nullopt, question.connection, JointKind::standard}, answers);
}

// A span belongs to its cap, an outer cross to an inner one, a wide-angle joint's yoke to a connection that the series has, and its part to the
// standard joint's.
bool is_given_what_it_belongs_to(const SeriesQuestion& question, const Answers& answers)
{
    SeriesQuestion standard = question;
    standard.joint = JointKind::standard;
    switch (question.figure) {
    case Figure::inner_span:
    case Figure::outer_cap: return is_given({Figure::inner_cap}, answers);
    case Figure::outer_span: return is_given({Figure::outer_cap}, answers);
    case Figure::cross_to_groove: return question.joint != JointKind::wide_angle || is_given(standard, answers);
    case Figure::cross_part: return is_yes(Figure::own_parts, answers);
    case Figure::inner_part: return is_yes(Figure::own_parts, answers) && is_given({Figure::inner_cap}, answers);
    case Figure::outer_part: return is_yes(Figure::own_parts, answers) && is_given({Figure::outer_cap}, answers);
    case Figure::part: return is_yes(Figure::own_parts, answers) && has_yoke(question, answers) && (question.joint != JointKind::wide_angle || is_given(standard, answers));
    case Figure::replaces: return is_given(name_of_device(question), answers);
    case Figure::limit: return is_yes(Figure::own_limits, answers);
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
                               + optional("wide-angle-reference", {Figure::reference}, answers) + ">\n    " + cross(Figure::cap, Figure::span, Figure::cross_part, answers) + "\n";
    return "<catalogue" + xml_attribute("units", unit_word(units)) + ">\n  " + series + wide_angle(answers) + half(Tube::inner, answers) + half(Tube::outer, answers) + rows(answers) + parts(answers) + limits(answers)
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
    add_parts(asked, known_->catalogue);
    add_limits(asked);
    return asked;
}

}  // namespace shaftcut
