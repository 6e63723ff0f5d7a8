#include "saw/saw_master.hpp"

#include <Clp_C_Interface.h>

#include <algorithm>
#include <array>
#include <limits>
#include <utility>

namespace shaftcut::saw {

namespace {

constexpr double tolerance = 1e-9;  // a hundredth of the library's own: a proof can hang on a millionth of a bar
constexpr double unlimited = std::numeric_limits<double>::max();  // as the library has it

// The library's functions.
struct Clp {
    explicit Clp(FindFunction function) : function_of(std::move(function)) {}

    template <class Function>
    Function* find(const char* name) const
    {
        return reinterpret_cast<Function*>(function_of(name));
    }

    const FindFunction function_of;

    decltype(Clp_newModel)* const new_model = find<decltype(Clp_newModel)>("Clp_newModel");
    decltype(Clp_deleteModel)* const delete_model = find<decltype(Clp_deleteModel)>("Clp_deleteModel");
    decltype(Clp_setLogLevel)* const set_log_level = find<decltype(Clp_setLogLevel)>("Clp_setLogLevel");
    decltype(Clp_scaling)* const scaling = find<decltype(Clp_scaling)>("Clp_scaling");
    decltype(Clp_setDualTolerance)* const set_dual_tolerance = find<decltype(Clp_setDualTolerance)>("Clp_setDualTolerance");
    decltype(Clp_setPrimalTolerance)* const set_primal_tolerance = find<decltype(Clp_setPrimalTolerance)>("Clp_setPrimalTolerance");
    decltype(Clp_setMaximumIterations)* const set_maximum_iterations = find<decltype(Clp_setMaximumIterations)>("Clp_setMaximumIterations");
    decltype(Clp_setMaximumSeconds)* const set_maximum_seconds = find<decltype(Clp_setMaximumSeconds)>("Clp_setMaximumSeconds");
    decltype(Clp_addRows)* const add_rows = find<decltype(Clp_addRows)>("Clp_addRows");
    decltype(Clp_addColumns)* const add_columns = find<decltype(Clp_addColumns)>("Clp_addColumns");
    decltype(Clp_chgRowLower)* const change_row_lower = find<decltype(Clp_chgRowLower)>("Clp_chgRowLower");
    decltype(Clp_chgRowUpper)* const change_row_upper = find<decltype(Clp_chgRowUpper)>("Clp_chgRowUpper");
    decltype(Clp_chgColumnUpper)* const change_column_upper = find<decltype(Clp_chgColumnUpper)>("Clp_chgColumnUpper");
    decltype(Clp_primal)* const primal = find<decltype(Clp_primal)>("Clp_primal");
    decltype(Clp_dual)* const dual = find<decltype(Clp_dual)>("Clp_dual");
    decltype(Clp_objectiveValue)* const objective_value = find<decltype(Clp_objectiveValue)>("Clp_objectiveValue");
    decltype(Clp_getRowPrice)* const row_price = find<decltype(Clp_getRowPrice)>("Clp_getRowPrice");
    decltype(Clp_getColSolution)* const column_solution = find<decltype(Clp_getColSolution)>("Clp_getColSolution");
};

// The simplex method's answers.
constexpr int optimal = 0, stopped = 3;
// How much time is left is asked between so many iterations, as the library's own limit counts processor time. To stop more often would
// lose the prices that the dual method's choice of rows hangs on.
constexpr int iterations_between_asking = 3000;

}  // namespace

// Rows: the first sizes, the bars, then sizes as they were added.
struct Master::Program {
    Program(const Model& of, Aim what, const FindFunction& function_of) : clp(function_of), model(of), aim(what)
    {
        for (const BarKind& bar : model.bars) unit = std::max(unit, static_cast<double>(aim == Aim::least_cost ? bar.cost : bar.capacity));
        clp.set_log_level(simplex, 0);
        clp.scaling(simplex, 0);
        clp.set_dual_tolerance(simplex, tolerance);
        clp.set_primal_tolerance(simplex, tolerance);
    }
    Program(const Program&) = delete;
    Program& operator=(const Program&) = delete;
    ~Program() { clp.delete_model(simplex); }

    int add_row(double least)
    {
        const std::array<CoinBigIndex, 2> empty{};
        clp.add_rows(simplex, 1, nullptr, nullptr, empty.data(), nullptr, nullptr);
        row_lower.push_back(least);
        row_upper.push_back(unlimited);
        return static_cast<int>(row_lower.size()) - 1;
    }

    // Column c holds elements and their rows from starts[c] to starts[c + 1].
    void add_columns(const std::vector<double>& costs, const std::vector<CoinBigIndex>& starts, const std::vector<int>& rows, const std::vector<double>& elements)
    {
        clp.add_columns(simplex, static_cast<int>(costs.size()), nullptr, nullptr, costs.data(), starts.data(), rows.data(), elements.data());
        column_upper.resize(column_upper.size() + costs.size(), unlimited);
    }

