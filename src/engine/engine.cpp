#include "shaftcut/engine/engine.hpp"

#include <algorithm>
#include <filesystem>

#include "build_state.hpp"
#include "catalogue_reader.hpp"
#include "job_reader.hpp"
#include "engine/said.hpp"
#include "json/frames_json.hpp"
#include "known.hpp"
#include "lists/lists_reader.hpp"
#include "lists/price_list.hpp"
#include "measured_reader.hpp"
#include "order_number.hpp"
#include "reading/said.hpp"
#include "saw_state.hpp"
#include "source/known_names.hpp"
#include "workshop_reader.hpp"

namespace shaftcut {
namespace {

// The file called so; null where it is not there.
const Source* find_file(const Configuration& configuration, const std::string& name)
{
    const auto is_it = [&](const Source& file) { return file.name.substr(file.name.find_last_of('/') + 1) == name; };
    const auto file = std::find_if(configuration.files.begin(), configuration.files.end(), is_it);
    return file == configuration.files.end() ? nullptr : &*file;
}

// The file called so, read; neither a value nor a problem where it is not there.
template <class T, class Reader>
Read<T> read_file(const Configuration& configuration, const std::string& name, const Reader& read)
{
    const Source* const file = find_file(configuration, name);
    return file ? read(*file) : Read<T>();
}

// Series and connections are those of the catalogue: without a sound one the maps are not looked at.
Read<std::vector<ListMap>> read_maps(const Configuration& configuration, const Read<Catalogue>& catalogue)
{
    if (!catalogue.value) return {};
    return read_file<std::vector<ListMap>>(configuration, "lists.xml", [&](const Source& file) { return read_lists(file, *catalogue.value); });
}

// A wholesaler's list beside the workshop's own prices.
FaultList add_prices(const Configuration& configuration, std::optional<Prices>& prices)
{
    const Source* const list = find_file(configuration, "prices.csv");
    if (!list) return {};
    if (prices) return add_price_list(*list, *prices);
    Faults faults(list->name);
    faults.add(Spot{}, Contradiction::list_without_currency);
    return faults.listed();
}

template <class T>
bool is_missing(const Read<T>& read) { return !read.value && read.faults.empty(); }

bool holds_machine(const Job& job)
{
    return std::any_of(job.fits.begin(), job.fits.end(), [](const JobFit& fit) { return fit.machine.has_value(); });
}

// A job of one fit is its only one.
Problem no_machine(const Job& job)
{
    Said said = say_no_machine(Wording(job.units));
    return {job.fits.front().place, std::move(said.wrong), std::move(said.right), job.fits.size() == 1 ? "fit" : "fit[1]"};
}

// A joint cannot fold past a right angle: there is no shaft for such a machine.
bool folds(const WorkOrder& order)
{
    for (const End end : both_ends)
        for (const Range range : all_ranges)
            if (const auto& angle = order.extremes.angles[end][range]; angle && angle->angle > Angle::degrees(90)) return true;
    return false;
}

Answer answer_to(Question question, const Source& file, const Known& known, const Wishes& wishes)
{
    const Read<Job> read = read_job(file, known.catalogue);
    Answer answer{question, std::nullopt, problems_of(read.faults), {}, {}, {}, known.firm, {}};
    if (!read.value) return answer;
    const Job& job = *read.value;
    answer.order = job.order;
    answer.key = order_key(job.order);
    answer.place = job.place;
    answer.units = job.units;
    if (question == Question::lengths && !holds_machine(job)) {
        answer.problems.push_back(no_machine(job));
        return answer;
    }
    answer.work_order = work_up(job, known.catalogue, known.workshop, wishes.units.value_or(job.units));
    return answer;
}

// Of each fit that states a machine; what else the job says is not asked.
MachineFramesAnswer answer_machines(const Source& file, const Known& known, const Wishes& wishes)
{
    const Read<Job> read = read_job(file, known.catalogue);
    MachineFramesAnswer answer{{}, problems_of(read.faults), wishes.units.value_or(Units::mm)};
    if (!read.value) return answer;
    const Job& job = *read.value;
    answer.units = wishes.units.value_or(job.units);
    if (!holds_machine(job)) answer.problems.push_back(no_machine(job));
    for (const FitReading& fit : machines_of(job, known.catalogue, known.workshop)) {
        const bool is_drawn = answer.machines.size() < most_machines_drawn;
        answer.machines.push_back(is_drawn ? machine_frames(fit) : MachineFrames{fit.tractor, fit.geometry && std::holds_alternative<Mounted>(fit.geometry->machine), {}, {}, fit.unreadable});
    }
    return answer;
}

Problem no_cut(const Job& job)
{
    Said said = say_no_cut(Wording(job.units));
    return {job.place, std::move(said.wrong), std::move(said.right)};
}

AfterCutAnswer answer_after_cut(const Source& job_file, const Source& measured_file, const Known& known, const Wishes& wishes)
{
    const Read<Job> job = read_job(job_file, known.catalogue);
    const Read<MeasuredAfterCut> measured = read_measured(measured_file, job.value ? &*job.value : nullptr);
    AfterCutAnswer answer{std::nullopt, problems_of(job.faults)};
    for (const Fault& fault : measured.faults) answer.problems.push_back(problem_of(fault));
    if (!job.value) return answer;
    WorkOrder order = work_up(*job.value, known.catalogue, known.workshop, wishes.units.value_or(job.value->units));
    if (!order.cut) answer.problems.push_back(no_cut(*job.value));
    if (!answer.problems.empty()) return answer;
    AfterCut found = after_cut(order, *job.value, known.catalogue, *measured.value).value();
    answer.shaft = ShaftAfterCut{std::move(order), std::move(found)};
    return answer;
}

// As the workshop itself states them: a wholesaler's list holds parts.
void add_prices_of_shafts(Choices& choices, const std::optional<Prices>& prices)
{
    if (!prices) return;
    choices.currency = prices->currency;
    choices.stated = prices->stated;
    for (Choice& choice : choices.choices)
        if (const auto price = prices->shafts.find({choice.series, choice.closed}); price != prices->shafts.end()) choice.price = price->second.each;
}

ChooseAnswer answer_choose(const Source& file, const Known& known, const Wishes& wishes, const ChooseProgress& progress)
{
    const Read<JobToChooseFor> read = read_job_to_choose_for(file, known.catalogue);
    ChooseAnswer answer{std::nullopt, problems_of(read.faults), {}, {}, {}};
    if (!read.value) return answer;
    const Job& job = read.value->job;
    answer.order = job.order;
    answer.key = order_key(job.order);
    answer.place = job.place;
    answer.choices = shaftcut::choose(*read.value, known.catalogue, known.workshop, wishes.units.value_or(job.units), progress);
    add_prices_of_shafts(*answer.choices, known.prices);
    return answer;
}

}  // namespace

MeasuringForm form_for(const Series* series, OnMachine machine, const Known& known, Units units)
{
    MeasuringForm form;
    if (series) form.series = *series;
    form.machine = machine;
    form.units = units;
    form.plus_minus = known.workshop.measuring_plus_minus;
    form.owner = known.workshop.name;
    return form;
}

const ListMap* find_list_map(const Known& known, const std::string& name)
{
    const auto found = std::find_if(known.lists.begin(), known.lists.end(), [&](const ListMap& map) { return map.name == name; });
    return found == known.lists.end() ? nullptr : &*found;
}

std::string list_name(const std::string& file) { return std::filesystem::path(file).stem().string(); }

Loaded Engine::load(const Configuration& configuration)
{
    auto catalogue = read_file<Catalogue>(configuration, "series.xml", read_catalogue);
    auto workshop = read_file<StatedWorkshop>(configuration, "workshop.xml", read_workshop);
    auto lists = read_maps(configuration, catalogue);
    std::optional<Prices> prices = workshop.value ? workshop.value->prices : std::nullopt;
    FaultList price_faults = workshop.value ? add_prices(configuration, prices) : FaultList();
    Loaded loaded{std::nullopt, problems_of(catalogue.faults), {}};
    for (const FaultList* faults : {&workshop.faults, &price_faults, &lists.faults})
        for (const Fault& fault : *faults) loaded.problems.push_back(problem_of(fault));
    if (is_missing(catalogue)) loaded.missing.emplace_back("series.xml");
    if (is_missing(workshop)) loaded.missing.emplace_back("workshop.xml");
    if (catalogue.value && workshop.value && price_faults.empty() && lists.faults.empty())
        loaded.engine = Engine(std::make_shared<const Known>(
            Known{std::move(*catalogue.value), *workshop.value, workshop.value->firm, std::move(prices), std::move(lists.value).value_or(std::vector<ListMap>())}));
    return loaded;
}

Answer Engine::answer(const Source& job, const Wishes& wishes) const { return answer_to(Question::cut, job, *known_, wishes); }

Answer Engine::lengths(const Source& job, const Wishes& wishes) const { return answer_to(Question::lengths, job, *known_, wishes); }

bool refuses(const Answer& answer)
{
    if (!answer.work_order) return false;
    return answer.question == Question::lengths ? folds(*answer.work_order) : answer.work_order->verdict == Verdict::refused;
}

MachineFramesAnswer Engine::machine_frames(const Source& job, const Wishes& wishes) const { return answer_machines(job, *known_, wishes); }

AfterCutAnswer Engine::after_cut(const Source& job, const Source& measured, const Wishes& wishes) const { return answer_after_cut(job, measured, *known_, wishes); }

bool refuses(const AfterCutAnswer& answer) { return answer.shaft && answer.shaft->found.verdict >= AfterCutVerdict::measure; }

ChooseAnswer Engine::choose(const Source& job, const Wishes& wishes, const ChooseProgress& progress) const { return answer_choose(job, *known_, wishes, progress); }

bool refuses(const ChooseAnswer& answer) { return answer.choices && answer.choices->serving == 0; }

BuildStart Engine::build(const Source& orders, const Wishes& wishes, const SawWishes& saw) const { return start_build(known_, orders, wishes, saw); }

SawStart Engine::saw(const Source& pieces, const Wishes& wishes, const SawWishes& saw) const { return start_saw(known_, pieces, wishes, saw); }

FormAnswer Engine::form(const std::string& series, const Wishes& wishes, OnMachine machine) const
{
    const Series* const found = find_series(known_->catalogue, series);
    if (!found && !series.empty())
        return {std::nullopt, no_such_series(names_in(known_->catalogue.series, NamesOf::the_catalogue).unknown({"series", series}), Wording(wishes.units.value_or(Units::mm)))};
    return {form_for(found, machine, *known_, wishes.units.value_or(Units::mm)), {}};
}

}  // namespace shaftcut
