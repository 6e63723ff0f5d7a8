#include "shaftcut/trade/saw_master.hpp"

#include <algorithm>
#include <ClpSimplex.hpp>

namespace shaftcut::saw {

namespace {

constexpr double tolerance = 1e-9;  // a hundredth of the library's own: a proof can hang on a millionth of a bar

}  // namespace

struct Master::Program {
    const Model& model;
    Aim aim;
    double unit = 1;  // of the objective
    ClpSimplex simplex{};
    bool columns_added = false;
    int first_bar = 0;                     // row of the first bar
    std::vector<int> size_rows{};          // of each size
    std::vector<int> pattern_columns{};    // of each pattern

    void add_size(std::int64_t size, int row)
    {
        size_rows.push_back(row);
        const double one = 1.0;
        if (aim == Aim::least_shortage) simplex.addColumn(1, &row, &one, 0.0, COIN_DBL_MAX, static_cast<double>(size) / unit);
    }
};

Master::Master(const Model& model, Aim aim) : program_(new Program{model, aim})
{
    std::int64_t unit = 1;
    for (const BarKind& bar : model.bars) unit = std::max(unit, aim == Aim::least_cost ? bar.cost : bar.capacity);
    program_->unit = static_cast<double>(unit);
    ClpSimplex& simplex = program_->simplex;
    simplex.setLogLevel(0);
    simplex.scaling(0);
    simplex.setDualTolerance(tolerance);
    simplex.setPrimalTolerance(tolerance);
    program_->first_bar = static_cast<int>(model.sizes.size());
    const int rows = program_->first_bar + static_cast<int>(model.bars.size());
    simplex.resize(rows, 0);
    for (int i = 0; i < rows; ++i) simplex.setRowBounds(i, -COIN_DBL_MAX, COIN_DBL_MAX);
    for (int i = 0; i < program_->first_bar; ++i) program_->add_size(model.sizes[static_cast<std::size_t>(i)].size, i);
    set_wanted(wanted(model));
    set_bars(available(model));
}

Master::~Master() = default;

void Master::add_sizes()
{
    for (std::size_t i = program_->size_rows.size(); i < program_->model.sizes.size(); ++i) {
        program_->simplex.addRow(0, nullptr, nullptr, 0.0, COIN_DBL_MAX);
        program_->add_size(program_->model.sizes[i].size, program_->simplex.numberRows() - 1);
    }
}

void Master::add(const Pattern& pattern)
{
    std::vector<int> rows;
    std::vector<double> elements;
    for (const Part& part : pattern.parts) {
        rows.push_back(program_->size_rows[part.size]);
        elements.push_back(static_cast<double>(part.count));
    }
    rows.push_back(program_->first_bar + static_cast<int>(pattern.bar));
    elements.push_back(1.0);
    const double cost = program_->aim == Aim::least_cost ? static_cast<double>(program_->model.bars[pattern.bar].cost) / program_->unit : 0.0;
    program_->pattern_columns.push_back(program_->simplex.numberColumns());
    program_->simplex.addColumn(static_cast<int>(rows.size()), rows.data(), elements.data(), 0.0, COIN_DBL_MAX, cost);
    program_->columns_added = true;
}

std::size_t Master::columns() const
{
    return program_->pattern_columns.size();
}

void Master::set_wanted(const Counts& counts)
{
    for (std::size_t i = 0; i < counts.size(); ++i)
        program_->simplex.setRowLower(program_->size_rows[i], static_cast<double>(counts[i]));
}

void Master::set_bars(const Counts& available)
{
    for (std::size_t k = 0; k < available.size(); ++k)
        program_->simplex.setRowUpper(program_->first_bar + static_cast<int>(k), static_cast<double>(available[k]));
}

void Master::allow(std::size_t column, bool allowed)
{
    program_->simplex.setColumnUpper(program_->pattern_columns[column], allowed ? COIN_DBL_MAX : 0.0);
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
    for (const int row : program_->size_rows) answer.prices.push_back(std::max(0.0, duals[row]));
    for (std::size_t k = 0; k < program_->model.bars.size(); ++k)
        answer.bar_prices.push_back(std::max(0.0, -duals[static_cast<std::size_t>(program_->first_bar) + k]));
    const double* amounts = simplex.getColSolution();
    for (const int column : program_->pattern_columns) answer.amounts.push_back(amounts[column]);
    return answer;
}

}  // namespace shaftcut::saw
