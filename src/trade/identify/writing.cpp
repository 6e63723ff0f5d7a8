#include "identify/writing.hpp"

#include <algorithm>

#include "identify/neighbours.hpp"

namespace shaftcut::identifying {
namespace {

char lower(char letter) { return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter; }

bool is_blank(char letter) { return letter == ' ' || letter == '\t' || letter == '\n' || letter == '\r'; }

std::string plain(const std::string& name)
{
    std::string made;
    for (const char letter : name)
        if (!is_blank(letter)) made += lower(letter);
        else if (!made.empty() && made.back() != ' ') made += ' ';
    if (!made.empty() && made.back() == ' ') made.pop_back();
    return made;
}

// That a wrong writing on a guard of each series is the name of series `named`.
std::vector<double> wrong_names(const Catalogue& catalogue, std::size_t named)
{
    const double all = static_cast<double>(catalogue.series.size());
    std::vector<double> chances;
    for (const std::vector<std::size_t>& near : neighbours(catalogue)) {
        if (near.empty()) {
            chances.push_back(wrong_known / all);
            continue;
        }
        const bool is_near = std::find(near.begin(), near.end(), named) != near.end();
        chances.push_back(wrong_known * ((is_near ? wrong_near / static_cast<double>(near.size()) : 0) + (1 - wrong_near) / all));
    }
    return chances;
}

}  // namespace

std::optional<std::size_t> named_series(const Catalogue& catalogue, const std::string& writing)
{
    std::optional<std::size_t> found;
    const std::string wanted = plain(writing);
    for (std::size_t i = 0; i < catalogue.series.size(); ++i) {
        const std::string& name = catalogue.series[i].name;
        if (name == writing) return i;
        if (plain(name) == wanted && (!found || name < catalogue.series[*found].name)) found = i;
    }
    return found;
}

Writing::Writing(const Catalogue& catalogue, const std::optional<std::string>& writing)
{
    if (!writing || plain(*writing).empty()) return;
    written_ = true;
    series_ = named_series(catalogue, *writing);
    wrong_of_none_ = series_ ? wrong_known / static_cast<double>(catalogue.series.size()) : 1 - wrong_known;
    wrong_ = series_ ? wrong_names(catalogue, *series_) : std::vector(catalogue.series.size(), 1 - wrong_known);
}

double Writing::of_one(std::size_t series) const
{
    if (!written_) return 1;
    return (series == series_ ? writing_right : 0) + (1 - writing_right) * wrong_[series];
}

double Writing::of_none() const
{
    if (!written_) return 1;
    return (series_ ? 0 : writing_right) + (1 - writing_right) * wrong_of_none_;
}

Writing::Mixed Writing::mixed(IdentifiedPart odd) const
{
    if (!written_) return {};
    const MixedWriting right = odd == IdentifiedPart::tubes ? writing_odd_tubes : writing_odd_joint;
    return {right.names_others, right.names_odd, 1 - right.names_others - right.names_odd};
}

}  // namespace shaftcut::identifying
