#include "shaftcut/trade/saw_master.hpp"

#include <algorithm>
#include <ClpEventHandler.hpp>
#include <ClpSimplex.hpp>

namespace shaftcut::saw {

namespace {

constexpr double tolerance = 1e-9;  // a hundredth of the library's own: a proof can hang on a millionth of a bar

// Stops the simplex method when time is up. The library's own limit counts processor time.
class StopInTime final : public ClpEventHandler {
public:
    explicit StopInTime(const SawWatch& watch) : watch_(&watch) {}

    int event(Event which) override
    {
        if (which != endOfIteration || ++iterations_ % iterations_between_asking != 0 || watch_->seconds_left() > 0) return go_on;
        return stop_here;
    }

    ClpEventHandler* clone() const override { return new StopInTime(*this); }

private:
    static constexpr int go_on = -1;
    static constexpr int stop_here = 5;  // becomes the status of the solution
    static constexpr int iterations_between_asking = 16;

    const SawWatch* watch_;
    int iterations_ = 0;
};

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
        program_->pattern_columns.push_back(program_->simplex.numberColumns() + static_cast<int>(p - from));
    }
    program_->simplex.addColumns(static_cast<int>(costs.size()), nullptr, nullptr, costs.data(), starts.data(), rows.data(), elements.data());
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

MasterAnswer Master::solve(const SawWatch& watch)
{
    ClpSimplex& simplex = program_->simplex;
    const StopInTime stop(watch);
    simplex.passInEventHandler(&stop);
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
