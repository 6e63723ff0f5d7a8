// The documents of shafts made to order, by format.
#pragma once

#include <functional>
#include <vector>

#include "shaftcut/documents/documents.hpp"
#include "shaftcut/trade/batch.hpp"

namespace shaftcut {

// Of one order: ORDER-assembly.pdf, its assembly work order.
Document assembly_document(const BuildPlan& plan, Paper paper);
std::string assembly_document_name(const std::string& order);

// Of the whole batch, but for its JSON. PDF: NAME-saw-plan.pdf, every profile's saw sheets one after the other, none where nothing
// is sawn; NAME-labels.pdf, none where nothing can be built or where there are more than most_labels. XLSX: NAME-batch.xlsx.
// `on_labels` is told after each sheet of labels how many are drawn, of how many.
using SheetsDrawn = std::function<void(std::size_t drawn, std::size_t of)>;
std::vector<Document> batch_documents(const Batch& batch, Format format, Paper paper, const SheetsDrawn& on_labels = {});

// The names that batch_documents() and the JSON of a batch called `name` may have.
std::vector<std::string> batch_document_names(const std::string& name, Format format);

// That of the JSON.
std::string batch_json_name(const std::string& name);

}  // namespace shaftcut
