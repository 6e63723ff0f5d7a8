#include "shaftcut/documents/build_documents.hpp"

#include "shaftcut/documents/cairo_pages.hpp"
#include "shaftcut/documents/saw_sheet.hpp"

namespace shaftcut {
namespace {

std::string saw_plan_name(const std::string& name) { return name + "-saw-plan.pdf"; }
std::string json_name(const std::string& name) { return name + ".json"; }

std::vector<Document> saw_plans(const Batch& batch, Paper paper)
{
    std::vector<Page> pages;
    const SawOrder* first = nullptr;
    for (const ProfilePlan& plan : batch.plans) {
        if (!plan.order) continue;
        if (!first) first = &*plan.order;
        for (Page& page : draw_saw_sheet(*plan.order, paper)) pages.push_back(std::move(page));
    }
    if (!first) return {};
    DocumentInfo info = saw_sheet_info(*first);
    info.title = "Saw plans " + batch.name;
    std::vector<Document> documents;
    documents.push_back({saw_plan_name(batch.name), pdf_of(pages, info)});
    return documents;
}

}  // namespace

std::vector<Document> batch_documents(const Batch& batch, Format format, Paper paper)
{
    return format == Format::pdf ? saw_plans(batch, paper) : std::vector<Document>();
}

std::vector<std::string> batch_document_names(const std::string& name, Format format)
{
    switch (format) {
    case Format::pdf: return {saw_plan_name(name)};
    case Format::json: return {json_name(name)};
    default: return {};
    }
}

Document batch_json_document(const std::string& name, std::string json) { return {json_name(name), std::move(json)}; }

}  // namespace shaftcut
