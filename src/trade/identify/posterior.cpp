#include "identify/posterior.hpp"

#include <algorithm>

namespace shaftcut::identifying {
namespace {

void weigh_one_series(Posterior& made, const Parts& parts, const Writing& writing)
{
    const std::vector<double>& tubes = parts.likelihood[IdentifiedPart::tubes].of_series;
    for (std::size_t k = 0; k < tubes.size(); ++k) {
        const double ends = parts.likelihood[IdentifiedPart::tractor].of_series[k] * parts.likelihood[IdentifiedPart::implement].of_series[k];
        made.one.push_back(prior_one / static_cast<double>(tubes.size()) * ends * tubes[k] * writing.of_one(k));
        made.one_series += made.one.back();
    }
}

// Of three parts that all differ, one.
double by_itself(const PartLikelihood& part) { return (1 - odd_of_none) * part.mean + odd_of_none * part.none; }

void weigh_mixed(Posterior& made, const Parts& parts, const Writing& writing)
{
    made.all_different = prior_mixed * all_differ * writing.of_all_different();
    for (const IdentifiedPart part : identified_parts) {
        made.odd[part] = mixed_sums(parts, writing, part);
        made.mixed += made.odd[part].total;
        made.all_different *= by_itself(parts.likelihood[part]);
    }
    made.mixed += made.all_different;
}

void divide(std::vector<double>& all, double by)
{
    for (double& one : all) one /= by;
}

void make_whole(Posterior& made)
{
    const double sum = made.one_series + made.mixed + made.none;
    divide(made.one, sum);
    for (double* one : {&made.one_series, &made.mixed, &made.none, &made.all_different}) *one /= sum;
    for (const IdentifiedPart part : identified_parts) {
        MixedSums& odd = made.odd[part];
        divide(odd.others, sum);
        divide(odd.odd, sum);
        for (double* one : {&odd.others_none, &odd.odd_none, &odd.total}) *one /= sum;
    }
}

// Where all three parts differ: that a part is of each series.
std::vector<double> by_itself_of(const PartLikelihood& part)
{
    std::vector<double> of = part.of_series;
    const double each = (1 - odd_of_none) / by_itself(part) / static_cast<double>(of.size());
    for (double& one : of) one *= each;
    return of;
}

void add_mixed_origins(Posterior& made, IdentifiedPart part, const std::vector<double>& by_itself)
{
    double known = 0;
    for (std::size_t k = 0; k < by_itself.size(); ++k) {
        double sum = made.all_different * by_itself[k];
        for (const IdentifiedPart odd : identified_parts) sum += odd == part ? made.odd[odd].odd[k] : made.odd[odd].others[k];
        made.mixed_part[part].push_back(sum);
        known += sum;
    }
    made.mixed_part_none[part] = std::max(0.0, made.mixed - known);
}

void add_origins(Posterior& made, const Parts& parts)
{
    std::vector<double> nowhere(made.one.size(), 1);  // of three parts that differ none is of the series
    made.any_part = made.one;
    for (const IdentifiedPart part : identified_parts) {
        const std::vector<double> of = by_itself_of(parts.likelihood[part]);
        add_mixed_origins(made, part, of);
        for (std::size_t k = 0; k < of.size(); ++k) {
            nowhere[k] *= 1 - of[k];
            made.any_part[k] += made.odd[part].others[k] + made.odd[part].odd[k];
        }
    }
    for (std::size_t k = 0; k < nowhere.size(); ++k) made.any_part[k] += made.all_different * (1 - nowhere[k]);
}

}  // namespace

std::size_t Posterior::best() const { return static_cast<std::size_t>(std::max_element(one.begin(), one.end()) - one.begin()); }

IdentifyVerdict Posterior::verdict() const
{
    if (one[best()] >= certain) return IdentifyVerdict::one;
    if (mixed >= certain) return IdentifyVerdict::mixed;
    return none >= certain ? IdentifyVerdict::none : IdentifyVerdict::several;
}

Posterior posterior(const Parts& parts, const Writing& writing)
{
    Posterior made;
    weigh_one_series(made, parts, writing);
    weigh_mixed(made, parts, writing);
    made.none = prior_none * parts.both_ends_none * parts.likelihood[IdentifiedPart::tubes].none * writing.of_none();
    make_whole(made);
    add_origins(made, parts);
    return made;
}

}  // namespace shaftcut::identifying
