// The lists of saw plans: PIECES.csv with the columns length, count, label, STOCK.csv with length, count, cost, and for shafts made to
// order the bars of each profile with profile, length, count, cost.
// Checked by tests/reading/pieces_test.cpp.
#pragma once

#include <variant>

#include "table/table.hpp"
#include "shaftcut/trade/data/catalogue.hpp"
#include "shaftcut/trade/saw/saw.hpp"

namespace shaftcut {

inline constexpr std::size_t most_piece_lines = 1'000'000;
inline constexpr std::size_t most_stock_lines = 20'000;

struct PieceList {
    std::vector<SawPiece> pieces;
    std::vector<Spot> spots;  // of each piece's length in the file: one piece a row
};

// At most most_piece_lines. Lengths without a unit of their own are in `units`. A count is 1 or more; the label column may be left out,
// a label has at most 100 characters.
std::variant<PieceList, FaultList> read_pieces(std::string_view text, const std::string& file, Units units);

// At most most_stock_lines. An empty count: as many as needed; an empty cost: the bar's length in millimetres. A count is 0 or more; a cost
// is a decimal number from 0 to 1000000 with at most 6 places. Both columns may be left out.
std::variant<std::vector<SawStock>, FaultList> read_stock(std::string_view text, const std::string& file, Units units);

// The same with a profile's name in each line, 1 to 60 characters.
std::variant<std::vector<ProfileStock>, FaultList> read_profile_stock(std::string_view text, const std::string& file, Units units);

}  // namespace shaftcut
