// Bounds on bounded knapsacks for every room and every tail of the items, within a fixed memory.
#pragma once

#include <cstddef>
#include <cstdint>
#include <memory>
#include <vector>

namespace shaftcut::saw {

// What may be taken: up to `limit` times, each time `size` of the room for `price`. None is negative.
struct KnapsackItem {
    std::size_t index;  // the caller's own
    std::int64_t size;
    std::int64_t price;
    std::int64_t limit;
};

// at(j, room): no choice among items j, j+1, ... in `room` is worth more. Rooms are counted in coarse steps, sizes rounded
// down to them, so it is safe for any step and exact for a step of 1. Doubles, because the compiler can work on several at
// once: exact while the values stay under 2^53, beyond it right to 1 part in 10^12.
class BoundTable {
public:
    // At most most_cells cells, or one for each item when that is more.
    void fill(const std::vector<KnapsackItem>& items, std::int64_t capacity, std::int64_t most_cells);

    // room from 0 to the capacity filled for.
    double at(std::size_t item, std::int64_t room) const { return cells_[item * width_ + static_cast<std::size_t>(room / step_)]; }

    // Cells of an exact table.
    static std::int64_t cells_needed(std::size_t items, std::int64_t capacity);

private:
    double* row(std::size_t j) { return &cells_[j * width_]; }
    void reserve(std::size_t cells);
    void fill_row(const KnapsackItem& item, std::size_t j, double* spare, double* other);

    std::int64_t step_ = 1;
    std::size_t width_ = 0;
    std::unique_ptr<double[]> cells_;
    std::size_t reserved_ = 0;
};

}  // namespace shaftcut::saw
