#include "shaftcut/trade/saw_master.hpp"

#include <algorithm>
#include <ClpSimplex.hpp>

namespace shaftcut::saw {

struct Master::Program {
    const Model& model;
    Aim aim;
    double unit = 1;  // of the objective
    ClpSimplex simplex{};
    bool columns_added = false;
    std::size_t first_pattern = 0;
};

namespace {

void add_size_rows(ClpSimplex& simplex, const Model& model)
{
    const int rows = static_cast<int>(model.sizes.size() + model.bars.size());
    simplex.resize(rows, 0);
    for (int i = 0; i < rows; ++i) simplex.setRowBounds(i, -COIN_DBL_MAX, COIN_DBL_MAX);
}

void add_shortages(ClpSimplex& simplex, const Model& model, double unit)
{
    for (int i = 0; i < static_cast<int>(model.sizes.size()); ++i) {
        const double one = 1.0;
        simplex.addColumn(1, &i, &one, 0.0, COIN_DBL_MAX, static_cast<double>(model.sizes[static_cast<std::size_t>(i)].size) / unit);
    }
}

}  // namespace

Master::Master(const Model& model, Aim aim) : program_(new Program{model, aim})
{
    std::int64_t unit = 1;
    for (const BarKind& bar : model.bars) unit = std::max(unit, aim == Aim::least_cost ? bar.cost : bar.capacity);
    program_->unit = static_cast<double>(unit);
    program_->simplex.setLogLevel(0);
    program_->simplex.scaling(0);
    add_size_rows(program_->simplex, model);
    if (aim == Aim::least_shortage) {
        add_shortages(program_->simplex, model, program_->unit);
        program_->first_pattern = model.sizes.size();
    }
    set_wanted(wanted(model));
    set_bars(available(model));
}

Master::~Master() = default;

void Master::add(const Pattern& pattern)
{
    std::vector<int> rows;
    std::vector<double> elements;
    for (const Part& part : pattern.parts) {
        rows.push_back(static_cast<int>(part.size));
        elements.push_back(static_cast<double>(part.count));
    }
    rows.push_back(static_cast<int>(program_->model.sizes.size() + pattern.bar));
    elements.push_back(1.0);
    const double cost = program_->aim == Aim::least_cost ? static_cast<double>(program_->model.bars[pattern.bar].cost) / program_->unit : 0.0;
    program_->simplex.addColumn(static_cast<int>(rows.size()), rows.data(), elements.data(), 0.0, COIN_DBL_MAX, cost);
    program_->columns_added = true;
}

std::size_t Master::columns() const
{
    return static_cast<std::size_t>(program_->simplex.numberColumns()) - program_->first_pattern;
}

void Master::set_wanted(const Counts& counts)
{
    for (std::size_t i = 0; i < counts.size(); ++i)
        program_->simplex.setRowLower(static_cast<int>(i), static_cast<double>(counts[i]));
}

void Master::set_bars(const Counts& available)
{
    const std::size_t first = program_->model.sizes.size();
    for (std::size_t k = 0; k < available.size(); ++k)
        program_->simplex.setRowUpper(static_cast<int>(first + k), static_cast<double>(available[k]));
}

void Master::allow(std::size_t column, bool allowed)
{
    program_->simplex.setColumnUpper(static_cast<int>(program_->first_pattern + column), allowed ? COIN_DBL_MAX : 0.0);
}

MasterAnswer Master::solve(double seconds)
{
    ClpSimplex& simplex = program_->simplex;
    simplex.setMaximumSeconds(std::max(seconds, 0.001));
    if (program_->columns_added) simplex.primal();
    else simplex.dual();
    program_->columns_added = false;
    MasterAnswer answer;
    answer.solved = simplex.status() == 0;
    if (!answer.solved) return answer;
    answer.objective = simplex.objectiveValue();
    const double* duals = simplex.getRowPrice();
    const std::size_t sizes = program_->model.sizes.size();
    for (std::size_t i = 0; i < sizes; ++i) answer.prices.push_back(std::max(0.0, duals[i]));
    for (std::size_t k = 0; k < program_->model.bars.size(); ++k) answer.bar_prices.push_back(std::max(0.0, -duals[sizes + k]));
    const double* amounts = simplex.getColSolution() + program_->first_pattern;
    answer.amounts.assign(amounts, amounts + columns());
    return answer;
}

}  // namespace shaftcut::saw
