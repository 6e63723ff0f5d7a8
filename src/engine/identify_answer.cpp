// Which series a measured shaft can be.
#include "identify/verdict_words.hpp"
#include "known.hpp"
#include "measures_reader.hpp"
#include "order_number.hpp"
#include "reading/said.hpp"
#include "shaftcut/engine/engine.hpp"
#include "xml/insertion.hpp"

namespace shaftcut {
namespace {

Problem outside_trade(const OutsideTrade& outside, const Wording& w)
{
    Said said = identify_words::say(outside, w);
    return {outside.place, std::move(said.wrong), std::move(said.right)};
}

Problem no_series(const Place& file)
{
    Said said = identify_words::empty_catalogue(Wording(Units::mm));
    return {file, std::move(said.wrong), std::move(said.right)};
}

std::string parts_of(const Source& file)
{
    std::string parts;
    for (const std::string_view part : children_in(file.bytes)) parts += "      " + std::string(part) + "\n";
    return parts;
}

}  // namespace

IdentifyAnswer Engine::identify(const Source& measures, const Wishes& wishes) const
{
    const Read<Measures> read = read_measures(measures);
    IdentifyAnswer answer{std::nullopt, problems_of(read.faults), {}, {}, {}, {measures.name, 1, 1}, {}};
    if (!read.value) return answer;
    answer.order = read.value->shaft;
    answer.key = order_key(answer.order);
    if (known_->catalogue.series.empty()) {
        answer.problems.push_back(no_series(answer.place));
        return answer;
    }
    answer.measures = parts_of(measures);
    answer.shaft = identified(*read.value, known_->catalogue, known_->workshop.name, wishes.units.value_or(read.value->units));
    const Wording w(read.value->units);
    for (const OutsideTrade& outside : answer.shaft->found.outside_trade) answer.warnings.push_back(outside_trade(outside, w));
    return answer;
}

bool undecided(const IdentifyAnswer& answer) { return answer.shaft && answer.shaft->found.verdict == IdentifyVerdict::several; }

FormAnswer Engine::identify_form(const Wishes& wishes) const
{
    MeasuringForm form = form_for(nullptr, OnMachine::lengths, *known_, wishes.units.value_or(Units::mm));
    form.to_identify = true;
    return {form, {}};
}

}  // namespace shaftcut
