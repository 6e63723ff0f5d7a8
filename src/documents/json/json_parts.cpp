#include "json/json_parts.hpp"

#include "checks/check_sentences.hpp"

namespace shaftcut {

Json number(std::optional<Length> length) { return length ? Json(length->mm()) : Json(nullptr); }

Json thousandths(std::optional<std::int64_t> value) { return value ? Json(static_cast<double>(*value) / 1000.0) : Json(nullptr); }

Json json_of(const std::vector<Check>& checks, const Wording& w)
{
    Json list = Json::array();
    for (const Check& check : checks)
        list.push_back({{"id", to_word(check.id)},
                        {"result", to_word(check.result)},
                        {"value", thousandths(check.value)},
                        {"worst", thousandths(check.worst)},
                        {"limit", thousandths(check.limit)},
                        {"unit", check.unit == CheckUnit::none ? Json(nullptr) : Json(to_word(check.unit))},
                        {"says", say(check, w)},
                        {"basis", basis(check, w)}});
    return list;
}

std::string dumped(const Json& json, JsonLayout layout) { return json.dump(layout == JsonLayout::indented ? 2 : -1) + "\n"; }

}  // namespace shaftcut
