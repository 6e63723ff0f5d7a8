// Writing on guards: which series it names, and whose guards are likely to fit by mistake.
#include "identify/writing.hpp"

#include <algorithm>
#include <numeric>

#include "identify/neighbours.hpp"
#include "support/catch.hpp"
#include "support/identify/invented.hpp"

using namespace shaftcut;
using namespace shaftcut::identifying;

namespace {

// Every other series in order: same shape first, then the nearest outer tube, then by name.
std::vector<std::size_t> sorted_out(const Catalogue& catalogue, std::size_t of)
{
    const auto width = [&](std::size_t one) {
        const auto& halves = catalogue.series[one].halves;
        return halves[Tube::outer].width.value_or(halves[Tube::inner].width.value_or(Length())).um();
    };
    std::vector<std::size_t> all;
    for (std::size_t k = 0; k < catalogue.series.size(); ++k)
        if (k != of) all.push_back(k);
    std::sort(all.begin(), all.end(), [&](std::size_t a, std::size_t b) {
        const auto rank = [&](std::size_t one) {
            return std::tuple(catalogue.series[one].shape != catalogue.series[of].shape, std::abs(width(one) - width(of)), catalogue.series[one].name);
        };
        return rank(a) < rank(b);
    });
    all.resize(std::min<std::size_t>(all.size(), 4));
    std::sort(all.begin(), all.end());
    return all;
}

}  // namespace

TEST_CASE("neighbours are the four of the same shape with the nearest outer tube")
{
    support::Dice dice(4);
    for (const int count : {1, 2, 4, 7, 60, 200}) {
        const Catalogue catalogue = test::invented_catalogue(dice, count, "Invented");
        const auto near = neighbours(catalogue);
        for (std::size_t k = 0; k < near.size(); ++k) {
            auto found = near[k];
            std::sort(found.begin(), found.end());
            CHECK(found == sorted_out(catalogue, k));
        }
    }
}

TEST_CASE("a writing names a series without regard to case and doubled blanks")
{
    Catalogue catalogue;
    for (const char* name : {"Alder 2", "ALDER 2", "Birch 1"}) catalogue.series.emplace_back().name = name;
    CHECK(named_series(catalogue, "birch   1") == 2U);
    CHECK(named_series(catalogue, " BIRCH 1 ") == 2U);
    CHECK(named_series(catalogue, "Birch1") == std::nullopt);
    // Of two that differ in case only the one that is written exactly so.
    CHECK(named_series(catalogue, "Alder 2") == 0U);
    CHECK(named_series(catalogue, "ALDER 2") == 1U);
    CHECK(named_series(catalogue, "alder 2") == 1U);
}

TEST_CASE("what a writing may be adds up to one, whatever the shaft is of")
{
    support::Dice dice(5);
    const Catalogue catalogue = test::invented_catalogue(dice, 40, "Invented");
    std::vector<double> sums(catalogue.series.size(), 0);
    double none = 0;
    const auto add = [&](const std::string& written) {
        const Writing writing(catalogue, written);
        for (std::size_t k = 0; k < sums.size(); ++k) sums[k] += writing.of_one(k);
        none += writing.of_none();
    };
    for (const Series& series : catalogue.series) add(series.name);
    add("Elsewhere");
    for (const double sum : sums) CHECK(sum == Approx(1));
    CHECK(none == Approx(1));
}

TEST_CASE("nothing written says nothing, and neither do blanks")
{
    support::Dice dice(5);
    const Catalogue catalogue = test::invented_catalogue(dice, 5, "Invented");
    for (const auto& written : {std::optional<std::string>(), std::optional<std::string>("  ")}) {
        const Writing writing(catalogue, written);
        CHECK(writing.of_one(0) == 1);
        CHECK(writing.of_none() == 1);
        CHECK(writing.wrong(0) == 1);
    }
}
