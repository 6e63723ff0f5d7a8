// The kinds of document that a work order or a saw plan can be written as: one line each in a table.
#pragma once

#include <array>
#include <string>

#include "shaftcut/documents/paper.hpp"
#include "shaftcut/trade/saw_order.hpp"
#include "shaftcut/trade/terms.hpp"
#include "shaftcut/trade/work_order.hpp"

namespace shaftcut {

enum class Format { pdf, xlsx, json, png, svg };
template <> struct Words<Format> { static constexpr std::array all{"pdf", "xlsx", "json", "png", "svg"}; };

// A file to be written: its name without a folder, and its bytes.
struct Document {
    std::string name;
    std::string bytes;
};

// Named ORDER-cut-sheet.pdf, ORDER-work-order.xlsx, ORDER.json; PNG and SVG are pictures of the cut sheet's first sheet.
Document document_of(const WorkOrder& order, Format format, Paper paper);

// Named NAME-saw-plan.pdf and so on; PNG and SVG are pictures of the saw sheet's first sheet.
Document document_of(const SawOrder& order, Format format, Paper paper);
std::string saw_document_name(const std::string& order_name, Format format);

}  // namespace shaftcut
