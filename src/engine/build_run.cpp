#include "shaftcut/engine/build_run.hpp"

#include <algorithm>
#include <filesystem>

#include "batch_plans.hpp"
#include "build_state.hpp"
#include "engine/said.hpp"
#include "lists/orders_reader.hpp"
#include "lists/pieces.hpp"
#include "reading/said.hpp"

namespace shaftcut {

struct BuildRun::State {
    std::shared_ptr<const Known> known;
    std::string name;
    OrderList list;
    Workshop workshop;  // with the bars that are sawn from: what none of them is long enough for is refused
    Units units = Units::mm;
    BatchSaw saw;
    double seconds = 0;
    BatchBuilder builder;
};

namespace {

enum class ListKind { table, xml };

// By the file's name, in either case.
std::optional<ListKind> kind_of(const std::string& file)
{
    std::string end = std::filesystem::path(file).extension().string();
    std::transform(end.begin(), end.end(), end.begin(), [](unsigned char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : static_cast<char>(c); });
    if (end == ".csv" || end == ".xlsx") return ListKind::table;
    return end == ".xml" ? std::optional(ListKind::xml) : std::nullopt;
}

OrderList read_orders(const Source& orders, const Catalogue& catalogue, Units units, const ListMap* map)
{
    switch (kind_of(orders.name).value_or(ListKind::xml)) {
    case ListKind::table: return read_orders_csv(orders, catalogue, units, map);
    case ListKind::xml: break;
    }
    return read_orders_xml(orders, catalogue);
}

BatchSaw workshop_saw(const Workshop& workshop, const SawWishes& wishes)
{
    return {wishes.kerf.value_or(workshop.saw.kerf), wishes.trim_start, wishes.trim_end, workshop.saw.reusable_leftover.value_or(Length()), workshop.stock, workshop.profile_stock};
}

// The bars to saw from: these of the caller's for the profiles that they name, the workshop's for the others.
std::vector<ProfileStock> with_own(std::vector<ProfileStock> stock, const std::vector<ProfileStock>& own)
{
    std::erase_if(stock, [&](const ProfileStock& bars) { return std::any_of(own.begin(), own.end(), [&](const ProfileStock& one) { return one.profile == bars.profile; }); });
    stock.insert(stock.end(), own.begin(), own.end());
    return stock;
}

std::vector<std::string> names_in_order(const std::vector<ListMap>& maps)
{
    std::vector<std::string> names;
    for (const ListMap& map : maps) names.push_back(map.name);
    return names;
}

}  // namespace

bool names_list_of_orders(const std::string& file) { return kind_of(file).has_value(); }

bool has_headings(const std::string& file) { return kind_of(file) == ListKind::table; }

BuildStart start_build(const std::shared_ptr<const Known>& known, const Source& orders, const Wishes& wishes, const SawWishes& saw_wishes)
{
    const Units units = wishes.units.value_or(Units::mm);
    const ListMap* const map = find_list_map(*known, wishes.list);
    if (!map && !wishes.list.empty()) return {std::nullopt, {}, no_such_list_map(wishes.list, names_in_order(known->lists), Wording(units))};
    OrderList list = read_orders(orders, known->catalogue, units, map);
    BuildStart start{std::nullopt, problems_of(list.faults)};
    BatchSaw saw = workshop_saw(known->workshop, saw_wishes);
    if (saw_wishes.stock) {
        const auto own = read_profile_stock(saw_wishes.stock->bytes, saw_wishes.stock->name, units);
        if (const auto* faults = std::get_if<FaultList>(&own)) {
            for (const Fault& fault : *faults) start.problems.push_back(problem_of(fault));
            return start;
        }
        saw.profile_stock = with_own(std::move(saw.profile_stock), std::get<std::vector<ProfileStock>>(own));
    }
    if (list.orders.empty()) return start;
    Workshop workshop = known->workshop;
    workshop.profile_stock = saw.profile_stock;
    const std::string name = list_name(orders.name);
    const Units of_documents = wishes.units.value_or(list.units);
    start.run.emplace(std::make_unique<BuildRun::State>(BuildRun::State{known, name, std::move(list), std::move(workshop), of_documents, std::move(saw),
                                                                        saw_wishes.seconds, BatchBuilder(name, known->workshop.name, of_documents)}));
    return start;
}

BuildRun::BuildRun(std::unique_ptr<State> state) : state_(std::move(state)) {}
BuildRun::BuildRun(BuildRun&&) noexcept = default;
BuildRun& BuildRun::operator=(BuildRun&&) noexcept = default;
BuildRun::~BuildRun() = default;

const std::string& BuildRun::name() const { return state_->name; }
std::size_t BuildRun::left() const { return state_->list.orders.size(); }

std::vector<std::string> BuildRun::document_names(const std::vector<Format>& formats, bool with_plates) const
{
    std::vector<std::string> names;
    for (const BuildOrder& order : state_->list.orders) {
        for (std::string& name : assembly_document_names(order.order, formats)) names.push_back(std::move(name));
        if (!with_plates) continue;
        for (std::string& name : plate_document_names(order.order)) names.push_back(std::move(name));
    }
    for (std::string& name : batch_document_names(state_->name, formats)) names.push_back(std::move(name));
    return names;
}

BuildPlan BuildRun::next()
{
    const Catalogue& catalogue = state_->known->catalogue;
    const BuildOrder& order = state_->list.orders.front();
    BuildPlan plan = plan_build(order, catalogue, state_->workshop, state_->units);
    plan.firm = state_->known->firm;
    state_->builder.add(plan, *find_series(catalogue, *order.shaft.series));
    state_->list.orders.pop_front();
    return plan;
}

Batch BuildRun::finish(const SawMeans& means)
{
    const Saw& saw = state_->workshop.saw;
    return plan_batch(state_->builder.take(), state_->saw, {state_->seconds, saw.reusable_leftover, saw.least_cut, saw.plus_minus}, means);
}

}  // namespace shaftcut