    void add_size(std::int64_t size)
    {
        size_rows.push_back(add_row(0.0));
        if (aim == Aim::least_shortage) add_columns({static_cast<double>(size) / unit}, {0, 1}, {size_rows.back()}, {1.0});
    }

    // False: infeasible, or time is up.
    bool solve(const SawWatch& watch)
    {
        clp.change_row_lower(simplex, row_lower.data());
        clp.change_row_upper(simplex, row_upper.data());
        clp.change_column_upper(simplex, column_upper.data());
        const auto method = columns_added ? clp.primal : clp.dual;
        columns_added = false;
        clp.set_maximum_iterations(simplex, iterations_between_asking);
        int ended = stopped;
        for (double left = watch.seconds_left(); ended == stopped && left > 0; left = watch.seconds_left()) {
            clp.set_maximum_seconds(simplex, left);
            ended = method(simplex, 0);
        }
        return ended == optimal;
    }

    const Clp clp;
    Clp_Simplex* const simplex = clp.new_model();
    const Model& model;
    const Aim aim;
    double unit = 1;  // of the objective
    bool columns_added = false;
    int first_bar = 0;                   // row of the first bar
    std::vector<int> size_rows{};        // of each size
    std::vector<int> pattern_columns{};  // of each pattern
    std::vector<double> row_lower{}, row_upper{}, column_upper{};  // the library takes them whole, before it solves
};

Master::Master(const Model& model, Aim aim, const SawWatch& watch) : program_(new Program(model, aim, watch.linear_programme))
{
    for (const CutSize& size : model.sizes) program_->add_size(size.size);
    program_->first_bar = static_cast<int>(program_->row_lower.size());
    for (std::size_t k = 0; k < model.bars.size(); ++k) program_->add_row(-unlimited);
    set_wanted(wanted(model));
    set_bars(available(model));
}

Master::~Master() = default;

void Master::add_sizes()
{
    const std::vector<CutSize>& sizes = program_->model.sizes;
    for (std::size_t i = program_->size_rows.size(); i < sizes.size(); ++i) program_->add_size(sizes[i].size);
}

void Master::add(const Pattern& pattern)
{
    add_all({pattern}, 0);
}

void Master::add_all(const std::vector<Pattern>& patterns, std::size_t from)
{
    if (from >= patterns.size()) return;
    std::vector<int> rows;
    std::vector<double> elements, costs;
    std::vector<CoinBigIndex> starts{0};
    for (std::size_t p = from; p < patterns.size(); ++p) {
        const Pattern& pattern = patterns[p];
        for (const Part& part : pattern.parts) {
            rows.push_back(program_->size_rows[part.size]);
            elements.push_back(static_cast<double>(part.count));
        }
        rows.push_back(program_->first_bar + static_cast<int>(pattern.bar));
        elements.push_back(1.0);
        starts.push_back(static_cast<CoinBigIndex>(rows.size()));
        costs.push_back(program_->aim == Aim::least_cost ? static_cast<double>(program_->model.bars[pattern.bar].cost) / program_->unit : 0.0);
        program_->pattern_columns.push_back(static_cast<int>(program_->column_upper.size() + (p - from)));
    }
    program_->add_columns(costs, starts, rows, elements);
    program_->columns_added = true;
}

std::size_t Master::columns() const
{
    return program_->pattern_columns.size();
}

void Master::set_wanted(const Counts& counts)
{
    for (std::size_t i = 0; i < counts.size(); ++i)
        program_->row_lower[static_cast<std::size_t>(program_->size_rows[i])] = static_cast<double>(counts[i]);
}

void Master::set_bars(const Counts& available)
{
    for (std::size_t k = 0; k < available.size(); ++k)
        program_->row_upper[static_cast<std::size_t>(program_->first_bar) + k] = static_cast<double>(available[k]);
}

void Master::allow(std::size_t column, bool allowed)
{
    program_->column_upper[static_cast<std::size_t>(program_->pattern_columns[column])] = allowed ? unlimited : 0.0;
}

MasterAnswer Master::solve(const SawWatch& watch)
{
    MasterAnswer answer;
    answer.solved = program_->solve(watch);
    if (!answer.solved) return answer;
    const Clp& clp = program_->clp;
    answer.objective = clp.objective_value(program_->simplex);
    const double* duals = clp.row_price(program_->simplex);
    for (const int row : program_->size_rows) answer.prices.push_back(std::max(0.0, duals[row]));
    for (std::size_t k = 0; k < program_->model.bars.size(); ++k)
        answer.bar_prices.push_back(std::max(0.0, -duals[static_cast<std::size_t>(program_->first_bar) + k]));
    const double* amounts = clp.column_solution(program_->simplex);
    for (const int column : program_->pattern_columns) answer.amounts.push_back(amounts[column]);
    return answer;
}

}  // namespace shaftcut::saw
