#include "json/bench_catalogue_json.hpp"

#include <algorithm>

#include "form/tick_words.hpp"
#include "json/json_parts.hpp"

namespace shaftcut {
namespace {

using measuring_form::tick_word;

// Each word that a job file may hold here, with what the measuring form calls it.
template <class E>
Json choices(const Wording& w)
{
    Json list = Json::array();
    for (std::size_t i = 0; i < Words<E>::all.size(); ++i) list.push_back({{"word", Words<E>::all[i]}, {"says", tick_word(static_cast<E>(i), w)}});
    return list;
}

// By the attributes of a job's condition.
Json conditions(const Wording& w)
{
    return {{"guard", choices<Completeness>(w)}, {"chains", choices<Completeness>(w)}, {"crosses", choices<CrossWear>(w)},
            {"tubes", choices<TubeState>(w)},    {"locks", choices<LockState>(w)},     {"weld", choices<Weld>(w)},
            {"device", choices<DeviceState>(w)}, {"phase", choices<Phase>(w)},         {"slides", choices<Slides>(w)}};
}

// Each once: a yoke may be stated for either joint.
Json connections_of(const Series& series)
{
    Json list = Json::array();
    for (const Yoke& yoke : series.yokes)
        if (std::find(list.begin(), list.end(), Json(yoke.connection)) == list.end()) list.push_back(yoke.connection);
    return list;
}

Json json_of(const Series& series)
{
    const auto reference = series.wide_angle_reference ? series.wide_angle_reference : usual_reference(series.shape);
    Json closed = Json::array();
    for (const Length length : series.closed_lengths) closed.push_back(length.mm());
    return {{"name", series.name},
            {"shape", to_word(series.shape)},
            {"wide_angle", series.wide_angle.has_value()},
            {"wide_angle_reference", reference ? Json(to_word(*reference)) : Json(nullptr)},
            {"closed_lengths_mm", std::move(closed)},
            {"knows_stops", std::all_of(both_tubes.begin(), both_tubes.end(), [&](Tube tube) { return series.halves[tube].shoulder.has_value(); })},
            {"connections", connections_of(series)}};
}

Json json_of(const Connection& connection) { return {{"name", connection.name}, {"speeds", connection.speeds}}; }

template <class T>
Json listed(const std::vector<T>& all)
{
    Json list = Json::array();
    for (const T& one : all) list.push_back(json_of(one));
    return list;
}

}  // namespace

std::string bench_catalogue_json_of(const BenchOffers& offers, JsonLayout layout, const Wording& w)
{
    Json words = Json::object();
    for (const auto& [key, text] : offers.words) words[key] = text;
    return dumped({{"units", unit_word(w.units())},
                   {"language", "en"},
                   {"series", listed(offers.catalogue.series)},
                   {"shapes", choices<Shape>(w)},
                   {"connections", listed(offers.catalogue.connections)},
                   {"locks", choices<Lock>(w)},
                   {"devices", choices<Device>(w)},
                   {"features", choices<Feature>(w)},
                   {"conditions", conditions(w)},
                   {"prices", offers.prices},
                   {"register", false},
                   {"words", std::move(words)}},
                  layout);
}

}  // namespace shaftcut
