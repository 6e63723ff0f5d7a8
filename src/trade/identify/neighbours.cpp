#include "identify/neighbours.hpp"

#include <algorithm>
#include <numeric>

#include "identify/priors.hpp"

namespace shaftcut::identifying {
namespace {

using Places = std::vector<std::size_t>;

Length guarded_width(const Series& series)
{
    return series.halves[Tube::outer].width.value_or(series.halves[Tube::inner].width.value_or(Length()));
}

// Series by width, those of one width by name: the nearest stand beside each other.
class ByWidth {
public:
    ByWidth(const Catalogue& catalogue, Places which) : catalogue_(catalogue), order_(std::move(which))
    {
        std::sort(order_.begin(), order_.end(), [&](std::size_t a, std::size_t b) {
            const Length first = width(a), second = width(b);
            return first != second ? first < second : catalogue.series[a].name < catalogue.series[b].name;
        });
    }

    // The nearest to `of`, which is not among them.
    Places nearest(std::size_t of, std::size_t count) const
    {
        const auto less = [&](std::size_t one, Length w) { return width(one) < w; };
        const auto here = std::lower_bound(order_.begin(), order_.end(), width(of), less);
        Places found;
        add_upward(found, here, of, count);
        add_downward(found, here, of, count);
        std::sort(found.begin(), found.end(), [&](std::size_t a, std::size_t b) {
            const Length first = apart(a, of), second = apart(b, of);
            return first != second ? first < second : catalogue_.series[a].name < catalogue_.series[b].name;
        });
        found.resize(std::min(found.size(), count));
        return found;
    }

private:
    using Place = Places::const_iterator;

    Length width(std::size_t one) const { return guarded_width(catalogue_.series[one]); }
    Length apart(std::size_t a, std::size_t b) const { return std::max(width(a) - width(b), width(b) - width(a)); }

    void add_upward(Places& found, Place from, std::size_t of, std::size_t count) const
    {
        for (std::size_t added = 0; from != order_.end() && added < count; ++from)
            if (*from != of) {
                found.push_back(*from);
                ++added;
            }
    }

    // A run of one width at a time, for its first by name stand at its other end.
    void add_downward(Places& found, Place from, std::size_t of, std::size_t count) const
    {
        for (std::size_t added = 0; from != order_.begin() && added < count;) {
            const auto less = [&](std::size_t one, Length w) { return width(one) < w; };
            const Place run = std::lower_bound(order_.begin(), from, width(*(from - 1)), less);
            const std::size_t before = found.size();
            const auto length = static_cast<std::size_t>(from - run);
            add_upward(found, run, of, std::min(count, length));
            added += found.size() - before;
            from = run;
        }
    }

    const Catalogue& catalogue_;
    Places order_;
};

PerEach<Shape, Places> of_each_shape(const Catalogue& catalogue)
{
    PerEach<Shape, Places> each;
    for (std::size_t i = 0; i < catalogue.series.size(); ++i) each[catalogue.series[i].shape].push_back(i);
    return each;
}

Places of_other_shapes(const Catalogue& catalogue, Shape shape)
{
    Places all;
    for (std::size_t i = 0; i < catalogue.series.size(); ++i)
        if (catalogue.series[i].shape != shape) all.push_back(i);
    return all;
}

}  // namespace

std::vector<std::vector<std::size_t>> neighbours(const Catalogue& catalogue)
{
    std::vector<Places> near(catalogue.series.size());
    const PerEach<Shape, Places> same = of_each_shape(catalogue);
    for (std::size_t shape = 0; shape < Words<Shape>::all.size(); ++shape) {
        const Places& members = same[static_cast<Shape>(shape)];
        const ByWidth like(catalogue, members);
        for (const std::size_t one : members) near[one] = like.nearest(one, near_series);
        if (members.empty() || members.size() > near_series) continue;
        const ByWidth unlike(catalogue, of_other_shapes(catalogue, static_cast<Shape>(shape)));
        for (const std::size_t one : members) {
            const Places more = unlike.nearest(one, near_series - near[one].size());
            near[one].insert(near[one].end(), more.begin(), more.end());
        }
    }
    return near;
}

}  // namespace shaftcut::identifying
