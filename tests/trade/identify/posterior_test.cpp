// The short sums over shafts of several series against the same sums with every pair and triple written out.
#include "identify/posterior.hpp"

#include <array>

#include "support/catch.hpp"
#include "support/identify/invented.hpp"
#include "support/identify/reference_files.hpp"

using namespace shaftcut;
using namespace shaftcut::identifying;

namespace {

constexpr int none = -1;

// Everything that a shaft may be, one after the other: what its three parts are of, and how probable that is together with what was measured.
class WrittenOut {
public:
    WrittenOut(const Parts& parts, const Catalogue& catalogue, const std::optional<std::string>& writing)
        : parts_(parts), count_(static_cast<int>(catalogue.series.size())), writing_(catalogue, writing), written_(writing.has_value())
    {
        for (const IdentifiedPart part : identified_parts) {
            total_part_[part].assign(catalogue.series.size() + 1, 0);
            odd_[part] = odd_none_[part] = others_none_[part] = 0;
        }
        any_.assign(catalogue.series.size(), 0);
        add_all();
    }

    double one(int k) const { return one_[static_cast<std::size_t>(k)] / sum_; }
    double none_whole() const { return none_whole_ / sum_; }
    double mixed() const { return mixed_ / sum_; }
    double odd(IdentifiedPart part) const { return odd_[part] / sum_; }
    // Of these the odd part, or the two others, are of none.
    double odd_none(IdentifiedPart part) const { return odd_none_[part] / sum_; }
    double others_none(IdentifiedPart part) const { return others_none_[part] / sum_; }
    double any(int k) const { return any_[static_cast<std::size_t>(k)] / sum_; }
    // Mixed, and that part is of k.
    double mixed_part(IdentifiedPart part, int k) const { return total_part_[part][index(k)] / sum_; }

private:
    using Shaft = std::array<int, 3>;

    std::size_t index(int k) const { return static_cast<std::size_t>(k == none ? count_ : k); }
    double like(IdentifiedPart part, int k) const { return k == none ? parts_.likelihood[part].none : parts_.likelihood[part].of_series[static_cast<std::size_t>(k)]; }
    double wrong(int k) const { return k == none ? writing_.wrong_of_none() : writing_.wrong(static_cast<std::size_t>(k)); }
    bool names(int k) const { return written_ && (k == none ? !writing_.series() : writing_.series() == static_cast<std::size_t>(k)); }
    double g(int k) const { return written_ ? 0.8 * (names(k) ? 1 : 0) + 0.2 * wrong(k) : 1; }
    double g(int m, int o, IdentifiedPart odd) const
    {
        if (!written_) return 1;
        const double p = odd == IdentifiedPart::tubes ? 0.2 : 0.7, q = odd == IdentifiedPart::tubes ? 0.6 : 0.1;
        return (names(m) ? p : 0) + (names(o) ? q : 0) + (1 - p - q) * wrong(m);
    }

    void add_mixed(const Shaft& of, double weight)
    {
        mixed_ += weight;
        sum_ += weight;
        for (std::size_t i = 0; i < 3; ++i) total_part_[identified_parts[i]][index(of[i])] += weight;
        for (int k = 0; k < count_; ++k)
            if (of[0] == k || of[1] == k || of[2] == k) any_[static_cast<std::size_t>(k)] += weight;
    }

    void add_all()
    {
        const double n = count_;
        for (int k = 0; k < count_; ++k) {
            double weight = 0.86 / n * g(k);
            for (const IdentifiedPart part : identified_parts) weight *= like(part, k);
            one_.push_back(weight);
            any_[static_cast<std::size_t>(k)] += weight;
            sum_ += weight;
        }
        none_whole_ = 0.06 * parts_.both_ends_none * like(IdentifiedPart::tubes, none) * g(none);
        sum_ += none_whole_;
        for (std::size_t odd = 0; odd < 3; ++odd) add_odd(odd);
        add_different();
    }

