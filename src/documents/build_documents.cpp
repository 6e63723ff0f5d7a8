#include "shaftcut/documents/build_documents.hpp"

#include "shaftcut/documents/assembly_sheet.hpp"
#include "shaftcut/documents/batch_saw_sheets.hpp"
#include "shaftcut/documents/batch_workbook.hpp"
#include "shaftcut/documents/cairo_pages.hpp"
#include "shaftcut/documents/labels_sheet.hpp"

namespace shaftcut {
namespace {

std::string saw_plan_name(const std::string& name) { return name + "-saw-plan.pdf"; }
std::string labels_name(const std::string& name) { return name + "-labels.pdf"; }
std::string workbook_name(const std::string& name) { return name + "-batch.xlsx"; }

void add_saw_plans(std::vector<Document>& documents, const Batch& batch, Paper paper)
{
    const std::vector<Page> pages = draw_batch_saw_sheets(batch, paper);
    if (pages.empty()) return;
    const DocumentInfo info = document_info("Saw plans " + batch.name, batch.owner, "Bars, pieces in cutting order and stops");
    documents.push_back({saw_plan_name(batch.name), pdf_of(pages, info)});
}

void add_labels(std::vector<Document>& documents, const Batch& batch, Paper paper, const SheetsDrawn& on_labels)
{
    if (count_labels(batch) > most_labels) return;
    const LabelSheets sheets = label_sheets(batch, paper);
    if (sheets.count == 0) return;
    const DocumentInfo info = document_info("Labels " + batch.name, batch.owner, "labels for pieces and shafts");
    const auto draw = [&](std::size_t number) {
        Page page = sheets.draw(number);
        if (on_labels) on_labels(number + 1, sheets.count);
        return page;
    };
    documents.push_back({labels_name(batch.name), pdf_of(sheets.count, draw, info)});
}

}  // namespace

std::string assembly_document_name(const std::string& order) { return order + "-assembly.pdf"; }

Document assembly_document(const BuildPlan& plan, Paper paper)
{
    return {assembly_document_name(plan.order), pdf_of(draw_assembly_sheet(plan, paper), assembly_sheet_info(plan))};
}

std::vector<Document> batch_documents(const Batch& batch, Format format, Paper paper, const SheetsDrawn& on_labels)
{
    std::vector<Document> documents;
    if (format == Format::pdf) {
        add_saw_plans(documents, batch, paper);
        add_labels(documents, batch, paper, on_labels);
    }
    if (format == Format::xlsx) documents.push_back({workbook_name(batch.name), batch_workbook_of(batch, paper)});
    return documents;
}

std::vector<std::string> batch_document_names(const std::string& name, Format format)
{
    switch (format) {
    case Format::pdf: return {saw_plan_name(name), labels_name(name)};
    case Format::xlsx: return {workbook_name(name)};
    case Format::json: return {batch_json_name(name)};
    default: return {};
    }
}

std::string batch_json_name(const std::string& name) { return name + ".json"; }

}  // namespace shaftcut
