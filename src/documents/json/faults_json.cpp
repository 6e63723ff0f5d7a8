#include "json/faults_json.hpp"

#include "json/json_parts.hpp"

namespace shaftcut {
namespace {

Json some(const std::string& text) { return text.empty() ? Json(nullptr) : Json(text); }

Json json_of(const Problem& problem)
{
    const std::size_t at = problem.path.find('@');
    return {{"file", problem.place.file},
            {"path", problem.path},
            {"element", some(problem.path.substr(0, at))},
            {"attribute", at == std::string::npos ? Json(nullptr) : Json(problem.path.substr(at + 1))},
            {"line", problem.place.line},
            {"column", problem.place.column},
            {"says", problem.wrong + "; " + problem.right}};
}

}  // namespace

std::string faults_json_of(const Problems& problems)
{
    Json faults = Json::array();
    for (const Problem& problem : problems) faults.push_back(json_of(problem));
    // What is quoted of a file may be no text at all.
    return Json({{"faults", std::move(faults)}}).dump(-1, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace shaftcut