    void add_odd(std::size_t odd)
    {
        const double n = count_;
        for (int m = none; m < count_; ++m)
            for (int o = none; o < count_; ++o) {
                if (m == o) continue;
                double weight = 0.08 * 0.3 * (m == none ? 0.1 : 0.9 / n);
                weight *= m == none ? 1 / n : o == none ? 0.2 : 0.8 / (n - 1);
                for (std::size_t i = 0; i < 3; ++i)
                    if (i == odd || m != none) weight *= like(identified_parts[i], i == odd ? o : m);
                if (m == none) weight *= identified_parts[odd] == IdentifiedPart::tubes ? parts_.both_ends_none : rest_of_none(odd);
                weight *= g(m, o, identified_parts[odd]);
                odd_[identified_parts[odd]] += weight;
                if (o == none) odd_none_[identified_parts[odd]] += weight;
                if (m == none) others_none_[identified_parts[odd]] += weight;
                Shaft of{m, m, m};
                of[odd] = o;
                add_mixed(of, weight);
            }
    }

    double rest_of_none(std::size_t odd) const
    {
        double rest = 1;
        for (std::size_t i = 0; i < 3; ++i)
            if (i != odd) rest *= like(identified_parts[i], none);
        return rest;
    }

    void add_different()
    {
        for (int t = none; t < count_; ++t)
            for (int i = none; i < count_; ++i)
                for (int b = none; b < count_; ++b) {
                    double weight = 0.08 * 0.1 * (written_ ? writing_.wrong_of_none() : 1);
                    const Shaft of{t, i, b};
                    for (std::size_t part = 0; part < 3; ++part)
                        weight *= (of[part] == none ? 0.2 : 0.8 / static_cast<double>(count_)) * like(identified_parts[part], of[part]);
                    add_mixed(of, weight);
                }
    }

    const Parts& parts_;
    int count_;
    Writing writing_;
    bool written_;
    std::vector<double> one_, any_;
    PerEach<IdentifiedPart, std::vector<double>> total_part_;
    PerEach<IdentifiedPart, double> odd_, odd_none_, others_none_;
    double none_whole_ = 0, mixed_ = 0, sum_ = 0;
};

void compare(const Catalogue& catalogue, const Measures& measures)
{
    const Parts parts = parts_of(catalogue, measures);
    const Posterior made = posterior(parts, Writing(catalogue, measures.writing));
    const WrittenOut expected(parts, catalogue, measures.writing);
    const auto same = [](double value) { return Approx(value).epsilon(1e-9).margin(1e-13); };
    CHECK(made.mixed == same(expected.mixed()));
    CHECK(made.none == same(expected.none_whole()));
    for (int k = 0; k < static_cast<int>(catalogue.series.size()); ++k) {
        const auto at = static_cast<std::size_t>(k);
        CHECK(made.one[at] == same(expected.one(k)));
        CHECK(made.any_part[at] == same(expected.any(k)));
        for (const IdentifiedPart part : identified_parts) CHECK(made.mixed_part[part][at] == same(expected.mixed_part(part, k)));
    }
    for (const IdentifiedPart part : identified_parts) {
        CHECK(made.odd[part].total == same(expected.odd(part)));
        CHECK(made.odd[part].odd_none == same(expected.odd_none(part)));
        CHECK(made.odd[part].others_none == same(expected.others_none(part)));
        CHECK(made.mixed_part_none[part] == same(expected.mixed_part(part, none)));
    }
}

}  // namespace

TEST_CASE("short sums over six series are the sums over all pairs and triples")
{
    const Catalogue catalogue = test::read_reference_catalogue(std::string(SHAFTCUT_SOURCE_DIR) + "/tests/trade/identify/reference/six/series.xml");
    support::Dice dice(6);
    for (int i = 0; i < 40; ++i) {
        const test::TrueShaft shaft = test::drawn_shaft(dice, catalogue, catalogue, {});
        Measures measures = test::drawn_measures(dice, shaft, {});
        for (const auto& writing : {std::optional<std::string>(), std::optional<std::string>("Invented C"), std::optional<std::string>("Elsewhere")}) {
            measures.writing = writing;
            compare(catalogue, measures);
        }
    }
}
