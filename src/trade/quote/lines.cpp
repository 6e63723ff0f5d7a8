#include "quote/lines.hpp"

#include <algorithm>
#include <numeric>

namespace shaftcut {
namespace {

constexpr std::int64_t thousand = 1000, minutes_of_an_hour = 60, um_of_a_mm = 1000;

BilledQuantity times(std::int64_t count) { return {count * thousand}; }

// In whole millimetres, which are thousandths of a metre, rounded up.
BilledQuantity metres_of(Length length) { return {(length.um() + um_of_a_mm - 1) / um_of_a_mm}; }

PricedWork priced(Work work)
{
    switch (work) {
    case Work::pieces: return PricedWork::pieces;
    case Work::outer_yoke: return PricedWork::outer_yoke;
    case Work::inner_yoke: return PricedWork::inner_yoke;
    case Work::crosses: return PricedWork::crosses;
    case Work::closed: return PricedWork::closed;
    case Work::grease: return PricedWork::grease;
    case Work::guards: return PricedWork::guards;
    case Work::join: return PricedWork::join;
    case Work::fittings: return PricedWork::fittings;
    case Work::chains: return PricedWork::chains;
    case Work::papers: break;
    }
    return PricedWork::papers;
}

bool is_ordered(const QuoteLine& line)
{
    return std::holds_alternative<PartSold>(line.what) || std::holds_alternative<TubeSold>(line.what) || std::holds_alternative<ShaftSold>(line.what);
}

bool same(const LineFor& one, const LineFor& other)
{
    if (one.index() != other.index()) return false;
    if (const auto* labour = std::get_if<Labour>(&one)) return labour->work == std::get<Labour>(other).work;
    if (const auto* part = std::get_if<PartSold>(&one)) return part->part == std::get<PartSold>(other).part;
    if (const auto* tube = std::get_if<TubeSold>(&one)) return tube->profile == std::get<TubeSold>(other).profile;
    if (const auto* shaft = std::get_if<ShaftSold>(&one)) return shaft->series == std::get<ShaftSold>(other).series && shaft->closed == std::get<ShaftSold>(other).closed;
    if (const auto* service = std::get_if<Service>(&one)) return service->name == std::get<Service>(other).name;
    return false;
}

// One rounding a line, of its whole quantity.
void count_amount(QuoteLine& line)
{
    if (line.each && !line.missing) line.amount = line_amount(*line.each, line.quantity, line.per);
}

void add_piece_work(std::vector<QuoteLine>& lines, const LineMaker& make, std::int64_t tubes, std::int64_t guards)
{
    if (tubes > 0) lines.push_back(make.labour(PricedWork::cut_tube, tubes));
    if (guards > 0) lines.push_back(make.labour(PricedWork::cut_guard, guards));
    if (tubes > 0) lines.push_back(make.labour(PricedWork::deburr, tubes));
}

std::int64_t sawn_tubes(const BuiltShaft& built) { return std::count_if(both_tubes.begin(), both_tubes.end(), [&](Tube tube) { return built.sawn[tube]; }); }
std::int64_t guard_pieces(const BuiltShaft& built)
{
    return std::count_if(both_tubes.begin(), both_tubes.end(), [&](Tube tube) { return built.lengths.guard_blank[tube].has_value(); });
}

// A tube that is fetched made to its length loses no kerf.
QuoteLine tube_line(const ShaftPart& part, const BuildPlan& plan, const Series& series, Length kerf, const LineMaker& make)
{
    const TubeKind kind = part.kind == PartKind::tube ? TubeKind::drive : TubeKind::guard;
    const bool sawn = kind == TubeKind::guard || plan.built->sawn[*part.tube];
    return make.tube(profile_of(series, {*part.tube, kind}), std::int64_t{plan.count} * (*part.length + (sawn ? kerf : Length())));
}

Money sum_of(const std::vector<QuoteLine>& lines)
{
    return std::accumulate(lines.begin(), lines.end(), Money(), [](Money sum, const QuoteLine& line) { return sum + *line.amount; });
}

QuoteLine charge(LineFor what, Money amount, OwnTax tax)
{
    QuoteLine line;
    line.what = std::move(what);
    line.unit = QuoteUnit::flat;
    line.each = line.amount = amount;
    line.tax = std::move(tax);
    return line;
}

void add_minimum(std::vector<QuoteLine>& lines, const Prices& prices)
{
    const Money sum = sum_of(lines);
    if (!lines.empty() && prices.minimum && sum < *prices.minimum) lines.push_back(charge(MinimumCharge{}, *prices.minimum - sum, {prices.tax, {}}));
}

// Of each rate its own part: what it is taken off is taxed so.
void add_percent_off(std::vector<QuoteLine>& lines, Percent percent)
{
    std::vector<QuoteLine> sums;
    for (const QuoteLine& line : lines) {
        const auto sum = std::find_if(sums.begin(), sums.end(), [&](const QuoteLine& one) { return one.tax.percent == line.tax.percent; });
        if (sum == sums.end()) sums.push_back(charge(Discount{percent, {}}, *line.amount, line.tax));
        else sum->amount = *sum->amount + *line.amount;
    }
    std::vector<QuoteLine> discounts;
    for (const QuoteLine& sum : sums) discounts.push_back(charge(Discount{percent, {}}, -percent_of(percent, *sum.amount), {sum.tax.percent, {}}));
    lines.insert(lines.end(), discounts.begin(), discounts.end());
}

}  // namespace

QuoteLine LineMaker::flat(LineFor what) const
{
    QuoteLine line;
    line.what = std::move(what);
    line.tax = {prices_.tax, {}};
    return line;
}

template <class Name>
QuoteLine LineMaker::priced(QuoteLine line, const std::map<Name, Price>& prices, const Name& name, NotPriced missing) const
{
    const auto found = prices.find(name);
    if (found == prices.end()) {
        line.missing = missing;
        return line;
    }
    line.each = found->second.each;
    line.lead_days = found->second.lead_days;
    if (found->second.tax) line.tax = *found->second.tax;
    count_amount(line);
    return line;
}

QuoteLine LineMaker::labour(PricedWork work, std::int64_t count) const
{
    QuoteLine line = flat(Labour{work});
    line.unit = QuoteUnit::minute;
    line.per = minutes_of_an_hour;
    line.each = prices_.hourly_rate;
    const auto minutes = prices_.minutes.find(work);
    line.quantity = {minutes == prices_.minutes.end() ? 0 : minutes->second.thousandths * count};
    if (minutes == prices_.minutes.end()) line.missing = NotPriced::minutes;
    else if (!prices_.hourly_rate) line.missing = NotPriced::hourly_rate;
    count_amount(line);
    return line;
}

QuoteLine LineMaker::part(const PartName& name, std::int64_t count) const
{
    QuoteLine line = flat(PartSold{name});
    line.quantity = times(count);
    return priced(std::move(line), prices_.parts, name.known, NotPriced::part);
}

QuoteLine LineMaker::tube(const std::string& profile, Length length) const
{
    QuoteLine line = flat(TubeSold{profile});
    line.unit = QuoteUnit::metre;
    line.quantity = metres_of(length);
    return priced(std::move(line), prices_.profiles, profile, NotPriced::profile);
}

QuoteLine LineMaker::new_shaft(const std::string& series, Length closed) const
{
    return priced(flat(ShaftSold{series, closed}), prices_.shafts, ShaftAsSold{series, closed}, NotPriced::shaft);
}

QuoteLine LineMaker::service(const std::string& name) const
{
    return priced(flat(Service{name}), prices_.services, name, NotPriced::service);
}

std::vector<QuoteLine> lines_of(const WorkOrder& order, const Prices& prices)
{
    std::vector<QuoteLine> lines;
    if (!order.cut) return lines;
    const LineMaker make(prices);
    const CutPlan& plan = order.cut->plan;
    const auto count = [](auto&& cuts) { return std::count_if(both_tubes.begin(), both_tubes.end(), cuts); };
    add_piece_work(lines, make, count([&](Tube tube) { return plan.cuts_tube(tube); }), count([&](Tube tube) { return plan.cuts_guard(tube); }));
    // A shaft that fits is never parted: it is tried on the machine alone.
    if (!lines.empty())
        for (const PricedWork work : {PricedWork::grease, PricedWork::refit}) lines.push_back(make.labour(work, 1));
    lines.push_back(make.labour(PricedWork::closing_test, 1));
    return lines;
}

std::vector<QuoteLine> lines_of(const BuildPlan& plan, const Catalogue& catalogue, const Workshop& workshop, const Prices& prices)
{
    std::vector<QuoteLine> lines;
    if (!plan.built) return lines;
    const LineMaker make(prices);
    const Series& series = *find_series(catalogue, plan.series);
    add_piece_work(lines, make, sawn_tubes(*plan.built) * plan.count, guard_pieces(*plan.built) * plan.count);
    for (const Operation& operation : plan.built->operations) lines.push_back(make.labour(priced(operation.work), plan.count));
    for (const ShaftPart& part : plan.built->parts)
        lines.push_back(part.length ? tube_line(part, plan, series, workshop.saw.kerf, make) : make.part(part.name, std::int64_t{part.count} * plan.count));
    return merged(lines);
}

std::vector<QuoteLine> merged(const std::vector<QuoteLine>& lines)
{
    std::vector<QuoteLine> kept;
    for (const QuoteLine& line : lines) {
        const auto there = std::find_if(kept.begin(), kept.end(), [&](const QuoteLine& one) { return same(one.what, line.what); });
        if (there == kept.end()) {
            kept.push_back(line);
            continue;
        }
        there->quantity.thousandths += line.quantity.thousandths;
        count_amount(*there);
    }
    return kept;
}

std::vector<QuoteLine> with_quantities(std::vector<QuoteLine> lines, const QuoteRequest& request)
{
    for (const QuantityAsked& asked : request.quantities) {
        if (asked.line == 0 || asked.line > lines.size()) continue;
        QuoteLine& line = lines[asked.line - 1];
        line.quantity = asked.quantity;
        if (line.missing == NotPriced::minutes && line.each) line.missing.reset();
        count_amount(line);
    }
    return lines;
}

bool all_priced(const std::vector<QuoteLine>& lines)
{
    return std::all_of(lines.begin(), lines.end(), [](const QuoteLine& line) { return line.amount.has_value(); });
}

bool any_ordered(const std::vector<QuoteLine>& lines) { return std::any_of(lines.begin(), lines.end(), is_ordered); }

std::optional<int> lead_days_of(const std::vector<QuoteLine>& lines)
{
    int days = 0;
    for (const QuoteLine& line : lines) {
        // What is free of charge lies in the workshop.
        if (!is_ordered(line) || (line.each == Money() && !line.lead_days)) continue;
        if (!line.lead_days) return std::nullopt;
        days = std::max(days, *line.lead_days);
    }
    return days;
}

std::vector<QuoteLine> with_charges(std::vector<QuoteLine> lines, const QuoteMeans& means)
{
    if (!all_priced(lines)) return lines;
    add_minimum(lines, means.prices);
    if (!means.request.discount || lines.empty()) return lines;
    if (const auto* percent = std::get_if<Percent>(&*means.request.discount)) add_percent_off(lines, *percent);
    else {
        const Money off = std::get<Money>(*means.request.discount);
        lines.push_back(charge(Discount{{}, off}, -off, {means.prices.tax, {}}));
    }
    return lines;
}

}  // namespace shaftcut
